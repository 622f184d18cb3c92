#include "ui/shell/preferences.h"

#include <QFile>
#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ladlework::ui {

class PreferencesTest : public ::testing::Test {
protected:
    PreferencesTest() {
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_folder.path());
    }
    QString makeFile(int number) {
        QFile file(m_folder.filePath(QStringLiteral("%1.ladlework").arg(number)));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        return file.fileName();
    }
    QTemporaryDir m_folder;
    Preferences m_preferences;
};

TEST_F(PreferencesTest, remembersThemeAndTextSizeWithinBounds) {
    EXPECT_EQ(m_preferences.theme(), Preferences::Theme::Follow);
    for (const auto theme :
         {Preferences::Theme::Dark, Preferences::Theme::Light, Preferences::Theme::Follow}) {
        m_preferences.setTheme(theme);
        EXPECT_EQ(Preferences().theme(), theme);
    }
    EXPECT_EQ(m_preferences.textSteps(), 0);
    m_preferences.setTextSteps(99);
    EXPECT_EQ(m_preferences.textSteps(), Preferences::mostTextSteps);
    m_preferences.setTextSteps(-99);
    EXPECT_EQ(m_preferences.textSteps(), Preferences::fewestTextSteps);
}

TEST_F(PreferencesTest, theLatestWorkbooksThatAreStillThere) {
    QStringList made;
    for (int number = 0; number < 10; ++number) {
        made.prepend(makeFile(number));
        m_preferences.rememberWorkbook(made.first());
    }
    EXPECT_EQ(m_preferences.recentWorkbooks(), made.mid(0, 8));
    QFile::remove(made.first());
    m_preferences.rememberWorkbook(made.at(3));
    EXPECT_EQ(m_preferences.recentWorkbooks().first(), made.at(3));
    EXPECT_FALSE(m_preferences.recentWorkbooks().contains(made.first()));
    EXPECT_EQ(m_preferences.recentWorkbooks().size(), 7);
}

} // namespace ladlework::ui
