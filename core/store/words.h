#pragma once

#include "kitchen/pot.h"
#include "people/practice.h"
#include "quantity/measure.h"

#include <QString>
#include <optional>

namespace ladlework::store {

// Words of the file for choices whose headers name none. They are part of the file format.

QString measuresWord(quantity::MeasureSystem measures); ///< "us", "metric"
std::optional<quantity::MeasureSystem> measuresFromWord(QStringView word);
QString paperWord(people::Paper paper); ///< "letter", "a4"
std::optional<people::Paper> paperFromWord(QStringView word);
QString brewWord(kitchen::Pot::Brew brew); ///< "meat-stock", "bone-broth"
std::optional<kitchen::Pot::Brew> brewFromWord(QStringView word);

} // namespace ladlework::store
