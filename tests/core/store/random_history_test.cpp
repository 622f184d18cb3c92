#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

#include <random>

namespace ladlework::store {
namespace {

using quantity::Volume;

/// Does random things to a workbook; the same seed does the same things.
class RandomPractitioner {
public:
    RandomPractitioner(Workbook& workbook, unsigned seed) : m_workbook(workbook), m_random(seed) {}

    /// One action of one to four steps; what is refused takes the whole action back.
    void act() {
        const Outcome done =
            m_workbook.act(QStringLiteral("Did this and that"), [this](Action& action) -> Outcome {
                for (int step = upTo(4); step >= 0; --step)
                    if (const Outcome stepped = doStep(action); !stepped)
                        return stepped;
                return {};
            });
        m_done += done ? 1 : 0;
    }

    [[nodiscard]] int done() const { return m_done; }

private:
    int upTo(int bound) { return std::uniform_int_distribution<int>(0, bound - 1)(m_random); }

    template <class Record>
    std::optional<Record> any(const QList<Record>& records) {
        if (records.isEmpty())
            return std::nullopt;
        return records.at(upTo(static_cast<int>(records.size())));
    }

    QString word() { return QStringLiteral("w%1").arg(upTo(1000)); }
    QDate day() { return testToday.addDays(-upTo(200)); }
    Volume volume() { return Volume::fromMillilitres(1.0 + upTo(2000) / 3.0); }

    Outcome doStep(Action& action) {
        const auto family = any(m_workbook.families().families());
        if (!family || upTo(20) == 0) {
            people::Family fresh = sampleFamily();
            fresh.name = word();
            return outcome(m_workbook.families().addFamily(action, fresh));
        }
        if (upTo(40) == 0)
            return m_workbook.families().removeFamily(action, family->id);
        const auto member = any(m_workbook.families().members(family->id));
        if (!member || upTo(15) == 0) {
            const auto phase = any(m_workbook.practice().phases());
            return outcome(m_workbook.families().addMember(
                action, sampleMember(family->id, phase ? phase->id : PhaseId{})));
        }
        switch (upTo(6)) {
        case 0:
            return doPeople(action, *family, *member);
        case 1:
            return doKitchen(action, family->id);
        case 2:
            return doClimb(action, *member);
        case 3:
            return doHouse(action);
        case 4:
            return doFollowUp(action, *member);
        default:
            return doLog(action, family->id, member->id);
        }
    }

    Outcome doPeople(Action& action, people::Family family, people::Member member) {
        FamilyRepository& families = m_workbook.families();
        const auto note = any(families.tolerances(family.id));
        switch (upTo(8)) {
        case 0:
            family.name = word();
            return families.changeFamily(action, family);
        case 1:
            member.remarks = word();
            return families.changeMember(action, member);
        case 2:
            return families.removeMember(action, member.id);
        case 3:
            return note ? families.removeTolerance(action, note->id)
                        : outcome(families.addTolerance(action, sampleTolerance(member.id)));
        case 4:
            return outcome(families.addCaution(action, sampleCaution(member.id)));
        case 5: {
            people::Phase phase = samplePhase();
            phase.name = word();
            return outcome(m_workbook.practice().addPhase(action, phase));
        }
        case 6: {
            people::Practice practice = samplePractice();
            practice.name = word();
            return m_workbook.practice().setPractice(action, practice);
        }
        default:
            return outcome(m_workbook.handouts().addHandout(action, sampleHandout(family.id),
                                                            word().toUtf8(), "{}"));
        }
    }

