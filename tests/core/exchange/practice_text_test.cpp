#include "exchange/practice_text.h"

#include "core/exchange/exchange_ground.h"
#include "exchange/records_store.h"
#include "store/workbook.h"

#include <QFile>
#include <algorithm>

namespace ladlework::exchange {
namespace {

const QByteArray practiceJson = R"({
  "written_for": "2026-11-25",
  "practice": {"name": "Test Practice", "practitioner": "T. Ester", "emergency_number": "112",
    "measures": "us", "paper": "letter", "zone": "UTC", "currency": "kr"},
  "house_rules": {"days_to_advance": 5},
  "ladder_templates": [{"name": "Slow", "rungs": ["2 drops", "1 tsp"]}],
  "symptoms": [{"name": "Cold feet"}, {"name": "bloating OR wind", "red_flag": true}],
  "prices": {"carrot": 4.4, "salt": 1.5},
  "label_stocks": [{"name": "1 x 2", "page_width_mm": 105, "page_height_mm": 148, "columns": 1,
    "rows": 2, "left_mm": 5.5, "top_mm": 4, "label_width_mm": 94, "label_height_mm": 68,
    "gap_across_mm": 0, "gap_down_mm": 4}],
  "pots": [{"key": "legs", "name": "Chicken legs", "water": "3 quarts", "simmer": "2 h",
    "cooling_way": "counter", "cuts": [{"cut": "chicken-leg", "mass": "3 lb", "raw": true}],
    "extras": [{"item": "onion", "pieces": 2}]}],
  "families": ["vale"]
})";

const QByteArray familyJson = R"({
  "family": {"name": "Vale", "since": "2026-10-01", "zone": "UTC", "measures": "us",
    "paper": "letter", "altitude": "100 m", "most_of_one_animal": 3, "handout_language": "es"},
  "free_hours": [{"weekday": "saturday", "from": "9:00", "length": "6 h", "pots": 2},
    {"weekday": "monday", "length": "3 h 30 min"}],
  "members": [
    {"key": "ana", "name": "Ana Vale", "birth": "1990-05-05", "phase": "Opening",
     "tolerances": [{"kind": "animal", "subject": "beef", "verdict": "avoid", "reason": "Flushes",
       "noted": "2026-10-05"}],
     "cautions": [{"kind": "pregnant"}],
     "targets": [{"from": "2026-10-01", "low": "4 cups", "high": "6 cups",
       "ease_off_from": "2026-12-24", "ease_every_days": 9, "ease_to": "1/2 cup"}],
     "retries": [
       {"kind": "cut", "subject": "beef-shank", "start": "2026-11-20", "watch_days": 4,
        "steps": ["1 tsp", "2 tsp"]},
       {"kind": "animal", "subject": "beef", "start": "2026-10-20", "outcome": "given-up",
        "closed_on": "2026-10-22", "note": "Away"}],
     "observations": [{"day": "2026-11-01", "value": 61.5, "note": "in shoes"},
       {"day": "2026-11-24", "kind": "Hours slept", "value": 6, "unit": "h"}],
     "ladders": [{"from": "2026-10-01", "start": "1 tsp", "target": "4 cups"}]},
    {"key": "pip", "name": "Pip Vale", "birth": "2026-09-01"}],
  "vessels": [{"key": "pot", "name": "Pot", "diameter": "26 cm", "height": "18 cm", "lid": "on",
    "place": "stovetop"},
    {"key": "small", "name": "Small pot", "diameter": "20 cm", "height": "14 cm", "lid": "ajar",
    "place": "stovetop"}],
  "containers": [
    {"key": "tray", "name": "Tray", "shape": "tray", "across": "33 cm", "width": "23 cm",
     "height": "6 cm", "material": "glass"},
    {"key": "jars", "name": "Jars", "shape": "cylinder", "across": "8.7 cm", "height": "16 cm",
     "material": "plastic", "covered": true}],
  "pots": [{"key": "own", "name": "Own wings", "vessel": "small", "cool_in": "jars",
    "cooling_way": "ice-bath", "water": "1 quart", "simmer": "90 min",
    "cuts": [{"cut": "chicken-wing", "mass": "1 lb"}]}],
  "batches": [{"pot": "legs", "day": "2026-11-20", "yield": "10 cups", "lots": [
    {"key": "jar", "container": "jar 1", "volume": "4 cups", "place": "fridge",
     "use_by": "2026-11-23"}]},
    {"pot": "legs", "day": "2026-11-21", "vessel": "pot", "lid": "open", "water": "2 quarts",
     "simmer": "3 h"},
    {"pot": "own", "day": "2026-11-22"}],
  "weeks": [{"start": "2026-11-23", "pots": [{"day": "2026-11-24", "pot": "legs",
    "start": "10:00"}], "locked": [{"day": "2026-11-24"}],
    "hours": [{"day": "2026-11-26", "free": [{"from": "07:30", "length": "5 h"}]},
      {"day": "2026-11-28", "free": []}],
    "extras": [{"text": "rice"}, {"text": "trout", "section": "fish"}],
    "at_home": [{"item": "onion", "mass": "4 oz"}]}],
  "notes": [{"day": "2026-11-02", "text": "Called."}]
})";

