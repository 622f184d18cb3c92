#include "ui/week/plan_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

namespace ladlework::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)
};

using quantity::Mass;
using quantity::Volume;

/// A drop: less than this is rounding.
const Volume noticeable = Volume::fromDrops(1);
const Mass noticeableMeat = Mass::fromGrams(1);
constexpr double percent = 100;
/// Beyond this a bound says nothing.
constexpr double unbounded = 1e12;

enum class Level { Room, Short, Spoilt, SpoiltMeat, Cookings, Work, Cost, Variety };

/// The levels are told by number; the first of them is there only when the rooms could be too
/// small.
Level levelOf(const week::SolveProgress& progress) {
    constexpr int all = 8;
    return static_cast<Level>(std::clamp(progress.level + all - progress.levels, 0, all - 1));
}

QString money(const casebook::Casebook& casebook, double amount) {
    return casebook.records().practice.currency + QLocale().toString(amount, 'f', 2);
}

QString cookings(int count) {
    return count == 1 ? Words::tr("1 cooking") : Words::tr("%1 cookings").arg(count);
}

QString valueWords(const casebook::Casebook& casebook, Level level, double value) {
    const quantity::MeasureSystem measures = casebook.records().family.measures;
    const double amount = std::max(0.0, value);
    switch (level) {
    case Level::Room:
    case Level::Short:
    case Level::Spoilt:
        return quantity::printVolume(Volume::fromMillilitres(amount), measures);
    case Level::SpoiltMeat:
        return quantity::printMass(Mass::fromGrams(amount), measures);
    case Level::Cookings:
        return cookings(qRound(amount));
    case Level::Work:
        return quantity::printDuration(quantity::Duration::fromMinutes(amount));
    case Level::Cost:
        return money(casebook, amount);
    case Level::Variety:
        return Words::tr("one animal %1 times").arg(qRound(amount));
    }
    return {};
}

QString listed(QStringList parts) {
    if (parts.size() < 2)
        return parts.join(QString());
    const QString last = parts.takeLast();
    return Words::tr("%1 and %2").arg(parts.join(QStringLiteral(", ")), last);
}

/// "nobody is short", or who is and by how much.
QString whoIsShort(const week::WeekProblem& problem, const week::WeekSolution& solution,
                   quantity::MeasureSystem measures) {
    QStringList who;
    for (std::size_t drinker = 0; drinker < problem.drinkers.size(); ++drinker) {
        Volume missing;
        for (const std::vector<Volume>& day : solution.shortBy)
            missing += day[drinker];
        if (missing > noticeable)
            who << Words::tr("%1 by %2")
                       .arg(problem.drinkers[drinker].name,
                            quantity::printVolume(missing, measures));
    }
    return who.isEmpty() ? Words::tr("nobody is short") : Words::tr("short: %1").arg(listed(who));
}

QString whatSpoils(const week::WeekObjective& reached, quantity::MeasureSystem measures) {
    QStringList parts;
    if (reached.spoilt > noticeable)
        parts << Words::tr("%1 of stock").arg(quantity::printVolume(reached.spoilt, measures));
    if (reached.spoiltMeat > noticeableMeat)
        parts << Words::tr("%1 of meat").arg(quantity::printMass(reached.spoiltMeat, measures));
    return parts.isEmpty() ? Words::tr("nothing spoils")
                           : Words::tr("%1 spoils").arg(listed(parts));
}

bool anyoneMayDrink(const week::WeekProblem& problem) {
    return std::ranges::any_of(problem.pots, [&](const week::PotChoice& pot) {
        for (std::size_t drinker = 0; drinker < problem.drinkers.size(); ++drinker)
            if (pot.may[drinker] && std::ranges::any_of(problem.drinkers[drinker].perDay,
                                                        [](Volume v) { return v > Volume(); }))
                return true;
        return false;
    });
}

QString potName(const casebook::Casebook& casebook, PotId id) {
    const kitchen::Pot* pot = casebook.pot(id);
    return pot != nullptr ? pot->name : Words::tr("A pot");
}

/// The pots that cannot be planned, in one line: why, when it is one; else Pots tells of each.
QList<PlanHint> leftOut(const casebook::Casebook& casebook, const casebook::WeekAhead& ahead) {
    const QString pots = QStringLiteral("pots");
    constexpr qsizetype mostNamed = 3;
    const qsizetype count = ahead.unfit.size();
    if (count == 0)
        return {};
    if (count == 1)
        return {{Words::tr("%1 was left out.").arg(potName(casebook, ahead.unfit.first().pot)),
                 ahead.unfit.first().why, pots}};
    QStringList names;
    for (const casebook::UnfitPot& unfit : ahead.unfit.mid(0, mostNamed))
        names << potName(casebook, unfit.pot);
    if (count > mostNamed)
        names << Words::tr("%1 more").arg(count - mostNamed);
    return {{Words::tr("%1 pots were left out: %2.").arg(count).arg(listed(names)),
             Words::tr("Pots says what is wrong with each."), pots}};
}

PlanHint noTime(const casebook::Casebook& casebook, const week::WeekPlan& plan,
                const casebook::WeekAhead& ahead) {
    bool open = false; // a day that is not locked
    for (int day = 0; day < ahead.problem.days; ++day)
        open = open || !plan.lockedDays.contains(ahead.start.addDays(day));
    if (!open)
        return {Words::tr("Every day that is left of this week is locked."),
                Words::tr("Unlock a day to plan it."), QStringLiteral("hours")};
    if (casebook.records().usualHours.isEmpty() && plan.hours.isEmpty())
        return {Words::tr("This family has not told when it is free to cook."),
                Words::tr("Set its usual free hours in Members, or those of single days in the "
                          "line above."),
                QStringLiteral("members")};
    return {Words::tr("There is no free time for cooking on the days that are left of this week."),
            Words::tr("Give a day some free hours in the line above."), QStringLiteral("hours")};
}

