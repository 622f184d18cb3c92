#pragma once

#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

namespace ladlework::store {

/// A workbook with one of each record, none of whose fields is at its default.
class OneOfEachFixture : public StoreFixture {
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

} // namespace ladlework::store
