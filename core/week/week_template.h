#pragma once

#include "foundation/id.h"
#include "foundation/result.h"

#include <QList>
#include <QString>
#include <QTime>

namespace ladlework::week {

/// A pot on a day of a week that is kept to be used again.
struct TemplatePlacement {
    int day = 0; ///< 0 is Monday
    PotId pot;
    QTime start; ///< invalid while not set
    friend bool operator==(const TemplatePlacement&, const TemplatePlacement&) = default;
};

/// A week kept under a name, for one family.
struct WeekTemplate {
    WeekTemplateId id;
    FamilyId family;
    QString name;
    QList<TemplatePlacement> placements;
    friend bool operator==(const WeekTemplate&, const WeekTemplate&) = default;
};

/// A name that is not blank, at least one placement, days from 0 to 6.
Outcome check(const WeekTemplate& kept);

} // namespace ladlework::week