QString screenFor(const week::WayOut& way) {
    switch (way.kind) {
    case week::WayOut::Kind::MoreSlots:
    case week::WayOut::Kind::LongerSlots:
    case week::WayOut::Kind::Several:
        return QStringLiteral("hours");
    case week::WayOut::Kind::BiggerPots:
    case week::WayOut::Kind::NewPot:
        return QStringLiteral("pots");
    case week::WayOut::Kind::FridgeRoom:
    case week::WayOut::Kind::FreezerRoom:
    case week::WayOut::Kind::AnotherAnimal:
    case week::WayOut::Kind::MoreOfAnAnimal:
        return QStringLiteral("members");
    }
    return {};
}

} // namespace

QString levelWords(const week::SolveProgress& progress) {
    switch (levelOf(progress)) {
    case Level::Room:
        return Words::tr("room for everything");
    case Level::Short:
        return Words::tr("nobody short");
    case Level::Spoilt:
        return Words::tr("nothing spoilt");
    case Level::SpoiltMeat:
        return Words::tr("no meat spoilt");
    case Level::Cookings:
        return Words::tr("fewest cookings");
    case Level::Work:
        return Words::tr("least work");
    case Level::Cost:
        return Words::tr("least cost");
    case Level::Variety:
        return Words::tr("most variety");
    }
    return {};
}

QString progressWords(const casebook::Casebook& casebook, const week::SolveProgress& progress) {
    const QString where = Words::tr("A first plan \u2013 looking for the best: %1 (%2 of %3)")
                              .arg(levelWords(progress))
                              .arg(progress.level + 1)
                              .arg(progress.levels);
    if (!(std::abs(progress.best) < unbounded) || !(std::abs(progress.bound) < unbounded))
        return where;
    const Level level = levelOf(progress);
    return Words::tr("%1. Best so far %2, no plan is below %3.")
        .arg(where, valueWords(casebook, level, progress.best),
             valueWords(casebook, level, progress.bound));
}

QString resultWords(const casebook::Casebook& casebook, const week::WeekProblem& problem,
                    const week::WeekSolution& solution) {
    const quantity::MeasureSystem measures = casebook.records().family.measures;
    const week::WeekObjective& reached = solution.objective;
    QStringList parts{whoIsShort(problem, solution, measures), whatSpoils(reached, measures),
                      cookings(reached.cookings)};
    if (reached.cookings > 0)
        parts << Words::tr("%1 of work").arg(quantity::printDuration(reached.handsOn));
    if (reached.cost > 0)
        parts << money(casebook, reached.cost);
    if (reached.overRoom > noticeable)
        parts.prepend(Words::tr("%1 more than the rooms hold, summed over the days")
                          .arg(quantity::printVolume(reached.overRoom, measures)));
    const QString all = parts.join(QStringLiteral(", "));
    if (solution.gap <= 0)
        return Words::tr("Proven: no week can be better. %1.")
            .arg(all.left(1).toUpper() + all.mid(1));
    return Words::tr("Cut short, so not proven the best (up to %1 % may be left to gain): %2.")
        .arg(std::max(1, qRound(solution.gap * percent)))
        .arg(all);
}

std::optional<PlanHint> obstacle(const casebook::Casebook& casebook, const week::WeekPlan& plan,
                                 const casebook::WeekAhead& ahead) {
    const QString members = QStringLiteral("members");
    const QString pots = QStringLiteral("pots");
    if (ahead.members.empty())
        return PlanHint{Words::tr("This family has no members yet."),
                        Words::tr("Add those who will drink."), members};
    const bool drinks = std::ranges::any_of(ahead.problem.drinkers, [](const auto& drinker) {
        return std::ranges::any_of(drinker.perDay, [](Volume v) { return v > Volume(); });
    });
    if (!drinks)
        return PlanHint{
            Words::tr("Nobody in this family drinks stock in what is left of this week."),
            Words::tr("Give a member a target and a ladder."), members};
    if (casebook.records().pots.isEmpty())
        return PlanHint{Words::tr("This family has no pots yet."),
                        Words::tr("Build one; the week is planned from all of them."), pots};
    if (ahead.problem.pots.empty()) {
        PlanHint why = leftOut(casebook, ahead).value(0);
        why.what = Words::tr("None of the pots can be planned. %1").arg(why.what);
        return why;
    }
    if (!anyoneMayDrink(ahead.problem))
        return PlanHint{Words::tr("Nobody who drinks may have any of the pots."),
                        Words::tr("Build a pot of an animal that they may have."), pots};
    if (ahead.problem.freeTimes.empty())
        return noTime(casebook, plan, ahead);
    return std::nullopt;
}

QList<PlanHint> hints(const casebook::Casebook& casebook, const casebook::WeekAhead& ahead,
                      const std::vector<week::WayOut>& ways) {
    QList<PlanHint> found;
    const auto dayName = [&ahead](int day) {
        return QLocale().dayName(ahead.start.addDays(day).dayOfWeek());
    };
    for (const week::WayOut& way : ways) {
        const week::InTheWay words =
            week::inWords(ahead.problem, way, casebook.records().family.measures, dayName);
        found << PlanHint{words.what, words.wouldHelp, screenFor(way)};
    }
    if (ahead.problem.fridgeRoom <= Volume() && ahead.problem.freezerRoom <= Volume())
        found.prepend(PlanHint{
            Words::tr("There is no room for stock in the refrigerator or the freezer: what is "
                      "cooked must be drunk on the same day."),
            Words::tr("Set how much room there is."), QStringLiteral("members")});
    return found + leftOut(casebook, ahead);
}

} // namespace ladlework::ui
