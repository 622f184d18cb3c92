#pragma once

#include "foundation/result.h"
#include "quantity/measure.h"
#include "quantity/volume.h"

#include <QString>
#include <QTimeZone>

namespace ladlework::people {

enum class Paper { Letter, A4 };

// What resources/reference/keeping.csv allows a lot in the refrigerator, in days: from the older
// row for broth to the longer end for soups; their shorter end is the usual.
int leastFridgeDays();
int usualFridgeDays();
int mostFridgeDays();

/// The practice that owns the workbook: its letterhead and its house rules.
struct Practice {
    QString name;
    QString practitioner;
    QString contact;         ///< phone, mail, address: several lines
    QByteArray logo;         ///< a PNG picture for the letterhead, at most 1 MiB; may be empty
    QString emergencyNumber; ///< "911", "112": shown first when a red flag is entered
    quantity::MeasureSystem measures = quantity::MeasureSystem::UsCustomary;
    Paper paper = Paper::Letter;
    QTimeZone zone = QTimeZone(QByteArrayLiteral("UTC"));
    int fridgeDays = usualFridgeDays(); ///< days a lot keeps in the refrigerator
    QString currency;                   ///< as it is written before a price: "$"; may be empty
    double spill = 0.10; ///< share added to what is drunk when a week is planned; 0 to 1
};

/// Checks the ranges above, that the zone is known, that an emergency number, when there is one,
/// holds a digit, that a logo is a PNG file of at most 1 MiB, and that the currency is at most five
/// characters and none a digit: the sentence and the place name the field at fault. A practice may
/// be nameless.
Outcome check(const Practice& practice);

} // namespace ladlework::people
