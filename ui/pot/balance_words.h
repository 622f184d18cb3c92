#pragma once

#include "kitchen/brew.h"
#include "ui/pot/price_text.h"

#include <QStringList>
#include <optional>

namespace ladlework::ui {

/// "soft set"; of a pot that boils dry "none".
QString setWords(const kitchen::Brewed& brewed);
/// What a cup of the stock that is expected costs; nothing where there is no price or no stock.
std::optional<double> costACup(const kitchen::Brewed& brewed);
/// The names of what in the pot has no price.
QStringList withoutPrice(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue,
                         const Prices& prices);

} // namespace ladlework::ui
