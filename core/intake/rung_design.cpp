#include "foundation/reference_table.h"
#include "intake/ladder.h"
#include "intake/ladder_figures.h"

#include <QCoreApplication>
#include <algorithm>
#include <stdexcept>
#include <vector>

namespace ladlework::intake {

namespace {
using quantity::MeasureSystem;
using quantity::Volume;
namespace units = quantity::units;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Ladder)
};

constexpr double mostRungL = 4;
/// What rounding in the last place may add to a limit that a rung meets exactly.
constexpr double rounding = 1e-9;

struct KitchenScale {
    std::vector<Volume> measures; ///< rising
    Volume addition;              ///< goes on above the last measure
};

struct DesignLimits {
    double factorMost = 0;
    Volume factorFrom;
    Volume additionMost;
    double nearFactor = 0;
};

double millilitresPer(const QString& unit) {
    static const QHash<QString, double> sizes{
        {QStringLiteral("drop"), units::millilitresPerDrop},
        {QStringLiteral("tsp"), units::millilitresPerTeaspoon},
        {QStringLiteral("tbsp"), units::millilitresPerTablespoon},
        {QStringLiteral("cup"), units::millilitresPerCup},
        {QStringLiteral("metric-tsp"), units::millilitresPerMetricTeaspoon},
        {QStringLiteral("metric-tbsp"), units::millilitresPerMetricTablespoon},
        {QStringLiteral("ml"), 1.0},
    };
    const auto found = sizes.constFind(unit);
    if (found == sizes.cend())
        throw std::runtime_error("rung-measures.csv: unknown unit " + unit.toStdString());
    return *found;
}

KitchenScale loadScale(QLatin1String system) {
    const ReferenceTable table =
        valueOrThrow(ReferenceTable::load(QStringLiteral("rung-measures")));
    const QLatin1String more("-more");
    KitchenScale scale;
    for (qsizetype i = 0; i < table.size(); ++i) {
        const ReferenceTable::Row row = table.row(i);
        if (row.text(QStringLiteral("system")) != system)
            continue;
        QString unit = row.text(QStringLiteral("unit"));
        const bool goesOn = unit.endsWith(more);
        if (goesOn)
            unit.chop(more.size());
        const Volume amount =
            Volume::fromMillilitres(row.number(QStringLiteral("amount")) * millilitresPer(unit));
        if (goesOn)
            scale.addition = amount;
        else
            scale.measures.push_back(amount);
    }
    if (scale.measures.empty() || scale.addition <= Volume())
        throw std::runtime_error("rung-measures.csv has no scale for " +
                                 std::string(system.data(), static_cast<size_t>(system.size())));
    return scale;
}

const KitchenScale& scaleOf(MeasureSystem system) {
    static const KitchenScale us = loadScale(QLatin1String("us"));
    static const KitchenScale metric = loadScale(QLatin1String("metric"));
    return system == MeasureSystem::UsCustomary ? us : metric;
}

/// A teaspoon and a cup are the family's own: in metric kitchens 5 mL, and the US cup all the same.
DesignLimits limitsOf(MeasureSystem system) {
    const double teaspoon = system == MeasureSystem::UsCustomary
                                ? units::millilitresPerTeaspoon
                                : units::millilitresPerMetricTeaspoon;
    return {ladderFigure(QStringLiteral("rung-factor-most")),
            Volume::fromMillilitres(ladderFigure(QStringLiteral("rung-factor-from")) * teaspoon),
            Volume::fromCups(ladderFigure(QStringLiteral("rung-addition-most"))),
            ladderFigure(QStringLiteral("rung-near-factor"))};
}

bool mayFollow(Volume before, Volume next, const DesignLimits& limits) {
    if (before < limits.factorFrom * (1 - rounding))
        return true;
    return next <= before * limits.factorMost * (1 + rounding) &&
           next <= (before + limits.additionMost) * (1 + rounding);
}

/// Too little above its neighbour to be worth a rung: less than a quarter more and less than half
/// of the usual addition.
bool isNear(Volume lower, Volume upper, const KitchenScale& scale, const DesignLimits& limits) {
    return upper < lower * limits.nearFactor && upper - lower < scale.addition * 0.5;
}

/// The measures of the kitchen strictly between two amounts.
QList<Volume> measuresBetween(Volume low, Volume high, const KitchenScale& scale) {
    QList<Volume> between;
    const auto keep = [&](Volume measure) {
        if (measure > low * (1 + rounding) && measure < high * (1 - rounding))
            between.append(measure);
    };
    for (Volume measure : scale.measures)
        keep(measure);
    const Volume last = scale.measures.back();
    for (int more = 1; last + scale.addition * more < high; ++more)
        keep(last + scale.addition * more);
    return between;
}

/// Leaves out the measures that crowd the start or the target, as far as the limits allow it.
QList<Volume> spaced(const QList<Volume>& between, Volume start, Volume target,
                     const KitchenScale& scale, const DesignLimits& limits) {
    QList<Volume> kept = between;
    while (!kept.isEmpty()) {
        const Volume next = kept.size() > 1 ? kept[1] : target;
        if (!isNear(start, kept.first(), scale, limits) || !mayFollow(start, next, limits))
            break;
        kept.removeFirst();
    }
    while (!kept.isEmpty()) {
        const Volume before = kept.size() > 1 ? kept[kept.size() - 2] : start;
        if (!isNear(kept.last(), target, scale, limits) || !mayFollow(before, target, limits))
            break;
        kept.removeLast();
    }
    return kept;
}

bool isAmount(Volume volume) {
    return volume.toMillilitres() > 0 && volume.toLitres() <= mostRungL;
}
} // namespace

bool isLeap(Volume before, Volume next, MeasureSystem system) {
    const DesignLimits limits = limitsOf(system);
    return !mayFollow(std::max(before, limits.factorFrom), next, limits);
}

Result<QList<Volume>> designRungs(Volume start, Volume targetLow, MeasureSystem system) {
    if (!isAmount(start))
        return problem(Problem::Kind::BadInput,
                       Words::tr("The first amount must be more than nothing and at most 4 litres "
                                 "(17 cups)."),
                       QStringLiteral("start"));
    if (!isAmount(targetLow))
        return problem(Problem::Kind::BadInput,
                       Words::tr("The target must be more than nothing and at most 4 litres "
                                 "(17 cups)."),
                       QStringLiteral("target"));
    if (start >= targetLow)
        return QList<Volume>{targetLow};
    const KitchenScale& scale = scaleOf(system);
    const DesignLimits limits = limitsOf(system);
    QList<Volume> rungs{start};
    rungs += spaced(measuresBetween(start, targetLow, scale), start, targetLow, scale, limits);
    rungs.append(targetLow);
    return rungs;
}

} // namespace ladlework::intake
