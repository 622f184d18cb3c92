#include "ui/week/week_shown.h"

#include "week/week_findings.h"
#include "week/week_plan.h"

#include <QCoreApplication>

namespace ladlework::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekShown)
};
using quantity::Volume;

/// A drop: less than this is rounding.
const Volume noticeable = Volume::fromDrops(1);

ShownDay dayOf(const week::WeekSolution& solution, int index) {
    const week::StoreDay& store = solution.stores[static_cast<std::size_t>(index)];
    ShownDay day;
    day.wanted = store.wanted;
    day.served = store.served;
    day.inFridge = store.fridge;
    day.inFreezer = store.freezer;
    for (const Volume missing : solution.shortBy[static_cast<std::size_t>(index)])
        day.shortBy += missing;
    for (const week::Spoiling& spoiling : solution.spoiling)
        if (spoiling.day == index)
            day.spoilt += spoiling.volume;
    day.inFridge -= day.spoilt;
    for (const week::PlannedMeat& meat : solution.meat)
        if (meat.day == index)
            day.meat += meat.mass;
    return day;
}

/// What of a day goes into the freezer and what comes out of it, each source in one sentence.
void addMoves(ShownDay& day, int index, const casebook::WeekAhead& ahead,
              const week::WeekSolution& solution, quantity::MeasureSystem measures) {
    const auto add = [&](const std::vector<week::StockMove>& moves, const auto& sentence,
                         const auto& inShort) {
        Volume all;
        for (const week::StockMove& move : moves) {
            if (move.day != index || move.volume < noticeable)
                continue;
            all += move.volume;
            day.moves << sentence(
                quantity::printVolume(move.volume, measures),
                week::sourceName(ahead.problem, solution, move.from, ahead.start));
        }
        if (all >= noticeable)
            day.shortMoves << inShort(quantity::printVolume(all, measures));
    };
    add(
        solution.thawing,
        [](const QString& amount, const QString& name) {
            return Words::tr("move %1 of %2 from the freezer to the refrigerator")
                .arg(amount, name);
        },
        [](const QString& amount) { return Words::tr("thaw %1").arg(amount); });
    add(
        solution.freezing,
        [](const QString& amount, const QString& name) {
            return Words::tr("freeze %1 of %2").arg(amount, name);
        },
        [](const QString& amount) { return Words::tr("freeze %1").arg(amount); });
}
} // namespace

WeekShown shownWeek(QDate monday, const casebook::WeekAhead& ahead,
                    const week::WeekSolution& solution, quantity::MeasureSystem measures) {
    const week::WeekProblem& problem = ahead.problem;
    const int over = static_cast<int>(monday.daysTo(ahead.start));
    WeekShown shown;
    shown.spill = problem.spill;
    shown.measures = measures;
    shown.meatPerDay = problem.meatPerDay;
    for (int index = 0; index < week::daysAWeek; ++index) {
        const bool past = index < over || index - over >= problem.days;
        ShownDay day = past ? ShownDay() : dayOf(solution, index - over);
        day.day = monday.addDays(index);
        day.past = past;
        if (!past)
            addMoves(day, index - over, ahead, solution, measures);
        shown.days.append(day);
    }
    for (const week::Drinking& drinker : problem.drinkers) {
        QList<ShownAmounts> row(week::daysAWeek);
        for (int day = 0; day < problem.days; ++day)
            row[over + day].wanted =
                drinker.perDay[static_cast<std::size_t>(day)] * (1.0 + problem.spill);
        shown.names.append(drinker.name);
        shown.members.append(row);
    }
    for (const week::PlannedServing& serving : solution.servings) {
        ShownAmounts& amounts =
            shown.members[static_cast<qsizetype>(serving.drinker)][over + serving.day];
        amounts.served += serving.volume;
        amounts.from.append(
            Words::tr("%1 of %2")
                .arg(quantity::printVolume(serving.volume / (1.0 + problem.spill), measures),
                     week::sourceName(problem, solution, serving.from, ahead.start)));
    }
    return shown;
}

} // namespace ladlework::ui
