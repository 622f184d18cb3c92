#include "casebook/cooking_steps.h"

#include "foundation/local_moment.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};
using kitchen::Addition;

QString listed(const QStringList& names) {
    if (names.size() < 2)
        return names.join(QString());
    return Words::tr("%1 and %2")
        .arg(names.first(names.size() - 1).join(QStringLiteral(", ")), names.last());
}

QStringList namesAt(const kitchen::Brewed& brewed, quantity::Duration at, bool heatOff) {
    QStringList names;
    for (const Addition& addition : brewed.additions) {
        if (addition.at == at && addition.heatOff == heatOff &&
            addition.what != Addition::What::Water && !names.contains(addition.name))
            names.append(addition.name);
    }
    return names;
}

QList<quantity::Duration> timesOf(const kitchen::Brewed& brewed) {
    QList<quantity::Duration> times;
    for (const Addition& addition : brewed.additions) {
        if (!addition.heatOff && !times.contains(addition.at))
            times.append(addition.at);
    }
    return times;
}
} // namespace

QList<CookingStep> cookingSteps(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
                                quantity::MeasureSystem measures) {
    QList<CookingStep> steps;
    for (const quantity::Duration at : timesOf(brewed)) {
        const QString what = listed(namesAt(brewed, at, false));
        if (at == quantity::Duration())
            steps.append({CookingStep::Kind::PutIn, at, what,
                          Words::tr("Put in %1. Pour in %2 of water. Bring it to a gentle "
                                    "simmer and skim off the foam.")
                              .arg(what, quantity::printVolume(pot.water, measures))});
        else
            steps.append({CookingStep::Kind::Add, at, what, Words::tr("Add %1.").arg(what)});
    }
    const QString last = listed(namesAt(brewed, pot.simmer, true));
    steps.append({CookingStep::Kind::HeatOff, pot.simmer, last,
                  last.isEmpty()
                      ? Words::tr("Turn off the heat. Strain the stock and cool it fast.")
                      : Words::tr("Turn off the heat. Stir in %1. Strain the stock and "
                                  "cool it fast.")
                            .arg(last)});
    return steps;
}

QDateTime momentOfStep(const week::Placement& cooking, quantity::Duration at,
                       const QTimeZone& zone) {
    constexpr qint64 secondsAMinute = 60;
    const QDateTime start = momentOf(cooking.day, cooking.start, zone);
    return start.isValid() ? start.addSecs(std::llround(at.toMinutes()) * secondsAMinute)
                           : QDateTime();
}

QStringList strainedNames(const kitchen::Brewed& brewed, bool strained) {
    QStringList names;
    if (strained)
        names.append(Words::tr("meat and bones"));
    for (const Addition& addition : brewed.additions) {
        if (addition.what == Addition::What::Extra && addition.strained == strained &&
            !names.contains(addition.name))
            names.append(addition.name);
    }
    return names;
}

} // namespace ladlework::casebook
