#pragma once

#include "foundation/result.h"

#include <QString>
#include <vector>

namespace ladlework::kitchen {

/// What a phase asks of a pot. The practice edits these; the shipped values are common practice.
struct PhaseRules {
    bool strainHerbs = true;       ///< herbs are strained out (else left in)
    bool strainVegetables = true;  ///< vegetables are strained out (else left in)
    bool strainPeppercorns = true; ///< whole peppercorns are strained out
    bool groundPepper = false;     ///< ground pepper may be used
    bool boneBroth = false;        ///< long-simmered bare bones may be drunk
    friend bool operator==(const PhaseRules&, const PhaseRules&) = default;
};

/// A phase as the program ships it: a row of resources/reference/phases.csv.
struct ShippedPhase {
    QString id;       ///< "opening", "widening", "settled"
    QString name;     ///< for people, translated
    int position = 0; ///< 0 is the first phase
    PhaseRules rules;
};

/// The shipped phases in order; a Damaged problem names file, line and column at fault.
Result<std::vector<ShippedPhase>> shippedPhases();

} // namespace ladlework::kitchen
