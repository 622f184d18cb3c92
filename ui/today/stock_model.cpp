#include "ui/today/stock_model.h"

#include <QLocale>

#include <algorithm>

namespace ladlework::ui {

namespace {

QString useByWords(const casebook::StockItem& item, QDate today) {
    if (item.pastUse)
        return StockModel::tr("past its day");
    if (!item.lot.useBy.isValid())
        return StockModel::tr("no day set");
    if (item.lot.useBy == today)
        return StockModel::tr("today");
    if (item.lot.useBy == today.addDays(1))
        return StockModel::tr("tomorrow");
    return QLocale().toString(item.lot.useBy, QStringLiteral("ddd d MMM"));
}

} // namespace

int StockModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_stock.size());
}

int StockModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant StockModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const casebook::StockItem& item = m_stock[index.row()];
    if (role == Qt::ToolTipRole && !item.lot.container.isEmpty())
        return tr("%1, stored %2")
            .arg(item.lot.container,
                 QLocale().toString(item.lot.stored, QStringLiteral("ddd d MMM")));
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case AmountColumn:
        return quantity::printVolume(item.left, m_measures);
    case PotColumn:
        return item.potName;
    case PlaceColumn:
        return item.lot.place == kitchen::Lot::Place::Fridge ? tr("refrigerator") : tr("freezer");
    case UseByColumn:
        return useByWords(item, m_today);
    default:
        return {};
    }
}

QVariant StockModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case AmountColumn:
        return tr("Left");
    case PotColumn:
        return tr("Of");
    case PlaceColumn:
        return tr("Where");
    case UseByColumn:
        return tr("Use by");
    default:
        return {};
    }
}

void StockModel::setStock(const QList<casebook::StockItem>& stock, QDate today,
                          quantity::MeasureSystem measures) {
    m_today = today;
    m_measures = measures;
    const bool sameLots = std::ranges::equal(
        stock, m_stock, {}, [](const auto& item) { return item.lot.id; },
        [](const auto& item) { return item.lot.id; });
    if (sameLots) {
        m_stock = stock;
        if (!m_stock.isEmpty())
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        return;
    }
    beginResetModel();
    m_stock = stock;
    endResetModel();
}

} // namespace ladlework::ui
