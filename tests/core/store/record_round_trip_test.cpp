#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

#include <algorithm>

namespace ladlework::store {
namespace {

using quantity::Volume;

/// A workbook with one of each record, none of whose fields is at its default.
class RecordRoundTripTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        m_workbook = make();
        doIt(*m_workbook, [&](Action& action) { return fill(action, *m_workbook); });
    }

    /// Gives each record its id as it is stored.
    Outcome fill(Action& action, Workbook& workbook) {
        m_practice = samplePractice();
        EXPECT_TRUE(workbook.practice().setPractice(action, m_practice));
        m_rules = sampleRules();
        EXPECT_TRUE(workbook.practice().setHouseRules(action, m_rules));
        m_symptom = sampleSymptom();
        m_symptom.id = workbook.practice().addSymptom(action, m_symptom).value();
        m_template = sampleTemplate();
        m_template.id = workbook.practice().addLadderTemplate(action, m_template).value();
        for (const auto& [item, perKilogram] : std::as_const(m_prices).asKeyValueRange())
            EXPECT_TRUE(workbook.practice().setPrice(action, item, perKilogram));
        m_pages = sampleHandoutTemplate();
        m_pages.id = workbook.practice().addHandoutTemplate(action, m_pages).value();
        m_labels = sampleLabelStock();
        m_labels.id = workbook.practice().addLabelStock(action, m_labels).value();
        m_phase = samplePhase();
        m_phase.id = workbook.practice().addPhase(action, m_phase).value();
        m_family = sampleFamily();
        m_family.id = workbook.families().addFamily(action, m_family).value();
        m_member = sampleMember(m_family.id, m_phase.id);
        m_member.id = workbook.families().addMember(action, m_member).value();
        m_tolerance = sampleTolerance(m_member.id);
        m_tolerance.id = workbook.families().addTolerance(action, m_tolerance).value();
        m_caution = sampleCaution(m_member.id);
        m_caution.id = workbook.families().addCaution(action, m_caution).value();
        m_retry = sampleRetry(m_member.id);
        m_retry.id = workbook.families().addRetryPlan(action, m_retry).value();
        m_observation = sampleObservation(m_member.id);
        m_observation.id = workbook.families().addObservation(action, m_observation).value();
        m_vessel = sampleVessel(m_family.id);
        m_vessel.id = workbook.families().addVessel(action, m_vessel).value();
        m_container = sampleContainer(m_family.id);
        m_container.id = workbook.families().addContainer(action, m_container).value();
        m_pot = samplePot(m_family.id, m_vessel.id, m_container.id);
        m_pot.id = workbook.pots().addPot(action, m_pot).value();
        m_batch = sampleBatch(m_family.id, m_pot.id, m_vessel.id);
        m_batch.id = workbook.pots().addBatch(action, m_batch).value();
        m_lot = sampleLot(m_batch.id);
        m_lot.id = workbook.pots().addLot(action, m_lot).value();
        m_target = sampleTarget(m_member.id);
        m_target.id = workbook.climbs().addTarget(action, m_target).value();
        m_ladder = sampleLadder(m_member.id);
        m_ladder.id = workbook.climbs().addLadder(action, m_ladder).value();
        m_decision = sampleDecision(m_member.id);
        m_decision.id = workbook.climbs().addDecision(action, m_decision).value();
        m_entry = sampleEntry(m_member.id, m_pot.id, m_lot.id);
        m_entry.id = workbook.log().addEntry(action, m_entry).value();
        m_reaction = sampleReaction(m_member.id);
        m_reaction.id = workbook.log().addReaction(action, m_reaction).value();
        m_plan = samplePlan(m_family.id, m_pot.id);
        m_plan.id = workbook.weeks().setPlan(action, m_plan).value();
        m_hours = sampleHours();
        EXPECT_TRUE(workbook.families().setUsualHours(action, m_family.id, m_hours));
        m_week = sampleWeekTemplate(m_family.id, m_pot.id);
        m_week.id = workbook.weeks().addTemplate(action, m_week).value();
        m_note = sampleNote(m_family.id);
        m_note.id = workbook.notes().addNote(action, m_note).value();
        m_handout = sampleHandout(m_family.id);
        m_handout.id = workbook.handouts().addHandout(action, m_handout, m_pdf, m_document).value();
        return {};
    }

    casebook::FamilyRecords records() { return m_workbook->records(m_family.id).value(); }

