#include "ui/progress/climb_days_model.h"

#include "ui/progress/climbing_family.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

TEST(ClimbDaysModelTest, LatestDayFirstWithItsReason) {
    const ClimbingFamily family;
    ClimbDaysModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(family.standing(), quantity::MeasureSystem::UsCustomary);
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
    EXPECT_EQ(model.rowOf(QDate(2026, 9, 30)), -1);
    EXPECT_FALSE(model.dayAt(-1).isValid());
}

TEST(ClimbDaysModelTest, SameDaysAreChangedInPlace) {
    const ClimbingFamily family;
    ClimbDaysModel model;
    model.show(family.standing(), quantity::MeasureSystem::UsCustomary);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.show(family.standing(), quantity::MeasureSystem::Metric);
    EXPECT_EQ(reset.size(), 0);
    EXPECT_TRUE(model.index(0, ClimbDaysModel::AskedColumn)
                    .data()
                    .toString()
                    .endsWith(QStringLiteral("mL")));
    model.clear();
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace ladlework::ui
