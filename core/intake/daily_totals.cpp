#include "intake/daily_totals.h"

#include <QCoreApplication>
#include <QLocale>
#include <QSet>

namespace ladlework::intake {

namespace {
using kitchen::Range;
using quantity::Volume;
using What = TotalBesideReference::What;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DailyTotals)
};

constexpr double mlOfFigures = 100;
constexpr double milligramsPerGram = 1000;

void add(Range& total, const Range& per100Ml, Volume drunk) {
    const double portions = drunk.toMillilitres() / mlOfFigures;
    total.low += per100Ml.low * portions;
    total.best += per100Ml.best * portions;
    total.high += per100Ml.high * portions;
}

Range dividedBy(const Range& range, double divisor) {
    return {range.low / divisor, range.best / divisor, range.high / divisor};
}

/// Two figures of an estimate are all that it knows; a published reference is given as it is.
double rounded(double value) {
    if (!(value > 0))
        return 0;
    const double step = std::pow(10.0, std::floor(std::log10(value)) - 1);
    return std::round(value / step) * step;
}

QString estimate(double value) {
    return QLocale().toString(rounded(value), 'f', value < 10 && value > 0 ? 1 : 0);
}

QString estimate(const Range& range, const QString& unit) {
    return Words::tr("about %1 %4 (%2 to %3 %4)")
        .arg(estimate(range.best), estimate(range.low), estimate(range.high), unit);
}

QString published(double value) {
    return QLocale().toString(value, 'g', 6);
}

QString publishedSpan(double low, double high) {
    return low < high ? Words::tr("%1 to %2").arg(published(low), published(high)) : published(low);
}

QString forWomenAndMen(double low, double high) {
    return low < high ? Words::tr(" for women and men") : QString();
}

QString leftOut(const DailyTotals& totals, quantity::MeasureSystem system) {
    if (!(totals.ofUnknownPot > Volume()))
        return {};
    return Words::tr(" %1 of a pot that is not known is left out.")
        .arg(quantity::printVolume(totals.ofUnknownPot, system));
}

TotalBesideReference sodium(const DailyTotals& totals, const people::DietaryReference& reference) {
    TotalBesideReference line;
    line.what = What::Sodium;
    line.amount = totals.sodiumMg;
    line.unit = QStringLiteral("mg");
    line.referenceLow = reference.sodiumAdequate.toGrams() * milligramsPerGram;
    line.referenceHigh = line.referenceLow;
    if (reference.sodiumLimit)
        line.limit = reference.sodiumLimit->toGrams() * milligramsPerGram;
    line.text = Words::tr("Sodium from stock: %1. The adequate intake from all food and drink at "
                          "this life stage (%2) is %3 mg a day.")
                    .arg(estimate(totals.sodiumMg, line.unit), reference.stage,
                         published(line.referenceLow));
    if (line.limit)
        line.text += Words::tr(" Above %1 mg a day less is advised.").arg(published(*line.limit));
    return line;
}

TotalBesideReference protein(const DailyTotals& totals, const people::DietaryReference& reference) {
    TotalBesideReference line;
    line.what = What::Protein;
    line.amount = totals.proteinG;
    line.unit = QStringLiteral("g");
    line.referenceLow = reference.protein.low.toGrams();
    line.referenceHigh = reference.protein.high.toGrams();
    line.text =
        Words::tr("Protein from stock: %1, much of it gelatin, which alone is no complete protein. "
                  "The recommended intake from all food (%2) is %3 g a day%4.")
            .arg(estimate(totals.proteinG, line.unit), reference.stage,
                 publishedSpan(line.referenceLow, line.referenceHigh),
                 forWomenAndMen(line.referenceLow, line.referenceHigh));
    return line;
}

TotalBesideReference fluid(const DailyTotals& totals, const people::DietaryReference& reference,
                           quantity::MeasureSystem system) {
    TotalBesideReference line;
    line.what = What::Fluid;
    const double ml = totals.stock.toMillilitres();
    line.amount = {ml, ml, ml};
    line.unit = QStringLiteral("mL");
    line.referenceLow = reference.totalWater.low.toMillilitres();
    line.referenceHigh = reference.totalWater.high.toMillilitres();
    line.text = Words::tr("Fluid from stock: %1. The adequate intake of water in all drinks and "
                          "foods (%2) is %3 litres a day%4.")
                    .arg(quantity::printVolume(totals.stock, system), reference.stage,
                         publishedSpan(reference.totalWater.low.toLitres(),
                                       reference.totalWater.high.toLitres()),
                         forWomenAndMen(line.referenceLow, line.referenceHigh));
    return line;
}
} // namespace

std::optional<DailyTotals> dailyTotals(const QList<IntakeEntry>& entries,
                                       const QHash<PotId, StockFigures>& figures,
                                       const PotOfLot& potOfLot, QDate from, QDate to) {
    DailyTotals totals;
    QSet<QDate> days;
    for (const IntakeEntry& entry : entries) {
        if (!entry.day.isValid() || entry.day < from || entry.day > to)
            continue;
        days.insert(entry.day);
        totals.stock += entry.drunk;
        const auto known = figures.constFind(potOf(entry, potOfLot));
        if (known == figures.cend()) {
            totals.ofUnknownPot += entry.drunk;
            continue;
        }
        add(totals.sodiumMg, known->sodiumMgPer100Ml, entry.drunk);
        add(totals.proteinG, known->proteinGPer100Ml, entry.drunk);
    }
    if (days.isEmpty())
        return std::nullopt;
    totals.days = static_cast<int>(days.size());
    const double divisor = totals.days;
    totals.stock = totals.stock / divisor;
    totals.ofUnknownPot = totals.ofUnknownPot / divisor;
    totals.sodiumMg = dividedBy(totals.sodiumMg, divisor);
    totals.proteinG = dividedBy(totals.proteinG, divisor);
    return totals;
}

QList<TotalBesideReference> besideReferences(const DailyTotals& totals,
                                             const people::DietaryReference& reference,
                                             quantity::MeasureSystem system) {
    QList<TotalBesideReference> lines{sodium(totals, reference), protein(totals, reference)};
    for (TotalBesideReference& line : lines)
        line.text += leftOut(totals, system);
    lines.append(fluid(totals, reference, system));
    for (TotalBesideReference& line : lines)
        line.source = reference.source;
    return lines;
}

} // namespace ladlework::intake
