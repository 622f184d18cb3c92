#include "intake/ladder_machine.h"

#include <algorithm>
#include <iterator>
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

/// The machine: lives one day after the other.
class Climb {
public:
    Climb(const Ladder& ladder, const ReplayStart& start)
        : m_ladder(ladder), m_rules(ladder.rules),
          m_lastRung(static_cast<int>(ladder.rungs.size()) - 1),
          m_at(start.after.value_or(ClimbState())) {
        m_at.stopped = start.after ? m_at.stopped : start.stopped;
    }

    LadderDay live(QDate day, const LogDay* entry, const Decision* decision) {
        if (m_at.stopped && decision != nullptr)
            resume(*decision);
        LadderDay lived;
        lived.day = day;
        lived.rung = m_at.rung;
        lived.asked = m_ladder.rungs[m_at.rung];
        const auto [what, rule] = decide(day, entry, lived.asked);
        lived.decision = what;
        lived.rule = static_cast<int>(rule);
        lived.goodDays = m_at.goodDays;
        if (!m_at.firstDay.isValid())
            m_at.firstDay = day;
        else if (lived.rung > m_at.rungOfDay)
            m_at.steppedUp = day;
        m_at.day = day;
        m_at.rungOfDay = lived.rung;
        if (rule == Rule::RedFlag)
            m_at.stop = lived;
        return lived;
    }

    void finish(LadderReplay& replay) const {
        replay.end = m_at;
        replay.rung = m_at.rung;
        replay.goodDays = m_at.goodDays;
        replay.daysAtTarget = m_at.daysAtTarget;
        const bool held =
            m_at.holdUntil.isValid() && m_at.day.isValid() && m_at.holdUntil > m_at.day;
        if (held)
            replay.holdUntil = m_at.holdUntil;
        if (m_at.stopped)
            replay.state = LadderState::Stopped;
        else if (m_at.daysAtTarget >= m_rules.holdTargetDays)
            replay.state = LadderState::EasingOff;
        else if (isLastRung())
            replay.state = LadderState::AtTarget;
        else
            replay.state = held ? LadderState::Holding : LadderState::Climbing;
    }

private:
    using Verdict = std::pair<LadderDecision, Rule>;

