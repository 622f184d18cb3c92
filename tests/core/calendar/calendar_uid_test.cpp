// RFC 5545, section 3.8.4.7: a calendar knows an entry again by its UID.
#include "core/calendar/calendar_fixture.h"

#include <QHash>
#include <QSet>
#include <QUuid>

namespace ladlework::calendar {
namespace {

using namespace hand_made;

class CalendarUidTest : public CalendarFixture {
protected:
    [[nodiscard]] QSet<QString> uids() const {
        QSet<QString> found;
        for (const Entry& entry : entries())
            found.insert(entry.uid);
        return found;
    }
};

TEST_F(CalendarUidTest, everyEntryHasItsOwn) {
    plan().placements.append({monday, legs, QTime(15, 0)});
    plan().placements.append({monday.addDays(2), legs, QTime()});
    EXPECT_EQ(uids().size(), entries().size());
    for (const QString& uid : uids())
        EXPECT_EQ(QUuid::fromString(uid).version(), QUuid::Sha1) << qPrintable(uid);
}

TEST_F(CalendarUidTest, staysWhenACookingIsMovedOrToldAnotherWay) {
    const QSet<QString> before = uids();
    plan().placements[0].day = monday.addDays(1);
    plan().placements[0].start = QTime(16, 0);
    EXPECT_EQ(uids(), before);
    std::swap(plan().placements[0], plan().placements[1]);
    EXPECT_EQ(uids(), before) << "the order of the records does not matter";
    records.family.name = QStringLiteral("Hartley-Ruiz");
    records.practice.name = QStringLiteral("Another name");
    records.family.zone = QTimeZone("Europe/Berlin");
    records.members[0].name = QStringLiteral("Anna Hartley");
    options.names = casebook::Names::None;
    options.familyInTitles = true;
    EXPECT_EQ(uids(), before);
}

TEST_F(CalendarUidTest, aStartThatIsSetLaterTurnsTheWholeDayIntoATime) {
    plan().placements = {{monday, legs, QTime()}};
    const QString before = titled(QStringLiteral("Cook Chicken legs")).uid;
    plan().placements[0].start = QTime(9, 0);
    EXPECT_EQ(titled(QStringLiteral("Cook Chicken legs")).uid, before);
}

TEST_F(CalendarUidTest, familiesAndWeeksDoNotShareOne) {
    const QSet<QString> before = uids();
    records.family.id = FamilyId{2};
    EXPECT_FALSE(uids().intersects(before));
    records.family.id = FamilyId{1};
    records.family.since = records.family.since.addDays(1);
    EXPECT_FALSE(uids().intersects(before)) << "a family of another workbook";
    records.family.since = records.family.since.addDays(-1);
    plan().start = monday.addDays(7);
    for (week::Placement& placement : plan().placements)
        placement.day = placement.day.addDays(7);
    options.from = monday.addDays(7);
    EXPECT_FALSE(uids().intersects(before));
}

} // namespace
} // namespace ladlework::calendar
