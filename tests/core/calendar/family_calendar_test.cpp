#include "core/calendar/calendar_fixture.h"
#include "core/calendar/calendar_reader.h"

#include "casebook/cooking_steps.h"

namespace ladlework::calendar {
namespace {

using namespace hand_made;

/// Ben tries beef again from Wednesday on, and a review is set for Friday.
class FamilyCalendarTest : public CalendarFixture {
protected:
    FamilyCalendarTest() {
        people::RetryPlan retry;
        retry.id = RetryPlanId{1};
        retry.member = ben;
        retry.subject = {people::Subject::Kind::Animal, QStringLiteral("beef")};
        retry.start = today;
        retry.watchDays = 2;
        retry.steps = {quantity::Volume::fromTeaspoons(1), quantity::Volume::fromTablespoons(1)};
        records.retryPlans = {retry};
        records.family.reviewOn = monday.addDays(4);
    }
    [[nodiscard]] QString allWords() const {
        QString text;
        for (const Entry& entry : entries()) {
            text += entry.title + QLatin1Char('\n') + entry.details + QLatin1Char('\n');
            for (const Alarm& alarm : entry.alarms)
                text += alarm.words + QLatin1Char('\n');
        }
        return text;
    }
    [[nodiscard]] QString name() const {
        return calendarName(casebook::Casebook(records, catalogue, today), options.names);
    }
};

TEST_F(FamilyCalendarTest, holdsNewTriesAndTheReview) {
    const Entry first = titled(QStringLiteral("Ben tries 1 tsp of stock with beef"));
    EXPECT_EQ(first.day, today);
    EXPECT_EQ(first.details, QStringLiteral("Step 1 of 2.\nThen watch for 2 days without it."));
    EXPECT_EQ(titled(QStringLiteral("Ben tries 1 tbsp of stock with beef")).day, today.addDays(3));
    const Entry review = titled(QStringLiteral("Review with Ines Moreau"));
    EXPECT_EQ(review.day, monday.addDays(4));
    EXPECT_TRUE(review.details.contains(QStringLiteral("555 0142")));
    // A red flag: his ladder stops, and so do the tries.
    records.reactions[0].member = ben;
    records.reactions[0].day = today;
    EXPECT_TRUE(titles().filter(QStringLiteral("tries")).isEmpty());
}

TEST_F(FamilyCalendarTest, aReviewThatAnEarlierOneWasPutOffToIsToldOnce) {
    casebook::VisitNote note;
    note.id = NoteId{3};
    note.reviewOn = monday.addDays(5);
    records.notes = {note};
    EXPECT_EQ(titled(QStringLiteral("Review with Ines Moreau")).day, monday.addDays(5));
}

TEST_F(FamilyCalendarTest, comesInOrderOfTimeAndOnlyOfTheDaysAskedFor) {
    QDateTime before;
    for (const Entry& entry : entries()) {
        const QDateTime begin = entry.isOfWholeDay()
                                    ? QDateTime(entry.day, QTime(0, 0), records.family.zone)
                                    : entry.start;
        EXPECT_TRUE(!before.isValid() || before <= begin) << qPrintable(entry.title);
        before = begin;
    }
    options.days = 1;
    EXPECT_TRUE(titles().filter(QStringLiteral("Beef")).isEmpty());
    options.from = monday.addDays(-100);
    options.days = 28;
    EXPECT_TRUE(entries().isEmpty());
}

TEST_F(FamilyCalendarTest, namesPeopleAsItIsAskedTo) {
    records.practice.practitioner.clear();
    options.names = casebook::Names::None;
    for (const QString& hidden :
         {QStringLiteral("Ana"), QStringLiteral("Ben"), QStringLiteral("Mia"),
          QStringLiteral("Leo"), QStringLiteral("Hartley")})
        EXPECT_FALSE(QString(allWords() + name()).contains(hidden)) << qPrintable(hidden);
    EXPECT_TRUE(allWords().contains(QStringLiteral("Member 2 tries")));
    EXPECT_EQ(name(), QStringLiteral("Stock"));
    options.names = casebook::Names::First;
    EXPECT_FALSE(QString(allWords() + name()).contains(QStringLiteral("Hartley")));
    EXPECT_EQ(name(), QStringLiteral("Stock: Ana, Ben, Mia, Leo"));
    options.names = casebook::Names::Full;
    EXPECT_TRUE(allWords().contains(QStringLiteral("Not for Ben Hartley")));
    EXPECT_EQ(name(), QStringLiteral("Stock: Hartley"));
}

TEST_F(FamilyCalendarTest, tellsFamiliesApartInACalendarOfSeveral) {
    options.familyInTitles = true;
    options.names = casebook::Names::Full;
    EXPECT_TRUE(titles().contains(QStringLiteral("Hartley: Cook Chicken legs")));
    EXPECT_TRUE(titles().contains(QStringLiteral("Hartley: Review")));
    options.names = casebook::Names::None;
    EXPECT_TRUE(titles().contains(QStringLiteral("Family 1: Cook Chicken legs")));
}

TEST_F(FamilyCalendarTest, agreesWithTheStepsOfTheCooking) {
    const casebook::Casebook book(records, catalogue, today);
    const kitchen::Pot& pot = *book.pot(legs);
    const week::Placement& cooking = plan().placements.first();
    for (const casebook::CookingStep& step : casebook::cookingSteps(
             pot, kitchen::brew(book.brewInput(pot), catalogue), records.family.measures)) {
        const QDateTime due = casebook::momentOfStep(cooking, step.at, records.family.zone);
        const QList<Entry> all = entries();
        EXPECT_TRUE(std::ranges::any_of(all, [&](const Entry& entry) {
            return entry.start == due && entry.details.contains(step.text);
        })) << qPrintable(step.text);
    }
}

TEST_F(FamilyCalendarTest, isReadBackWholeByAnotherProgram) {
    options.thaws = {{monday, QStringLiteral("Chicken legs; jar 2, \"big\""), ml(500)}};
    records.pots[0].name = QString::fromUtf8("Legs, \xF0\x9F\x8D\xB2; \xD7\x9E\xD7\xA8\xD7\xA7");
    for (const char* zone : {"America/New_York", "Australia/Sydney", "UTC"}) {
        records.family.zone = QTimeZone(zone);
        ASSERT_GT(entries().size(), 15);
        expectSame(entries(), readBack(entries(), name()));
    }
}

} // namespace
} // namespace ladlework::calendar
