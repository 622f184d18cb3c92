#include "ui/progress/observation_values.h"

#include <QCoreApplication>
#include <QLocale>

namespace ladlework::ui {

namespace {

using quantity::Mass;
using quantity::MeasureSystem;

struct ObservationWords {
    Q_DECLARE_TR_FUNCTIONS(ObservationValues)
};

bool isWeight(const QString& kind) {
    return kind == people::weightKind();
}

std::optional<double> number(const QString& text) {
    bool ok = false;
    double value = QLocale().toDouble(text, &ok);
    if (!ok)
        value = QLocale::c().toDouble(text, &ok);
    return ok ? std::optional(value) : std::nullopt;
}

} // namespace

double shownValue(const people::Observation& observation, MeasureSystem measures) {
    if (isWeight(observation.kind) && measures == MeasureSystem::UsCustomary)
        return Mass::fromKilograms(observation.value).toPounds();
    return observation.value;
}

QString observationWords(const people::Observation& observation, MeasureSystem measures) {
    const double value = shownValue(observation, measures);
    if (isWeight(observation.kind)) {
        const QString words = QLocale().toString(value, 'f', 1);
        return measures == MeasureSystem::UsCustomary ? ObservationWords::tr("%1 lb").arg(words)
                                                      : ObservationWords::tr("%1 kg").arg(words);
    }
    const QString words = QLocale().toString(value, 'g', 6);
    return observation.unit.isEmpty() ? words
                                      : QStringLiteral("%1 %2").arg(words, observation.unit);
}

Result<double> readObservation(const QString& text, const QString& kind, MeasureSystem measures) {
    const QString typed = text.trimmed();
    const std::optional<double> bare = number(typed);
    const QString place = QStringLiteral("value");
    if (!isWeight(kind)) {
        if (bare)
            return *bare;
        return problem(Problem::Kind::BadInput,
                       typed.isEmpty() ? ObservationWords::tr("Enter the value, a number.")
                                       : ObservationWords::tr("\"%1\" is no number.").arg(typed),
                       place);
    }
    if (typed.isEmpty())
        return problem(Problem::Kind::BadInput, ObservationWords::tr("Enter the weight."), place);
    if (bare && measures == MeasureSystem::Metric)
        return *bare; // grams would be a bare number in the kitchen, not on the scales
    if (bare)
        return Mass::fromPounds(*bare).toKilograms();
    const Result<Mass> mass = quantity::parseMass(typed, measures);
    if (!mass)
        return problem(Problem::Kind::BadInput, mass.error().sentence, place);
    return mass->toKilograms();
}

QString kindName(const QString& kind) {
    return isWeight(kind) ? ObservationWords::tr("Weight") : kind;
}

} // namespace ladlework::ui
