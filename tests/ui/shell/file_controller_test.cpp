#include "ui/shell/file_controller.h"

#include "ui/shared/workbook_fixture.h"

#include <QFile>
#include <QMenu>

namespace ladlework::ui {

class FileControllerTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_files = new FileController(*m_catalogue, m_clock, m_desk, m_preferences, &m_window);
        m_files->setReceiver([this](std::unique_ptr<store::Workbook> workbook) {
            m_received = std::move(workbook);
        });
    }
    QWidget m_window;
    Preferences m_preferences;
    FileController* m_files = nullptr;
    std::unique_ptr<store::Workbook> m_received;
};

TEST_F(FileControllerTest, makesANewWorkbookWithTheSuffix) {
    m_desk.fileAnswer = m_folder.filePath(QStringLiteral("Mine"));
    m_files->makeNew();
    ASSERT_NE(m_received, nullptr);
    EXPECT_EQ(m_received->path(), m_folder.filePath(QStringLiteral("Mine.ladlework")));
    EXPECT_TRUE(m_received->families().families().isEmpty());
    EXPECT_TRUE(m_desk.told.isEmpty());
    EXPECT_EQ(m_preferences.recentWorkbooks(), QStringList{m_received->path()});
}

TEST_F(FileControllerTest, anExistingFileIsNeverWrittenOver) {
    QFile taken(m_folder.filePath(QStringLiteral("taken.ladlework")));
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    taken.write("something dear");
    taken.close();
    m_desk.fileAnswer = taken.fileName();
    m_files->makeNew();
    EXPECT_EQ(m_received, nullptr);
    EXPECT_EQ(m_desk.told.size(), 1);
    ASSERT_TRUE(taken.open(QIODevice::ReadOnly));
    EXPECT_EQ(taken.readAll(), QByteArray("something dear"));
}

TEST_F(FileControllerTest, thinkingBetterOfItDoesNothing) {
    m_desk.fileAnswer.reset();
    m_files->makeNew();
    m_files->open();
    EXPECT_EQ(m_received, nullptr);
    EXPECT_TRUE(m_desk.told.isEmpty());
}

TEST_F(FileControllerTest, aFileOfAnotherKindIsToldAndNotRemembered) {
    QFile letter(m_folder.filePath(QStringLiteral("letter.txt")));
    ASSERT_TRUE(letter.open(QIODevice::WriteOnly));
    letter.write("Dear Ana");
    letter.close();
    m_desk.fileAnswer = letter.fileName();
    m_files->open();
    EXPECT_EQ(m_received, nullptr);
    EXPECT_EQ(m_desk.told.size(), 1);
    EXPECT_TRUE(m_preferences.recentWorkbooks().isEmpty());
}

TEST_F(FileControllerTest, theSampleIsMadeAnewEachTime) {
    m_files->openSample();
    ASSERT_NE(m_received, nullptr) << m_desk.told.join(u'|').toStdString();
    EXPECT_FALSE(m_received->families().families().isEmpty());
    const QString first = m_received->path();
    m_files->openSample();
    ASSERT_NE(m_received, nullptr);
    EXPECT_NE(m_received->path(), first);
    EXPECT_TRUE(m_preferences.recentWorkbooks().isEmpty()) << "what is not kept is not offered";
}

TEST_F(FileControllerTest, theMenuOffersWhatWasOpenedLast) {
    QMenu menu;
    m_files->fillRecent(menu);
    EXPECT_FALSE(menu.isEnabled());
    m_workbook.reset();
    ASSERT_TRUE(m_files->openPath(path()));
    m_files->fillRecent(menu);
    ASSERT_EQ(menu.actions().size(), 1);
    EXPECT_EQ(menu.actions().first()->text(), QStringLiteral("Test practice"));
}

} // namespace ladlework::ui