const QByteArray logCsv =
    "day,member,amount,lot\n2026-11-21,ana,1 tsp,jar\n2026-11-22,ana,missed,\n";

class PracticeTextTest : public ExchangeGround {
protected:
    void SetUp() override {
        write("practice.json", practiceJson);
        write("vale.json", familyJson);
        write("vale-log.csv", logCsv);
        people::Phase opening;
        opening.id = PhaseId{1};
        opening.name = QStringLiteral("Opening");
        phases.append(opening);
    }

    void write(const char* name, const QByteArray& text) const {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }

    Result<PracticeText> read(Dates dates = Dates::AsWritten) {
        return readPracticeText(folder.path(), phases, catalogue, clock, dates);
    }

    QList<people::Phase> phases;
};

TEST_F(PracticeTextTest, ReadsAWholePractice) {
    const auto text = read();
    ASSERT_TRUE(text) << qPrintable(toLine(text.error()));
    ASSERT_EQ(text->families.size(), 1);
    const casebook::FamilyRecords& family = text->families.first();
    EXPECT_EQ(family.members.size(), 2);
    EXPECT_EQ(family.members[0].phase, PhaseId{1});
    EXPECT_EQ(family.ladders[0].rungs.last(), quantity::Volume::fromCups(4));
    EXPECT_EQ(family.entries.size(), 2);
    EXPECT_EQ(family.entries[0].lot, family.lots[0].id);
    EXPECT_EQ(family.entries[0].pot, text->pots[0].id);
    EXPECT_EQ(family.entries[1].drunk, quantity::Volume());
    EXPECT_EQ(family.weeks[0].placements[0].start, QTime(10, 0));
    // USDA SR28 11282: a medium onion has 110 g.
    EXPECT_DOUBLE_EQ(text->pots[0].extras[0].mass.toGrams(), 220.0);
}

TEST_F(PracticeTextTest, ReadsWhatThePracticeSetsForAll) {
    const auto text = read();
    ASSERT_TRUE(text) << qPrintable(toLine(text.error()));
    EXPECT_EQ(text->practice.currency, QStringLiteral("kr"));
    EXPECT_EQ(text->houseRules.daysToAdvance, 5);
    EXPECT_EQ(text->houseRules.holdDays, intake::LadderRules().holdDays);
    // A ladder that says nothing of its rules begins with those of the house.
    EXPECT_EQ(text->families[0].ladders[0].rules, text->houseRules);
    ASSERT_EQ(text->ladderTemplates.size(), 1);
    EXPECT_EQ(text->ladderTemplates[0].rungs,
              (QList{quantity::Volume::fromDrops(2), quantity::Volume::fromTeaspoons(1)}));
    EXPECT_EQ(text->prices, (QHash<QString, double>{{QStringLiteral("carrot"), 4.4},
                                                    {QStringLiteral("salt"), 1.5}}));
    EXPECT_EQ(text->pots[0].coolingWay, kitchen::CoolingWay::Counter);
}

