#include "ui/week/kept_weeks.h"

#include "ui/shared/family_workbook.h"

#include <QAction>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class KeptWeeksTest : public ::testing::Test {
protected:
    KeptWeeksTest() {
        m_plan.family = m_family.family;
        m_plan.start = FamilyWorkbook::monday();
        m_plan.placements = {{FamilyWorkbook::monday().addDays(2), m_family.beef, QTime(9, 0)}};
        show();
        QObject::connect(&m_family.workbook(), &store::Workbook::changed, &m_weeks,
                         [this] { show(); });
    }
    void show() { m_weeks.showWeeks(m_family.casebook(), m_plan); }
    void keepAs(const QString& name) {
        m_keep.trigger();
        m_weeks.nameField()->setText(name);
        QTest::keyClick(m_weeks.nameField(), Qt::Key_Return);
    }
    [[nodiscard]] QList<week::WeekTemplate> stored() {
        return m_family.workbook().weeks().templates(m_family.family);
    }
    [[nodiscard]] QAction* inMenu(int kept, int what) const {
        return m_weeks.menu()->actions().at(2 + kept)->menu()->actions().at(what);
    }

    FamilyWorkbook m_family;
    week::WeekPlan m_plan;
    QAction m_keep{QStringLiteral("Keep this week"), nullptr};
    KeptWeeks m_weeks{m_family.context(), &m_keep};
};

} // namespace

TEST_F(KeptWeeksTest, WeekIsKeptUnderANameAndUsed) {
    EXPECT_FALSE(m_weeks.isVisibleTo(nullptr));
    keepAs(QStringLiteral("School & work"));
    ASSERT_EQ(stored().size(), 1);
    EXPECT_EQ(stored().first().name, QStringLiteral("School & work"));
    EXPECT_EQ(stored().first().placements,
              (QList<week::TemplatePlacement>{{2, m_family.beef, QTime(9, 0)}}));
    EXPECT_TRUE(m_weeks.isHidden());
    EXPECT_EQ(m_weeks.menu()->actions().at(2)->text(), QStringLiteral("School && work"));
    QSignalSpy wanted(&m_weeks, &KeptWeeks::useWanted);
    inMenu(0, 0)->trigger();
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().first().value<week::WeekTemplate>().name, stored().first().name);
}

TEST_F(KeptWeeksTest, IsRenamedAndRemoved) {
    keepAs(QStringLiteral("School"));
    inMenu(0, 1)->trigger();
    EXPECT_EQ(m_weeks.nameField()->text(), QStringLiteral("School"));
    m_weeks.nameField()->setText(QStringLiteral("Summer"));
    QTest::keyClick(m_weeks.nameField(), Qt::Key_Return);
    ASSERT_EQ(stored().size(), 1);
    EXPECT_EQ(stored().first().name, QStringLiteral("Summer"));
    inMenu(0, 2)->trigger();
    EXPECT_TRUE(stored().isEmpty());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(stored().size(), 1);
}

TEST_F(KeptWeeksTest, BadNamesAreToldAndTheFieldStays) {
    keepAs(QStringLiteral("School"));
    for (const QString& bad : {QStringLiteral("  "), QStringLiteral("School")}) {
        m_family.desk().told.clear();
        keepAs(bad);
        EXPECT_EQ(m_family.desk().told.size(), 1) << bad.toStdString();
        EXPECT_FALSE(m_weeks.isHidden());
        EXPECT_EQ(stored().size(), 1);
    }
    QTest::keyClick(m_weeks.nameField(), Qt::Key_Escape);
    EXPECT_TRUE(m_weeks.isHidden());
}

TEST_F(KeptWeeksTest, EmptyWeekIsNotKept) {
    m_plan.placements.clear();
    show();
    EXPECT_FALSE(m_keep.isEnabled());
}

} // namespace ladlework::ui