    void expectAllStored() {
        const casebook::FamilyRecords found = records();
        EXPECT_EQ(all(found.practice), all(m_practice));
        ASSERT_EQ(found.phases.size(), 4);
        EXPECT_EQ(all(found.phases.last()), all(m_phase));
        EXPECT_EQ(found.houseRules, m_rules);
        ASSERT_EQ(found.symptoms.size(), intake::shippedSymptoms().size() + 1);
        EXPECT_EQ(all(found.symptoms.last()), all(m_symptom));
        expectOne(found.ladderTemplates, m_template);
        EXPECT_EQ(found.prices, m_prices);
        EXPECT_EQ(all(found.family), all(m_family));
        expectOne(found.members, m_member);
        expectOne(found.tolerances, m_tolerance);
        expectOne(found.cautions, m_caution);
        expectOne(found.retryPlans, m_retry);
        expectOne(found.observations, m_observation);
        expectOne(found.vessels, m_vessel);
        expectOne(found.containers, m_container);
        expectOne(found.pots, m_pot);
        expectOne(found.batches, m_batch);
        expectOne(found.lots, m_lot);
        expectOne(found.targets, m_target);
        expectOne(found.ladders, m_ladder);
        expectOne(found.decisions, m_decision);
        expectOne(found.entries, m_entry);
        expectOne(found.reactions, m_reaction);
        expectOne(found.weeks, m_plan);
        EXPECT_EQ(found.usualHours, m_hours);
        expectOne(found.weekTemplates, m_week);
        expectOne(found.handoutTemplates, m_pages);
        expectOne(found.labelStocks, m_labels);
        expectOne(found.notes, m_note);
        expectOne(found.handouts, m_handout);
    }

    template <class Record>
    static void expectOne(const QList<Record>& found, const Record& expected) {
        ASSERT_EQ(found.size(), 1);
        EXPECT_EQ(all(found.first()), all(expected));
    }

    std::unique_ptr<Workbook> m_workbook;
    people::Practice m_practice;
    people::Phase m_phase;
    intake::LadderRules m_rules;
    intake::Symptom m_symptom;
    intake::LadderTemplate m_template;
    QHash<QString, double> m_prices{{QStringLiteral("chicken-drumstick"), 5.27},
                                    {QStringLiteral("onion"), 2.1},
                                    {QStringLiteral("salt"), 0.9}};
    people::Family m_family;
    people::Member m_member;
    people::ToleranceNote m_tolerance;
    people::Caution m_caution;
    people::RetryPlan m_retry;
    people::Observation m_observation;
    kitchen::Vessel m_vessel;
    kitchen::Container m_container;
    kitchen::Pot m_pot;
    kitchen::Batch m_batch;
    kitchen::Lot m_lot;
    intake::Target m_target;
    intake::Ladder m_ladder;
    intake::Decision m_decision;
    intake::IntakeEntry m_entry;
    intake::Reaction m_reaction;
    week::WeekPlan m_plan;
    QList<week::UsualHours> m_hours;
    week::WeekTemplate m_week;
    casebook::HandoutTemplate m_pages;
    casebook::LabelStock m_labels;
    casebook::VisitNote m_note;
    casebook::HandoutRecord m_handout;
    QByteArray m_pdf = QByteArrayLiteral("%PDF-1.4\0\xff\x80 binary"); // with a zero byte inside
    QByteArray m_document = QByteArrayLiteral("{\"title\":\"Wöche\"}");
};

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

