#pragma once

#include <QList>
#include <QString>
#include <tl/expected.hpp>

/// Takes apart what people type for an amount, before anything is known of units.
namespace ladlework::quantity {

/// A number and the text of the unit behind it; the unit is empty for a bare number.
struct AmountPart {
    double number = 0.0;
    QString unit;
};

/// Why a text is no list of amounts.
enum class AmountFault {
    Blank,       ///< nothing but spaces
    Negative,    ///< starts with a minus sign
    NotANumber,  ///< a number is missing, or two stand side by side
    EitherComma, ///< "1,500": one and a half, or fifteen hundred
};

/// What "1,500" means: a height has thousands; for the rest a factor of a thousand must not be
/// guessed, and the text is refused. ("0,250" and "1,5" are decimals everywhere.)
enum class CommaBeforeThree { Thousands, Refused };

/// The parts of "3 lb 2 oz", "1½ cups", "1-1/2", "2 h 30". Decimals with "." or ","; vulgar
/// fractions as characters or with a slash, alone or after a whole number; parts may be joined by
/// a space, ",", "+", "&", "and" or "plus". Only the last part may have an empty unit.
tl::expected<QList<AmountPart>, AmountFault> scanAmount(const QString& text,
                                                        CommaBeforeThree comma);

} // namespace ladlework::quantity
