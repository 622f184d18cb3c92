#pragma once

#include "casebook/casebook.h"
#include "handout/document.h"

#include <QDate>
#include <optional>

namespace ladlework::handout {

enum class Names { Full, First, None };

struct HandoutOptions {
    QDate week; ///< its Monday
    Names names = Names::First;
    std::optional<people::Paper> paper; ///< else the family's
    bool largePrint = false;
    QString language; ///< "en", "es"; when empty the family's
    QString ownWords; ///< the practitioner's own text for the cover
};

/// The pages for one family and one week: cover, week grid, a card per pot with clock times, a
/// ladder card per member with boxes to tick, shopping list, cooling and keeping, cautions and
/// whom to call. A week without pots still gives amounts, keeping and cautions. All of it in the
/// language chosen, with its dates and decimals (page_language.h), except what people typed; a
/// language that is not shipped gives English. To be called on the application's thread.
Document familyHandout(const casebook::Casebook& casebook, const HandoutOptions& options);

/// How a member is called on the page: "Ana Lindqvist", "Ana" (with an initial when two share it),
/// or "Member 1".
QString calledName(const casebook::Casebook& casebook, MemberId member, Names names);

} // namespace ladlework::handout
