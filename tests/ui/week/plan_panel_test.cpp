#include "ui/week/plan_panel.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class PlanPanelTest : public ::testing::Test {
protected:
    [[nodiscard]] QPushButton* button(const QString& words) const {
        for (QPushButton* found : m_panel.findChildren<QPushButton*>())
            if (found->text() == words && found->isVisibleTo(&m_panel))
                return found;
        return nullptr;
    }
    [[nodiscard]] int linesWith(const QString& words) const {
        int count = 0;
        for (const QLabel* label : m_panel.findChildren<QLabel*>())
            count += label->text().contains(words) && label->isVisibleTo(&m_panel) ? 1 : 0;
        return count;
    }
    PlanPanel m_panel;
};

} // namespace

TEST_F(PlanPanelTest, HiddenWhileThereIsNothingToSay) {
    EXPECT_TRUE(m_panel.isHidden());
    m_panel.showWorking(QStringLiteral("Planning"), 2, 7);
    EXPECT_FALSE(m_panel.isHidden());
    EXPECT_TRUE(m_panel.isWorking());
    EXPECT_EQ(m_panel.words(), QStringLiteral("Planning"));
    m_panel.clear();
    EXPECT_TRUE(m_panel.isHidden());
    EXPECT_FALSE(m_panel.isWorking());
}

TEST_F(PlanPanelTest, CanBeStoppedWhileItWorks) {
    QSignalSpy wanted(&m_panel, &PlanPanel::cancelWanted);
    m_panel.showWorking(QStringLiteral("Planning"), 0, 0);
    QTest::keyClick(m_panel.cancelButton(), Qt::Key_Space);
    EXPECT_EQ(wanted.size(), 1);
    m_panel.showResult(QStringLiteral("Proven"), {});
    EXPECT_FALSE(m_panel.cancelButton()->isVisibleTo(&m_panel));
}

TEST_F(PlanPanelTest, FirstHintsAreShownAndTheRestOnRequest) {
    QList<PlanHint> hints;
    for (int i = 0; i < 5; ++i)
        hints << PlanHint{QStringLiteral("In the way %1.").arg(i), QStringLiteral("Would help."),
                          QStringLiteral("members")};
    m_panel.showResult(QStringLiteral("Short"), hints);
    EXPECT_EQ(linesWith(QStringLiteral("In the way")), 1);
    QPushButton* more = button(QStringLiteral("4 more"));
    ASSERT_NE(more, nullptr);
    QTest::keyClick(more, Qt::Key_Space);
    QCoreApplication::processEvents(); // a layout shows what it was given a little later
    EXPECT_EQ(linesWith(QStringLiteral("In the way")), 5);
    QSignalSpy wanted(&m_panel, &PlanPanel::screenWanted);
    QTest::keyClick(button(QStringLiteral("Members")), Qt::Key_Space);
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("members"));
    m_panel.showResult(QStringLiteral("Proven"), {});
    EXPECT_EQ(linesWith(QStringLiteral("In the way")), 0);
}

} // namespace ladlework::ui