TEST_F(RecordRoundTripTest, EveryRecordCanBeRemovedAndTheRemovalTakenBack) {
    const QByteArray before = logicalDump(workbookPath());
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->handouts().removeHandout(action, m_handout.id));
        EXPECT_TRUE(m_workbook->notes().removeNote(action, m_note.id));
        EXPECT_TRUE(m_workbook->log().removeReaction(action, m_reaction.id));
        EXPECT_TRUE(m_workbook->log().removeEntry(action, m_entry.id));
        EXPECT_TRUE(m_workbook->climbs().removeDecision(action, m_decision.id));
        EXPECT_TRUE(m_workbook->climbs().removeLadder(action, m_ladder.id));
        EXPECT_TRUE(m_workbook->climbs().removeTarget(action, m_target.id));
        EXPECT_TRUE(m_workbook->families().removeTolerance(action, m_tolerance.id));
        EXPECT_TRUE(m_workbook->families().removeCaution(action, m_caution.id));
        EXPECT_TRUE(m_workbook->families().removeRetryPlan(action, m_retry.id));
        EXPECT_TRUE(m_workbook->families().removeObservation(action, m_observation.id));
        EXPECT_TRUE(m_workbook->pots().removeLot(action, m_lot.id));
        EXPECT_TRUE(m_workbook->pots().removeBatch(action, m_batch.id));
        week::WeekPlan empty;
        empty.family = m_family.id;
        empty.start = m_plan.start;
        EXPECT_EQ(m_workbook->weeks().setPlan(action, empty).value(), WeekPlanId{});
        EXPECT_TRUE(m_workbook->weeks().removeTemplate(action, m_week.id));
        EXPECT_TRUE(m_workbook->families().setUsualHours(action, m_family.id, {}));
        EXPECT_TRUE(m_workbook->practice().removeHandoutTemplate(action, m_pages.id));
        EXPECT_TRUE(m_workbook->practice().removeLabelStock(action, m_labels.id));
        EXPECT_TRUE(m_workbook->pots().removePot(action, m_pot.id));
        EXPECT_TRUE(m_workbook->families().removeVessel(action, m_vessel.id));
        EXPECT_TRUE(m_workbook->families().removeContainer(action, m_container.id));
        EXPECT_TRUE(m_workbook->practice().removeSymptom(action, m_symptom.id));
        EXPECT_TRUE(m_workbook->practice().removeLadderTemplate(action, m_template.id));
        for (const QString& item : m_prices.keys())
            EXPECT_TRUE(m_workbook->practice().setPrice(action, item, {}));
        EXPECT_TRUE(m_workbook->families().removeMember(action, m_member.id));
        EXPECT_TRUE(m_workbook->practice().removePhase(action, m_phase.id));
        return {};
    });
    const casebook::FamilyRecords left = records();
    EXPECT_TRUE(left.members.isEmpty() && left.tolerances.isEmpty() && left.cautions.isEmpty());
    EXPECT_TRUE(left.targets.isEmpty() && left.ladders.isEmpty() && left.decisions.isEmpty());
    EXPECT_TRUE(left.entries.isEmpty() && left.reactions.isEmpty() && left.vessels.isEmpty());
    EXPECT_TRUE(left.pots.isEmpty() && left.batches.isEmpty() && left.lots.isEmpty());
    EXPECT_TRUE(left.weeks.isEmpty() && left.notes.isEmpty() && left.handouts.isEmpty());
    EXPECT_TRUE(left.retryPlans.isEmpty() && left.observations.isEmpty());
    EXPECT_TRUE(left.containers.isEmpty() && left.ladderTemplates.isEmpty());
    EXPECT_TRUE(left.prices.isEmpty() && left.usualHours.isEmpty());
    EXPECT_TRUE(left.weekTemplates.isEmpty() && left.handoutTemplates.isEmpty());
    EXPECT_TRUE(left.labelStocks.isEmpty());
    const QByteArray after = logicalDump(workbookPath());
    for (const char* table :
         {"week_locked_day", "week_own_day", "week_own_hours", "week_extra", "week_at_home",
          "week_template_placement", "handout_template_section"})
        EXPECT_FALSE(after.contains(QByteArray("\n" + QByteArray(table) + ": "))) << table;
    EXPECT_EQ(left.symptoms.size(), intake::shippedSymptoms().size());
    EXPECT_EQ(left.phases.size(), 3);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(logicalDump(workbookPath()), before);
    expectAllStored();
}

TEST_F(RecordRoundTripTest, AFamilyGoesWithAllItsRecordsAndComesBackWhole) {
    const QByteArray before = logicalDump(workbookPath());
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->families().removeFamily(action, m_family.id); });
    EXPECT_FALSE(m_workbook->records(m_family.id));
    const QByteArray after = logicalDump(workbookPath());
    for (const char* table : {"family",
                              "member",
                              "pot",
                              "pot_cut",
                              "pot_extra",
                              "ladder_rung",
                              "intake_entry",
                              "week_placement",
                              "handout",
                              "lot",
                              "container",
                              "retry_plan",
                              "retry_step",
                              "observation",
                              "usual_hours",
                              "week_plan",
                              "week_locked_day",
                              "week_own_day",
                              "week_own_hours",
                              "week_extra",
                              "week_at_home",
                              "week_template",
                              "week_template_placement"})
        EXPECT_FALSE(after.contains(QByteArray("\n" + QByteArray(table) + ": "))) << table;
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(logicalDump(workbookPath()), before);
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

TEST_F(RecordRoundTripTest, ABatchThatGoesLeavesTheLogWithoutTheLot) {
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->pots().removeBatch(action, m_batch.id); });
    m_entry.lot = {};
    expectOne(records().entries, m_entry);
    EXPECT_TRUE(records().lots.isEmpty());
}

TEST_F(RecordRoundTripTest, AMemberGoesWithAllThatIsFollowedOfIt) {
    const QByteArray before = logicalDump(workbookPath());
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->families().removeMember(action, m_member.id); });
    const QByteArray after = logicalDump(workbookPath());
    for (const char* table : {"tolerance_note", "ladder_rung", "retry_plan", "retry_step",
                              "observation", "intake_entry"})
        EXPECT_FALSE(after.contains(QByteArray("\n" + QByteArray(table) + ": "))) << table;
    expectOne(records().pots, m_pot);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(logicalDump(workbookPath()), before);
}

TEST_F(RecordRoundTripTest, AContainerThatGoesLeavesItsPotsWithoutOne) {
    const QByteArray before = logicalDump(workbookPath());
    doIt(*m_workbook, [&](Action& action) {
        return m_workbook->families().removeContainer(action, m_container.id);
    });
    kitchen::Pot left = m_pot;
    left.coolIn = {};
    expectOne(records().pots, left);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(logicalDump(workbookPath()), before);
}

TEST_F(RecordRoundTripTest, AVesselThatGoesLeavesItsPotsAndBatchesWithoutOne) {
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->families().removeVessel(action, m_vessel.id); });
    m_pot.vessel = {};
    expectOne(records().pots, m_pot);
    m_batch.cooked.vessel = {};
    expectOne(records().batches, m_batch);
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
