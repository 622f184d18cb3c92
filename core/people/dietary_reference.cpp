#include "people/dietary_reference.h"

#include "foundation/age_band.h"
#include "foundation/reference_table.h"

#include <algorithm>
#include <stdexcept>

namespace ladlework::people {

namespace {
using quantity::Mass;
using quantity::Volume;

constexpr double milligramsPerGram = 1000.0;

Mass milligrams(double amount) {
    return Mass::fromGrams(amount / milligramsPerGram);
}

template <class Amount>
Span<Amount> spanOf(Amount male, Amount female) {
    return {std::min(male, female), std::max(male, female)};
}

IntakeCondition conditionFrom(const QString& id) {
    if (id == QLatin1String("none"))
        return IntakeCondition::None;
    if (id == QLatin1String("pregnant"))
        return IntakeCondition::Pregnant;
    if (id == QLatin1String("feeding"))
        return IntakeCondition::Feeding;
    throw std::runtime_error("dietary-references.csv: unknown condition " + id.toStdString());
}

DietaryReference referenceFrom(const ReferenceTable::Row& row) {
    DietaryReference reference;
    reference.stage = row.text(QStringLiteral("stage"));
    reference.condition = conditionFrom(row.text(QStringLiteral("condition")));
    reference.fromMonth = static_cast<int>(row.number(QStringLiteral("from_month")));
    if (!row.text(QStringLiteral("to_month")).isEmpty())
        reference.toMonth = static_cast<int>(row.number(QStringLiteral("to_month")));
    reference.sodiumAdequate = milligrams(row.number(QStringLiteral("sodium_ai_mg")));
    if (!row.text(QStringLiteral("sodium_cdrr_mg")).isEmpty())
        reference.sodiumLimit = milligrams(row.number(QStringLiteral("sodium_cdrr_mg")));
    reference.potassiumAdequate =
        spanOf(milligrams(row.number(QStringLiteral("potassium_ai_male_mg"))),
               milligrams(row.number(QStringLiteral("potassium_ai_female_mg"))));
    reference.totalWater = spanOf(Volume::fromLitres(row.number(QStringLiteral("water_male_l"))),
                                  Volume::fromLitres(row.number(QStringLiteral("water_female_l"))));
    reference.protein = spanOf(Mass::fromGrams(row.number(QStringLiteral("protein_male_g"))),
                               Mass::fromGrams(row.number(QStringLiteral("protein_female_g"))));
    reference.source = row.cited();
    return reference;
}

std::vector<DietaryReference> loadReferences() {
    const ReferenceTable table =
        valueOrThrow(ReferenceTable::load(QStringLiteral("dietary-references")));
    std::vector<DietaryReference> references;
    for (qsizetype i = 0; i < table.size(); ++i)
        references.push_back(referenceFrom(table.row(i)));
    return references;
}

bool fits(const DietaryReference& reference, int months, IntakeCondition condition) {
    return reference.condition == condition && months >= reference.fromMonth &&
           (!reference.toMonth || months < *reference.toMonth);
}
} // namespace

IntakeCondition intakeCondition(const QList<Caution>& ofMember) {
    IntakeCondition condition = IntakeCondition::None;
    for (const Caution& caution : ofMember) {
        if (caution.kind == QLatin1String("pregnant"))
            return IntakeCondition::Pregnant;
        if (caution.kind == QLatin1String("feeding"))
            condition = IntakeCondition::Feeding;
    }
    return condition;
}

const std::vector<DietaryReference>& dietaryReferences() {
    static const std::vector<DietaryReference> references = loadReferences();
    return references;
}

std::optional<DietaryReference> dietaryReferenceFor(QDate birth, QDate day,
                                                    IntakeCondition condition) {
    if (!ageBandOn(birth, day))
        return std::nullopt;
    const int months = monthsBetween(birth, day);
    for (IntakeCondition wanted : {condition, IntakeCondition::None})
        for (const DietaryReference& reference : dietaryReferences())
            if (fits(reference, months, wanted))
                return reference;
    return std::nullopt;
}

} // namespace ladlework::people
