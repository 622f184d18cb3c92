#include "ui/shared/day_text.h"

#include <gtest/gtest.h>

namespace ladlework::ui {
namespace {

const QDate today(2026, 11, 4); // a Wednesday
const QLocale american(QLocale::English, QLocale::UnitedStates);
const QLocale british(QLocale::English, QLocale::UnitedKingdom);

struct Case {
    QString text;
    QLocale locale;
    QDate expected;
};

} // namespace

class DayTextTest : public ::testing::Test {};

TEST_F(DayTextTest, readsDaysAsPeopleWriteThem) {
    ASSERT_EQ(today.dayOfWeek(), Qt::Wednesday);
    const std::vector<Case> cases{
        {QStringLiteral("today"), american, today},
        {QStringLiteral(" Yesterday "), american, {2026, 11, 3}},
        {QStringLiteral("tomorrow"), american, {2026, 11, 5}},
        {QStringLiteral("mon"), american, {2026, 11, 2}},
        {QStringLiteral("Wednesday"), american, today},
        {QStringLiteral("thu"), american, {2026, 10, 29}},
        {QStringLiteral("2 Nov"), american, {2026, 11, 2}},
        {QStringLiteral("nov 2"), british, {2026, 11, 2}},
        {QStringLiteral("2 november 2025"), american, {2025, 11, 2}},
        {QStringLiteral("Nov 2, 2025"), american, {2025, 11, 2}},
        {QStringLiteral("Mon, Nov 2, 2026"), american, {2026, 11, 2}},
        {QStringLiteral("11/2"), american, {2026, 11, 2}},
        {QStringLiteral("11/2"), british, {2027, 2, 11}},
        {QStringLiteral("2.11."), british, {2026, 11, 2}},
        {QStringLiteral("11/2/25"), american, {2025, 11, 2}},
        {QStringLiteral("2026-11-02"), british, {2026, 11, 2}},
        {QStringLiteral("2024-02-29"), american, {2024, 2, 29}},
        // Without a year: the nearest one.
        {QStringLiteral("3 Jan"), american, {2027, 1, 3}},
        {QStringLiteral("29 Feb"), american, {2028, 2, 29}},
    };
    for (const Case& one : cases) {
        const Result<QDate> day = parseDay(one.text, today, {}, one.locale);
        ASSERT_TRUE(day) << one.text.toStdString();
        EXPECT_EQ(*day, one.expected)
            << one.text.toStdString() << " gave " << day->toString(Qt::ISODate).toStdString();
    }
}

TEST_F(DayTextTest, theRangeDecidesYearAndWeekday) {
    const DayRange past{{}, today};
    const DayRange toCome{today.addDays(1), {}};
    EXPECT_EQ(*parseDay(QStringLiteral("3 Jan"), today, past, american), QDate(2026, 1, 3));
    EXPECT_EQ(*parseDay(QStringLiteral("mon"), today, toCome, american), QDate(2026, 11, 9));
    EXPECT_EQ(*parseDay(QStringLiteral("1 Nov"), today, toCome, american), QDate(2027, 11, 1));
}

TEST_F(DayTextTest, refusesWhatIsNoDay) {
    for (const QString& text :
         {QString(), QStringLiteral("soon"), QStringLiteral("31 Nov"), QStringLiteral("13/13"),
          QStringLiteral("2026-02-30"), QStringLiteral("29 Feb 2026"), QStringLiteral("12"),
          QStringLiteral("no 2"), QStringLiteral("Nov Dec 2"), QStringLiteral("0 Nov"),
          QStringLiteral("-2 Nov -3 4"), QStringLiteral("Fri 2 Nov 2026")}) {
        const Result<QDate> day = parseDay(text, today, {}, american);
        EXPECT_FALSE(day) << text.toStdString();
        if (!day) {
            EXPECT_EQ(day.error().kind, Problem::Kind::BadInput);
            EXPECT_FALSE(day.error().sentence.isEmpty());
        }
    }
}

TEST_F(DayTextTest, whatIsPrintedReadsBack) {
    for (const QLocale& locale :
         {american, british, QLocale(QLocale::German), QLocale(QLocale::French)}) {
        for (int day = 0; day < 800; day += 7) {
            const QDate date = QDate(2025, 1, 1).addDays(day);
            const Result<QDate> back = parseDay(printDay(date, locale), today, {}, locale);
            ASSERT_TRUE(back) << printDay(date, locale).toStdString();
            EXPECT_EQ(*back, date);
        }
    }
}

} // namespace ladlework::ui