TEST_F(PracticeTextTest, ReadsTheFreeHoursAndWhatAWeekHoldsBesidesItsPots) {
    const auto text = read(Dates::MovedToThisWeek);
    ASSERT_TRUE(text) << qPrintable(toLine(text.error()));
    const casebook::FamilyRecords& family = text->families[0];
    EXPECT_EQ(family.family.mostOfOneAnimal, 3);
    EXPECT_EQ(family.family.handoutLanguage, QStringLiteral("es"));
    using quantity::Duration;
    EXPECT_EQ(family.usualHours,
              (QList<week::UsualHours>{{6, {QTime(9, 0), Duration::fromHours(6), 2}},
                                       {1, {QTime(), Duration::fromMinutes(210), 1}}}));
    const week::WeekPlan& plan = family.weeks[0];
    EXPECT_EQ(plan.lockedDays, QList{plan.start.addDays(1)});
    EXPECT_EQ(plan.hours, (QList<week::DayHours>{
                              {plan.start.addDays(3), {{QTime(7, 30), Duration::fromHours(5), 1}}},
                              {plan.start.addDays(5), {}}}));
    EXPECT_EQ(plan.extras,
              (QList<week::HouseholdExtra>{{QStringLiteral("rice"), week::ShopSection::Household},
                                           {QStringLiteral("trout"), week::ShopSection::Fish}}));
    EXPECT_EQ(plan.atHome,
              QList<week::AtHome>({{QStringLiteral("onion"), quantity::Mass::fromOunces(4)}}));
    ASSERT_EQ(text->labelStocks.size(), 1);
    EXPECT_EQ(
        text->labelStocks[0],
        (casebook::LabelStock{{}, QStringLiteral("1 x 2"), 105, 148, 1, 2, 5.5, 4, 94, 68, 0, 4}));
}

TEST_F(PracticeTextTest, ReadsTheKitchenAndHowEachBatchWasCooked) {
    const auto text = read();
    ASSERT_TRUE(text) << qPrintable(toLine(text.error()));
    const casebook::FamilyRecords& family = text->families.first();
    ASSERT_EQ(family.containers.size(), 2);
    EXPECT_EQ(family.containers[0].shape, kitchen::Container::Shape::Tray);
    EXPECT_EQ(family.containers[0].width, quantity::Length::fromCentimetres(23));
    EXPECT_FALSE(family.containers[0].covered);
    EXPECT_EQ(family.containers[1].material, kitchen::Container::Material::Plastic);
    EXPECT_TRUE(family.containers[1].covered);
    const kitchen::Pot& own = family.pots.last();
    EXPECT_EQ(own.coolIn, family.containers[1].id);
    EXPECT_EQ(own.coolingWay, kitchen::CoolingWay::IceBath);
    ASSERT_EQ(family.batches.size(), 3);
    using Lid = kitchen::Vessel::Lid;
    // The practice's pot names no vessel; what the batch does not say is as the pot asks for.
    EXPECT_EQ(
        family.batches[0].cooked,
        (kitchen::AsCooked{
            {}, Lid::Ajar, quantity::Volume::fromQuarts(3), quantity::Duration::fromHours(2)}));
    EXPECT_EQ(family.batches[1].cooked,
              (kitchen::AsCooked{family.vessels[0].id, Lid::Open, quantity::Volume::fromQuarts(2),
                                 quantity::Duration::fromHours(3)}));
    EXPECT_EQ(family.batches[2].cooked,
              (kitchen::AsCooked{family.vessels[1].id, Lid::Ajar, quantity::Volume::fromQuarts(1),
                                 quantity::Duration::fromMinutes(90)}));
}

