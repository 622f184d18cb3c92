#include "intake/red_flags.h"
#include "intake/symptom.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

TEST(SymptomTest, needsANameAndAPlace) {
    Symptom symptom;
    EXPECT_EQ(check(symptom).error().place, QStringLiteral("name"));
    symptom.name = QStringLiteral("  ");
    EXPECT_EQ(check(symptom).error().place, QStringLiteral("name"));
    symptom.name = QStringLiteral("Loose stool");
    EXPECT_TRUE(check(symptom).has_value());
    symptom.position = -1;
    EXPECT_EQ(check(symptom).error().place, QStringLiteral("position"));
}

TEST(SymptomTest, aNewWorkbookStartsWithTheOrdinaryOnes) {
    const QList<Symptom> shipped = shippedSymptoms();
    const auto ordinary = std::ranges::count_if(
        symptomKinds(), [](const SymptomKind& kind) { return !kind.redFlag; });
    ASSERT_EQ(shipped.size(), ordinary);
    ASSERT_FALSE(shipped.isEmpty());
    for (qsizetype i = 0; i < shipped.size(); ++i) {
        EXPECT_EQ(shipped[i].position, i);
        EXPECT_FALSE(shipped[i].redFlag);
        EXPECT_TRUE(check(shipped[i]).has_value());
    }
    EXPECT_EQ(shipped.first().name, QStringLiteral("Loose stool"));
}

} // namespace
} // namespace ladlework::intake
