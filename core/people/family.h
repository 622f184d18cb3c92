#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "people/practice.h"
#include "quantity/length.h"
#include "quantity/mass.h"
#include "quantity/volume.h"

#include <QDate>
#include <QString>
#include <QStringList>
#include <optional>

namespace ladlework::people {

/// One household that is a client, with what its kitchen can hold.
struct Family {
    enum class Status { Active, Resting, Finished };

    FamilyId id;
    QString name;
    QString contact;
    Status status = Status::Active;
    QDate since;                                          ///< the day it was taken on
    QTimeZone zone = QTimeZone(QByteArrayLiteral("UTC")); ///< a day is the family's day
    quantity::MeasureSystem measures = quantity::MeasureSystem::UsCustomary;
    Paper paper = Paper::Letter;
    quantity::Length altitude; ///< of the kitchen above sea level
    quantity::Volume fridgeRoom = quantity::Volume::fromQuarts(8); ///< room for stock
    quantity::Volume freezerRoom = quantity::Volume::fromQuarts(8);
    quantity::Mass meatPerDay = quantity::Mass::fromGrams(500); ///< cooked meat the table eats
    int mostOfOneAnimal = 0; ///< cookings of one animal a week at most; 0: as many as it takes
    QString handoutLanguage = QStringLiteral("en"); ///< of the printed pages: "en" or "es"
    QDate reviewOn;                                 ///< next visit or review; may be null
    QString remarks;
};

/// Non-blank name, known zone, altitude -500 m to 6,000 m, rooms and meat not negative and not
/// absurd (200 L, 20 kg a day), cookings of one animal 0 to 42, a language that the pages are
/// written in, `since` a valid day not after `today`. The sentence and the place
/// name the field.
Outcome check(const Family& family, QDate today);

QString statusId(Family::Status status);
std::optional<Family::Status> statusFromId(QStringView id);

} // namespace ladlework::people
