#include "exchange/practice_text.h"

#include "core/exchange/exchange_ground.h"
#include "exchange/records_store.h"
#include "store/workbook.h"

#include <QFile>

namespace ladlework::exchange {
namespace {

const QByteArray practiceJson = R"({
  "written_for": "2026-11-25",
  "practice": {"name": "Test Practice", "practitioner": "T. Ester", "emergency_number": "112",
    "measures": "us", "paper": "letter", "zone": "UTC"},
  "pots": [{"key": "legs", "name": "Chicken legs", "water": "3 quarts", "simmer": "2 h",
    "cuts": [{"cut": "chicken-leg", "mass": "3 lb", "raw": true}],
    "extras": [{"item": "onion", "pieces": 2}]}],
  "families": ["vale"]
})";

const QByteArray familyJson = R"({
  "family": {"name": "Vale", "since": "2026-10-01", "zone": "UTC", "measures": "us",
    "paper": "letter", "altitude": "100 m"},
  "members": [
    {"key": "ana", "name": "Ana Vale", "birth": "1990-05-05", "phase": "Opening",
     "tolerances": [{"kind": "animal", "subject": "beef", "verdict": "avoid", "reason": "Flushes",
       "noted": "2026-10-05"}],
     "cautions": [{"kind": "pregnant"}],
     "targets": [{"from": "2026-10-01", "low": "4 cups", "high": "6 cups"}],
     "ladders": [{"from": "2026-10-01", "start": "1 tsp", "target": "4 cups"}]},
    {"key": "pip", "name": "Pip Vale", "birth": "2026-09-01"}],
  "vessels": [{"key": "pot", "name": "Pot", "diameter": "26 cm", "height": "18 cm", "lid": "on",
    "place": "stovetop"}],
  "batches": [{"pot": "legs", "day": "2026-11-20", "yield": "10 cups", "lots": [
    {"key": "jar", "container": "jar 1", "volume": "4 cups", "place": "fridge",
     "use_by": "2026-11-23"}]}],
  "weeks": [{"start": "2026-11-23", "pots": [{"day": "2026-11-24", "pot": "legs",
    "start": "10:00"}]}],
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
    EXPECT_TRUE((*made)->verify().isEmpty());
}

} // namespace
} // namespace ladlework::exchange
