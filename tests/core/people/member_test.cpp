#include "people/member.h"

#include <gtest/gtest.h>

namespace ladlework::people {
namespace {

const QDate today(2024, 3, 1);

Member bornOn(QDate birth) {
    Member member;
    member.name = QStringLiteral("Ede");
    member.birth = birth;
    return member;
}

std::string placeOf(const Member& member) {
    const Outcome outcome = check(member, today);
    return outcome ? std::string() : outcome.error().place.toStdString();
}

TEST(MemberTest, checksNameAndBirth) {
    EXPECT_EQ(placeOf(bornOn(today)), "");
    EXPECT_EQ(placeOf(bornOn(today.addYears(-120))), "");
    EXPECT_EQ(placeOf(bornOn(today.addYears(-120).addDays(-1))), "birth");
    EXPECT_EQ(placeOf(bornOn(today.addDays(1))), "birth");
    EXPECT_EQ(placeOf(bornOn(QDate())), "birth");
    Member nameless = bornOn(today);
    nameless.name = QStringLiteral("\t");
    EXPECT_EQ(placeOf(nameless), "name");
}

TEST(MemberTest, anOverrideNeedsAReasonAndSixMonths) {
    Member child = bornOn(today.addYears(-8));
    child.bandOverride = Member::BandOverride{AgeBand::Adult, QStringLiteral(" ")};
    EXPECT_EQ(placeOf(child), "bandOverride");
    child.bandOverride->reason = QStringLiteral("tall for the age");
    EXPECT_EQ(placeOf(child), "");
    child.birth = today.addMonths(-6);
    EXPECT_EQ(placeOf(child), "");
    child.birth = today.addMonths(-6).addDays(1);
    EXPECT_EQ(placeOf(child), "bandOverride");
}

TEST(MemberTest, anOverrideNeverLiftsAnInfantUnderSixMonths) {
    Member infant = bornOn(QDate(2024, 1, 31));
    for (AgeBand band : {AgeBand::InfantStartingSolids, AgeBand::Child, AgeBand::Adult}) {
        infant.bandOverride = Member::BandOverride{band, QStringLiteral("asked for")};
        for (QDate day = infant.birth.addDays(-30); day < QDate(2024, 7, 31); day = day.addDays(1))
            ASSERT_EQ(bandOf(infant, day), AgeBand::InfantUnderSixMonths)
                << qPrintable(day.toString(Qt::ISODate));
        EXPECT_EQ(bandOf(infant, QDate(2024, 7, 31)), band);
    }
}

TEST(MemberTest, theBandFollowsTheBirthWithoutAnOverride) {
    const Member member = bornOn(QDate(2010, 5, 20));
    EXPECT_EQ(bandOf(member, QDate(2010, 5, 19)), AgeBand::InfantUnderSixMonths);
    EXPECT_EQ(bandOf(member, QDate(2010, 11, 20)), AgeBand::InfantStartingSolids);
    EXPECT_EQ(bandOf(member, QDate(2023, 5, 19)), AgeBand::Child);
    EXPECT_EQ(bandOf(member, QDate(2023, 5, 20)), AgeBand::Adult);
    EXPECT_EQ(bandOf(bornOn(QDate()), today), AgeBand::InfantUnderSixMonths);
}

TEST(MemberTest, anOverrideMayAlsoMakeYounger) {
    Member child = bornOn(today.addYears(-14));
    child.bandOverride = Member::BandOverride{AgeBand::Child, QStringLiteral("small for the age")};
    EXPECT_EQ(bandOf(child, today), AgeBand::Child);
}

} // namespace
} // namespace ladlework::people
