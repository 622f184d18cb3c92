#include "core/store/one_of_each_fixture.h"

#include <algorithm>

namespace ladlework::store {
namespace {

using quantity::Volume;

class RecordRoundTripTest : public OneOfEachFixture {};

TEST_F(RecordRoundTripTest, EveryFieldComesBackInTheSameWindowAndAfterARestart) {
    expectAllStored();
    m_workbook.reset();
    m_workbook = reopen();
    expectAllStored();
    EXPECT_EQ(m_workbook->handouts().pdf(m_handout.id), m_pdf);
    EXPECT_EQ(m_workbook->handouts().documentJson(m_handout.id), m_document);
}

TEST_F(RecordRoundTripTest, FieldsThatMayBeEmptyComeBackEmpty) {
    m_practice.logo.clear();
    m_family.reviewOn = QDate();
    m_family.mostOfOneAnimal = 0;
    m_hours.clear();
    m_week.placements.removeFirst();
    m_pages.sections.clear();
    m_pages.largePrint = false;
    m_member.bandOverride.reset();
    m_member.phase = {};
    m_tolerance.verdict = people::ToleranceNote::Verdict::Avoid;
    m_tolerance.allergy = true;
    m_tolerance.tryAgainOn.reset();
    m_caution.sodiumLimitMg.reset();
    m_symptom.redFlag = false;
    m_template.rungs = {Volume::fromDrops(1)};
    m_rules.holdDays = 0;
    m_prices.remove(QStringLiteral("onion"));
    m_retry.outcome = people::RetryPlan::Ending::Open;
    m_retry.closed = QDate();
    m_retry.steps.removeLast();
    m_retry.note.clear();
    m_observation.unit.clear();
    m_observation.note.clear();
    m_pot.vessel = {};
    m_pot.coolIn = {};
    m_pot.extras.clear();
    m_pot.cuts.removeFirst();
    m_batch.cooked.vessel = {};
    m_batch.yield.reset();
    m_lot.goneOn = QDate();
    m_target.easeOffFrom = QDate();
    m_target.easeTo = {};
    m_ladder.rungs = {Volume::fromDrops(1)};
    m_entry.pot = {};
    m_entry.lot = {};
    m_reaction.startMinute.reset();
    m_reaction.minutes.reset();
    m_plan.placements.clear();
    m_plan.lockedDays.clear();
    m_plan.hours = {{QDate(2024, 3, 22), {}}}; // no cooking on this day: alone it is a plan
    m_plan.extras.clear();
    m_plan.atHome.clear();
    m_plan.note.clear();
    m_note.reviewOn = QDate();
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->practice().setPractice(action, m_practice));
        EXPECT_TRUE(m_workbook->practice().changeHandoutTemplate(action, m_pages));
        EXPECT_TRUE(m_workbook->families().setUsualHours(action, m_family.id, m_hours));
        EXPECT_TRUE(m_workbook->weeks().changeTemplate(action, m_week));
        EXPECT_TRUE(m_workbook->practice().changeSymptom(action, m_symptom));
        EXPECT_TRUE(m_workbook->practice().changeLadderTemplate(action, m_template));
        EXPECT_TRUE(m_workbook->practice().setHouseRules(action, m_rules));
        EXPECT_TRUE(m_workbook->practice().setPrice(action, QStringLiteral("onion"), {}));
        EXPECT_TRUE(m_workbook->families().changeRetryPlan(action, m_retry));
        EXPECT_TRUE(m_workbook->families().changeObservation(action, m_observation));
        EXPECT_TRUE(m_workbook->families().changeFamily(action, m_family));
        EXPECT_TRUE(m_workbook->families().changeMember(action, m_member));
        EXPECT_TRUE(m_workbook->families().changeTolerance(action, m_tolerance));
        EXPECT_TRUE(m_workbook->families().changeCaution(action, m_caution));
        EXPECT_TRUE(m_workbook->pots().changePot(action, m_pot));
        EXPECT_TRUE(m_workbook->pots().changeBatch(action, m_batch));
        EXPECT_TRUE(m_workbook->pots().changeLot(action, m_lot));
        EXPECT_TRUE(m_workbook->climbs().changeTarget(action, m_target));
        EXPECT_TRUE(m_workbook->climbs().changeLadder(action, m_ladder));
        EXPECT_TRUE(m_workbook->log().changeEntry(action, m_entry));
        EXPECT_TRUE(m_workbook->log().changeReaction(action, m_reaction));
        EXPECT_EQ(m_workbook->weeks().setPlan(action, m_plan).value(), m_plan.id);
        EXPECT_TRUE(m_workbook->notes().changeNote(action, m_note));
        return {};
    });
    expectAllStored();
}