TEST_F(PracticeTextTest, ReadsWhatIsFollowedOverTime) {
    const auto text = read();
    ASSERT_TRUE(text) << qPrintable(toLine(text.error()));
    const casebook::FamilyRecords& family = text->families.first();
    EXPECT_EQ(family.targets[0].easeEveryDays, 9);
    EXPECT_EQ(family.targets[0].easeTo, quantity::Volume::fromCups(0.5));
    ASSERT_EQ(family.retryPlans.size(), 2);
    EXPECT_EQ(family.retryPlans[0].watchDays, 4);
    EXPECT_EQ(family.retryPlans[0].steps.size(), 2);
    EXPECT_EQ(family.retryPlans[0].outcome, people::RetryPlan::Ending::Open);
    // Without steps of its own a plan has the usual ones.
    EXPECT_EQ(family.retryPlans[1].steps, people::usualRetry({}, {}, {}).steps);
    EXPECT_EQ(family.retryPlans[1].outcome, people::RetryPlan::Ending::GivenUp);
    EXPECT_EQ(family.retryPlans[1].closed, QDate(2026, 10, 22));
    ASSERT_EQ(family.observations.size(), 2);
    EXPECT_EQ(family.observations[0].kind, people::weightKind());
    EXPECT_EQ(family.observations[0].unit, QStringLiteral("kg"));
    EXPECT_DOUBLE_EQ(family.observations[0].value, 61.5);
    EXPECT_EQ(family.observations[1].unit, QStringLiteral("h"));
}

TEST_F(PracticeTextTest, WhatIsFollowedMovesWithTheWeeksAndLeavesOutWhatIsToCome) {
    clock.set(noonOf(QDate(2026, 12, 8))); // the Tuesday two weeks on
    const auto text = read(Dates::MovedToThisWeek);
    ASSERT_TRUE(text) << qPrintable(toLine(text.error()));
    const casebook::FamilyRecords& family = text->families.first();
    EXPECT_EQ(family.retryPlans[0].start, QDate(2026, 12, 4));
    EXPECT_EQ(family.retryPlans[1].closed, QDate(2026, 11, 5));
    EXPECT_EQ(family.targets[0].easeOffFrom, QDate(2027, 1, 7));
    // The second observation would be of today, the 8th.
    ASSERT_EQ(family.observations.size(), 1);
    EXPECT_EQ(family.observations[0].day, QDate(2026, 11, 15));
}

TEST_F(PracticeTextTest, MovesByWholeWeeksAndLeavesOutWhatIsToCome) {
    clock.set(noonOf(QDate(2027, 3, 4))); // a Thursday, 14 weeks on
    const auto text = read(Dates::MovedToThisWeek);
    ASSERT_TRUE(text) << qPrintable(toLine(text.error()));
    const casebook::FamilyRecords& family = text->families.first();
    EXPECT_EQ(family.weeks[0].start, QDate(2027, 3, 1));
    EXPECT_EQ(family.entries[0].day, QDate(2026, 11, 21).addDays(14 * 7));
    clock.set(noonOf(QDate(2027, 2, 27))); // the Saturday before: a week less
    EXPECT_EQ(read(Dates::MovedToThisWeek)->families.first().weeks[0].start, QDate(2027, 2, 22));
    clock.set(noonOf(QDate(2026, 11, 24)));
    write("vale-log.csv", logCsv + "2026-11-23,ana,1 tsp,\n2026-11-24,ana,1 tsp,\n");
    EXPECT_EQ(read(Dates::MovedToThisWeek)->families.first().entries.size(), 3);
}

struct Spoilt {
    const char* file;
    QByteArray from;
    QByteArray to;
    const char* place;
};

