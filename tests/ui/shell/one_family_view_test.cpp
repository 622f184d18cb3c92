#include "exchange/sample_practice.h"
#include "ui/shell/command_list.h"
#include "ui/shell/family_pane.h"
#include "ui/shell/screen_names.h"
#include "ui/shell/window_fixture.h"

namespace ladlework::ui {

/// While a client looks on, no other family's name is on screen: looked for in every text of every
/// screen, in the menus, the title and the command list.
class OneFamilyViewTest : public WindowFixture {
protected:
    /// A word of every text that names a person or a family of elsewhere; empty when there is none.
    [[nodiscard]] QString leak(const QStringList& foreign) const {
        for (const QString& text : visibleTexts()) {
            for (const QString& name : foreign) {
                if (text.contains(name))
                    return name + QStringLiteral(" in: ") + text;
            }
        }
        return {};
    }
};

TEST_F(OneFamilyViewTest, noOtherNameOnAnyScreen) {
    open();
    m_window->view()->showFamily(m_ash, {});
    EXPECT_FALSE(leak({QStringLiteral("Birchwood")}).isEmpty()) << "the search itself works";
    key(Qt::Key_F9);
    ASSERT_TRUE(m_window->view()->isOneFamily());
    for (const ScreenName& screen : screenNames()) {
        m_window->view()->showScreen(screen.id);
        QApplication::processEvents();
        const QString found = leak({QStringLiteral("Birchwood"), QStringLiteral("Test practice")});
        EXPECT_TRUE(found.isEmpty()) << screen.id.toStdString() << ": " << found.toStdString();
    }
    EXPECT_EQ(m_window->windowTitle(), QStringLiteral("Ashgrove – Ladlework"));
    m_window->windowActions().commands->trigger();
    EXPECT_TRUE(m_window->commandList().isVisible());
    EXPECT_TRUE(leak({QStringLiteral("Birchwood"), QStringLiteral("Test practice")}).isEmpty());
}

TEST_F(OneFamilyViewTest, nobodyOfTheSamplePracticeShowsBesideTheOneFamily) {
    const QString sample = m_folder.filePath(QStringLiteral("sample.ladlework"));
    ASSERT_TRUE(exchange::createSamplePractice(sample, *m_catalogue, m_clock));
    ASSERT_TRUE(m_window->openWorkbook(sample));
    auto& families = m_window->workbook()->families();
    const QList<people::Family> all = families.families();
    ASSERT_GE(all.size(), 2);
    QStringList foreign;
    for (const people::Family& family : all.mid(1)) {
        foreign << family.name;
        for (const people::Member& member : families.members(family.id))
            foreign << member.name;
    }
    m_window->view()->showFamily(all.first().id, {});
    m_window->windowActions().oneFamily->trigger();
    for (const ScreenName& screen : screenNames()) {
        m_window->view()->showScreen(screen.id);
        QApplication::processEvents();
        const QString found = leak(foreign);
        EXPECT_TRUE(found.isEmpty()) << screen.id.toStdString() << ": " << found.toStdString();
    }
}

TEST_F(OneFamilyViewTest, theKeysThatLeadElsewhereDoNothing) {
    open();
    m_window->view()->showFamily(m_ash, {});
    key(Qt::Key_F9);
    for (const Qt::Key one :
         {Qt::Key_9, Qt::Key_F, Qt::Key_N, Qt::Key_PageDown, Qt::Key_H, Qt::Key_Comma}) {
        key(one, Qt::ControlModifier);
        EXPECT_EQ(m_window->view()->familyName(), QStringLiteral("Ashgrove"));
        EXPECT_TRUE(leak({QStringLiteral("Birchwood")}).isEmpty());
    }
    key(Qt::Key_F8);
    EXPECT_TRUE(leak({QStringLiteral("Birchwood")}).isEmpty());
    m_window->view()->showFamily(m_birch, {});
    EXPECT_EQ(m_window->view()->familyName(), QStringLiteral("Ashgrove"));
}

TEST_F(OneFamilyViewTest, onlyWhatWasDoneInItCanBeTakenBack) {
    open();
    m_window->view()->showFamily(m_birch, {});
    m_window->windowActions().removeFamily->trigger();
    m_window->view()->showFamily(m_ash, {});
    key(Qt::Key_F9);
    EXPECT_FALSE(m_window->undoActions().undo()->isEnabled());
    EXPECT_EQ(m_window->undoActions().undo()->text(), QStringLiteral("&Undo"));
    store::Workbook& workbook = *m_window->workbook();
    people::Family ash = workbook.families().families().first();
    ash.remarks = QStringLiteral("likes it salty");
    ASSERT_TRUE(workbook.act(QStringLiteral("Changed the remarks"), [&](store::Action& action) {
        return workbook.families().changeFamily(action, ash);
    }));
    EXPECT_TRUE(m_window->undoActions().undo()->isEnabled());
    m_window->undoActions().undo()->trigger();
    EXPECT_FALSE(m_window->undoActions().undo()->isEnabled());
    EXPECT_TRUE(m_window->undoActions().redo()->isEnabled());
    key(Qt::Key_F9);
    EXPECT_TRUE(m_window->undoActions().undo()->isEnabled()) << "all of it outside of the view";
}

TEST_F(OneFamilyViewTest, leavingItBringsTheListBack) {
    open();
    m_window->view()->showFamily(m_ash, {});
    key(Qt::Key_F9);
    const auto* list = m_window->findChild<FamiliesList*>();
    EXPECT_FALSE(list->isVisible());
    key(Qt::Key_F9);
    EXPECT_TRUE(list->isVisible());
    EXPECT_EQ(m_window->windowTitle(), QStringLiteral("Ashgrove – Test practice – Ladlework"));
}

TEST_F(OneFamilyViewTest, withoutAFamilyThereIsNoSuchView) {
    open();
    EXPECT_FALSE(m_window->windowActions().oneFamily->isEnabled());
    m_window->view()->setOneFamily(true);
    EXPECT_FALSE(m_window->view()->isOneFamily());
}

} // namespace ladlework::ui
