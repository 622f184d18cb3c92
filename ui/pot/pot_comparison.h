#pragma once

#include "kitchen/brew.h"
#include "ui/pot/price_text.h"

#include <QList>
#include <QString>

namespace ladlework::ui {

/// A pot with what comes out of it.
struct BrewedPot {
    kitchen::Pot pot;
    kitchen::Brewed brewed;
};

/// One line of a comparison of two pots.
struct ComparedLine {
    QString what;
    QString first;
    QString second;
    QString difference;   ///< of the second against the first, in words
    bool clearly = false; ///< the two differ by more than both ranges leave open
};

/// Two pots side by side, in kitchen words.
QList<ComparedLine> comparePots(const BrewedPot& first, const BrewedPot& second,
                                const Prices& prices);

} // namespace ladlework::ui
