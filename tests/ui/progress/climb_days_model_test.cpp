#include "ui/progress/climb_days_model.h"

#include "ui/progress/climbing_family.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

TEST(ClimbDaysModelTest, LatestDayFirstWithItsReason) {
    ClimbingFamily family;
    ClimbDaysModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto book = family.workbook.casebook();
    model.show(*book, *book->standing(family.gil));
    // Every calendar day from the first entry to yesterday: nothing was entered today.
    ASSERT_EQ(model.rowCount(), 34);
    EXPECT_EQ(model.dayAt(0), QDate(2026, 11, 3));
    const auto cell = [&](QDate day, int column) {
        return model.index(model.rowOf(day), column).data().toString();
    };
    EXPECT_EQ(cell(QDate(2026, 10, 3), ClimbDaysModel::DecisionColumn),
              QStringLiteral("one rung up"));
    EXPECT_EQ(cell(QDate(2026, 10, 3), ClimbDaysModel::AskedColumn), QStringLiteral("¼ cup"));
    EXPECT_EQ(cell(QDate(2026, 10, 4), ClimbDaysModel::AskedColumn), QStringLiteral("½ cup"));
    EXPECT_EQ(cell(QDate(2026, 10, 7), ClimbDaysModel::DecisionColumn), QStringLiteral("no entry"));
    EXPECT_EQ(cell(QDate(2026, 10, 8), ClimbDaysModel::DecisionColumn), QStringLiteral("hold"));
    EXPECT_EQ(cell(QDate(2026, 10, 20), ClimbDaysModel::DecisionColumn), QStringLiteral("stop"));
    EXPECT_FALSE(cell(QDate(2026, 10, 20), ClimbDaysModel::WhyColumn).isEmpty());
    // On the day of the red flag the amount had been asked; from the next day on nothing is.
    EXPECT_EQ(cell(QDate(2026, 10, 20), ClimbDaysModel::AskedColumn), QStringLiteral("¼ cup"));
    EXPECT_EQ(cell(QDate(2026, 10, 21), ClimbDaysModel::DecisionColumn), QStringLiteral("stopped"));
    EXPECT_EQ(cell(QDate(2026, 10, 21), ClimbDaysModel::AskedColumn), QStringLiteral("nothing"));
    EXPECT_EQ(model.rowOf(QDate(2026, 9, 30)), -1);
    EXPECT_FALSE(model.dayAt(-1).isValid());
}

TEST(ClimbDaysModelTest, SameDaysAreChangedInPlace) {
    ClimbingFamily family;
    ClimbDaysModel model;
    const auto book = family.workbook.casebook();
    model.show(*book, *book->standing(family.gil));
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    casebook::FamilyRecords metric = book->records();
    metric.family.measures = quantity::MeasureSystem::Metric;
    const casebook::Casebook again(metric, book->catalogue(), book->today());
    model.show(again, *again.standing(family.gil));
    EXPECT_EQ(reset.size(), 0);
    EXPECT_TRUE(model.index(model.rowOf(QDate(2026, 10, 3)), ClimbDaysModel::AskedColumn)
                    .data()
                    .toString()
                    .endsWith(QStringLiteral("mL")));
    model.clear();
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(ClimbDaysModelTest, EasedDaysSayWhatThePlanAsked) {
    ClimbingFamily family;
    const auto book = family.workbook.casebook();
    casebook::FamilyRecords records = book->records();
    // Ana holds 4 cups on a ladder of one rung; give her the rungs to ease down.
    const MemberId ana = records.members.first().id;
    for (intake::Ladder& ladder : records.ladders)
        if (ladder.member == ana)
            ladder.rungs = {quantity::Volume::fromCups(2), quantity::Volume::fromCups(4)};
    for (intake::Target& target : records.targets)
        if (target.member == ana) {
            target.easeOffFrom = QDate(2026, 11, 1);
            target.easeTo = quantity::Volume::fromCups(2);
        }
    for (int day = 1; day <= 34; ++day) {
        intake::IntakeEntry entry;
        entry.id = IntakeId{1000 + day};
        entry.member = ana;
        entry.day = QDate(2026, 9, 30).addDays(day);
        entry.drunk = quantity::Volume::fromCups(day <= 31 ? 4 : 2);
        records.entries.append(entry);
    }
    const casebook::Casebook eased(records, book->catalogue(), book->today());
    ClimbDaysModel model;
    model.show(eased, *eased.standing(ana));
    const auto cell = [&](QDate day, int column) {
        return model.index(model.rowOf(day), column).data().toString();
    };
    EXPECT_EQ(cell(QDate(2026, 10, 31), ClimbDaysModel::AskedColumn), QStringLiteral("4 cups"));
    EXPECT_EQ(cell(QDate(2026, 11, 1), ClimbDaysModel::AskedColumn), QStringLiteral("2 cups"));
    EXPECT_TRUE(cell(QDate(2026, 11, 1), ClimbDaysModel::WhyColumn)
                    .startsWith(QStringLiteral("Eased off by plan")));
}

} // namespace ladlework::ui
