#pragma once

#include "casebook/casebook.h"
#include "casebook/climb_so_far.h"

#include <optional>

namespace ladlework::casebook {

/// The records of one member, picked out of the family's once.
struct MemberLog {
    QList<intake::IntakeEntry> entries;
    QList<intake::Reaction> reactions;
    QList<intake::Decision> decisions;
    QList<intake::Ladder> ladders; ///< oldest first; none for a member under 6 months
    /// Where the log has led, when entries and reactions are not all of it.
    std::optional<ClimbSoFar> soFar;

    /// The ladder in force on a day; nullptr when none is.
    [[nodiscard]] const intake::Ladder* ladderOn(QDate day) const;
    /// True when something was entered, felt or decided on that day.
    [[nodiscard]] bool touches(QDate day) const;
    /// The last day with an entry or a reaction; nothing when nothing is logged.
    [[nodiscard]] std::optional<QDate> lastLogged() const;
};

/// The stop with which an earlier ladder ended.
struct Stop {
    intake::LadderDay day;
    intake::LadderRules rules; ///< of the ladder that it stopped
    LadderId ladder;
};

MemberLog memberLog(const FamilyRecords& records, const people::Member& member, QDate today);

/// Puts ladders in the order of MemberLog, without those that have no rung.
QList<intake::Ladder> inOrder(QList<intake::Ladder> ladders);

/// The target of a member in force on a day; nullptr when none is.
const intake::Target* targetOn(const FamilyRecords& records, MemberId member, QDate day);

/// What is left of an amount that a ladder asks on a day, while the target in force that day eases
/// off.
quantity::Volume easedOff(quantity::Volume asked, const intake::Target* target,
                          const intake::Ladder& ladder, QDate day);

/// The decisions that move a ladder: those from its first day on.
QList<intake::Decision> decisionsFor(const intake::Ladder& ladder, const MemberLog& log);

/// The stop under which `log.ladders[index]` begins: one that an earlier ladder had and that no
/// decision up to the first day of this one answers.
std::optional<Stop> stopBefore(const MemberLog& log, qsizetype index);

/// The same from `log.soFar`; nothing without one.
std::optional<Stop> earlierStop(const MemberLog& log);

/// How a replay stopped last; null when it is not stopped, or began so.
std::optional<Stop> newStop(const intake::LadderReplay& replay, const intake::Ladder& ladder);

/// Where a member stands on a day. From a log that is not whole (`log.soFar`, for which canGoOn()
/// must hold) the replay has the days after it alone, and what is asked today and when the target
/// may be reached are left open.
Standing makeStanding(const FamilyRecords& records, const people::Member& member,
                      const MemberLog& log, QDate today);

} // namespace ladlework::casebook
