#include "ui/week/week_screen.h"

#include "ui/shared/family_workbook.h"
#include "ui/shared/week_stepper.h"
#include "ui/week/board_model.h"
#include "ui/week/board_view.h"
#include "ui/week/pot_chooser.h"
#include "ui/week/servings_model.h"
#include "ui/week/shopping_panel.h"
#include "ui/week/week_board.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QLineEdit>
#include <QListView>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class WeekScreenTest : public ::testing::Test {
protected:
    WeekScreenTest() : m_screen(m_family.context(), nullptr) {
        m_family.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        m_view->setFocus();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QList<week::Placement> stored() {
        return m_family.casebook()->plan(FamilyWorkbook::monday()).placements;
    }
    [[nodiscard]] QString lastSentence() {
        const auto entry = m_family.workbook().history().nextUndo();
        return entry ? entry->sentence : QString();
    }
    void goTo(int column) { m_view->setCurrentIndex(m_model->firstEmpty(column)); }
    static QDate day(int column) { return FamilyWorkbook::monday().addDays(column); }

    FamilyWorkbook m_family;
    WeekScreen m_screen;
    BoardView* m_view = m_screen.board()->view();
    BoardModel* m_model = m_screen.board()->model();
};

} // namespace

TEST_F(WeekScreenTest, OpensOnTheWeekOfToday) {
    EXPECT_EQ(m_screen.stepper()->week(), FamilyWorkbook::monday());
    EXPECT_EQ(m_view->currentIndex().column(), 2) << "Wednesday";
    EXPECT_FALSE(m_screen.findings().isEmpty()) << "nobody has anything to drink";
}

TEST_F(WeekScreenTest, PotIsPutOnADayByKeys) {
    goTo(2);
    QTest::keyClick(m_view, Qt::Key_Right);
    QTest::keyClick(m_view, Qt::Key_Return);
    QLineEdit* filter = m_screen.chooser()->filter();
    QTest::keyClicks(filter, QStringLiteral("shank"));
    EXPECT_EQ(m_screen.chooser()->list()->model()->rowCount(), 1);
    QTest::keyClick(filter, Qt::Key_Return);
    ASSERT_EQ(stored().size(), 1);
    EXPECT_EQ(stored().first(), (week::Placement{day(3), m_family.beef, QTime()}));
    EXPECT_EQ(lastSentence(), QStringLiteral("Put Beef shank on Thursday 5 November"));
    EXPECT_EQ(m_model->placementAt(m_view->currentIndex()), 0) << "the new pot is chosen";
}

TEST_F(WeekScreenTest, ReckoningFollowsAtOnce) {
    const ServingsModel* servings = m_screen.board()->servings();
    EXPECT_TRUE(servings->isShort(servings->index(0, 2)));
    const auto shortage = [this] {
        qsizetype count = 0;
        for (const Finding& finding : m_screen.findings())
            count += finding.code == QStringLiteral("week-short") ? 1 : 0;
        return count;
    };
    const qsizetype before = shortage();
    QSignalSpy changed(&m_screen, &FamilyScreen::findingsChanged);
    m_screen.putPot(m_family.beef, day(2));
    EXPECT_TRUE(servings->isShort(servings->index(0, 2))) << "one pot is a little too small";
    EXPECT_TRUE(servings->index(0, 2)
                    .data(Qt::ToolTipRole)
                    .toString()
                    .contains(QStringLiteral("Beef shank, Wednesday")));
    m_screen.putPot(m_family.beef, day(2));
    EXPECT_LT(shortage(), before) << "two pots are enough for the day";
    EXPECT_FALSE(servings->isShort(servings->index(0, 2)));
    EXPECT_EQ(changed.size(), 2);
    ASSERT_TRUE(m_family.workbook().undo());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(shortage(), before);
    EXPECT_TRUE(servings->isShort(servings->index(0, 2)));
}

