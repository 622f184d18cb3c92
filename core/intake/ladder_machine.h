#pragma once

#include "intake/ladder.h"
#include "intake/log.h"

#include <QDate>
#include <QList>
#include <QString>
#include <optional>

namespace ladlework::intake {

enum class LadderDecision { Advance, Stay, Hold, Back, Stop, Gap, Stale };
enum class LadderState { Climbing, Holding, Stopped, AtTarget, EasingOff };

/// What the machine decided on one calendar day.
struct LadderDay {
    QDate day;
    int rung = 0;           ///< in force that day, before the decision; counts from 0
    quantity::Volume asked; ///< the amount of that rung
    LadderDecision decision = LadderDecision::Stay;
    int rule = 0;     ///< 1-8: the rule of the machine that decided
    int goodDays = 0; ///< counted after the decision
    friend bool operator==(const LadderDay&, const LadderDay&) = default;
};

/// All that the machine carries from one day to the next: a replay can go on from it.
struct ClimbState {
    QDate firstDay;    ///< null before the first day
    QDate day;         ///< the last day that was lived; null before the first
    int rungOfDay = 0; ///< in force on that day
    int rung = 0;      ///< in force on the day after it
    /// The first day on the rung of the last step up, by the machine or by a decision; null when
    /// there was none.
    QDate steppedUp;
    int goodDays = 0;
    int daysAtTarget = 0;
    int gapRun = 0;     ///< days without an entry that end with `day`
    QDate holdUntil;    ///< of the latest hold, also when it has passed; null without one
    QDate lastModerate; ///< null when no moderate day counts any more
    bool stopped = false;
    /// The day that stopped the climb, while stopped; nothing when it began stopped.
    std::optional<LadderDay> stop;
    friend bool operator==(const ClimbState&, const ClimbState&) = default;
};

/// The whole climb, recomputed from the log alone.
struct LadderReplay {
    QList<LadderDay> days; ///< every calendar day from the first entry to `today`
    LadderState state = LadderState::Climbing;
    int rung = 0;     ///< in force tomorrow
    int goodDays = 0; ///< towards the next rung
    /// Good days that rule 8 counted while the last rung was in force, over the whole replay: a
    /// step back from the last rung keeps them.
    int daysAtTarget = 0;
    QDate holdUntil; ///< last day of a hold that goes on tomorrow; null otherwise
    ClimbState end;  ///< what a later replay can go on from
};

/// What a replay takes over from the ladder before, or from an earlier replay of the same ladder.
struct ReplayStart {
    bool stopped = false; ///< the member was stopped and no recorded decision has answered it
    /// LadderReplay::end of an earlier replay of the same ladder, log and decisions: then only the
    /// days after it are replayed, and all but `days` is as the replay of the whole gives it.
    std::optional<ClimbState> after = std::nullopt;
};

/// Replays the log by the eight rules of the machine. The first rule that fits decides the day:
///  1. stopped, and no recorded decision for this day: Stop. A decision sets the rung, ends the
///  stop
///     and clears the counts (good days, hold, moderate days, run of gaps), and the day goes on
///     with the rules below. A decision on a day that is not stopped has no effect.
///  2. a red flag, or a reaction above strongTo: Stop (also when nothing was drunk).
///  3. a reaction above moderateTo: Back by rungsBack; good days 0; hold for the next holdDays
///  days.
///  4. a reaction above mildTo: Back as in 3 when another moderate day lies within the
///     moderateWindowDays days ending today; else Hold for this day alone, good days 0. A Back
///     clears the moderate days, today's included; Stale does not.
///  5. no entry: Gap, counts unchanged; Stale (one rung back, good days 0, no hold) each time the
///  run
///     of gaps reaches a multiple of staleDays. Any entry ends the run; a hold passes by calendar.
///  6. drunk below goodShare of what was asked (exactly the share is enough): Stay.
///  7. inside a hold: Hold; the day is not counted.
///  8. a good day, counted: Advance when the count reaches daysToAdvance and a rung is left (from
///  the
///     next day; good days 0), else Stay. On the last rung the count goes on growing.
/// Back and Stale on rung 0 keep rung 0 and are still called so.
/// The state is Stopped; else EasingOff from holdTargetDays days at target on; else AtTarget on the
/// last rung; else Holding when tomorrow lies inside a hold; else Climbing.
/// Pure and total: the order of `log` and `decisions` does not matter, days before `ladder.from`
/// (when it is valid) and after `today` are left out, and several items of one day are merged
/// (volumes added, worst reaction kept). `ladder` must pass check() and have the rung that `start`
/// goes on from (else std::invalid_argument).
/// An empty log gives no days and the first rung. A replay that starts stopped has its days from
/// `ladder.from` on (when it is valid): they fall under rule 1 until a decision.
LadderReplay replay(const Ladder& ladder, const QList<LogDay>& log,
                    const QList<Decision>& decisions, QDate today, const ReplayStart& start = {});

QString decisionId(LadderDecision decision); ///< "advance", "stay", ...
QString stateId(LadderState state);          ///< "climbing", "at-target", ...
QString stateName(LadderState state);        ///< for people, translated
/// One plain sentence that explains the day: what was decided, and because of what. Translated.
QString explain(const LadderDay& day, const LadderRules& rules);
/// "Rule 4 of the ladder", for a tool tip beside the sentence. Translated.
QString ruleName(const LadderDay& day);

} // namespace ladlework::intake
