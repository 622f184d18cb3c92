#include "foundation/local_moment.h"

#include <gtest/gtest.h>

using namespace ladlework;

namespace {
struct Case {
    const char* zone;
    QDate day;
    QTime time;
    const char* utc;
};
} // namespace

// Changes as the law of each country has them: United States, second Sunday of March and first of
// November at 2:00 local time; European Union, last Sundays of March and October at 1:00 UTC; New
// South Wales, first Sundays of April (3:00) and October (2:00). A time that is shown twice or not
// at all is read as RFC 5545, section 3.3.5, says.
TEST(LocalMomentTest, findsTheMomentThatTheClocksShow) {
    const QList<Case> cases{
        {"UTC", {2026, 11, 4}, {9, 0}, "2026-11-04T09:00:00Z"},
        {"UTC+03:30", {2026, 11, 4}, {9, 0}, "2026-11-04T05:30:00Z"},
        {"America/New_York", {2026, 1, 15}, {9, 0}, "2026-01-15T14:00:00Z"},
        {"America/New_York", {2026, 7, 15}, {9, 0}, "2026-07-15T13:00:00Z"},
        {"America/New_York", {2026, 3, 8}, {1, 59}, "2026-03-08T06:59:00Z"},
        {"America/New_York", {2026, 3, 8}, {2, 0}, "2026-03-08T07:00:00Z"}, // leapt over
        {"America/New_York", {2026, 3, 8}, {2, 30}, "2026-03-08T07:30:00Z"},
        {"America/New_York", {2026, 3, 8}, {3, 0}, "2026-03-08T07:00:00Z"},
        {"America/New_York", {2026, 11, 1}, {0, 59}, "2026-11-01T04:59:00Z"},
        {"America/New_York", {2026, 11, 1}, {1, 30}, "2026-11-01T05:30:00Z"}, // the first
        {"America/New_York", {2026, 11, 1}, {2, 0}, "2026-11-01T07:00:00Z"},
        {"Europe/Berlin", {2026, 3, 29}, {2, 30}, "2026-03-29T01:30:00Z"},
        {"Europe/Berlin", {2026, 10, 25}, {2, 30}, "2026-10-25T00:30:00Z"},
        {"Australia/Sydney", {2026, 4, 5}, {2, 30}, "2026-04-04T15:30:00Z"},
        {"Australia/Sydney", {2026, 10, 4}, {2, 30}, "2026-10-03T16:30:00Z"},
        {"America/New_York", {2028, 2, 29}, {23, 59}, "2028-03-01T04:59:00Z"},
    };
    for (const Case& one : cases) {
        const QDateTime moment = momentOf(one.day, one.time, QTimeZone(one.zone));
        EXPECT_EQ(moment.timeSpec(), Qt::UTC);
        EXPECT_EQ(moment.toString(Qt::ISODate).toStdString(), one.utc) << one.zone;
    }
}

TEST(LocalMomentTest, isInvalidForWhatIs) {
    const QTimeZone zone("Europe/Berlin");
    EXPECT_FALSE(momentOf(QDate(), QTime(9, 0), zone).isValid());
    EXPECT_FALSE(momentOf(QDate(2026, 11, 4), QTime(), zone).isValid());
    EXPECT_FALSE(momentOf(QDate(2026, 11, 4), QTime(9, 0), QTimeZone("No/Where")).isValid());
}

TEST(LocalMomentTest, tellsTheSecondOfTwo) {
    const QTimeZone zone("America/New_York");
    const QDateTime change(QDate(2026, 11, 1), QTime(6, 0), Qt::UTC);
    EXPECT_FALSE(isShownAgain(change.addSecs(-1), zone));
    EXPECT_TRUE(isShownAgain(change, zone));
    EXPECT_TRUE(isShownAgain(change.addSecs(3599), zone));
    EXPECT_FALSE(isShownAgain(change.addSecs(3600), zone));
    EXPECT_FALSE(isShownAgain(QDateTime(QDate(2026, 3, 8), QTime(7, 0), Qt::UTC), zone));
}