TEST_F(RecordRoundTripTest, ChangedVesselContainerPricePhaseLabelsAndWeekComeBack) {
    m_vessel.lid = kitchen::Vessel::Lid::Open;
    m_vessel.place = kitchen::Vessel::Place::PressureCooker;
    m_phase.rules.groundPepper = false;
    m_container.shape = kitchen::Container::Shape::Cylinder;
    m_container.width = {};
    m_container.material = kitchen::Container::Material::Plastic;
    m_prices[QStringLiteral("onion")] = 1e6;
    m_labels = {m_labels.id, QStringLiteral("2 x 5 on Letter"),
                215.9,       279.4,
                2,           5,
                4,           12.7,
                101.6,       50.8,
                4.8,         0};
    m_plan.extras.swapItemsAt(0, 1);
    m_plan.hours[0].hours.swapItemsAt(0, 1);
    m_plan.atHome.removeFirst();
    m_plan.lockedDays.removeFirst();
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->families().changeVessel(action, m_vessel));
        EXPECT_TRUE(m_workbook->families().changeContainer(action, m_container));
        EXPECT_TRUE(m_workbook->practice().setPrice(action, QStringLiteral("onion"), 1e6));
        EXPECT_TRUE(m_workbook->practice().changePhase(action, m_phase));
        EXPECT_TRUE(m_workbook->practice().changeLabelStock(action, m_labels));
        EXPECT_EQ(m_workbook->weeks().setPlan(action, m_plan).value(), m_plan.id);
        return {};
    });
    expectAllStored();
}

TEST_F(RecordRoundTripTest, AWeekSavedAgainUnchangedLeavesNoEntryInTheHistory) {
    const qsizetype entries = m_workbook->history().latest(10).size();
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->weeks().setPlan(action, m_plan));
        EXPECT_TRUE(m_workbook->weeks().changeTemplate(action, m_week));
        EXPECT_TRUE(m_workbook->practice().changeHandoutTemplate(action, m_pages));
        return m_workbook->families().setUsualHours(action, m_family.id, m_hours);
    });
    EXPECT_EQ(m_workbook->history().latest(10).size(), entries);
}

TEST_F(RecordRoundTripTest, DaysAndThingsAtHomeComeSortedAndEachDayKeepsItsOwnHours) {
    week::WeekPlan mixed = m_plan;
    std::ranges::reverse(mixed.lockedDays);
    std::ranges::reverse(mixed.hours);
    std::ranges::reverse(mixed.atHome);
    doIt(*m_workbook,
         [&](Action& action) { return outcome(m_workbook->weeks().setPlan(action, mixed)); });
    expectOne(records().weeks, m_plan);
}

TEST_F(RecordRoundTripTest, APracticePotIsEveryFamilysAndNoOneElsesIs) {
    const PotId shared = added<PotId>(*m_workbook, [&](Action& action) {
        return m_workbook->pots().addPot(action, samplePot({}, {}));
    });
    const FamilyId other = added<FamilyId>(*m_workbook, [&](Action& action) {
        people::Family family = sampleFamily();
        family.name = QStringLiteral("Other");
        return m_workbook->families().addFamily(action, family);
    });
    EXPECT_EQ(records().pots.size(), 2);
    const QList<kitchen::Pot> theirs = m_workbook->pots().pots(other);
    ASSERT_EQ(theirs.size(), 1);
    EXPECT_EQ(theirs.first().id, shared);
    EXPECT_EQ(theirs.first().cuts, samplePot({}, {}).cuts);
    EXPECT_EQ(m_workbook->pots().pots({}).size(), 1);
}

