#include "week/week_plan.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>
#include <QSet>
#include <cmath>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekPlan)
};

constexpr int mostCookingsADay = 6;

auto bad(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::BadInput, sentence, place);
}

bool isInWeek(const WeekPlan& plan, QDate day) {
    if (!day.isValid())
        return false;
    const qint64 offset = plan.start.daysTo(day);
    return offset >= 0 && offset < daysAWeek;
}

QString dayName(QDate day) {
    return QLocale().dayName(day.dayOfWeek());
}

Outcome checkPlacements(const WeekPlan& plan) {
    QHash<QDate, int> cookings;
    for (qsizetype index = 0; index < plan.placements.size(); ++index) {
        const Placement& placement = plan.placements[index];
        const QString place = QStringLiteral("placements[%1].day").arg(index);
        if (!isInWeek(plan, placement.day))
            return bad(Words::tr("A cooking stands outside this week; put it on one of its seven "
                                 "days."),
                       place);
        if (++cookings[placement.day] > mostCookingsADay)
            return bad(Words::tr("%1 has more than %2 cookings; move some to another day.")
                           .arg(dayName(placement.day))
                           .arg(mostCookingsADay),
                       place);
    }
    return {};
}

Outcome checkLockedDays(const WeekPlan& plan) {
    QSet<QDate> seen;
    for (qsizetype index = 0; index < plan.lockedDays.size(); ++index) {
        const QDate day = plan.lockedDays[index];
        const QString place = QStringLiteral("lockedDays[%1]").arg(index);
        if (!isInWeek(plan, day))
            return bad(Words::tr("A locked day stands outside this week; lock one of its seven "
                                 "days."),
                       place);
        if (seen.contains(day))
            return bad(Words::tr("%1 is locked twice; once is enough.").arg(dayName(day)), place);
        seen.insert(day);
    }
    return {};
}

Outcome checkHours(const WeekPlan& plan) {
    QSet<QDate> seen;
    for (qsizetype index = 0; index < plan.hours.size(); ++index) {
        const DayHours& own = plan.hours[index];
        const QString place = QStringLiteral("hours[%1]").arg(index);
        if (!isInWeek(plan, own.day))
            return bad(Words::tr("Free hours stand outside this week; give them one of its seven "
                                 "days."),
                       place + QStringLiteral(".day"));
        if (seen.contains(own.day))
            return bad(Words::tr("%1 has its own free hours twice; put them together.")
                           .arg(dayName(own.day)),
                       place + QStringLiteral(".day"));
        seen.insert(own.day);
        for (qsizetype stretch = 0; stretch < own.hours.size(); ++stretch)
            if (const Outcome checked = check(own.hours[stretch]); !checked)
                return bad(checked.error().sentence,
                           QStringLiteral("%1.hours[%2].%3")
                               .arg(place, QString::number(stretch), checked.error().place));
    }
    return {};
}

Outcome checkShopping(const WeekPlan& plan) {
    for (qsizetype index = 0; index < plan.extras.size(); ++index)
        if (plan.extras[index].text.trimmed().isEmpty())
            return bad(Words::tr("A line of the shopping list says nothing; write what is to be "
                                 "bought, or take the line away."),
                       QStringLiteral("extras[%1].text").arg(index));
    QSet<QString> seen;
    for (qsizetype index = 0; index < plan.atHome.size(); ++index) {
        const AtHome& atHome = plan.atHome[index];
        const QString place = QStringLiteral("atHome[%1]").arg(index);
        if (atHome.item.isEmpty())
            return bad(Words::tr("Choose what is at home already."),
                       place + QStringLiteral(".item"));
        if (seen.contains(atHome.item))
            return bad(Words::tr("What is at home is told twice for the same thing; put the two "
                                 "amounts together."),
                       place + QStringLiteral(".item"));
        seen.insert(atHome.item);
        if (!(atHome.mass >= quantity::Mass()) || !std::isfinite(atHome.mass.toGrams()))
            return bad(Words::tr("What is at home cannot be less than nothing."),
                       place + QStringLiteral(".mass"));
    }
    return {};
}
} // namespace

Outcome check(const WeekPlan& plan) {
    if (!plan.start.isValid())
        return bad(Words::tr("Choose the first day of the week."), QStringLiteral("start"));
    for (const auto checkPart : {checkPlacements, checkLockedDays, checkHours, checkShopping})
        if (const Outcome checked = checkPart(plan); !checked)
            return checked;
    return {};
}

bool isEmpty(const WeekPlan& plan) {
    return plan.placements.isEmpty() && plan.lockedDays.isEmpty() && plan.hours.isEmpty() &&
           plan.extras.isEmpty() && plan.atHome.isEmpty() && plan.note.trimmed().isEmpty();
}

QList<FreeHours> hoursOn(const WeekPlan& plan, const QList<UsualHours>& usual, QDate day) {
    for (const DayHours& own : plan.hours)
        if (own.day == day)
            return own.hours;
    QList<FreeHours> hours;
    for (const UsualHours& each : usual)
        if (each.weekday == day.dayOfWeek())
            hours.append(each.hours);
    return hours;
}

QDate weekStart(QDate day) {
    return day.isValid() ? day.addDays(1 - day.dayOfWeek()) : QDate();
}

} // namespace ladlework::week
