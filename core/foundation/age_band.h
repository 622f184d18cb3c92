#pragma once

#include <QDate>
#include <QString>
#include <optional>

namespace ladlework {

/// The four age bands of the programme (common practice; see resources/reference/age-bands.csv).
enum class AgeBand { InfantUnderSixMonths, InfantStartingSolids, Child, Adult };

/// The band of someone born on `birth`, on `day`: under 6 whole months, 6-11 months, 1-12 years,
/// 13 years and up. Birthdays count from the start of the day. A month without the day of birth
/// completes on the first of the next: someone born on 29 February has the birthday on 1 March in
/// a common year. Nothing when a date is invalid or `birth` lies after `day`.
std::optional<AgeBand> ageBandOn(QDate birth, QDate day);

/// "infant-under-6-months", "infant-starting-solids", "child", "adult": for files and JSON.
QString ageBandId(AgeBand band);
/// The inverse of ageBandId; nothing for any other text.
std::optional<AgeBand> ageBandFromId(QStringView id);
/// The words for people: "infant under 6 months", ... Translated.
QString ageBandName(AgeBand band);

/// Whole months completed between two days (0 or more), counted as ageBandOn counts them.
int monthsBetween(QDate birth, QDate day);

} // namespace ladlework
