#include "ui/shell/main_window.h"

#include "ui/shared/empty_state.h"
#include "ui/shell/family_pane.h"
#include "ui/shell/navigation.h"
#include "ui/shell/read_only_banner.h"
#include "ui/shell/screen_names.h"
#include "ui/shell/start_page.h"
#include "ui/shell/window_fixture.h"

namespace ladlework::ui {

namespace {

/// Sees every window that is shown beside the main one, if only for a moment.
class FlashWatcher final : public QObject {
public:
    explicit FlashWatcher(const QWidget& window) : m_window(window) {
        qApp->installEventFilter(this);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* widget = qobject_cast<QWidget*>(watched);
        if (event->type() == QEvent::Show && widget != nullptr && widget->isWindow() &&
            widget != &m_window)
            m_seen << QString::fromLatin1(widget->metaObject()->className());
        return false;
    }
    [[nodiscard]] QStringList seen() const { return m_seen; }

private:
    const QWidget& m_window;
    QStringList m_seen;
};

} // namespace

class MainWindowTest : public WindowFixture {};

TEST_F(MainWindowTest, noStrayWindowFlashesUp) {
    const FlashWatcher watcher(*m_window);
    open();
    m_window->windowActions().practice->trigger();
    m_window->windowActions().newFamily->trigger();
    for (const ScreenName& screen : screenNames()) {
        m_window->view()->showFamily(m_ash, screen.id);
        QApplication::processEvents();
    }
    EXPECT_TRUE(watcher.seen().isEmpty()) << watcher.seen().join(u' ').toStdString();
}

TEST_F(MainWindowTest, startsWithThreeHonestChoices) {
    QStringList choices;
    for (const auto* button : m_window->findChild<StartPage*>()->findChildren<QPushButton*>()) {
        if (button->isVisible())
            choices << QString(button->text()).remove(u'&');
    }
    EXPECT_EQ(choices,
              (QStringList{QStringLiteral("New workbook"), QStringLiteral("Open a workbook"),
                           QStringLiteral("Look at the sample")}));
    EXPECT_EQ(m_window->windowTitle(), QStringLiteral("Ladlework"));
    EXPECT_FALSE(m_window->windowActions().newFamily->isEnabled());
}

TEST_F(MainWindowTest, opensAWorkbookOnEveryonesDay) {
    open();
    ASSERT_NE(m_window->view(), nullptr);
    EXPECT_EQ(m_window->windowTitle(), QStringLiteral("Test practice – Ladlework"));
    EXPECT_FALSE(m_window->view()->hasFamily());
    const QStringList texts = visibleTexts();
    EXPECT_TRUE(texts.contains(QStringLiteral("Ashgrove")));
    EXPECT_TRUE(texts.contains(QStringLiteral("Birchwood")));
}

TEST_F(MainWindowTest, openingTheSameFileAgainChangesNothing) {
    open();
    const WorkbookView* before = m_window->view();
    open();
    EXPECT_EQ(m_window->view(), before);
    EXPECT_TRUE(m_window->workbook()->readOnlyReason().isEmpty());
}

TEST_F(MainWindowTest, whatCannotBeOpenedLeavesTheOpenOneAlone) {
    open();
    const Outcome opened =
        m_window->openWorkbook(m_folder.filePath(QStringLiteral("not there.ladlework")));
    EXPECT_FALSE(opened);
    EXPECT_NE(m_window->view(), nullptr);
    EXPECT_EQ(m_window->workbook()->path(), path());
}

TEST_F(MainWindowTest, everyScreenIsReachedByKeyboard) {
    open();
    m_window->view()->showFamily(m_ash, {});
    const auto names = screenNames();
    ASSERT_EQ(names.size(), 8);
    const auto* pane = m_window->findChild<FamilyPane*>();
    for (int number = 8; number >= 1; --number) {
        key(static_cast<Qt::Key>(Qt::Key_0 + number), Qt::ControlModifier);
        EXPECT_EQ(pane->screenId(), names[number - 1].id);
        ASSERT_NE(pane->screen(), nullptr);
        EXPECT_TRUE(pane->screen()->isVisible());
        QWidget* focus = QApplication::focusWidget();
        EXPECT_TRUE(focus != nullptr &&
                    (pane->screen() == focus || pane->screen()->isAncestorOf(focus)))
            << "the focus follows into " << names[number - 1].id.toStdString();
    }
}

TEST_F(MainWindowTest, familiesAreSteppedThroughByKeyboard) {
    open();
    ASSERT_TRUE(waitFor([&] { return m_window->findChild<FamiliesList*>() != nullptr; }));
    key(Qt::Key_PageDown, Qt::ControlModifier);
    const QString first = m_window->view()->familyName();
    EXPECT_FALSE(first.isEmpty());
    key(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_NE(m_window->view()->familyName(), first);
    key(Qt::Key_PageUp, Qt::ControlModifier);
    EXPECT_EQ(m_window->view()->familyName(), first);
    key(Qt::Key_9, Qt::ControlModifier);
    EXPECT_FALSE(m_window->view()->hasFamily());
}

TEST_F(MainWindowTest, aNewFamilyIsTakenOnAndItsMembersAreNext) {
    open();
    key(Qt::Key_N, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("Cedarholm"));
    key(Qt::Key_Return);
    EXPECT_EQ(m_window->view()->familyName(), QStringLiteral("Cedarholm"));
    EXPECT_EQ(m_window->findChild<FamilyPane*>()->screenId(), QStringLiteral("members"));
    EXPECT_TRUE(m_desk.told.isEmpty());
}

TEST_F(MainWindowTest, undoAndRedoThroughTheWindow) {
    open();
    m_window->view()->showFamily(m_birch, {});
    m_window->windowActions().removeFamily->trigger();
    EXPECT_FALSE(m_window->view()->hasFamily());
    EXPECT_EQ(m_window->undoActions().undo()->text(),
              QStringLiteral("&Undo: Removed the family Birchwood"));
    EXPECT_EQ(m_window->workbook()->families().families().size(), 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(m_window->workbook()->families().families().size(), 2);
    EXPECT_EQ(m_window->undoActions().redo()->text(),
              QStringLiteral("&Redo: Removed the family Birchwood"));
    key(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(m_window->workbook()->families().families().size(), 1);
}

TEST_F(MainWindowTest, anUndoThatTakesTheFamilyAwayGoesBackToEveryone) {
    open();
    key(Qt::Key_N, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("Cedarholm"));
    key(Qt::Key_Return);
    ASSERT_TRUE(m_window->view()->hasFamily());
    m_window->undoActions().undo()->trigger();
    EXPECT_FALSE(m_window->view()->hasFamily());
    EXPECT_EQ(m_window->windowTitle(), QStringLiteral("Test practice – Ladlework"));
}

TEST_F(MainWindowTest, aSecondOpenerIsReadOnlyAndSaysSo) {
    open();
    MainWindow second(*m_catalogue, m_clock, m_desk);
    second.show();
    ASSERT_TRUE(second.openWorkbook(path()));
    QApplication::processEvents();
    auto* banner = second.findChild<ReadOnlyBanner*>();
    ASSERT_NE(banner, nullptr);
    EXPECT_TRUE(banner->isVisible());
    EXPECT_TRUE(banner->accessibleName().contains(second.workbook()->readOnlyReason()));
    second.view()->showFamily(m_birch, {});
    second.windowActions().removeFamily->trigger();
    EXPECT_EQ(m_desk.told.size(), 1) << "what is tried is refused in words";
    EXPECT_EQ(second.view()->familyName(), QStringLiteral("Birchwood"));
}

TEST_F(MainWindowTest, closingGoesBackToTheStartPageWithTheFileUnderOpenedLast) {
    open();
    m_window->windowActions().closeWorkbook->trigger();
    EXPECT_EQ(m_window->view(), nullptr);
    const auto* start = m_window->findChild<StartPage*>();
    EXPECT_TRUE(start->isVisible());
    QApplication::processEvents();
    QStringList texts;
    for (const auto* button : start->findChildren<QPushButton*>())
        texts << button->toolTip();
    EXPECT_TRUE(texts.contains(path()));
}

TEST_F(MainWindowTest, textSizeAndThemeMakeTheViewAnewAtTheSamePlace) {
    open();
    m_window->view()->showFamily(m_ash, QStringLiteral("notes"));
    const double before = QApplication::font().pointSizeF();
    key(Qt::Key_Plus, Qt::ControlModifier);
    QApplication::processEvents();
    EXPECT_GT(QApplication::font().pointSizeF(), before);
    EXPECT_EQ(m_window->view()->familyName(), QStringLiteral("Ashgrove"));
    EXPECT_EQ(m_window->findChild<FamilyPane*>()->screenId(), QStringLiteral("notes"));
    key(Qt::Key_0, Qt::ControlModifier);
    QApplication::processEvents();
    EXPECT_EQ(QApplication::font().pointSizeF(), before);
}

TEST_F(MainWindowTest, theMenuOfTheScreenHoldsTheScreensActions) {
    open();
    EXPECT_FALSE(m_window->windowActions().screen->isEnabled());
    m_window->view()->showFamily(m_ash, QStringLiteral("today"));
    QStringList texts;
    for (const QAction* action : m_window->windowActions().screen->actions())
        texts << action->text();
    EXPECT_TRUE(texts.contains(QStringLiteral("Enter what was drunk")));
}

TEST_F(MainWindowTest, fitsASmallScreenWithEveryScreenShown) {
    open();
    for (const ScreenName& screen : screenNames()) {
        m_window->view()->showFamily(m_ash, screen.id);
        QApplication::processEvents();
        EXPECT_LE(m_window->minimumSizeHint().width(), 1366) << screen.id.toStdString();
        EXPECT_LE(m_window->minimumSizeHint().height(), 768) << screen.id.toStdString();
        EXPECT_EQ(m_window->size(), QSize(1366, 768)) << screen.id.toStdString();
    }
}

} // namespace ladlework::ui
