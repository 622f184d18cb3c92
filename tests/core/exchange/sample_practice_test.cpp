#include "exchange/sample_practice.h"

#include "casebook/casebook.h"
#include "core/exchange/exchange_ground.h"
#include "store/workbook.h"

#include <QFile>
#include <QSet>
#include <algorithm>

namespace ladlework::exchange {
namespace {

using intake::LadderState;

class SamplePracticeTest : public ExchangeGround {
protected:
    std::unique_ptr<store::Workbook> sampleOn(QDate day) {
        clock.set(noonOf(day));
        const QString file = path("sample.ladlework");
        QFile::remove(file);
        auto made = createSamplePractice(file, catalogue, clock);
        EXPECT_TRUE(made) << (made ? "" : qPrintable(toLine(made.error())));
        return made ? std::move(*made) : nullptr;
    }

    static QList<casebook::FamilyRecords> allRecords(store::Workbook& workbook) {
        QList<casebook::FamilyRecords> all;
        for (const people::Family& family : workbook.families().families())
            all.append(workbook.records(family.id).value());
        return all;
    }

    std::optional<LadderState> stateOf(store::Workbook& workbook, const QString& name) {
        for (const casebook::FamilyRecords& records : allRecords(workbook)) {
            const casebook::Casebook casebook(records, catalogue, clock.today(records.family.zone));
            for (const casebook::Standing& standing : casebook.standings())
                if (standing.member.name == name && standing.ladder)
                    return standing.replay.state;
        }
        return std::nullopt;
    }
};

TEST_F(SamplePracticeTest, OpensAndVerifiesClean) {
    sampleOn(QDate(2026, 11, 25)).reset();
    const auto reopened = store::Workbook::open(path("sample.ladlework"), clock);
    ASSERT_TRUE(reopened);
    const Findings findings = (*reopened)->verify();
    EXPECT_TRUE(findings.isEmpty()) << qPrintable(findings.value(0).text);
    EXPECT_GE((*reopened)->families().families().size(), 6);
    EXPECT_GE((*reopened)->pots().pots(FamilyId{}).size(), 8);
    EXPECT_FALSE((*reopened)->history().nextUndo()) << "there is nothing before the sample";
}

// The states that the sample is there to show, whatever the day of the week it is made on. The log
// was written by a replay of the rules that shares no code with this program.
TEST_F(SamplePracticeTest, ShowsEveryStateOnEveryDayOfTheWeek) {
    const QDate monday(2029, 2, 26); // another year, across a month's end
    for (int offset = 0; offset < 7; ++offset) {
        const auto workbook = sampleOn(monday.addDays(offset));
        ASSERT_TRUE(workbook);
        EXPECT_EQ(stateOf(*workbook, QStringLiteral("Maren Oakes")), LadderState::Climbing);
        EXPECT_EQ(stateOf(*workbook, QStringLiteral("Iris Pelletier")), LadderState::AtTarget);
        EXPECT_EQ(stateOf(*workbook, QStringLiteral("Owen Dunn")), LadderState::Holding);
        EXPECT_EQ(stateOf(*workbook, QStringLiteral("Sigrun Halvard")), LadderState::EasingOff);
        EXPECT_EQ(stateOf(*workbook, QStringLiteral("Nico Ferrante")), LadderState::Stopped);
        EXPECT_EQ(stateOf(*workbook, QStringLiteral("Pip Quillan")), std::nullopt);
    }
}

TEST_F(SamplePracticeTest, LogEndsYesterdayAndAgesStay) {
    for (const QDate day : {QDate(2026, 11, 23), QDate(2027, 1, 3), QDate(2028, 2, 29)}) {
        const auto workbook = sampleOn(day);
        ASSERT_TRUE(workbook);
        for (const casebook::FamilyRecords& records : allRecords(*workbook)) {
            QDate last;
            for (const intake::IntakeEntry& entry : records.entries)
                last = std::max(last, entry.day);
            EXPECT_LT(last, day) << qPrintable(records.family.name);
            EXPECT_GE(last, day.addDays(-7)) << qPrintable(records.family.name);
            for (const week::WeekPlan& plan : records.weeks)
                EXPECT_EQ(plan.start.dayOfWeek(), int(Qt::Monday));
            for (const people::Member& member : records.members) {
                if (member.name == QStringLiteral("Pip Quillan")) {
                    EXPECT_EQ(people::bandOf(member, day), AgeBand::InfantUnderSixMonths);
                } else if (member.name == QStringLiteral("Wren Castellan")) {
                    EXPECT_EQ(people::bandOf(member, day), AgeBand::InfantStartingSolids);
                }
            }
        }
    }
}

TEST_F(SamplePracticeTest, HoldsEveryVerdictAndCautions) {
    const auto workbook = sampleOn(QDate(2026, 11, 29));
    ASSERT_TRUE(workbook);
    QSet<QString> verdicts;
    qsizetype cautions = 0;
    bool allergy = false;
    for (const casebook::FamilyRecords& records : allRecords(*workbook)) {
        cautions += records.cautions.size();
        EXPECT_FALSE(records.notes.isEmpty());
        for (const people::ToleranceNote& note : records.tolerances) {
            verdicts.insert(people::verdictId(note.verdict));
            allergy = allergy || note.allergy;
        }
    }
    EXPECT_EQ(verdicts.size(), 4);
    EXPECT_TRUE(allergy);
    EXPECT_GE(cautions, 8);
}

// Nobody in the sample drinks what a note, already written, forbids; and no container gives more
// than it held.
TEST_F(SamplePracticeTest, DrinksOnlyWhatIsAllowedAndThere) {
    const auto workbook = sampleOn(QDate(2026, 11, 29));
    ASSERT_TRUE(workbook);
    for (const casebook::FamilyRecords& records : allRecords(*workbook)) {
        QHash<LotId, quantity::Volume> drunk;
        for (const intake::IntakeEntry& entry : records.entries) {
            drunk[entry.lot] += entry.drunk;
            kitchen::Drinker drinker;
            for (const people::ToleranceNote& note : records.tolerances)
                if (note.member == entry.member && note.noted < entry.day && people::forbids(note))
                    drinker.mayNot.append(note.subject.id);
            for (const kitchen::Pot& pot : records.pots)
                if (pot.id == entry.pot) {
                    EXPECT_TRUE(kitchen::whoMay(drinker, pot, catalogue).may)
                        << qPrintable(records.family.name) << qPrintable(pot.name)
                        << qPrintable(entry.day.toString(Qt::ISODate));
                }
        }
        for (const kitchen::Lot& lot : records.lots)
            EXPECT_LE(drunk.value(lot.id).toMillilitres(), lot.volume.toMillilitres() + 0.01);
    }
}

// A measured yield outside what the pot is reckoned to give would make the sample hard to believe.
// Each batch as it was cooked, by the physics alone: what the vessels have learnt comes from these
// very yields.
TEST_F(SamplePracticeTest, MeasuredYieldsLieInsideTheForecast) {
    const auto workbook = sampleOn(QDate(2026, 11, 29));
    ASSERT_TRUE(workbook);
    int inside = 0;
    int measured = 0;
    for (const casebook::FamilyRecords& records : allRecords(*workbook)) {
        const casebook::Casebook casebook(records, catalogue, clock.today(records.family.zone));
        for (const kitchen::Batch& batch : records.batches) {
            const kitchen::Pot* pot = casebook.pot(batch.pot);
            ASSERT_NE(pot, nullptr);
            if (!batch.yield)
                continue;
            kitchen::BrewInput input = casebook.brewInput(*pot);
            input.learntEvaporation.reset();
            input.pot.water = batch.cooked.water;
            input.pot.simmer = batch.cooked.simmer;
            input.vessel = *casebook.vessel(batch.cooked.vessel);
            input.vessel.lid = batch.cooked.lid;
            const kitchen::Range range = kitchen::brew(input, catalogue).stockMl;
            const double yield = batch.yield->toMillilitres();
            ++measured;
            inside += yield >= range.low && yield <= range.high ? 1 : 0;
        }
    }
    EXPECT_GT(measured, 100);
    // The range is stated as 10 to 90 %: at least eight in ten belong inside.
    EXPECT_GE(inside, measured * 8 / 10);
}

// Some vessels have measured batches enough to learn from; one batch is odd and counts little.
TEST_F(SamplePracticeTest, VesselsHaveLearntFromTheirBatches) {
    const auto workbook = sampleOn(QDate(2026, 11, 25));
    ASSERT_TRUE(workbook);
    int learnt = 0;
    int odd = 0;
    for (const casebook::FamilyRecords& records : allRecords(*workbook)) {
        const casebook::Casebook casebook(records, catalogue, clock.today(records.family.zone));
        for (const kitchen::Vessel& vessel : records.vessels) {
            const kitchen::Calibration* calibration = casebook.calibration(vessel.id);
            if (calibration == nullptr)
                continue;
            learnt += calibration->points.size() >= 5 ? 1 : 0;
            EXPECT_LT(calibration->posterior.high / calibration->posterior.low,
                      calibration->prior.high / calibration->prior.low);
            for (const kitchen::MeasuredLoss& point : calibration->points)
                odd += point.weight < 0.5 ? 1 : 0;
        }
    }
    EXPECT_GE(learnt, 2);
    EXPECT_EQ(odd, 1);
}

TEST_F(SamplePracticeTest, HoldsWhatThePracticeSetsForAll) {
    const auto workbook = sampleOn(QDate(2026, 11, 25));
    ASSERT_TRUE(workbook);
    EXPECT_EQ(workbook->practice().practice().currency, QStringLiteral("$"));
    EXPECT_EQ(workbook->practice().ladderTemplates().size(), 2);
    EXPECT_EQ(workbook->practice().houseRules().holdTargetDays, 120);
    EXPECT_EQ(workbook->practice().symptoms().size(), intake::shippedSymptoms().size() + 2);
    EXPECT_EQ(workbook->practice().labelStocks().size(), 2);
    int spanish = 0;
    for (const casebook::FamilyRecords& records : allRecords(*workbook)) {
        const casebook::Casebook casebook(records, catalogue, clock.today(records.family.zone));
        spanish += records.family.handoutLanguage == QStringLiteral("es") ? 1 : 0;
        EXPECT_GE(records.usualHours.size(), 3) << qPrintable(records.family.name);
        EXPECT_GE(records.containers.size(), 2) << qPrintable(records.family.name);
        for (const kitchen::Pot& pot : records.pots) {
            // Everything in the pots has its price.
            EXPECT_TRUE(kitchen::brew(casebook.brewInput(pot), catalogue).cost)
                << qPrintable(pot.name);
        }
    }
    EXPECT_EQ(spanish, 1);
}

// On every day of the week: a retry under way, one closed, weights, one of which has fallen by more
// than the published 5 %, and a member who is eased off.
TEST_F(SamplePracticeTest, ShowsWhatIsFollowedOverTime) {
    for (int offset = 0; offset < 7; ++offset) {
        const auto workbook = sampleOn(QDate(2027, 3, 1).addDays(offset));
        ASSERT_TRUE(workbook);
        QSet<QString> endings;
        QStringList lost;
        int weighed = 0;
        for (const casebook::FamilyRecords& records : allRecords(*workbook)) {
            const QDate today = clock.today(records.family.zone);
            const casebook::Casebook casebook(records, catalogue, today);
            for (const people::RetryPlan& plan : records.retryPlans)
                endings.insert(people::retryOutcomeId(plan.outcome));
            for (const casebook::Standing& standing : casebook.standings()) {
                weighed += std::ranges::any_of(records.observations, [&](const auto& observation) {
                    return observation.member == standing.member.id &&
                           observation.kind == people::weightKind();
                });
                if (hasCode(standing.findings, u"weight-loss"))
                    lost.append(standing.member.name);
                if (standing.member.name == QStringLiteral("Sigrun Halvard")) {
                    EXPECT_EQ(standing.askedToday, quantity::Volume::fromCups(3.5));
                }
            }
        }
        EXPECT_EQ(endings, (QSet<QString>{QStringLiteral("open"), QStringLiteral("not-borne")}));
        EXPECT_EQ(weighed, 2);
        EXPECT_EQ(lost, QStringList{QStringLiteral("Adaeze Nwosu-Lind")});
    }
}

TEST_F(SamplePracticeTest, LeavesAnExistingFileAlone) {
    QFile file(path("kept.ladlework"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("mine");
    file.close();
    const auto made = createSamplePractice(path("kept.ladlework"), catalogue, clock);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().kind, Problem::Kind::Refused);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), QByteArray("mine"));
}

} // namespace
} // namespace ladlework::exchange
