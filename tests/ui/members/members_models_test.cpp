#include "ui/members/member_list_model.h"
#include "ui/members/subject_picker.h"
#include "ui/members/tolerance_model.h"
#include "ui/members/vessel_model.h"
#include "ui/shared/family_workbook.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

using people::Subject;
using people::ToleranceNote;

namespace {

ToleranceNote note(qint64 id, QDate noted, const QString& subject) {
    ToleranceNote made;
    made.id = ToleranceId{id};
    made.subject = {Subject::Kind::Animal, subject};
    made.reason = QStringLiteral("a rash");
    made.noted = noted;
    return made;
}

} // namespace

TEST(MembersModelsTest, MembersThenTheFamily) {
    FamilyWorkbook family;
    MemberListModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), 0);
    model.setCasebook(family.casebook());
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(model.index(0).data().toString(), QStringLiteral("Ana Hale\nadult · at target"));
    EXPECT_EQ(model.index(3).data().toString(), QStringLiteral("Family and kitchen"));
    EXPECT_FALSE(model.memberAt(3).isStored());
    EXPECT_EQ(model.rowOf(model.memberAt(2)), 2);

    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.setCasebook(family.casebook());
    EXPECT_EQ(reset.size(), 0) << "the same members are changed in place";
}

TEST(MembersModelsTest, LaterNoteMakesTheEarlierHistory) {
    FamilyWorkbook family;
    ToleranceModel model(family.context().catalogue, nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    ToleranceNote retry = note(3, QDate(2026, 10, 20), QStringLiteral("beef"));
    retry.verdict = ToleranceNote::Verdict::TryAgainOn;
    retry.tryAgainOn = QDate(2026, 11, 20);
    model.setNotes({note(1, QDate(2026, 9, 1), QStringLiteral("poultry")),
                    note(2, QDate(2026, 10, 1), QStringLiteral("poultry")), retry});
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.index(0, ToleranceModel::VerdictColumn).data().toString(),
              QStringLiteral("Try again on Fri, Nov 20, 2026"));
    EXPECT_EQ(model.index(1, ToleranceModel::SubjectColumn).data().toString(),
              QStringLiteral("all poultry"));
    EXPECT_FALSE(model.isHistory(0));
    EXPECT_FALSE(model.isHistory(1));
    EXPECT_TRUE(model.isHistory(2));
    EXPECT_EQ(model.noteAt(3), nullptr);
}

TEST(MembersModelsTest, VesselSaysWhatItHolds) {
    VesselModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    kitchen::Vessel vessel;
    vessel.name = QStringLiteral("the big pot");
    vessel.diameter = quantity::Length::fromCentimetres(28);
    vessel.height = quantity::Length::fromCentimetres(22);
    model.setVessels({vessel}, quantity::MeasureSystem::Metric);
    // pi x 14 cm x 14 cm x 22 cm = 13,547 cm3, printed in steps of 0.1 L.
    EXPECT_EQ(model.index(0, VesselModel::HoldsColumn).data().toString(), QStringLiteral("13.5 L"));
    EXPECT_EQ(model.index(0, VesselModel::UseColumn).data().toString(),
              QStringLiteral("on the stove, lid ajar"));
}

TEST(MembersModelsTest, PickerFindsASubjectByItsName) {
    FamilyWorkbook family;
    SubjectPicker picker(family.context().catalogue, nullptr);
    EXPECT_FALSE(picker.subject()) << "nothing is picked at first";
    picker.setEditText(QStringLiteral("All Poultry"));
    ASSERT_TRUE(picker.subject());
    EXPECT_EQ(*picker.subject(), (Subject{Subject::Kind::Animal, QStringLiteral("poultry")}));
    picker.setEditText(QStringLiteral("celery"));
    ASSERT_TRUE(picker.subject());
    EXPECT_EQ(picker.subject()->kind, Subject::Kind::Ingredient);
    picker.setEditText(QStringLiteral("gravel"));
    EXPECT_FALSE(picker.subject());
}

} // namespace ladlework::ui