    Outcome doHouse(Action& action) {
        PracticeRepository& practice = m_workbook.practice();
        auto symptom = any(practice.symptoms());
        auto ladderTemplate = any(practice.ladderTemplates());
        const QString item = upTo(2) == 0 ? QStringLiteral("onion") : QStringLiteral("salt");
        switch (upTo(8)) {
        case 7:
            return doPages(action);
        case 0: {
            intake::LadderRules rules = sampleRules();
            rules.holdDays = upTo(50);
            return practice.setHouseRules(action, rules);
        }
        case 1:
            return practice.setPrice(action, item, 0.1 + upTo(100));
        case 2:
            return practice.setPrice(action, item, {});
        case 3:
            if (!symptom)
                return {};
            symptom->position = upTo(40);
            return practice.changeSymptom(action, *symptom);
        case 4:
            if (symptom && upTo(3) == 0)
                return practice.removeSymptom(action, symptom->id);
            return outcome(practice.addSymptom(action, {{}, word(), upTo(40), upTo(2) == 0}));
        case 5:
            if (!ladderTemplate)
                return {};
            if (upTo(3) == 0)
                return practice.removeLadderTemplate(action, ladderTemplate->id);
            ladderTemplate->rungs.append(ladderTemplate->rungs.last() + volume());
            return practice.changeLadderTemplate(action, *ladderTemplate);
        default: {
            intake::LadderTemplate fresh = sampleTemplate();
            fresh.name = word();
            return outcome(practice.addLadderTemplate(action, fresh));
        }
        }
    }

    Outcome doPages(Action& action) {
        PracticeRepository& practice = m_workbook.practice();
        auto pages = any(practice.handoutTemplates());
        auto labels = any(practice.labelStocks());
        switch (upTo(4)) {
        case 0: {
            casebook::HandoutTemplate fresh = sampleHandoutTemplate();
            fresh.name = word();
            return outcome(practice.addHandoutTemplate(action, fresh));
        }
        case 1:
            if (!pages)
                return {};
            if (upTo(3) == 0)
                return practice.removeHandoutTemplate(action, pages->id);
            pages->sections.append({casebook::HandoutPart::OwnWords, true, word(), word()});
            return practice.changeHandoutTemplate(action, *pages);
        case 2: {
            casebook::LabelStock fresh = sampleLabelStock();
            fresh.name = word();
            return outcome(practice.addLabelStock(action, fresh));
        }
        default:
            if (!labels)
                return {};
            if (upTo(3) == 0)
                return practice.removeLabelStock(action, labels->id);
            labels->rows = 1 + upTo(7);
            return practice.changeLabelStock(action, *labels);
        }
    }

    Outcome doFollowUp(Action& action, const people::Member& member) {
        FamilyRepository& families = m_workbook.families();
        auto plan = any(families.retryPlans(member.family));
        auto observation = any(families.observations(member.family));
        switch (upTo(6)) {
        case 0:
            return outcome(families.addRetryPlan(action, sampleRetry(member.id)));
        case 1:
            if (!plan)
                return {};
            plan->steps.append(plan->steps.last() + Volume::fromMillilitres(1));
            plan->note = word();
            return families.changeRetryPlan(action, *plan);
        case 2:
            return plan ? families.removeRetryPlan(action, plan->id) : Outcome();
        case 3:
            if (!observation)
                return {};
            observation->value = upTo(1000) / 7.0;
            return families.changeObservation(action, *observation);
        case 4:
            return observation ? families.removeObservation(action, observation->id) : Outcome();
        default: {
            people::Observation fresh = sampleObservation(member.id);
            fresh.day = day();
            return outcome(families.addObservation(action, fresh));
        }
        }
    }

    Outcome doContainers(Action& action, FamilyId family, kitchen::Pot pot) {
        FamilyRepository& families = m_workbook.families();
        auto container = any(families.containers(family));
        switch (upTo(3)) {
        case 0:
            if (!container)
                return {};
            if (upTo(2) == 0)
                return families.removeContainer(action, container->id);
            container->covered = !container->covered;
            return families.changeContainer(action, *container);
        case 1:
            pot.coolIn = container ? container->id : ContainerId{};
            return m_workbook.pots().changePot(action, pot);
        default:
            return outcome(families.addContainer(action, sampleContainer(family)));
        }
    }

