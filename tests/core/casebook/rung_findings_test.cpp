#include "casebook/rung_findings.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;

namespace {

/// Ana's target is 946 to 1420 mL.
class RungFindingsTest : public ::testing::Test {
protected:
    RungFindingsTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Findings findings(const QList<quantity::Volume>& rungs) {
        records.ladders.first().rungs = rungs;
        const Casebook book(records, catalogue, today);
        Findings found = book.standing(ana)->findings;
        found.removeIf([](const Finding& finding) { return finding.field != u"ladder"; });
        return found;
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};

} // namespace

TEST_F(RungFindingsTest, aLastRungAboveTheTargetIsAStop) {
    EXPECT_TRUE(findings({ml(1200), ml(1420)}).isEmpty()) << "the high end itself is the target";
    const Findings found = findings({ml(1200), ml(1421)});
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found.first().code, QStringLiteral("ladder-above-target"));
    EXPECT_EQ(found.first().severity, Finding::Severity::Stop);
    EXPECT_TRUE(found.first().text.contains(QStringLiteral("Ana")));
    records.targets.clear();
    EXPECT_TRUE(findings({ml(1200), ml(1421)}).isEmpty()) << "nothing to compare with";
}

// 2.5 times the rung before from a teaspoon up, and a cup (236.6 mL) more:
// resources/reference/ladder-figures.csv.
TEST_F(RungFindingsTest, aLeapIsACaution) {
    EXPECT_TRUE(findings({ml(40), ml(100), ml(236), ml(472), ml(708)}).isEmpty());
    Findings found = findings({ml(40), ml(101)});
    ASSERT_EQ(found.size(), 1) << "more than 2.5 times";
    EXPECT_EQ(found.first().code, QStringLiteral("ladder-leap"));
    EXPECT_EQ(found.first().severity, Finding::Severity::Caution);
    const quantity::MeasureSystem measures = records.family.measures;
    EXPECT_TRUE(found.first().text.contains(quantity::printVolume(ml(40), measures)));
    EXPECT_TRUE(found.first().text.contains(quantity::printVolume(ml(101), measures)));
    EXPECT_EQ(findings({ml(400), ml(640)}).size(), 1) << "more than a cup above it";
    EXPECT_TRUE(findings({ml(0.05), ml(5)}).isEmpty()) << "free below a teaspoon";
    EXPECT_EQ(findings({ml(0.05), ml(30)}).size(), 1) << "drops count as a teaspoon at most";
    EXPECT_EQ(findings({ml(5), ml(60), ml(800)}).size(), 2) << "each leap by itself";
}
