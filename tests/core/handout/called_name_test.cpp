#include "handout/family_handout.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using handout::calledName;
using handout::Names;

namespace {
class CalledNameTest : public ::testing::Test {
protected:
    CalledNameTest() : catalogue(*kitchen::Catalogue::load()) {}

    [[nodiscard]] QStringList called(const QStringList& names, Names how) const {
        casebook::FamilyRecords records;
        for (const QString& name : names) {
            people::Member member;
            member.id = MemberId{records.members.size() + 1};
            member.name = name;
            member.birth = QDate(1990, 1, 1);
            records.members.append(member);
        }
        const Casebook book(records, catalogue, hand_made::today);
        QStringList result;
        for (const people::Member& member : records.members)
            result.append(calledName(book, member.id, how));
        return result;
    }

    kitchen::Catalogue catalogue;
};
} // namespace

TEST_F(CalledNameTest, usesWhatWasChosen) {
    const QStringList names{QStringLiteral("Ana Lindqvist"), QStringLiteral("Ben Ruiz Ortega")};
    EXPECT_EQ(called(names, Names::Full), names);
    EXPECT_EQ(called(names, Names::First),
              (QStringList{QStringLiteral("Ana"), QStringLiteral("Ben")}));
    EXPECT_EQ(called(names, Names::None),
              (QStringList{QStringLiteral("Member 1"), QStringLiteral("Member 2")}));
}

TEST_F(CalledNameTest, tellsNamesakesApart) {
    EXPECT_EQ(called({QStringLiteral("Ana Lindqvist"), QStringLiteral("ana Ruiz")}, Names::First),
              (QStringList{QStringLiteral("Ana L."), QStringLiteral("ana R.")}));
    EXPECT_EQ(called({QStringLiteral("Ana"), QStringLiteral("Ana Ruiz")}, Names::First),
              (QStringList{QStringLiteral("Ana"), QStringLiteral("Ana R.")}));
    EXPECT_EQ(called({QStringLiteral("Ana Ruiz"), QStringLiteral("Ana Ross")}, Names::First),
              (QStringList{QStringLiteral("Ana R. 1"), QStringLiteral("Ana R. 2")}));
}

TEST_F(CalledNameTest, whoIsNotOfTheFamilyHasNoName) {
    const Casebook book(casebook::FamilyRecords(), catalogue, hand_made::today);
    EXPECT_TRUE(calledName(book, MemberId{5}, Names::Full).isEmpty());
}