    Outcome doKitchen(Action& action, FamilyId family) {
        PotRepository& pots = m_workbook.pots();
        const auto vessel = any(m_workbook.families().vessels(family));
        auto pot = any(pots.pots(family));
        const auto batch = any(pots.batches(family));
        if (!vessel)
            return outcome(m_workbook.families().addVessel(action, sampleVessel(family)));
        if (!pot)
            return outcome(pots.addPot(action, samplePot(family, vessel->id)));
        switch (upTo(10)) {
        case 0:
            return m_workbook.families().removeVessel(action, vessel->id);
        case 8:
        case 9:
            return doContainers(action, family, *pot);
        case 1:
            pot->water = volume();
            pot->cuts.append(pot->cuts.first());
            return pots.changePot(action, *pot);
        case 2:
            pot->cuts = pot->cuts.first(1);
            return pots.changePot(action, *pot);
        case 3:
            return pots.removePot(action, pot->id);
        case 4:
            return batch ? pots.removeBatch(action, batch->id)
                         : outcome(pots.addBatch(action, sampleBatch(family, pot->id, vessel->id)));
        case 5:
            return batch ? outcome(pots.addLot(action, sampleLot(batch->id)))
                         : outcome(pots.addBatch(action, sampleBatch(family, pot->id, vessel->id)));
        case 6:
            return outcome(m_workbook.weeks().setPlan(action, emptyWeek(family)));
        default:
            return doWeek(action, family, pot->id);
        }
    }

    week::WeekPlan emptyWeek(FamilyId family) {
        week::WeekPlan plan;
        plan.family = family;
        plan.start = week::weekStart(day());
        return plan;
    }

    /// Each part of the week is there or not, and overwrites what a week that is there holds.
    Outcome doWeek(Action& action, FamilyId family, PotId pot) {
        week::WeekPlan plan = emptyWeek(family);
        const QDate someDay = plan.start.addDays(upTo(7));
        const week::FreeHours hours{
            {}, quantity::Duration::fromMinutes(1 + upTo(600)), 1 + upTo(6)};
        switch (upTo(6)) {
        case 0:
            return m_workbook.families().setUsualHours(
                action, family, QList<week::UsualHours>(upTo(4), {1 + upTo(7), hours}));
        case 1: {
            auto kept = any(m_workbook.weeks().templates(family));
            if (kept && upTo(2) == 0)
                return m_workbook.weeks().removeTemplate(action, kept->id);
            week::WeekTemplate fresh = sampleWeekTemplate(family, pot);
            fresh.name = word();
            if (!kept)
                return outcome(m_workbook.weeks().addTemplate(action, fresh));
            fresh.id = kept->id;
            return m_workbook.weeks().changeTemplate(action, fresh);
        }
        default:
            if (upTo(2) == 0)
                plan.placements = {{someDay, pot, {}}};
            if (upTo(2) == 0)
                plan.lockedDays = {someDay};
            if (upTo(2) == 0)
                plan.hours = {{someDay, QList<week::FreeHours>(upTo(3), hours)}};
            if (upTo(2) == 0)
                plan.extras = {{word(), week::ShopSection::Dry}};
            if (upTo(2) == 0)
                plan.atHome = {{word(), quantity::Mass::fromGrams(upTo(500))}};
            plan.note = word();
            return outcome(m_workbook.weeks().setPlan(action, plan));
        }
    }

    Outcome doClimb(Action& action, const people::Member& member) {
        ClimbRepository& climbs = m_workbook.climbs();
        auto ladder = any(climbs.ladders(member.family));
        const auto decision = any(climbs.decisions(member.family));
        switch (upTo(5)) {
        case 0:
            return outcome(climbs.addTarget(action, sampleTarget(member.id)));
        case 1:
            return outcome(climbs.addLadder(action, sampleLadder(member.id)));
        case 2:
            if (!ladder)
                return {};
            ladder->rungs.append(ladder->rungs.last() + Volume::fromMillilitres(1));
            return climbs.changeLadder(action, *ladder);
        case 3:
            return ladder ? climbs.removeLadder(action, ladder->id) : Outcome();
        default: {
            if (decision && upTo(2) == 0)
                return climbs.removeDecision(action, decision->id);
            intake::Decision fresh = sampleDecision(member.id);
            fresh.day = day();
            return outcome(climbs.addDecision(action, fresh));
        }
        }
    }

