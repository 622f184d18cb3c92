#pragma once

#include "people/observation.h"
#include "quantity/measure.h"

namespace ladlework::ui {

/// "72.4 kg" or "159.6 lb" for a weight, by the family's measures; "37.2 °C" for another series.
QString observationWords(const people::Observation& observation, quantity::MeasureSystem measures);

/// The value as the family reads it, for drawing: pounds of a weight in US measures.
double shownValue(const people::Observation& observation, quantity::MeasureSystem measures);

/// Reads a value of this kind: a weight as "72.4", "72.4 kg" or "159 lb" (a bare number is
/// kilograms or pounds by the measures), else a plain number. Gives the stored value, kilograms
/// for a weight. BadInput with a sentence, place "value".
Result<double> readObservation(const QString& text, const QString& kind,
                               quantity::MeasureSystem measures);

/// "Weight", or the practitioner's own word.
QString kindName(const QString& kind);

} // namespace ladlework::ui
