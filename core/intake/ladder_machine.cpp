#include "intake/ladder_machine.h"

#include <QMap>
#include <algorithm>
#include <compare>
#include <stdexcept>

namespace ladlework::intake {

namespace {
using quantity::Volume;

/// An amount that is the asked share to within rounding is the asked share: 0.9 times a cup has no
/// exact binary form, and a family that drank it had a good day.
constexpr double rounding = 1e-9;

enum class Rule {
    Stopped = 1,
    RedFlag = 2,
    Strong = 3,
    Moderate = 4,
    Gap = 5,
    TooLittle = 6,
    InsideHold = 7,
    GoodDay = 8,
};

/// What the machine carries from one day to the next.
class Climb {
public:
    Climb(const Ladder& ladder, ReplayStart start)
        : m_ladder(ladder), m_rules(ladder.rules),
          m_lastRung(static_cast<int>(ladder.rungs.size()) - 1), m_stopped(start.stopped) {}

    LadderDay live(QDate day, const LogDay* entry, const Decision* decision) {
        if (m_stopped && decision != nullptr)
            resume(*decision);
        LadderDay lived;
        lived.day = day;
        lived.rung = m_rung;
        lived.asked = m_ladder.rungs[m_rung];
        const auto [what, rule] = decide(day, entry, lived.asked);
        lived.decision = what;
        lived.rule = static_cast<int>(rule);
        lived.goodDays = m_goodDays;
        return lived;
    }

    void finish(LadderReplay& replay, QDate lastDay) const {
        replay.rung = m_rung;
        replay.goodDays = m_goodDays;
        replay.daysAtTarget = m_daysAtTarget;
        const bool held = m_holdUntil.isValid() && lastDay.isValid() && m_holdUntil > lastDay;
        if (held)
            replay.holdUntil = m_holdUntil;
        if (m_stopped)
            replay.state = LadderState::Stopped;
        else if (m_daysAtTarget >= m_rules.holdTargetDays)
            replay.state = LadderState::EasingOff;
        else if (isLastRung())
            replay.state = LadderState::AtTarget;
        else
            replay.state = held ? LadderState::Holding : LadderState::Climbing;
    }

private:
    using Verdict = std::pair<LadderDecision, Rule>;

    Verdict decide(QDate day, const LogDay* entry, Volume asked) {
        if (m_stopped)
            return {LadderDecision::Stop, Rule::Stopped};
        const int worst = entry != nullptr ? entry->worstReaction.value_or(0) : 0;
        m_gapRun = entry != nullptr ? 0 : m_gapRun + 1;
        if (entry != nullptr && (entry->redFlag || worst > m_rules.strongTo)) {
            m_stopped = true;
            return {LadderDecision::Stop, Rule::RedFlag};
        }
        if (worst > m_rules.moderateTo) {
            stepBack(day);
            return {LadderDecision::Back, Rule::Strong};
        }
        if (worst > m_rules.mildTo)
            return {moderateDay(day), Rule::Moderate};
        if (entry == nullptr)
            return {gapDay(), Rule::Gap};
        // Negated, so that a not-a-number is no good day.
        if (!(entry->drunk >= asked * (m_rules.goodShare * (1 - rounding))))
            return {LadderDecision::Stay, Rule::TooLittle};
        if (m_holdUntil.isValid() && day <= m_holdUntil)
            return {LadderDecision::Hold, Rule::InsideHold};
        return {goodDay(), Rule::GoodDay};
    }

    void resume(const Decision& decision) {
        m_stopped = false;
        m_rung = std::clamp(decision.resumeAtRung, 0, m_lastRung);
        m_goodDays = 0;
        m_holdUntil = QDate();
        m_moderateDays.clear();
        m_gapRun = 0;
    }

    void stepBack(QDate day) {
        m_rung = std::max(0, m_rung - m_rules.rungsBack);
        m_goodDays = 0;
        m_moderateDays.clear();
        m_holdUntil = day.addDays(m_rules.holdDays);
    }