    Outcome doLog(Action& action, FamilyId family, MemberId member) {
        LogRepository& log = m_workbook.log();
        auto entry = any(log.entries(family));
        const auto lot = any(m_workbook.pots().lots(family));
        switch (upTo(5)) {
        case 0: {
            intake::Reaction reaction = sampleReaction(member);
            reaction.strength = upTo(11);
            return outcome(log.addReaction(action, reaction));
        }
        case 1:
            if (!entry)
                return {};
            entry->drunk = volume();
            return log.changeEntry(action, *entry);
        case 2:
            return entry ? log.removeEntry(action, entry->id) : Outcome();
        case 3:
            return outcome(m_workbook.notes().addNote(action, sampleNote(family)));
        default: {
            intake::IntakeEntry fresh = sampleEntry(member, {}, lot ? lot->id : LotId{});
            fresh.day = day();
            fresh.drunk = volume();
            return outcome(log.addEntry(action, fresh));
        }
        }
    }

    Workbook& m_workbook;
    std::mt19937 m_random;
    int m_done = 0;
};

class RandomHistoryTest : public StoreFixture, public ::testing::WithParamInterface<unsigned> {};

TEST_P(RandomHistoryTest, UndoingAllAndRedoingAllGiveTheSameRecordsAgain) {
    constexpr int actions = 80;
    std::unique_ptr<Workbook> workbook = make();
    RandomPractitioner practitioner(*workbook, GetParam());
    QList<QByteArray> states{logicalDump(workbookPath())};
    for (int step = 0; step < actions; ++step) {
        practitioner.act();
        const QByteArray state = logicalDump(workbookPath());
        if (state != states.last())
            states.append(state);
    }
    // Most actions must have been done, or the test shows nothing.
    ASSERT_GT(practitioner.done(), actions / 2);
    ASSERT_EQ(workbook->history().latest(actions).size(), states.size() - 1);

    for (qsizetype at = states.size() - 2; at >= 0; --at) {
        if (at == states.size() / 2) {
            workbook.reset();
            workbook = reopen();
        }
        ASSERT_TRUE(workbook->undo());
        ASSERT_EQ(logicalDump(workbookPath()), states.at(at)) << "undo to state " << at;
    }
    ASSERT_FALSE(workbook->undo());
    for (qsizetype at = 1; at < states.size(); ++at) {
        ASSERT_TRUE(workbook->redo());
        ASSERT_EQ(logicalDump(workbookPath()), states.at(at)) << "redo to state " << at;
    }
    ASSERT_FALSE(workbook->redo());
    for (const Finding& finding : workbook->verify())
        ADD_FAILURE() << finding.text.toStdString() << " " << finding.field.toStdString();
}

/// What the list of families shows follows from what is kept of each climb.
TEST_P(RandomHistoryTest, TheListOfFamiliesShowsWhatTheRecordsSay) {
    const kitchen::Catalogue catalogue = kitchen::Catalogue::load().value();
    const std::unique_ptr<Workbook> workbook = make();
    RandomPractitioner practitioner(*workbook, GetParam());
    int told = 0;
    int silent = 0;
    for (int step = 0; step < 60; ++step) {
        m_clock.set(testNow);
        practitioner.act();
        for (const int later : {0, 1, 9}) {
            m_clock.set(testNow.addDays(later));
            const QHash<FamilyId, casebook::FamilyExcerpt> excerpts = workbook->excerpts();
            for (const people::Family& family : workbook->families().families()) {
                const QDate today = m_clock.today(family.zone);
                const auto needs = casebook::needsOf(excerpts.value(family.id), catalogue, today);
                ++(needs ? told : silent);
                if (!needs)
                    continue;
                ASSERT_EQ(*needs, casebook::needsOf(casebook::Casebook(
                                      workbook->records(family.id).value(), catalogue, today)))
                    << "after " << step << " steps, " << later << " days later";
            }
        }
    }
    EXPECT_GT(told, 3 * silent); // silent: a ladder that began after the last entry
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomHistoryTest, ::testing::Values(1U, 20240315U, 777U));

} // namespace
} // namespace ladlework::store
