#include "ui/pot/price_cell.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QPalette>

namespace ladlework::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(PriceCell)
};
} // namespace

QVariant priceCell(const QString& item, const Prices& prices, int role) {
    const auto price = prices.perKilogram.constFind(item);
    const bool isKnown = price != prices.perKilogram.cend();
    switch (role) {
    case Qt::DisplayRole:
        return isKnown ? printPrice(*price, prices) : Words::tr("price?");
    case Qt::EditRole:
        return isKnown ? printPrice(*price, prices) : QString();
    case Qt::ForegroundRole:
        return isKnown ? QVariant() : QGuiApplication::palette().brush(QPalette::PlaceholderText);
    case Qt::ToolTipRole:
        return prices.measures == quantity::MeasureSystem::UsCustomary
                   ? Words::tr("What the practice pays for a pound; type it here, for all families")
                   : Words::tr("What the practice pays for a kilogram; type it here, for all "
                               "families");
    default:
        return {};
    }
}

Result<std::optional<double>> readPriceCell(const QString& text, const Prices& prices) {
    if (text.trimmed().isEmpty())
        return std::optional<double>();
    return parsePrice(text, prices).map([](double price) { return std::optional(price); });
}

} // namespace ladlework::ui
