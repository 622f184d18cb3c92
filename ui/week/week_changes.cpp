#include "ui/week/week_changes.h"

#include "ui/shared/start_time.h"
#include "ui/week/plan_edits.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <tuple>
#include <utility>

namespace ladlework::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekChanges)
};

QString weekdayInWords(QDate day) {
    return QLocale().toString(day, QStringLiteral("dddd d MMMM"));
}

/// As they follow one another, whatever order they were put down in.
QList<week::Placement> inOrder(QList<week::Placement> placements) {
    std::ranges::sort(placements, {}, [](const week::Placement& placement) {
        return std::tuple(placement.day, placement.start, placement.pot.value);
    });
    return placements;
}

} // namespace

void WeekChanges::setWeek(std::shared_ptr<const casebook::Casebook> casebook, QDate monday) {
    m_casebook = std::move(casebook);
    m_monday = monday;
}

week::WeekPlan WeekChanges::plan() const {
    week::WeekPlan shown = m_casebook->plan(m_monday);
    shown.family = m_casebook->records().family.id;
    shown.start = m_monday;
    return shown;
}

bool WeekChanges::has(qsizetype placement) const {
    return placement >= 0 && placement < plan().placements.size();
}

QString WeekChanges::potName(PotId pot) const {
    const kitchen::Pot* found = m_casebook->pot(pot);
    return found != nullptr ? found->name : Words::tr("a pot");
}

QString WeekChanges::monday() const {
    return QLocale().toString(m_monday, QStringLiteral("d MMMM"));
}

bool WeekChanges::save(const week::WeekPlan& changed, const QString& sentence) {
    return m_context.act(m_screen, sentence, [&](store::Action& action) -> Outcome {
        const Result<WeekPlanId> stored = m_context.workbook.weeks().setPlan(action, changed);
        if (!stored)
            return passOn(stored);
        return {};
    });
}

std::optional<week::Placement> WeekChanges::put(PotId pot, QDate day) {
    const week::WeekPlan changed = withPot(plan(), pot, day);
    if (!save(changed, Words::tr("Put %1 on %2").arg(potName(pot), weekdayInWords(day))))
        return std::nullopt;
    return changed.placements.last();
}

bool WeekChanges::takeOff(qsizetype placement) {
    if (!has(placement))
        return false;
    const week::WeekPlan before = plan();
    const week::Placement& off = before.placements.at(placement);
    return save(withoutPlacement(before, placement),
                Words::tr("Took %1 off %2").arg(potName(off.pot), weekdayInWords(off.day)));
}

std::optional<week::Placement> WeekChanges::move(qsizetype placement, QDate day) {
    if (!has(placement) || plan().placements.at(placement).day == day)
        return std::nullopt;
    const week::WeekPlan before = plan();
    const week::Placement& moved = before.placements.at(placement);
    const week::WeekPlan changed = withMove(before, placement, day);
    const QString sentence =
        Words::tr("Moved %1 from %2 to %3")
            .arg(potName(moved.pot), weekdayInWords(moved.day), weekdayInWords(day));
    if (!save(changed, sentence))
        return std::nullopt;
    return changed.placements.at(placement);
}

std::optional<week::Placement> WeekChanges::setStart(qsizetype placement, QTime start) {
    if (!has(placement))
        return std::nullopt;
    const week::WeekPlan changed = withStart(plan(), placement, start);
    const week::Placement& set = changed.placements.at(placement);
    const QString pot = potName(set.pot);
    const QString day = weekdayInWords(set.day);
    const QString sentence =
        start.isValid()
            ? Words::tr("Set the start of %1 on %2 to %3").arg(pot, day, printStartTime(start))
            : Words::tr("Cleared the start of %1 on %2").arg(pot, day);
    if (!save(changed, sentence))
        return std::nullopt;
    return set;
}

void WeekChanges::copyLast() {
    const week::WeekPlan last = m_casebook->plan(m_monday.addDays(-week::daysAWeek));
    if (!last.placements.isEmpty())
        save(withCopyOf(plan(), last),
             Words::tr("Copied the pots of the week before to the week of %1").arg(monday()));
}

void WeekChanges::use(const week::WeekTemplate& kept) {
    save(withKept(plan(), kept),
         Words::tr("Used the kept week %1 for the week of %2").arg(kept.name, monday()));
}

void WeekChanges::lock(QDate day, bool locked) {
    save(withLock(plan(), day, locked), locked ? Words::tr("Locked %1").arg(weekdayInWords(day))
                                               : Words::tr("Unlocked %1").arg(weekdayInWords(day)));
}

void WeekChanges::setHours(QDate day, const QList<week::FreeHours>& hours) {
    save(withHours(plan(), day, hours),
         hours.isEmpty() ? Words::tr("No cooking on %1").arg(weekdayInWords(day))
                         : Words::tr("Set the free hours of %1").arg(weekdayInWords(day)));
}

void WeekChanges::setUsualHours(QDate day) {
    save(withUsualHours(plan(), day),
         Words::tr("Took back the free hours of %1 to the usual ones").arg(weekdayInWords(day)));
}

void WeekChanges::takePlanned(const week::WeekPlan& planned) {
    if (inOrder(planned.placements) != inOrder(plan().placements))
        save(planned, Words::tr("Planned the week of %1").arg(monday()));
}

} // namespace ladlework::ui
