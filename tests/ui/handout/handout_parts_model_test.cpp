#include "ui/handout/handout_parts_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using casebook::HandoutPart;

class HandoutPartsModelTest : public ::testing::Test {
protected:
    HandoutPartsModelTest() { m_model.setSections(casebook::usualSections()); }
    [[nodiscard]] int rowOf(HandoutPart part) const {
        for (int row = 0; row < m_model.rowCount(); ++row)
            if (m_model.sections().at(row).part == part)
                return row;
        return -1;
    }
    bool tick(HandoutPart part, Qt::CheckState state) {
        return m_model.setData(m_model.index(rowOf(part)), static_cast<int>(state),
                               Qt::CheckStateRole);
    }
    [[nodiscard]] int stateOf(HandoutPart part) const {
        return m_model.index(rowOf(part)).data(Qt::CheckStateRole).toInt();
    }

    HandoutPartsModel m_model;
    QAbstractItemModelTester m_tester{&m_model,
                                      QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(HandoutPartsModelTest, MovesAPartAsFarAsThereArePlaces) {
    QSignalSpy edited(&m_model, &HandoutPartsModel::edited);
    EXPECT_EQ(m_model.move(0, -1), 0);
    EXPECT_EQ(edited.size(), 0);
    EXPECT_EQ(m_model.move(1, -1), 0);
    EXPECT_EQ(m_model.sections().first().part, HandoutPart::Week);
    EXPECT_EQ(m_model.move(0, 3), 3);
    EXPECT_EQ(m_model.sections().at(3).part, HandoutPart::Week);
    EXPECT_EQ(m_model.move(3, 100), m_model.rowCount() - 1);
    EXPECT_EQ(m_model.move(-1, 1), -1);
    EXPECT_EQ(edited.size(), 3);
}

TEST_F(HandoutPartsModelTest, CautionsStayAsLongAsAPotOrALadderIsPrinted) {
    EXPECT_FALSE(tick(HandoutPart::Cautions, Qt::Unchecked));
    EXPECT_FALSE(m_model.index(rowOf(HandoutPart::Cautions)).flags() & Qt::ItemIsUserCheckable);
    EXPECT_TRUE(tick(HandoutPart::Pots, Qt::Unchecked));
    EXPECT_FALSE(tick(HandoutPart::Cautions, Qt::Unchecked));
    EXPECT_TRUE(tick(HandoutPart::Ladders, Qt::Unchecked));
    EXPECT_TRUE(tick(HandoutPart::Cautions, Qt::Unchecked));
    EXPECT_EQ(stateOf(HandoutPart::Cautions), Qt::Unchecked);
    EXPECT_TRUE(tick(HandoutPart::Pots, Qt::Checked));
    EXPECT_EQ(stateOf(HandoutPart::Cautions), Qt::Checked);
}

TEST_F(HandoutPartsModelTest, OnlyPagesOfOwnWordsComeAndGo) {
    const int before = m_model.rowCount();
    EXPECT_FALSE(m_model.mayRemove(0));
    m_model.remove(0);
    EXPECT_EQ(m_model.rowCount(), before);
    EXPECT_EQ(m_model.addPage(0), 1);
    EXPECT_EQ(m_model.addPage(100), before + 1);
    m_model.setTitle(1, QStringLiteral("Letter"));
    m_model.setWords(1, QStringLiteral("Dear all"));
    EXPECT_EQ(m_model.index(1).data().toString(), QStringLiteral("Letter"));
    EXPECT_EQ(m_model.sections().at(1).words, QStringLiteral("Dear all"));
    EXPECT_TRUE(m_model.mayRemove(1));
    m_model.remove(1);
    EXPECT_EQ(m_model.rowCount(), before + 1);
    m_model.setWords(99, QStringLiteral("x"));
}

TEST_F(HandoutPartsModelTest, SaysWhereOwnWordsStand) {
    m_model.setWords(rowOf(HandoutPart::Shopping), QStringLiteral("Ask for feet."));
    EXPECT_EQ(m_model.index(rowOf(HandoutPart::Shopping)).data().toString(),
              QStringLiteral("Shopping list + your words"));
}

} // namespace ladlework::ui
