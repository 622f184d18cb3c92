#include "core/store/one_of_each_fixture.h"

namespace ladlework::store {
namespace {

class RecordRemovalTest : public OneOfEachFixture {};

TEST_F(RecordRemovalTest, EveryRecordCanBeRemovedAndTheRemovalTakenBack) {
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

TEST_F(RecordRemovalTest, AFamilyGoesWithAllItsRecordsAndComesBackWhole) {
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

TEST_F(RecordRemovalTest, ABatchThatGoesLeavesTheLogWithoutTheLot) {
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->pots().removeBatch(action, m_batch.id); });
    m_entry.lot = {};
    expectOne(records().entries, m_entry);
    EXPECT_TRUE(records().lots.isEmpty());
}

TEST_F(RecordRemovalTest, AMemberGoesWithAllThatIsFollowedOfIt) {
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

TEST_F(RecordRemovalTest, AContainerThatGoesLeavesItsPotsWithoutOne) {
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

TEST_F(RecordRemovalTest, AVesselThatGoesLeavesItsPotsAndBatchesWithoutOne) {
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->families().removeVessel(action, m_vessel.id); });
    m_pot.vessel = {};
    expectOne(records().pots, m_pot);
    m_batch.cooked.vessel = {};
    expectOne(records().batches, m_batch);
}

} // namespace
} // namespace ladlework::store
