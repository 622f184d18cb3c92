#include "ui/progress/observations_page.h"

#include "ui/progress/climbing_family.h"
#include "ui/progress/progress_screen.h"
#include "ui/progress/series_chart.h"
#include "ui/shared/by_name.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/problem_line.h"

#include <QComboBox>
#include <QLineEdit>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class ObservationsPageTest : public ::testing::Test {
protected:
    ObservationsPageTest() : m_screen(m_family.workbook.context(), nullptr) {
        m_family.workbook.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        QCoreApplication::processEvents();
        QTest::keyClick(&m_screen, Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
        m_value = byName<QLineEdit>(m_screen, QStringLiteral("Value"));
        m_day = byName<DayEdit>(m_screen, QStringLiteral("Day of the observation"));
        m_table =
            byName<QTableView>(m_screen, QStringLiteral("Values of the series, latest first"));
        m_page = m_screen.findChild<ObservationsPage*>();
    }
    void enter(const QString& day, const QString& value) {
        m_day->setFocus();
        m_day->selectAll();
        QTest::keyClicks(m_day, day);
        QTest::keyClick(m_day, Qt::Key_Tab);
        m_value->setFocus();
        QTest::keyClicks(m_value, value);
        QTest::keyClick(m_value, Qt::Key_Return);
    }
    [[nodiscard]] QList<people::Observation> stored() {
        return m_family.workbook.casebook()->records().observations;
    }
    [[nodiscard]] QString problem() const {
        const auto* line = m_page->findChild<ProblemLine*>();
        return line->isVisible() ? line->sentence() : QString();
    }

    ClimbingFamily m_family;
    ProgressScreen m_screen;
    QLineEdit* m_value = nullptr;
    DayEdit* m_day = nullptr;
    QTableView* m_table = nullptr;
    ObservationsPage* m_page = nullptr;
};

} // namespace

TEST_F(ObservationsPageTest, WeightIsTypedAndSeen) {
    ASSERT_TRUE(m_page->isVisible());
    EXPECT_TRUE(m_value->hasFocus()) << "the shortcut leads to the value";
    enter(QStringLiteral("2026-10-05"), QStringLiteral("160"));
    ASSERT_EQ(stored().size(), 1);
    EXPECT_EQ(stored().first().kind, people::weightKind());
    EXPECT_NEAR(stored().first().value, 72.5748, 1e-3);
    EXPECT_EQ(stored().first().day, QDate(2026, 10, 5));
    EXPECT_TRUE(m_value->text().isEmpty());
    EXPECT_TRUE(m_value->hasFocus()) << "ready for the next";
    ASSERT_EQ(m_table->model()->rowCount(), 1);
    EXPECT_EQ(m_table->model()->index(0, 1).data().toString(), QStringLiteral("160.0 lb"));
    ASSERT_TRUE(m_family.workbook.workbook().undo());
    EXPECT_TRUE(stored().isEmpty());
    EXPECT_FALSE(m_table->isVisible());
}

TEST_F(ObservationsPageTest, LossOfMoreThanFivePerCentIsACaution) {
    enter(QStringLiteral("2026-06-01"), QStringLiteral("160"));
    enter(QStringLiteral("2026-11-03"), QStringLiteral("151"));
    // 160 to 151 lb is 5.6 %; the published limit is 5 % (American Family Physician 2014;89:718).
    EXPECT_TRUE(hasCode(m_screen.findings(), u"weight-loss"));
    auto* chart = m_page->findChild<SeriesChart*>();
    chart->setFocus();
    EXPECT_TRUE(chart->accessibleDescription().contains(QStringLiteral("151.0 lb")));
    QTest::keyClick(chart, Qt::Key_Left);
    EXPECT_TRUE(chart->accessibleDescription().contains(QStringLiteral("160.0 lb")));
    EXPECT_EQ(m_table->currentIndex().row(), 1);
    m_table->setFocus();
    QTest::keyClick(m_table, Qt::Key_Delete);
    EXPECT_EQ(stored().size(), 1);
    EXPECT_FALSE(hasCode(m_screen.findings(), u"weight-loss"));
}

TEST_F(ObservationsPageTest, NonsenseIsSaidBesideTheField) {
    enter(QStringLiteral("2026-10-05"), QStringLiteral("slim"));
    EXPECT_TRUE(problem().contains(QStringLiteral("slim")));
    m_value->clear();
    enter(QStringLiteral("2026-10-05"), QStringLiteral("9000"));
    EXPECT_TRUE(problem().contains(QStringLiteral("880 lb")));
    EXPECT_TRUE(stored().isEmpty());
    EXPECT_TRUE(m_family.workbook.desk().told.isEmpty());
}

TEST_F(ObservationsPageTest, AnotherWordBeginsASeriesOfItsOwn) {
    auto* kind = byName<QComboBox>(m_screen, QStringLiteral("What is observed"));
    kind->setFocus();
    kind->lineEdit()->selectAll();
    QTest::keyClicks(kind->lineEdit(), QStringLiteral("Hours of sleep"));
    auto* unit = byName<QLineEdit>(m_screen, QStringLiteral("Unit"));
    ASSERT_TRUE(unit->isVisible());
    QTest::keyClicks(unit, QStringLiteral("h"));
    enter(QStringLiteral("2026-11-02"), QStringLiteral("7.5"));
    ASSERT_EQ(stored().size(), 1);
    EXPECT_EQ(stored().first().kind, QStringLiteral("Hours of sleep"));
    EXPECT_EQ(m_table->model()->index(0, 1).data().toString(), QStringLiteral("7.5 h"));
    EXPECT_EQ(kind->count(), 2);
    kind->setCurrentIndex(0);
    EXPECT_FALSE(m_table->isVisible()) << "no weight yet";
    EXPECT_FALSE(unit->isVisible());
}

} // namespace ladlework::ui
