#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "quantity/volume.h"

#include <QDate>
#include <QDateTime>
#include <QList>
#include <QString>
#include <optional>

namespace ladlework::intake {

/// One drink (or "nothing today", with volume 0) of a member.
struct IntakeEntry {
    IntakeId id;
    MemberId member;
    QDate day; ///< the family's local day
    quantity::Volume drunk;
    PotId pot; ///< what it came from, when known
    LotId lot; ///< the stored container, when known
    QString note;
    QDateTime enteredUtc;
};

/// A reaction that a member felt.
struct Reaction {
    ReactionId id;
    MemberId member;
    QDate day;
    QString symptom;  ///< from the practice's list, or free words
    int strength = 0; ///< 0-10
    bool redFlag = false;
    std::optional<int> startMinute; ///< minutes after midnight, when known
    std::optional<int> minutes;     ///< how long it lasted, when known
    QString note;
};

/// Volume 0 to 6 L, day valid and not after `today`. The place of the Problem is the field.
Outcome check(const IntakeEntry& entry, QDate today);
/// Strength 0-10, a symptom, start 0:00 to 23:59 and length 0 to 30 days when known, day valid and
/// not after `today`. The place of the Problem is the field.
Outcome check(const Reaction& reaction, QDate today);

/// What the ladder machine reads of one calendar day.
struct LogDay {
    QDate day;
    quantity::Volume drunk;
    std::optional<int> worstReaction; ///< nothing when no reaction was entered
    bool redFlag = false;
    friend bool operator==(const LogDay&, const LogDay&) = default;
};

/// One LogDay for each day, in order of day: volumes added, the worst reaction and any red flag
/// kept. The order of `items` does not matter.
QList<LogDay> mergedDays(QList<LogDay> items);

/// One LogDay for each day with an entry or a reaction, in order of day, from `from` on. The order
/// of the lists does not matter. A day with a reaction only counts as an entry of 0 drunk. An
/// invalid `from` leaves nothing out. The lists are those of one member.
QList<LogDay> logDays(const QList<IntakeEntry>& entries, const QList<Reaction>& reactions,
                      QDate from);

} // namespace ladlework::intake
