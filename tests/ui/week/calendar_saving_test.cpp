#include "ui/week/calendar_saving.h"

#include "ui/shared/family_workbook.h"
#include "ui/week/week_screen.h"

#include <QAction>
#include <QFile>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class CalendarSavingTest : public ::testing::Test {
protected:
    bool save(const QList<calendar::ThawMove>& thaws = {}) {
        return saveForCalendar(nullptr, m_family.context(), *m_family.casebook(),
                               FamilyWorkbook::monday(), thaws);
    }
    [[nodiscard]] QByteArray saved() const {
        QFile file(m_family.file(QStringLiteral("week.ics")));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void planAPot() {
        m_family.plan(FamilyWorkbook::monday(),
                      {{FamilyWorkbook::today(), m_family.chicken, QTime(9, 0)}});
        m_family.desk().fileAnswer = m_family.file(QStringLiteral("week.ics"));
    }
    FamilyWorkbook m_family;
};

} // namespace

TEST_F(CalendarSavingTest, SavesTheWeekWhereThePersonSays) {
    planAPot();
    EXPECT_TRUE(save({{FamilyWorkbook::today(), QStringLiteral("Beef shank, jar 2"),
                       quantity::Volume::fromCups(2)}}));
    EXPECT_TRUE(m_family.desk().told.isEmpty());
    EXPECT_TRUE(m_family.desk().lastSuggested.endsWith(QStringLiteral(", 2026-11-02.ics")))
        << qPrintable(m_family.desk().lastSuggested);
    EXPECT_FALSE(m_family.desk().lastSuggested.contains(QLatin1Char(':')));
    EXPECT_TRUE(saved().contains("SUMMARY:Cook Chicken legs"));
    EXPECT_TRUE(saved().contains("SUMMARY:Thaw 2 cups of Beef shank\\, jar 2"));
}

TEST_F(CalendarSavingTest, AWeekWithNothingInItIsSaidInWords) {
    EXPECT_FALSE(save());
    EXPECT_TRUE(m_family.desk().asked.isEmpty());
    ASSERT_EQ(m_family.desk().told.size(), 1);
    EXPECT_TRUE(m_family.desk().told.first().contains(QStringLiteral("nothing for a calendar")));
}

TEST_F(CalendarSavingTest, ThinkingBetterOfItWritesNothing) {
    planAPot();
    m_family.desk().fileAnswer.reset();
    EXPECT_FALSE(save());
    EXPECT_TRUE(m_family.desk().told.isEmpty());
    EXPECT_TRUE(saved().isEmpty());
}

TEST_F(CalendarSavingTest, TheWorkbookIsNeverReplaced) {
    planAPot();
    m_family.desk().fileAnswer = m_family.workbook().path();
    EXPECT_FALSE(save());
    ASSERT_EQ(m_family.desk().told.size(), 1);
    EXPECT_TRUE(m_family.desk().told.first().contains(QStringLiteral("workbook")));
}

TEST_F(CalendarSavingTest, TheWeekScreenHasAnActionForIt) {
    planAPot();
    WeekScreen screen(m_family.context(), nullptr);
    m_family.attach(screen);
    for (QAction* action : screen.actions()) {
        if (!action->text().remove(QLatin1Char('&')).startsWith(QStringLiteral("Save for a cal")))
            continue;
        EXPECT_FALSE(action->statusTip().isEmpty());
        action->trigger();
        EXPECT_TRUE(saved().contains("SUMMARY:Cook Chicken legs"));
        return;
    }
    FAIL() << "no such action";
}

} // namespace ladlework::ui