TEST_F(RecordRoundTripTest, ASecondPlanOfTheWeekTakesThePlaceOfTheFirst) {
    week::WeekPlan plan = samplePlan(m_family.id, m_pot.id);
    plan.placements = {{QDate(2024, 3, 24), m_pot.id, QTime(9, 0)}};
    plan.extras.removeLast();
    plan.lockedDays.clear();
    plan.note.clear();
    const WeekPlanId id = added<WeekPlanId>(
        *m_workbook, [&](Action& action) { return m_workbook->weeks().setPlan(action, plan); });
    EXPECT_EQ(id, m_plan.id);
    plan.id = id;
    expectOne(records().weeks, plan);
}

TEST_F(RecordRoundTripTest, ListsComeInTheirPromisedOrder) {
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        people::Member elder = sampleMember(m_family.id, {});
        elder.name = QStringLiteral("Bo");
        elder.birth = QDate(1980, 1, 1);
        EXPECT_TRUE(m_workbook->families().addMember(action, elder));
        casebook::VisitNote later = sampleNote(m_family.id);
        later.day = QDate(2024, 3, 15);
        EXPECT_TRUE(m_workbook->notes().addNote(action, later));
        people::Family family = sampleFamily();
        family.name = QStringLiteral("abel");
        EXPECT_TRUE(m_workbook->families().addFamily(action, family));
        family.name = QStringLiteral("Zorn");
        EXPECT_TRUE(m_workbook->families().addFamily(action, family));
        intake::LadderTemplate quick = sampleTemplate();
        quick.name = QStringLiteral("quick");
        EXPECT_TRUE(m_workbook->practice().addLadderTemplate(action, quick));
        casebook::HandoutTemplate bare = sampleHandoutTemplate();
        bare.name = QStringLiteral("bare");
        EXPECT_TRUE(m_workbook->practice().addHandoutTemplate(action, bare));
        casebook::LabelStock two = sampleLabelStock();
        two.name = QStringLiteral("2 x 5");
        EXPECT_TRUE(m_workbook->practice().addLabelStock(action, two));
        week::WeekTemplate away = sampleWeekTemplate(m_family.id, m_pot.id);
        away.name = QStringLiteral("away");
        EXPECT_TRUE(m_workbook->weeks().addTemplate(action, away));
        intake::Symptom first = sampleSymptom();
        first.name = QStringLiteral("yawning");
        first.position = 0;
        EXPECT_TRUE(m_workbook->practice().addSymptom(action, first));
        people::Observation early = sampleObservation(m_member.id);
        early.day = QDate(2024, 1, 1);
        EXPECT_TRUE(m_workbook->families().addObservation(action, early));
        return {};
    });
    EXPECT_EQ(records().members.first().name, QStringLiteral("Bo"));
    EXPECT_EQ(records().notes.first().day, QDate(2024, 3, 15));
    EXPECT_EQ(m_workbook->families().families().first().name, QStringLiteral("abel"));
    EXPECT_EQ(records().ladderTemplates.first().name, QStringLiteral("quick"));
    EXPECT_EQ(records().handoutTemplates.first().name, QStringLiteral("bare"));
    EXPECT_EQ(records().labelStocks.first().name, QStringLiteral("2 x 5"));
    EXPECT_EQ(records().weekTemplates.first().name, QStringLiteral("away"));
    EXPECT_EQ(records().symptoms.at(1).name, QStringLiteral("yawning"));
    EXPECT_EQ(records().observations.first().day, QDate(2024, 1, 1));
}

TEST_F(RecordRoundTripTest, AnEntryWithoutItsMomentGetsTheClocks) {
    intake::IntakeEntry entry = sampleEntry(m_member.id, {}, {});
    entry.enteredUtc = {};
    entry.day = QDate(2024, 3, 15);
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->log().addEntry(action, entry));
        return {};
    });
    EXPECT_EQ(records().entries.last().enteredUtc, testNow);
}

} // namespace
} // namespace ladlework::store
