#include "ui/shared/scripted_desk.h"
#include "ui/shell/main_window.h"
#include "ui/shell/window_actions.h"
#include "ui/walk/keyboard_hands.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QProcess>
#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

/// From "new" to "printed week" by keyboard alone, in the real window on a real workbook.
class MainJobWalkTest : public ::testing::Test {
protected:
    MainJobWalkTest() : m_catalogue(*kitchen::Catalogue::load()) {
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_folder.path());
        m_window = std::make_unique<MainWindow>(m_catalogue, m_clock, m_desk);
        m_window->resize(1366, 700);
        m_hands = std::make_unique<KeyboardHands>(*m_window);
    }

    void screen(int number) {
        m_hands->press(static_cast<Qt::Key>(Qt::Key_0 + number), Qt::ControlModifier);
    }
    void fill(const QString& field, const QString& text) {
        ASSERT_TRUE(m_hands->tabTo(field))
            << "cannot reach " << field.toStdString() << "; the focus is on "
            << m_hands->focusName().toStdString();
        m_hands->type(text);
        m_hands->press(Qt::Key_Return);
    }
    void push(const QString& button) {
        ASSERT_TRUE(m_hands->tabTo(button)) << "cannot reach " << button.toStdString();
        m_hands->press(Qt::Key_Space);
    }
    [[nodiscard]] store::Workbook& workbook() { return *m_window->workbook(); }
    [[nodiscard]] casebook::FamilyRecords records() {
        return *workbook().records(workbook().families().families().first().id);
    }

    void takeOnFamily() {
        m_desk.fileAnswer = m_folder.filePath(QStringLiteral("walk.ladlework"));
        m_hands->press(m_window->windowActions().newWorkbook->shortcut());
        ASSERT_NE(m_window->workbook(), nullptr) << m_desk.told.join(u'\n').toStdString();
        m_hands->press(m_window->windowActions().newFamily->shortcut());
        m_hands->type(QStringLiteral("Harrow"));
        m_hands->press(Qt::Key_Return);
        ASSERT_EQ(workbook().families().families().size(), 1)
            << m_hands->focusName().toStdString() << m_desk.told.join(u'\n').toStdString();
    }
    void addMember(const QString& name, const QString& born) {
        screen(2);
        m_hands->press(Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
        m_hands->type(name);
        m_hands->press(Qt::Key_Return);
        m_hands->type(born);
        m_hands->press(Qt::Key_Return);
    }
    void addVessel() {
        ASSERT_TRUE(m_hands->tabTo(QStringLiteral("Members of the family")));
        m_hands->press(Qt::Key_End);
        push(QStringLiteral("Add a vessel"));
        ASSERT_EQ(records().vessels.size(), 1);
    }
    void setTargetAndLadder() {
        push(QStringLiteral("Set this target")); // the usual one of an adult
        fill(QStringLiteral("First amount of the ladder"), QStringLiteral("1 tsp"));
        ASSERT_EQ(records().targets.size(), 1);
        ASSERT_EQ(records().ladders.size(), 1) << m_desk.told.join(u'\n').toStdString();
        // A teaspoon is 4.93 mL in US measures and 5 mL in metric ones (21 CFR 101.9(b)(5)(viii)).
        EXPECT_NEAR(records().ladders.first().rungs.first().toMillilitres(), 4.965, 0.04);
    }
    void buildPot() {
        screen(3);
        m_hands->press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
        ASSERT_EQ(records().pots.size(), 1) << m_desk.told.join(u'\n').toStdString();
        m_hands->type(QStringLiteral("Harrow legs and feet"));
        m_hands->press(Qt::Key_Return);
        fill(QStringLiteral("Water"), QStringLiteral("3 qt"));
        EXPECT_EQ(records().pots.first().name, QStringLiteral("Harrow legs and feet"));
        EXPECT_NEAR(records().pots.first().water.toQuarts(), 3.0, 1e-9);
    }
    void planWeek() {
        screen(6);
        ASSERT_TRUE(m_hands->tabTo(QStringLiteral("Pots of the week")) ||
                    !m_hands->focusName().isEmpty());
        m_hands->press(Qt::Key_Return); // a pot for the day in hand
        m_hands->press(Qt::Key_Return); // the first of the pots
        ASSERT_EQ(records().weeks.size(), 1) << m_hands->focusName().toStdString();
        ASSERT_EQ(records().weeks.first().placements.size(), 1);
    }
    void logFirstDay() {
        screen(4);
        m_hands->type(QStringLiteral("1 tsp"));
        m_hands->press(Qt::Key_Return);
        ASSERT_EQ(records().entries.size(), 1) << m_hands->focusName().toStdString();
        EXPECT_EQ(records().entries.first().day, QDate(2026, 11, 4));
    }
    QString printHandout() {
        screen(7);
        const QString pdf = m_folder.filePath(QStringLiteral("walk.pdf"));
        m_desk.fileAnswer = pdf;
        m_hands->press(QKeySequence(QKeySequence::Save));
        EXPECT_TRUE(QFile::exists(pdf)) << m_desk.told.join(u'\n').toStdString();
        QProcess reader;
        reader.start(QStringLiteral("pdftotext"),
                     {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
        EXPECT_TRUE(reader.waitForFinished());
        return QString::fromUtf8(reader.readAllStandardOutput());
    }

    QTemporaryDir m_folder;
    FixedClock m_clock{QDateTime(QDate(2026, 11, 4), QTime(15, 0), Qt::UTC)};
    ScriptedDesk m_desk;
    kitchen::Catalogue m_catalogue;
    std::unique_ptr<MainWindow> m_window;
    std::unique_ptr<KeyboardHands> m_hands;
};

} // namespace

// The text is read back by an independent program: pdftotext of poppler-utils.
TEST_F(MainJobWalkTest, GoesFromNewFamilyToPrintedWeekByKeyboardAlone) {
    ASSERT_NO_FATAL_FAILURE(takeOnFamily());
    addMember(QStringLiteral("Nell Harrow"), QStringLiteral("1988-04-12"));
    ASSERT_EQ(records().members.size(), 1) << m_desk.told.join(u'\n').toStdString();
    ASSERT_NO_FATAL_FAILURE(setTargetAndLadder());
    ASSERT_NO_FATAL_FAILURE(addVessel());
    ASSERT_NO_FATAL_FAILURE(buildPot());
    ASSERT_NO_FATAL_FAILURE(planWeek());
    ASSERT_NO_FATAL_FAILURE(logFirstDay());
    const QString pages = printHandout();
    const casebook::FamilyRecords kept = records();
    const auto printed = [&](quantity::Volume volume) {
        return quantity::printVolume(volume, kept.family.measures);
    };
    for (const QString& words :
         {QStringLiteral("Nell"), QStringLiteral("Harrow legs and feet"),
          printed(kept.pots.first().water), printed(kept.ladders.first().rungs.first()),
          QStringLiteral("Shopping list"), QStringLiteral("within 2 hours"),
          QStringLiteral("Whom to call")})
        EXPECT_TRUE(pages.contains(words)) << words.toStdString() << " in\n" << pages.toStdString();
    EXPECT_TRUE(m_desk.told.isEmpty()) << m_desk.told.join(u'\n').toStdString();
}

TEST_F(MainJobWalkTest, EveryStepOfTheWalkIsTakenBackOneByOne) {
    ASSERT_NO_FATAL_FAILURE(takeOnFamily());
    addMember(QStringLiteral("Nell Harrow"), QStringLiteral("1988-04-12"));
    ASSERT_NO_FATAL_FAILURE(setTargetAndLadder());
    const int steps = static_cast<int>(workbook().history().latest(100).size());
    ASSERT_GE(steps, 4);
    screen(1);
    for (int step = 0; step < steps; ++step)
        m_hands->press(QKeySequence(QKeySequence::Undo));
    EXPECT_TRUE(workbook().families().families().isEmpty());
    EXPECT_FALSE(workbook().history().nextUndo());
    for (int step = 0; step < steps; ++step)
        m_hands->press(Qt::Key_Y, Qt::ControlModifier);
    ASSERT_EQ(workbook().families().families().size(), 1);
    EXPECT_EQ(records().ladders.size(), 1);
}

TEST_F(MainJobWalkTest, WhatIsBeingTypedStaysWithItsFamily) {
    ASSERT_NO_FATAL_FAILURE(takeOnFamily());
    m_hands->press(m_window->windowActions().newFamily->shortcut());
    m_hands->type(QStringLiteral("Inwood"));
    m_hands->press(Qt::Key_Return);
    const QList<people::Family> families = workbook().families().families();
    ASSERT_EQ(families.size(), 2);
    screen(8);
    m_hands->press(Qt::Key_T, Qt::ControlModifier); // a new note of Inwood
    m_hands->type(QStringLiteral("Half a sentence"));
    m_hands->press(m_window->windowActions().previousFamily->shortcut());
    screen(8);
    EXPECT_TRUE(workbook().notes().notes(families.first().id).isEmpty());
    const QList<casebook::VisitNote> kept = workbook().notes().notes(families.last().id);
    ASSERT_EQ(kept.size(), 1);
    EXPECT_EQ(kept.first().text, QStringLiteral("Half a sentence"));
}

} // namespace ladlework::ui
