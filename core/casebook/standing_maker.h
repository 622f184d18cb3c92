#pragma once

#include "casebook/casebook.h"

#include <optional>

namespace ladlework::casebook {

/// The records of one member, picked out of the family's once.
struct MemberLog {
    QList<intake::IntakeEntry> entries;
    QList<intake::Reaction> reactions;
    QList<intake::Decision> decisions;
    QList<intake::Ladder> ladders; ///< oldest first; none for a member under 6 months

    /// The ladder in force on a day; nullptr when none is.
    [[nodiscard]] const intake::Ladder* ladderOn(QDate day) const;
    /// True when something was entered, felt or decided on that day.
    [[nodiscard]] bool touches(QDate day) const;
};

/// The stop with which an earlier ladder ended.
struct Stop {
    intake::LadderDay day;
    intake::LadderRules rules; ///< of the ladder that it stopped
};

MemberLog memberLog(const FamilyRecords& records, const people::Member& member, QDate today);

/// The decisions that move a ladder: those from its first day on.
QList<intake::Decision> decisionsFor(const intake::Ladder& ladder, const MemberLog& log);

/// The stop under which `log.ladders[index]` begins: one that an earlier ladder had and that no
/// decision up to the first day of this one answers.
std::optional<Stop> stopBefore(const MemberLog& log, qsizetype index);

/// How a replay stopped last; null when it is not stopped, or began so.
std::optional<Stop> newStop(const intake::LadderReplay& replay, const intake::Ladder& ladder);

/// Where a member stands on a day.
Standing makeStanding(const FamilyRecords& records, const people::Member& member, QDate today);

} // namespace ladlework::casebook
