#pragma once

#include "foundation/result.h"
#include "quantity/duration.h"
#include "quantity/length.h"
#include "quantity/mass.h"
#include "quantity/temperature.h"
#include "quantity/volume.h"

#include <QString>

namespace ladlework::quantity {

/// The measures a family's kitchen has.
enum class MeasureSystem { UsCustomary, Metric };

// Reading what people type. All parsers accept digits with "." or "," as the decimal mark, mixed
// numbers ("1 1/2", "1½", "1-1/2", "3/4"), units in any case, singular or plural, with or
// without a space, and compounds from large to small ("3 lb 2 oz", "1 cup 2 tbsp", "2 h 30 min",
// "2:30"). A bare number takes the system's usual unit: cups or mL; pounds or g; hours; °F or
// °C; inches or cm; where `shown` is given, what stood in the field that is typed over, it takes
// the unit that this begins with: "2" over "3 quarts" is 2 quarts. Zero is accepted. Blank text,
// negative amounts, unknown units, leftovers and amounts that no kitchen holds are BadInput with
// a sentence that quotes the text and says what would be understood. Nothing is lost in double
// precision: an amount printed by the functions below reads back to the same printed text. A
// comma before exactly three digits ("1,500") means thousands in a length and is refused
// elsewhere, because a factor of a thousand must not be guessed; "0,250" is a decimal.

/// Millilitres from "1 1/2 cups", "1½ cups", "350 ml", "1 tbsp", "2 qt", "5 drops". At most 200 L.
/// "T"/"t" alone are tablespoon/teaspoon (the one case-sensitive unit); "oz" means fluid ounces.
/// tsp and tbsp are US measures in UsCustomary, and 5 mL and 15 mL in Metric; a metric "cup" is
/// still the US cup (the only cup the programme uses), said in the guide.
Result<Volume> parseVolume(const QString& text, MeasureSystem system, const QString& shown = {});
/// Grams from "3 lb 2 oz", "1.5 kg", "350 g", "2 lbs". At most 200 kg.
Result<Mass> parseMass(const QString& text, MeasureSystem system, const QString& shown = {});
/// Minutes from "3 h", "2 h 30", "2:30", "90 min", "1½ hours". At most 7 days. Over shown hours a
/// bare number above 24 is refused: nobody can tell whether 90 is minutes.
Result<Duration> parseDuration(const QString& text, const QString& shown = {});
/// °C from "165 F", "74 °C", "-5". Between -60 °C and 300 °C.
Result<Temperature> parseTemperature(const QString& text, MeasureSystem system,
                                     const QString& shown = {});
/// Centimetres from "11 in", "28 cm", "5 ft 2 in", "1600 m", "5,200 ft". At most 10 km.
Result<Length> parseLength(const QString& text, MeasureSystem system, const QString& shown = {});
/// As parseLength, for the height of a place: a bare number is feet or metres.
Result<Length> parseAltitude(const QString& text, MeasureSystem system, const QString& shown = {});

// Printing as a kitchen measures: the nearest amount that spoons, cups and scales can measure, with
// vulgar fractions (¼ ⅓ ½ ⅔ ¾) in US measures and round metric figures in metric. A non-zero amount
// never prints as zero. A difference below zero has a minus sign; what is no number prints as "—".
// The marks themselves stand in kitchen_marks.cpp.

/// US: drops up to 12; ⅛ tsp, then quarter teaspoons up to 1 and halves up to 2½; half tablespoons
/// from 1 to 3½; quarter cups from ¼ to 6, with thirds up to 2; above that quarts, in quarters up
/// to 10, halves up to 20, then whole. Metric: drops below 1 mL; mL by 0.5 up to 10, 1 up to 30,
/// 5 up to 100, 10 up to 500, 25 up to 1 L; L by 0.05 up to 5, 0.1 up to 20, then 0.5.
/// "3 drops", "½ tsp", "2 tbsp", "1½ cups", "3½ quarts" or "15 mL", "350 mL", "2.4 L".
QString printVolume(Volume volume, MeasureSystem system);
/// US: quarter ounces up to a pound, pounds and whole ounces up to 100 lb, then by 5 lb; grams
/// below ¼ oz. Metric: by 0.1 g up to 1, 0.5 g up to 10, 1 g up to a kilogram, then by 0.01 kg up
/// to 10, 0.1 kg up to 100, then whole. "3 lb 2 oz", "6 oz" or "350 g", "1.45 kg".
QString printMass(Mass mass, MeasureSystem system);
/// To the whole minute: "45 min", "3 h", "2 h 30 min".
QString printDuration(Duration duration);
/// "165 °F" or "74 °C", to the whole degree.
QString printTemperature(Temperature temperature, MeasureSystem system);
/// "11 in", "11½ in" or "28 cm"; for heights above 10 m "5,200 ft" or "1,600 m". Inches by ⅛ up
/// to 1, ¼ up to 12, then ½; centimetres by 0.1 up to 10, then 0.5.
QString printLength(Length length, MeasureSystem system);
/// The height of a place, also below 10 m, to the whole foot or metre: "5,200 ft", "1,600 m".
QString printAltitude(Length altitude, MeasureSystem system);

/// An amount with the bounds it may lie between, all three in the unit that printVolume takes for
/// the best: "1¾ quarts (1 to 2)". The amount alone where all three print alike. `low` <= `best` <=
/// `high`.
QString printVolumeRange(Volume low, Volume best, Volume high, MeasureSystem system);
/// A volume in the unit that printVolume takes for another, so that two can be held side by side:
/// "1 quart" beside "4 quarts".
QString printVolumeLike(Volume volume, Volume other, MeasureSystem system);
/// printVolumeRange of a mass: "350 g (300 to 400)", "2 lb 3 oz (1 lb 14 oz to 2 lb 8 oz)".
QString printMassRange(Mass low, Mass best, Mass high, MeasureSystem system);

/// The nearest amount that printVolume can say, the larger of two equally near: what the kitchen
/// will really pour. Zero stays zero; a larger volume never rounds to a smaller one.
Volume roundToKitchen(Volume volume, MeasureSystem system);
/// The same for printMass: what a kitchen scale will show.
Mass roundToKitchen(Mass mass, MeasureSystem system);

} // namespace ladlework::quantity