    Verdict decide(QDate day, const LogDay* entry, Volume asked) {
        if (m_at.stopped)
            return {LadderDecision::Stop, Rule::Stopped};
        const int worst = entry != nullptr ? entry->worstReaction.value_or(0) : 0;
        m_at.gapRun = entry != nullptr ? 0 : m_at.gapRun + 1;
        if (entry != nullptr && (entry->redFlag || worst > m_rules.strongTo)) {
            m_at.stopped = true;
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
        if (m_at.holdUntil.isValid() && day <= m_at.holdUntil)
            return {LadderDecision::Hold, Rule::InsideHold};
        return {goodDay(), Rule::GoodDay};
    }

    void resume(const Decision& decision) {
        m_at.stopped = false;
        m_at.stop.reset();
        m_at.rung = std::clamp(decision.resumeAtRung, 0, m_lastRung);
        m_at.goodDays = 0;
        m_at.holdUntil = QDate();
        m_at.lastModerate = QDate();
        m_at.gapRun = 0;
    }

    void stepBack(QDate day) {
        m_at.rung = std::max(0, m_at.rung - m_rules.rungsBack);
        m_at.goodDays = 0;
        m_at.lastModerate = QDate();
        m_at.holdUntil = day.addDays(m_rules.holdDays);
    }

    LadderDecision moderateDay(QDate day) {
        const QDate windowStart = day.addDays(1 - m_rules.moderateWindowDays);
        if (m_at.lastModerate.isValid() && m_at.lastModerate >= windowStart) {
            stepBack(day);
            return LadderDecision::Back;
        }
        m_at.lastModerate = day;
        m_at.goodDays = 0;
        return LadderDecision::Hold;
    }

    LadderDecision gapDay() {
        if (m_at.gapRun % m_rules.staleDays != 0)
            return LadderDecision::Gap;
        m_at.rung = std::max(0, m_at.rung - 1);
        m_at.goodDays = 0;
        return LadderDecision::Stale;
    }

    LadderDecision goodDay() {
        ++m_at.goodDays;
        if (isLastRung()) {
            ++m_at.daysAtTarget;
            return LadderDecision::Stay;
        }
        if (m_at.goodDays < m_rules.daysToAdvance)
            return LadderDecision::Stay;
        ++m_at.rung;
        m_at.goodDays = 0;
        return LadderDecision::Advance;
    }

    [[nodiscard]] bool isLastRung() const { return m_at.rung == m_lastRung; }

    const Ladder& m_ladder;
    const LadderRules& m_rules;
    int m_lastRung = 0;
    /// Of the moderate days the latest is enough: the window ends today.
    ClimbState m_at;
};

/// The days that the replay reads, in order.
QList<LogDay> daysWithin(const QList<LogDay>& log, QDate from, QDate today) {
    QList<LogDay> items;
    items.reserve(log.size());
    std::ranges::copy_if(log, std::back_inserter(items), [from, today](const LogDay& item) {
        return item.day.isValid() && item.day <= today && (!from.isValid() || item.day >= from);
    });
    return mergedDays(std::move(items));
}

/// One decision for each day in order of day: of several the one that resumes lowest.
QList<Decision> lowestOfEachDay(QList<Decision> decisions) {
    decisions.removeIf([](const Decision& decision) { return !decision.day.isValid(); });
    std::ranges::sort(decisions, {}, [](const Decision& decision) {
        return std::pair(decision.day, decision.resumeAtRung);
    });
    // Not std::ranges::unique: clang 14, which tidies, cannot read its subrange in this library.
    const auto repeated = std::unique(
        decisions.begin(), decisions.end(),
        [](const Decision& one, const Decision& other) { return one.day == other.day; });
    decisions.erase(repeated, decisions.end());
    return decisions;
}

/// Goes along a list in order of day and hands out what belongs to a day.
template <class Item>
class ByDay {
public:
    explicit ByDay(const QList<Item>& items) : m_next(items.cbegin()), m_end(items.cend()) {}

    /// nullptr when there is nothing for the day; each day is later than the one asked for before.
    const Item* on(QDate day) {
        while (m_next != m_end && m_next->day < day)
            ++m_next;
        return m_next != m_end && m_next->day == day ? &*m_next : nullptr;
    }

private:
    typename QList<Item>::const_iterator m_next;
    typename QList<Item>::const_iterator m_end;
};

QDate firstDay(const Ladder& ladder, const QList<LogDay>& entries, const ReplayStart& start) {
    if (start.after && start.after->day.isValid())
        return start.after->day.addDays(1);
    if ((start.after ? start.after->stopped : start.stopped) && ladder.from.isValid())
        return ladder.from;
    return entries.isEmpty() ? QDate() : entries.first().day;
}
} // namespace

LadderReplay replay(const Ladder& ladder, const QList<LogDay>& log,
                    const QList<Decision>& decisions, QDate today, const ReplayStart& start) {
    if (const Outcome fit = check(ladder); !fit)
        throw std::invalid_argument("replay of a ladder that does not pass check(): " +
                                    toLine(fit.error()).toStdString());
    if (start.after && (start.after->rung < 0 || start.after->rung >= ladder.rungs.size()))
        throw std::invalid_argument("replay from a rung that the ladder does not have");
    const QList<LogDay> entries = daysWithin(log, ladder.from, today);
    const QList<Decision> decided = lowestOfEachDay(decisions);

    LadderReplay replayed;
    Climb climb(ladder, start);
    const QDate first = firstDay(ladder, entries, start);
    if (first.isValid() && first <= today)
        replayed.days.reserve(first.daysTo(today) + 1);
    ByDay entryOf(entries);
    ByDay decisionOf(decided);
    for (QDate day = first; day.isValid() && day <= today; day = day.addDays(1))
        replayed.days.append(climb.live(day, entryOf.on(day), decisionOf.on(day)));
    climb.finish(replayed);
    return replayed;
}

} // namespace ladlework::intake
