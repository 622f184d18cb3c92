#include "ui/week/board_model.h"

#include <QAbstractItemModelTester>
#include <QMimeData>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

const QDate monday(2026, 11, 2);
constexpr PotId legs{1};

class BoardModelTest : public ::testing::Test {
protected:
    void show(int potsOnTuesday) {
        m_plan.start = monday;
        m_plan.placements.clear();
        for (int i = 0; i < potsOnTuesday; ++i)
            m_plan.placements << week::Placement{monday.addDays(1), legs, QTime(9 + i, 0)};
        m_model.setPlan(
            m_plan,
            {{legs, BoardPot{QStringLiteral("Chicken legs"), QStringLiteral("makes 2 quarts")}}},
            monday);
    }
    week::WeekPlan m_plan;
    BoardModel m_model;
    QAbstractItemModelTester m_tester{&m_model,
                                      QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(BoardModelTest, AlwaysHasAnEmptyPlace) {
    for (const int pots : {0, 1, 5, 2, 6, 0}) {
        show(pots);
        EXPECT_EQ(m_model.columnCount(), 7);
        EXPECT_GT(m_model.rowCount(), pots);
        EXPECT_EQ(m_model.placementAt(m_model.firstEmpty(1)), -1);
        for (int i = 0; i < pots; ++i)
            EXPECT_EQ(m_model.indexOf(i), m_model.index(i, 1));
    }
}

TEST_F(BoardModelTest, SaysWhatStandsOnADay) {
    show(1);
    EXPECT_EQ(m_model.index(0, 1).data(Qt::DisplayRole).toString(), QStringLiteral("Chicken legs"));
    const QString spoken = m_model.index(0, 1).data(Qt::AccessibleTextRole).toString();
    for (const QString& part : {QStringLiteral("Tuesday"), QStringLiteral("Chicken legs"),
                                QStringLiteral("makes 2 quarts"), QStringLiteral("9:00")})
        EXPECT_TRUE(spoken.contains(part)) << spoken.toStdString();
    EXPECT_TRUE(m_model.index(0, 0)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .contains(QStringLiteral("empty")));
    EXPECT_TRUE(m_model.headerData(0, Qt::Horizontal, Qt::DisplayRole)
                    .toString()
                    .contains(QStringLiteral("today")));
}

TEST_F(BoardModelTest, HeadsSayHoursAndLock) {
    m_plan.lockedDays = {monday.addDays(2)};
    show(1);
    m_model.setHours({QStringLiteral("6 h free")}, {QStringLiteral("free for 6 h")});
    const auto head = [this](int day, int role) {
        return m_model.headerData(day, Qt::Horizontal, role);
    };
    EXPECT_EQ(head(0, BoardModel::HoursRole).toString(), QStringLiteral("6 h free"));
    EXPECT_TRUE(head(0, Qt::AccessibleTextRole).toString().contains(QStringLiteral("free for")));
    EXPECT_TRUE(head(2, BoardModel::LockedRole).toBool());
    EXPECT_TRUE(head(2, Qt::AccessibleTextRole).toString().contains(QStringLiteral("locked")));
    EXPECT_TRUE(head(0, BoardModel::TodayRole).toBool());
}

TEST_F(BoardModelTest, ProposedPotsAreMarkedAndKeptOnesAreNot) {
    show(1);
    const week::WeekPlan kept = m_plan;
    show(2);
    m_model.setProposed(true, kept);
    EXPECT_FALSE(m_model.indexOf(0).data(BoardModel::ProposedRole).toBool());
    EXPECT_TRUE(m_model.indexOf(1).data(BoardModel::ProposedRole).toBool());
    EXPECT_TRUE(m_model.indexOf(1)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .contains(QStringLiteral("proposed")));
    m_model.setProposed(false, kept);
    EXPECT_FALSE(m_model.indexOf(1).data(BoardModel::ProposedRole).toBool());
}

TEST_F(BoardModelTest, DragTellsWhatAndWhere) {
    show(1);
    const std::unique_ptr<QMimeData> pot(potMimeData(legs));
    const std::unique_ptr<QMimeData> placement(m_model.mimeData({m_model.index(0, 1)}));
    EXPECT_EQ(m_model.dropOf(pot.get(), m_model.index(1, 4)),
              (BoardDrop{-1, legs, monday.addDays(4)}));
    EXPECT_EQ(m_model.dropOf(placement.get(), m_model.index(0, 2)),
              (BoardDrop{0, PotId{}, monday.addDays(2)}));
    EXPECT_EQ(m_model.dropOf(pot.get(), {}), std::nullopt);
}

TEST_F(BoardModelTest, TypedStartIsAskedForAndNothingIsChangedByItself) {
    show(1);
    QSignalSpy wanted(&m_model, &BoardModel::startWanted);
    QSignalSpy bad(&m_model, &BoardModel::startNotUnderstood);
    EXPECT_TRUE(m_model.setData(m_model.index(0, 1), QStringLiteral("10:30"), Qt::EditRole));
    EXPECT_FALSE(m_model.setData(m_model.index(0, 1), QStringLiteral("9:00 AM"), Qt::EditRole))
        << "the start it has";
    EXPECT_FALSE(m_model.setData(m_model.index(0, 1), QStringLiteral("later"), Qt::EditRole));
    EXPECT_FALSE(m_model.setData(m_model.index(0, 0), QStringLiteral("10"), Qt::EditRole))
        << "an empty place has no start";
    EXPECT_FALSE(m_model.setData(m_model.index(0, 1), QVariant(), Qt::EditRole))
        << "a view that clears what was dragged away";
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().at(1).toTime(), QTime(10, 30));
    EXPECT_EQ(bad.size(), 1);
    EXPECT_EQ(m_model.plan().placements, m_plan.placements);
}

TEST_F(BoardModelTest, DropsOfPotsAndPlacementsAreAskedFor) {
    show(1);
    QSignalSpy put(&m_model, &BoardModel::putWanted);
    QSignalSpy move(&m_model, &BoardModel::moveWanted);
    const std::unique_ptr<QMimeData> pot(potMimeData(legs));
    const std::unique_ptr<QMimeData> placement(m_model.mimeData({m_model.index(0, 1)}));
    ASSERT_TRUE(placement);
    m_model.dropMimeData(pot.get(), Qt::CopyAction, -1, -1, m_model.index(0, 4));
    m_model.dropMimeData(placement.get(), Qt::MoveAction, 1, 2, {});
    ASSERT_EQ(put.size(), 1);
    EXPECT_EQ(put.first().at(0).value<PotId>(), legs);
    EXPECT_EQ(put.first().at(1).toDate(), monday.addDays(4));
    ASSERT_EQ(move.size(), 1);
    EXPECT_EQ(move.first().at(0).toLongLong(), 0);
    EXPECT_EQ(move.first().at(1).toDate(), monday.addDays(2));

    const QMimeData other;
    EXPECT_FALSE(m_model.canDropMimeData(&other, Qt::CopyAction, 0, 0, {}));
    EXPECT_FALSE(m_model.canDropMimeData(pot.get(), Qt::CopyAction, -1, -1, {}))
        << "beside all days";
    EXPECT_EQ(m_model.mimeData({m_model.index(0, 0)}), nullptr);
}

} // namespace ladlework::ui