TEST_F(WeekScreenTest, PotIsMovedAndTakenOffByKeys) {
    m_screen.putPot(m_family.chicken, day(2));
    QTest::keyClick(m_view, Qt::Key_Right, Qt::ControlModifier);
    QTest::keyClick(m_view, Qt::Key_Right, Qt::ControlModifier);
    QTest::keyClick(m_view, Qt::Key_Left, Qt::ControlModifier);
    ASSERT_EQ(stored().size(), 1);
    EXPECT_EQ(stored().first().day, day(3));
    EXPECT_EQ(lastSentence(), QStringLiteral("Moved Chicken legs from Friday 6 November to "
                                             "Thursday 5 November"));
    QTest::keyClick(m_view, Qt::Key_Delete);
    EXPECT_TRUE(stored().isEmpty());
    EXPECT_EQ(lastSentence(), QStringLiteral("Took Chicken legs off Thursday 5 November"));
    QTest::keyClick(m_view, Qt::Key_Delete);
    EXPECT_EQ(lastSentence(), QStringLiteral("Took Chicken legs off Thursday 5 November"));
}

TEST_F(WeekScreenTest, PotStaysInsideTheWeek) {
    m_screen.putPot(m_family.chicken, day(6));
    QTest::keyClick(m_view, Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(stored().first().day, day(6));
    EXPECT_TRUE(m_family.desk().told.isEmpty());
}

TEST_F(WeekScreenTest, StartIsTyped) {
    m_screen.putPot(m_family.chicken, day(2));
    m_view->setFocus();
    QTest::keyClick(m_view, Qt::Key_9);
    auto* editor = m_view->viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    QTest::keyClicks(editor, QStringLiteral(":30"));
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([this] { return stored().first().start == QTime(9, 30); }));
    EXPECT_TRUE(lastSentence().startsWith(QStringLiteral("Set the start of Chicken legs")));
}

TEST_F(WeekScreenTest, BadStartIsToldAndChangesNothing) {
    m_screen.putPot(m_family.chicken, day(2));
    m_model->setData(m_view->currentIndex(), QStringLiteral("soon"), Qt::EditRole);
    QCoreApplication::processEvents();
    EXPECT_FALSE(stored().first().start.isValid());
    ASSERT_EQ(m_family.desk().told.size(), 1);
    EXPECT_TRUE(m_family.desk().told.first().contains(QStringLiteral("soon")));
}

TEST_F(WeekScreenTest, PotIsDroppedOnADay) {
    const std::unique_ptr<QMimeData> pot(potMimeData(m_family.chicken));
    m_model->dropMimeData(pot.get(), Qt::CopyAction, -1, -1, m_model->index(0, 4));
    QCoreApplication::processEvents();
    ASSERT_EQ(stored().size(), 1);
    EXPECT_EQ(stored().first().day, day(4));
}

TEST_F(WeekScreenTest, SeventhCookingOfADayIsRefusedInWords) {
    for (int i = 0; i < 7; ++i)
        m_screen.putPot(m_family.chicken, day(2));
    EXPECT_EQ(stored().size(), 6);
    EXPECT_EQ(m_family.desk().told.size(), 1);
    EXPECT_EQ(m_model->rowCount(), 7);
}

TEST_F(WeekScreenTest, LastWeekIsCopied) {
    m_screen.putPot(m_family.chicken, day(2));
    m_screen.putPot(m_family.beef, day(5));
    QTest::keyClick(&m_screen, Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(m_screen.stepper()->week(), day(7));
    m_screen.copyLastWeek();
    const week::WeekPlan next = m_family.casebook()->plan(day(7));
    ASSERT_EQ(next.placements.size(), 2);
    EXPECT_TRUE(std::any_of(next.placements.cbegin(), next.placements.cend(),
                            [](const auto& placement) { return placement.day == day(9); }));
}

TEST_F(WeekScreenTest, EscapeGivesUpChoosing) {
    goTo(3);
    QTest::keyClick(m_view, Qt::Key_Return);
    QTest::keyClick(m_screen.chooser()->filter(), Qt::Key_Escape);
    EXPECT_TRUE(stored().isEmpty());
    EXPECT_TRUE(m_view->hasFocus());
}

TEST_F(WeekScreenTest, ShoppingListGoesToTheClipboard) {
    m_screen.putPot(m_family.beef, day(2));
    m_screen.shopping()->copyToClipboard();
    EXPECT_TRUE(QGuiApplication::clipboard()->text().contains(QStringLiteral("shank"),
                                                              Qt::CaseInsensitive));
}

TEST_F(WeekScreenTest, FindingLeadsToItsDay) {
    m_screen.showField(QStringLiteral("day:5"));
    EXPECT_EQ(m_view->currentIndex().column(), 5);
    QSignalSpy wanted(&m_screen, &FamilyScreen::screenWanted);
    m_screen.showField(QStringLiteral("tolerances"));
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("members"));
}

} // namespace ladlework::ui
