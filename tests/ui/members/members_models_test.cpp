#include "ui/members/member_list_model.h"
#include "ui/members/phase_change.h"
#include "ui/members/retry_model.h"
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
    ASSERT_EQ(model.rowCount(), 2) << "the latest of each subject";
    EXPECT_EQ(model.index(0, ToleranceModel::VerdictColumn).data().toString(),
              QStringLiteral("Try again on Fri, Nov 20, 2026"));
    EXPECT_EQ(model.index(1, ToleranceModel::SubjectColumn).data().toString(),
              QStringLiteral("all poultry"));
    EXPECT_FALSE(model.isHistory(0));
    EXPECT_FALSE(model.isHistory(1));
    EXPECT_EQ(model.index(0, ToleranceModel::EarlierColumn).data().toString(), QString());
    EXPECT_EQ(model.index(1, ToleranceModel::EarlierColumn).data().toString(),
              QStringLiteral("1 earlier"));
    EXPECT_FALSE(model.setUnfolded(0, true)) << "there is nothing to unfold";
    EXPECT_TRUE(model.setUnfolded(1, true));
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_TRUE(model.isHistory(2));
    EXPECT_EQ(model.noteAt(2)->id.value, 1);
    EXPECT_EQ(model.noteAt(3), nullptr);
    EXPECT_TRUE(model.setUnfolded(2, false));
    EXPECT_EQ(model.rowCount(), 2);
}

TEST(MembersModelsTest, RetriesSayHowTheyStand) {
    FamilyWorkbook family;
    RetryModel model(family.context().catalogue, nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    people::RetryPlan plan;
    plan.id = RetryPlanId{1};
    plan.subject = {Subject::Kind::Animal, QStringLiteral("beef")};
    plan.start = QDate(2026, 11, 1);
    plan.watchDays = 2;
    plan.steps = {quantity::Volume::fromTeaspoons(1), quantity::Volume::fromTablespoons(1)};
    people::RetryPlan closed = plan;
    closed.id = RetryPlanId{2};
    closed.start = QDate(2026, 11, 2);
    closed.outcome = people::RetryPlan::Ending::Borne;
    closed.closed = QDate(2026, 11, 3);
    const auto state = [&](QDate today) {
        model.setPlans({closed, plan}, today, quantity::MeasureSystem::UsCustomary);
        return model.index(0, RetryModel::StateColumn).data().toString();
    };
    // Steps on 1 and 4 November, each watched for two days: to the 6th.
    EXPECT_EQ(state(QDate(2026, 10, 30)), QStringLiteral("begins on Sun, Nov 1, 2026"));
    EXPECT_EQ(state(QDate(2026, 11, 1)), QStringLiteral("step 1 of 2 is today"));
    EXPECT_EQ(state(QDate(2026, 11, 2)), QStringLiteral("step 2 of 2 on Wed, Nov 4, 2026"));
    EXPECT_EQ(state(QDate(2026, 11, 5)), QStringLiteral("watched until Fri, Nov 6, 2026"));
    EXPECT_EQ(state(QDate(2026, 11, 7)),
              QStringLiteral("watched to the end: write down how it went"));
    EXPECT_EQ(model.index(0, RetryModel::StepsColumn).data().toString(),
              QStringLiteral("Nov 1: 1 tsp, Nov 4: 1 tbsp"));
    EXPECT_EQ(model.planAt(1)->id.value, 2) << "open ones first";
    EXPECT_TRUE(model.index(1, RetryModel::StateColumn)
                    .data()
                    .toString()
                    .endsWith(QStringLiteral("on Tue, Nov 3, 2026")));
}

TEST(MembersModelsTest, PhasesSayWhatChangesInTheKitchen) {
    kitchen::PhaseRules careful;
    kitchen::PhaseRules settled;
    settled.strainVegetables = false;
    settled.boneBroth = true;
    EXPECT_TRUE(kitchenChanges(careful, careful).isEmpty());
    const QStringList on = kitchenChanges(careful, settled);
    ASSERT_EQ(on.size(), 2);
    EXPECT_EQ(on.at(0), QStringLiteral("Vegetables were strained out; they may be left in."));
    EXPECT_EQ(on.at(1), QStringLiteral("Bone broth was kept out; it may be drunk."));
    EXPECT_EQ(kitchenChanges(settled, careful).at(1),
              QStringLiteral("Bone broth was drunk; it is kept out."));
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
