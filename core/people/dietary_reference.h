#pragma once

#include "people/caution.h"
#include "quantity/mass.h"
#include "quantity/volume.h"

#include <QDate>
#include <QList>
#include <QString>
#include <optional>
#include <vector>

namespace ladlework::people {

/// The state that has reference intakes of its own; known from a member's cautions.
enum class IntakeCondition { None, Pregnant, Feeding };

/// The lower and the higher of the figures for men and women; equal where they do not differ.
template <class Amount>
struct Span {
    Amount low;
    Amount high;
};

/// Reference intakes a day for one life stage: a row of resources/reference/dietary-references.csv
/// (NASEM 2019 for sodium and potassium, IOM 2005 for total water and protein).
struct DietaryReference {
    QString stage; ///< "7-12 months"
    IntakeCondition condition = IntakeCondition::None;
    int fromMonth = 0;                         ///< whole months completed
    std::optional<int> toMonth;                ///< not included; nothing: no end
    quantity::Mass sodiumAdequate;             ///< AI
    std::optional<quantity::Mass> sodiumLimit; ///< CDRR; nothing where not determined (infants)
    Span<quantity::Mass> potassiumAdequate;    ///< AI; not for people with kidney disease
    Span<quantity::Volume> totalWater;         ///< AI, the water in food counted
    Span<quantity::Mass> protein;              ///< RDA; AI under 6 months
    QString source;                            ///< with its basis
};

/// The condition that the cautions of a member record; pregnancy when both are.
IntakeCondition intakeCondition(const QList<Caution>& ofMember);

/// All rows in the order of the file. Broken resources are a broken invariant (throws).
const std::vector<DietaryReference>& dietaryReferences();

/// The reference of someone born on `birth`, on `day`. A condition without a row for the age (under
/// 14 years) gives the row of the age alone. Nothing when a date is invalid or `day` is before
/// `birth`.
std::optional<DietaryReference> dietaryReferenceFor(QDate birth, QDate day,
                                                    IntakeCondition condition);

} // namespace ladlework::people
