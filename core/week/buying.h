#pragma once

#include "quantity/mass.h"
#include "quantity/measure.h"

#include <QString>

namespace ladlework::week {

/// How something is sold: a row of resources/reference/buying.csv.
struct Buying {
    enum class Sold {
        ByWeight, ///< in steps: quarter pounds, or 100 g
        Pieces,   ///< whole pieces: the catalogue's
        Packs     ///< whole bunches, heads, jars, packets, bottles
    };
    Sold sold = Sold::ByWeight;
    double waste = 0;    ///< share of the mass bought that is thrown away in preparing it, 0 to 1
    quantity::Mass pack; ///< of packs: as it is bought
    QString packName;    ///< "bunch", "jar": English, read once; translated where it is said
};

/// How a cut or an ingredient of the catalogue, or "salt", is sold; what the table does not know
/// is taken for a cut: by weight and without waste.
const Buying& buyingOf(const QString& item);

/// The step in which things are sold by weight.
quantity::Mass weightStep(quantity::MeasureSystem measures);

/// How many whole units of a mass hold what is needed: the least number that is not below it, save
/// for a millionth of a unit, which is the rounding of a computer. 0 for nothing or less than that.
double wholeUnits(quantity::Mass needed, quantity::Mass unit);

} // namespace ladlework::week
