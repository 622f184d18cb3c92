#include "quantity/measure.h"
#include "week/in_the_way.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WayOut)
};

QString listed(QStringList names) {
    if (names.size() < 2)
        return names.join(QString());
    const QString last = names.takeLast();
    return Words::tr("%1 and %2").arg(names.join(QStringLiteral(", ")), last);
}

QString daysInWords(const std::vector<int>& days, const std::function<QString(int)>& dayName) {
    QStringList names;
    for (const int day : days) {
        const QString name = dayName(day);
        if (names.isEmpty() || names.last() != name)
            names.append(name);
    }
    return listed(names);
}

/// One change, as it stands in a list of changes.
QString changeInWords(const WeekProblem& problem, const WayOut& way,
                      quantity::MeasureSystem measures,
                      const std::function<QString(int)>& dayName) {
    switch (way.kind) {
    case WayOut::Kind::MoreSlots:
        return way.days.size() == 1
                   ? Words::tr("one more cooking on %1").arg(daysInWords(way.days, dayName))
                   : Words::tr("%1 more cookings, on %2")
                         .arg(way.days.size())
                         .arg(daysInWords(way.days, dayName));
    case WayOut::Kind::LongerSlots:
        return Words::tr("more free time on %1, as long as the longest pot needs")
            .arg(daysInWords(way.days, dayName));
    case WayOut::Kind::BiggerPots: {
        constexpr double percent = 100;
        return Words::tr("pots that make %1 % more stock").arg(qRound((way.factor - 1) * percent));
    }
    case WayOut::Kind::FridgeRoom:
        return Words::tr("room for %1 more in the refrigerator")
            .arg(quantity::printVolume(way.room, measures));
    case WayOut::Kind::FreezerRoom:
        return Words::tr("room for %1 more in the freezer")
            .arg(quantity::printVolume(way.room, measures));
    case WayOut::Kind::AnotherAnimal:
        return Words::tr("%1 having %2 too, as a planned retry and only if you judge it right")
            .arg(problem.drinkers[way.drinker].name, problem.pots[way.pot].animal);
    case WayOut::Kind::MoreOfAnAnimal:
        return qRound(way.factor) == 1
                   ? Words::tr("one more cooking of the same animal")
                   : Words::tr("%1 more cookings of the same animal").arg(qRound(way.factor));
    case WayOut::Kind::NewPot:
        return Words::tr("a pot that %1 may have").arg(problem.drinkers[way.drinker].name);
    case WayOut::Kind::Several: {
        QStringList parts;
        for (const WayOut& part : way.parts)
            parts.append(changeInWords(problem, part, measures, dayName));
        return listed(parts);
    }
    }
    return {};
}

QString whatIsInTheWay(const WeekProblem& problem, const WayOut& way) {
    switch (way.kind) {
    case WayOut::Kind::MoreSlots:
        return problem.freeTimes.empty() ? Words::tr("There is no free time for cooking.")
                                         : Words::tr("There is too little free time for cooking.");
    case WayOut::Kind::LongerSlots:
        return Words::tr("The free time is too short for some pots.");
    case WayOut::Kind::BiggerPots:
        return Words::tr("The pots are too small.");
    case WayOut::Kind::FridgeRoom:
        return Words::tr("The refrigerator is too full.");
    case WayOut::Kind::FreezerRoom:
        return Words::tr("The freezer is too full, or there is none.");
    case WayOut::Kind::AnotherAnimal:
        return Words::tr("%1 may have few of the pots.").arg(problem.drinkers[way.drinker].name);
    case WayOut::Kind::MoreOfAnAnimal:
        return Words::tr("One animal may be cooked at most %1 times.")
            .arg(problem.mostCookingsPerAnimal);
    case WayOut::Kind::NewPot:
        return Words::tr("%1 may have none of the pots.").arg(problem.drinkers[way.drinker].name);
    case WayOut::Kind::Several:
        return Words::tr("No single change is enough.");
    }
    return {};
}

QString capitalised(QString text) {
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}
} // namespace

InTheWay inWords(const WeekProblem& problem, const WayOut& way, quantity::MeasureSystem measures,
                 const std::function<QString(int)>& dayName) {
    InTheWay words;
    words.what = whatIsInTheWay(problem, way);
    const QString change = changeInWords(problem, way, measures, dayName);
    if (way.kind == WayOut::Kind::NewPot)
        words.wouldHelp = Words::tr("Make %1.").arg(change);
    else if (way.leavesShort > quantity::Volume())
        words.wouldHelp =
            Words::tr("%1 would leave %2 short.")
                .arg(capitalised(change), quantity::printVolume(way.leavesShort, measures));
    else
        words.wouldHelp = Words::tr("%1 would be enough.").arg(capitalised(change));
    return words;
}

} // namespace ladlework::week