    LadderDecision moderateDay(QDate day) {
        const QDate windowStart = day.addDays(1 - m_rules.moderateWindowDays);
        const bool again = std::ranges::any_of(
            m_moderateDays, [windowStart](QDate earlier) { return earlier >= windowStart; });
        if (again) {
            stepBack(day);
            return LadderDecision::Back;
        }
        m_moderateDays.append(day);
        m_goodDays = 0;
        return LadderDecision::Hold;
    }

    LadderDecision gapDay() {
        if (m_gapRun % m_rules.staleDays != 0)
            return LadderDecision::Gap;
        m_rung = std::max(0, m_rung - 1);
        m_goodDays = 0;
        return LadderDecision::Stale;
    }

    LadderDecision goodDay() {
        ++m_goodDays;
        if (isLastRung()) {
            ++m_daysAtTarget;
            return LadderDecision::Stay;
        }
        if (m_goodDays < m_rules.daysToAdvance)
            return LadderDecision::Stay;
        ++m_rung;
        m_goodDays = 0;
        return LadderDecision::Advance;
    }

    [[nodiscard]] bool isLastRung() const { return m_rung == m_lastRung; }

    const Ladder& m_ladder;
    const LadderRules& m_rules;
    int m_lastRung = 0;
    int m_rung = 0;
    int m_goodDays = 0;
    QDate m_holdUntil;
    QList<QDate> m_moderateDays;
    int m_gapRun = 0;
    bool m_stopped = false;
    int m_daysAtTarget = 0;
};

/// One LogDay for each day, whatever the order of the list.
QMap<QDate, LogDay> merged(QList<LogDay> log, QDate from, QDate today) {
    // Volumes are added in order of size, so that the order of the list cannot change the last
    // digit.
    std::ranges::sort(log, [](const LogDay& a, const LogDay& b) {
        return std::is_lt(std::strong_order(a.drunk.toMillilitres(), b.drunk.toMillilitres()));
    });
    QMap<QDate, LogDay> days;
    for (const LogDay& item : std::as_const(log)) {
        if (!item.day.isValid() || item.day > today || (from.isValid() && item.day < from))
            continue;
        LogDay& day = days[item.day];
        day.day = item.day;
        day.drunk += item.drunk;
        day.redFlag = day.redFlag || item.redFlag;
        if (item.worstReaction)
            day.worstReaction = std::max(day.worstReaction.value_or(0), *item.worstReaction);
    }
    return days;
}

/// One decision for each day: of several the one that resumes lowest.
QMap<QDate, Decision> lowestOfEachDay(const QList<Decision>& decisions) {
    QMap<QDate, Decision> lowest;
    for (const Decision& decision : decisions) {
        const auto found = lowest.constFind(decision.day);
        if (found == lowest.cend() || decision.resumeAtRung < found->resumeAtRung)
            lowest.insert(decision.day, decision);
    }
    return lowest;
}
} // namespace

LadderReplay replay(const Ladder& ladder, const QList<LogDay>& log,
                    const QList<Decision>& decisions, QDate today, ReplayStart start) {
    if (const Outcome fit = check(ladder); !fit)
        throw std::invalid_argument("replay of a ladder that does not pass check(): " +
                                    toLine(fit.error()).toStdString());
    const QMap<QDate, LogDay> entries = merged(log, ladder.from, today);
    const QMap<QDate, Decision> decided = lowestOfEachDay(decisions);

    LadderReplay replayed;
    Climb climb(ladder, start);
    QDate first = entries.isEmpty() ? QDate() : entries.firstKey();
    if (start.stopped && ladder.from.isValid())
        first = ladder.from;
    QDate last;
    for (QDate day = first; day.isValid() && day <= today; day = day.addDays(1)) {
        const auto entry = entries.constFind(day);
        const auto decision = decided.constFind(day);
        replayed.days.append(climb.live(day, entry == entries.cend() ? nullptr : &*entry,
                                        decision == decided.cend() ? nullptr : &*decision));
        last = day;
    }
    climb.finish(replayed, last);
    return replayed;
}

} // namespace ladlework::intake