TEST_F(PracticeTextTest, NamesFileAndPlaceOfWhatIsWrong) {
    const QList<Spoilt> cases{
        {"practice.json", "\"chicken-leg\"", "\"chicken-wheel\"",
         "practice.json: pots[0].cuts[0].cut"},
        {"practice.json", "3 lb", "-3 lb", "practice.json: pots[0].cuts[0].mass"},
        {"practice.json", "3 quarts", "3 buckets", "practice.json: pots[0].water"},
        {"practice.json", "\"raw\": true", "\"raw\": false", "practice.json: pots[0].cuts[0].raw"},
        {"practice.json", "\"onion\"", "\"onyx\"", "practice.json: pots[0].extras[0].item"},
        {"practice.json", "\"measures\": \"us\"", "\"measures\": \"imperial\"",
         "practice.json: practice.measures"},
        {"practice.json", "\"UTC\"", "\"Mars/Base\"", "practice.json: practice.zone"},
        {"practice.json", "[\"vale\"]", "[\"../vale\"]", "practice.json: families[0]"},
        {"practice.json", "[\"vale\"]", "[\"gone\"]", "gone.json"},
        {"practice.json", "\"pots\"", "\"pans\"", "practice.json: pans"},
        {"practice.json", "\"pieces\": 2", "\"pieces\": NaN", "practice.json: offset"},
        {"practice.json", "\"days_to_advance\": 5", "\"days_to_advance\": 0",
         "practice.json: house_rules"},
        {"practice.json", "\"days_to_advance\"", "\"days_to_retreat\"",
         "practice.json: house_rules.days_to_retreat"},
        {"practice.json", "\"2 drops\", ", "\"9 tsp\", ",
         "practice.json: ladder_templates[0].rungs[1]"},
        {"practice.json", "\"2 drops\"", "\"2 puddles\"",
         "practice.json: ladder_templates[0].rungs[0]"},
        {"practice.json", "bloating OR wind", "COLD feet", "practice.json: symptoms[1].name"},
        {"practice.json", "\"salt\": 1.5", "\"silver\": 1.5", "practice.json: prices.silver"},
        {"practice.json", "\"salt\": 1.5", "\"salt\": 0", "practice.json: prices.salt"},
        {"practice.json", "\"counter\"", "\"window\"", "practice.json: pots[0].cooling_way"},
        {"vale.json", "\"ease_every_days\": 9", "\"ease_every_days\": 0",
         "vale.json: members[0].targets[0].ease_every_days"},
        {"vale.json", "\"ease_to\": \"1/2 cup\"", "\"ease_to\": \"5 cups\"",
         "vale.json: members[0].targets[0]"},
        {"vale.json", "\"beef-shank\"", "\"beef-plank\"",
         "vale.json: members[0].retries[0].subject"},
        {"vale.json", "[\"1 tsp\", \"2 tsp\"]", "[\"3 tsp\", \"2 tsp\"]",
         "vale.json: members[0].retries[0].steps[1]"},
        {"vale.json", "given-up", "open", "vale.json: members[0].retries[1].closed"},
        {"vale.json", "given-up", "gone", "vale.json: members[0].retries[1].outcome"},
        {"vale.json", "61.5", "6150", "vale.json: members[0].observations[0].value"},
        {"vale.json", "2026-11-24\", \"kind", "2026-11-26\", \"kind",
         "vale.json: members[0].observations[1].day"},
        {"vale.json", "\"width\": \"23 cm\",", "", "vale.json: containers[0].width"},
        {"vale.json", "\"glass\"", "\"paper\"", "vale.json: containers[0].material"},
        {"vale.json", "\"key\": \"jars\"", "\"key\": \"tray\"", "vale.json: containers[1].key"},
        {"vale.json", "\"cool_in\": \"jars\"", "\"cool_in\": \"jar\"",
         "vale.json: pots[0].cool_in"},
        {"vale.json", "\"vessel\": \"pot\"", "\"vessel\": \"pan\"", "vale.json: batches[1].vessel"},
        {"vale.json", "\"lid\": \"open\"", "\"lid\": \"lost\"", "vale.json: batches[1].lid"},
        {"vale.json", "\"water\": \"2 quarts\"", "\"water\": \"200 quarts\"",
         "vale.json: batches[1].water"},
        {"vale.json", "\"simmer\": \"3 h\"", "\"simmer\": \"300 h\"",
         "vale.json: batches[1].simmer"},
        {"vale.json", "1990-05-05", "2030-05-05", "vale.json: members[0].birth"},
        {"vale.json", "1990-05-05", "1990-02-30", "vale.json: members[0].birth"},
        {"vale.json", "\"Opening\"", "\"Closing\"", "vale.json: members[0].phase"},
        {"vale.json", "\"beef\"", "\"beeef\"", "vale.json: members[0].tolerances[0].subject"},
        {"vale.json", "2026-10-05", "2026-12-05", "vale.json: members[0].tolerances[0].noted"},
        {"vale.json", "\"pregnant\"", "\"tall\"", "vale.json: members[0].cautions[0]"},
        {"vale.json", "\"low\": \"4 cups\"", "\"low\": \"9 cups\"",
         "vale.json: members[0].targets[0]"},
        {"vale.json", "\"key\": \"pip\"", "\"key\": \"ana\"", "vale.json: members[1].key"},
        {"vale.json", "\"birth\": \"2026-09-01\"",
         "\"birth\": \"2026-09-01\", \"ladders\": [{\"from\": \"2026-11-01\", \"rungs\": [\"1 "
         "tsp\"]}]",
         "vale.json: members[1].ladders"},
        {"vale.json", "\"day\": \"2026-11-20\"", "\"day\": \"2026-11-28\"",
         "vale.json: batches[0]"},
        {"vale.json", "{\"pot\": \"legs\"", "{\"pot\": \"arms\"", "vale.json: batches[0].pot"},
        {"vale.json", "\"use_by\": \"2026-11-23\"", "\"use_by\": \"2026-11-19\"",
         "vale.json: batches[0].lots[0]"},
        {"vale.json", "\"start\": \"2026-11-23\"", "\"start\": \"2026-11-24\"",
         "vale.json: weeks[0].start"},
        {"vale.json", "\"10:00\"", "\"ten\"", "vale.json: weeks[0].pots[0].start"},
        {"vale.json", "saturday", "caturday", "vale.json: free_hours[0].weekday"},
        {"vale.json", "\"9:00\"", "\"nine\"", "vale.json: free_hours[0].from"},
        {"vale.json", "\"6 h\"", "\"25 h\"", "vale.json: free_hours[0].length"},
        {"vale.json", "\"pots\": 2", "\"pots\": 7", "vale.json: free_hours[0].pots"},
        {"vale.json", "\"most_of_one_animal\": 3", "\"most_of_one_animal\": 43",
         "vale.json: family.mostOfOneAnimal"},
        {"vale.json", "\"es\"", "\"tlh\"", "vale.json: family.handoutLanguage"},
        {"vale.json", "\"locked\": [{\"day\": \"2026-11-24\"",
         "\"locked\": [{\"day\": \"2026-12-24\"", "vale.json: weeks[0].lockedDays[0]"},
        {"vale.json", "\"length\": \"5 h\"", "\"length\": \"0 h\"", "vale.json: weeks[0]"},
        {"vale.json", "\"fish\"}", "\"toys\"}", "vale.json: weeks[0].extras[1].section"},
        {"vale.json", "{\"item\": \"onion\"", "{\"item\": \"onyx\"",
         "vale.json: weeks[0].at_home[0].item"},
        {"practice.json", "\"label_width_mm\": 94", "\"label_width_mm\": 100",
         "practice.json: label_stocks[0]"},
        {"vale.json", "2026-11-02", "2026-12-02", "vale.json: notes[0].day"},
        {"vale-log.csv", "ana,1 tsp", "zoe,1 tsp", "vale-log.csv: line 2, member"},
        {"vale-log.csv", "2026-11-22", "2026-12-22", "vale-log.csv: line 3, day"},
        {"vale-log.csv", "1 tsp", "-1 tsp", "vale-log.csv: line 2, amount"},
        {"vale-log.csv", "member", "who", "vale-log.csv: line 1"},
    };
    const QHash<QByteArray, QByteArray> originals{
        {"practice.json", practiceJson}, {"vale.json", familyJson}, {"vale-log.csv", logCsv}};
    for (const Spoilt& one : cases) {
        SetUp();
        QByteArray text = originals.value(one.file);
        ASSERT_TRUE(text.contains(one.from)) << one.place;
        text.replace(text.indexOf(one.from), one.from.size(), one.to);
        write(one.file, text);
        const auto result = read();
        ASSERT_FALSE(result) << one.place << " <- " << one.to.constData();
        EXPECT_TRUE(result.error().place.startsWith(QString::fromLatin1(one.place)))
            << one.place << " but " << qPrintable(toLine(result.error()));
        EXPECT_FALSE(result.error().sentence.isEmpty());
    }
}

