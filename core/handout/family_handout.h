#pragma once

#include "casebook/called_name.h"
#include "casebook/casebook.h"
#include "handout/document.h"

#include <QDate>
#include <optional>

namespace ladlework::handout {

using casebook::calledName;
using casebook::Names;

struct HandoutOptions {
    QDate week; ///< its Monday
    Names names = Names::First;
    std::optional<people::Paper> paper; ///< else the family's
    bool largePrint = false;
    QString ownWords; ///< the practitioner's own text for the cover
};

/// The pages for one family and one week: cover, week grid, a card per pot with clock times, a
/// ladder card per member with boxes to tick, shopping list, cooling and keeping, cautions and
/// whom to call. A week without pots still gives amounts, keeping and cautions.
Document familyHandout(const casebook::Casebook& casebook, const HandoutOptions& options);

} // namespace ladlework::handout
