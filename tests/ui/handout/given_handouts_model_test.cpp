#include "ui/handout/given_handouts_model.h"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

casebook::HandoutRecord recordOf(qint64 id, QDateTime made) {
    casebook::HandoutRecord record;
    record.id = HandoutId{id};
    record.week = QDate(2026, 11, 2);
    record.madeUtc = std::move(made);
    record.title = QStringLiteral("Hale - week of 2 November 2026");
    return record;
}

class GivenHandoutsModelTest : public ::testing::Test {};

} // namespace

TEST_F(GivenHandoutsModelTest, SaysWhenOnTheFamilysDay) {
    GivenHandoutsModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    // 3:30 in the night UTC is still the evening before in New York (UTC-5 in November).
    const QDateTime made(QDate(2026, 11, 3), QTime(3, 30), Qt::UTC);
    model.setHandouts({recordOf(4, made), recordOf(2, made.addDays(-7))},
                      QTimeZone(QByteArrayLiteral("America/New_York")));
    ASSERT_EQ(model.rowCount(), 2);
    const QString words = model.index(0).data().toString();
    EXPECT_TRUE(words.contains(QStringLiteral("Week of 2 November 2026"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("2 November 2026, 10:30"))) << words.toStdString();
    EXPECT_EQ(model.rowOf(HandoutId{2}), 1);
    EXPECT_EQ(model.rowOf(HandoutId{9}), -1);
    EXPECT_EQ(model.handout(2), nullptr);
    model.setHandouts({}, QTimeZone::utc());
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace ladlework::ui