TEST_F(PracticeTextTest, ImportsNothingWhenTheLastRecordIsRefused) {
    auto text = read();
    ASSERT_TRUE(text);
    text->families.first().notes.last().text = QStringLiteral("  "); // the store refuses it
    const auto made = store::Workbook::create(
        path("w.ladlework"), clock, [&](store::Action& action, store::Workbook& workbook) {
            return storePractice(action, workbook, *text);
        });
    EXPECT_FALSE(made);
    EXPECT_FALSE(QFile::exists(path("w.ladlework")));
}

TEST_F(PracticeTextTest, StoresWhatItRead) {
    const auto made =
        store::Workbook::create(path("w.ladlework"), clock,
                                [&](store::Action& action, store::Workbook& workbook) -> Outcome {
                                    phases = workbook.practice().phases();
                                    const auto text = read();
                                    return text ? storePractice(action, workbook, *text)
                                                : Outcome(tl::unexpected<Problem>(text.error()));
                                });
    ASSERT_TRUE(made) << qPrintable(toLine(made.error()));
    const auto families = (*made)->families().families();
    ASSERT_EQ(families.size(), 1);
    const auto records = (*made)->records(families.first().id).value();
    EXPECT_EQ(records.practice.practitioner, QStringLiteral("T. Ester"));
    EXPECT_EQ(records.entries.size(), 2);
    EXPECT_EQ(records.batches[0].pot, records.pots[0].id);
    EXPECT_EQ(records.weeks[0].placements[0].pot, records.pots[0].id);
    EXPECT_EQ(records.practice.currency, QStringLiteral("kr"));
    EXPECT_EQ(records.houseRules.daysToAdvance, 5);
    EXPECT_EQ(records.ladderTemplates.size(), 1);
    EXPECT_EQ(records.prices.size(), 2);
    EXPECT_EQ(records.labelStocks.size(), 1);
    EXPECT_EQ(records.usualHours.size(), 2);
    EXPECT_EQ(records.weeks[0].hours.size(), 2);
    // One symptom of the file is new, the other changes the shipped one of its name.
    EXPECT_EQ(records.symptoms.size(), intake::shippedSymptoms().size() + 1);
    EXPECT_EQ(records.symptoms.last().name, QStringLiteral("Cold feet"));
    EXPECT_EQ(std::ranges::count_if(records.symptoms, &intake::Symptom::redFlag), 1);
    EXPECT_EQ(records.containers.size(), 2);
    EXPECT_EQ(records.pots[1].coolIn, records.containers[1].id);
    EXPECT_EQ(records.batches[1].cooked.vessel, records.vessels[0].id);
    EXPECT_EQ(records.retryPlans.size(), 2);
    EXPECT_EQ(records.retryPlans[0].member, records.members[0].id);
    EXPECT_EQ(records.observations.size(), 2);
    EXPECT_TRUE((*made)->verify().isEmpty());
}

} // namespace
} // namespace ladlework::exchange
