#pragma once

#include "ui/pot/price_text.h"

#include <QVariant>
#include <optional>

namespace ladlework::ui {

/// What a cell with a price shows: the price, or a quiet "price?" that asks for one.
QVariant priceCell(const QString& item, const Prices& prices, int role);

/// What was typed into such a cell as a price per kilogram; nothing inside when it was emptied.
Result<std::optional<double>> readPriceCell(const QString& text, const Prices& prices);

/// Tells through the model what was typed into its cell: priced() or refused(). True when the price
/// differs from the one that stands there.
template <class Model>
bool setPriceCell(Model& model, const QString& item, const QString& text, const Prices& prices) {
    if (text == priceCell(item, prices, Qt::EditRole).toString())
        return false; // only walked through
    const Result<std::optional<double>> price = readPriceCell(text, prices);
    if (!price) {
        Q_EMIT model.refused(price.error().sentence);
        return false;
    }
    Q_EMIT model.priced(item, *price);
    return true;
}

} // namespace ladlework::ui
