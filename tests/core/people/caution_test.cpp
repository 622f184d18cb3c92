#include "people/caution.h"

#include <QSet>

#include <gtest/gtest.h>
#include <limits>

namespace ladlework::people {
namespace {

Caution cautionOf(const char* kind) {
    Caution caution;
    caution.kind = QLatin1String(kind);
    return caution;
}

TEST(CautionTest, coversTheConditionsOfTheTrade) {
    QSet<QString> ids;
    for (const CautionKind& kind : cautionKinds())
        ids.insert(kind.id);
    EXPECT_EQ(static_cast<size_t>(ids.size()), cautionKinds().size());
    for (const char* id : {"pregnant", "feeding", "kidney", "heart", "liver", "sodium-restricted",
                           "protein-restricted", "blood-thinner", "diabetes", "underweight",
                           "eating-disorder-history", "allergy-fish", "allergy-shellfish",
                           "allergy-celery", "allergy-other"})
        EXPECT_TRUE(ids.contains(QLatin1String(id))) << id;
}

TEST(CautionTest, everyKindDefersToTheClinicianAndNamesItsSource) {
    for (const CautionKind& kind : cautionKinds()) {
        EXPECT_TRUE(kind.advice.startsWith(QStringLiteral("Ask the treating clinician before ")))
            << qPrintable(kind.id);
        EXPECT_TRUE(kind.source.endsWith(QStringLiteral("(published)")) ||
                    kind.source.endsWith(QStringLiteral("(common practice)")) ||
                    kind.source.endsWith(QStringLiteral("(memory)")))
            << qPrintable(kind.source);
        for (const char* claim : {"heal", "cure", "treats", "detox", "boost", "prevent"})
            EXPECT_FALSE(kind.advice.contains(QLatin1String(claim), Qt::CaseInsensitive)) << claim;
    }
}

TEST(CautionTest, checksKindAndLimit) {
    EXPECT_TRUE(check(cautionOf("kidney")).has_value());
    EXPECT_EQ(check(cautionOf("hiccups")).error().place.toStdString(), "kind");
    EXPECT_EQ(check(cautionOf("")).error().place.toStdString(), "kind");
    Caution salt = cautionOf("sodium-restricted");
    EXPECT_TRUE(check(salt).has_value());
    for (double fine : {1.0, 1500.0, 10'000.0}) {
        salt.sodiumLimitMg = fine;
        EXPECT_TRUE(check(salt).has_value()) << fine;
    }
    for (double bad : {0.0, -5.0, 10'001.0, std::numeric_limits<double>::quiet_NaN()}) {
        salt.sodiumLimitMg = bad;
        ASSERT_FALSE(check(salt).has_value()) << bad;
        EXPECT_EQ(check(salt).error().place.toStdString(), "sodiumLimitMg");
    }
    Caution heart = cautionOf("heart");
    heart.sodiumLimitMg = 1500;
    EXPECT_EQ(check(heart).error().place.toStdString(), "sodiumLimitMg");
}

TEST(CautionTest, makesAFindingForTheMember) {
    Caution salt = cautionOf("sodium-restricted");
    salt.sodiumLimitMg = 1500;
    salt.detail = QStringLiteral("set by the heart clinic");
    const Finding finding = findingFor(salt, QStringLiteral("Mara"));
    EXPECT_EQ(finding.severity, Finding::Severity::Caution);
    EXPECT_EQ(finding.code.toStdString(), "caution-sodium-restricted");
    EXPECT_EQ(
        finding.text.toStdString(),
        "Mara, sodium restricted: Ask the treating clinician before any pot is salted, and what "
        "sodium a day is allowed in all. The limit recorded is 1,500 mg of sodium a day.");
    EXPECT_EQ(finding.limit, 1500);
    EXPECT_EQ(finding.why.toStdString(), "set by the heart clinic");
    EXPECT_FALSE(finding.source.isEmpty());
}

TEST(CautionTest, allergiesKeepOutWhatTheirAdviceNames) {
    EXPECT_EQ(keptOut(cautionOf("allergy-fish")), QStringList{QStringLiteral("fish")});
    EXPECT_EQ(keptOut(cautionOf("allergy-shellfish")), QStringList{QStringLiteral("fish")});
    EXPECT_EQ(keptOut(cautionOf("allergy-celery")),
              (QStringList{QStringLiteral("celery"), QStringLiteral("celeriac")}));
    EXPECT_TRUE(keptOut(cautionOf("kidney")).isEmpty());
    EXPECT_TRUE(isUnnamedAllergy(cautionOf("allergy-other")));
    EXPECT_TRUE(isUnnamedAllergy(cautionOf("allergy-of-another-version")));
    EXPECT_FALSE(isUnnamedAllergy(cautionOf("allergy-fish")));
    EXPECT_FALSE(isUnnamedAllergy(cautionOf("kidney")));
}

TEST(CautionTest, aKindOfAnotherVersionStillDefers) {
    const Finding finding = findingFor(cautionOf("from-the-future"), QStringLiteral("Ede"));
    EXPECT_TRUE(finding.text.contains(QStringLiteral("Ask the treating clinician")));
}

} // namespace
} // namespace ladlework::people
