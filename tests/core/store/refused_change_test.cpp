#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

namespace ladlework::store {
namespace {

/// What a repository refuses because of other records that stand in the workbook.
class RefusedChangeTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        const auto fill = [this](Action& action, Workbook& workbook) -> Outcome {
            m_phase = workbook.practice().phases().first().id;
            m_family = workbook.families().addFamily(action, sampleFamily()).value();
            m_other = workbook.families().addFamily(action, sampleFamily()).value();
            m_member =
                workbook.families().addMember(action, sampleMember(m_family, m_phase)).value();
            m_otherMember =
                workbook.families().addMember(action, sampleMember(m_other, {})).value();
            m_pot = workbook.pots().addPot(action, samplePot(m_family, {})).value();
            return {};
        };
        m_workbook = Workbook::create(workbookPath(), m_clock, fill).value();
    }

    Problem refusalOf(const std::function<Outcome(Action&)>& work) {
        const QByteArray before = bytesOf(workbookPath());
        const Outcome tried = m_workbook->act(QStringLiteral("Tried"), work);
        EXPECT_FALSE(tried);
        EXPECT_EQ(bytesOf(workbookPath()), before);
        return tried ? Problem{} : tried.error();
    }

    void expectRefused(const std::function<Outcome(Action&)>& work, Problem::Kind kind,
                       const QString& phrase) {
        const Problem refusal = refusalOf(work);
        EXPECT_EQ(refusal.kind, kind);
        EXPECT_TRUE(refusal.sentence.contains(phrase)) << refusal.sentence.toStdString();
    }

    PhaseId m_phase;
    FamilyId m_family;
    FamilyId m_other;
    MemberId m_member;
    MemberId m_otherMember;
    PotId m_pot;
    std::unique_ptr<Workbook> m_workbook;
};

constexpr auto refused = Problem::Kind::Refused;

TEST_F(RefusedChangeTest, APhaseInWhichSomeoneStandsStays) {
    expectRefused(
        [&](Action& action) { return m_workbook->practice().removePhase(action, m_phase); },
        refused, QStringLiteral("One member stands in this phase"));
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        return outcome(m_workbook->families().addMember(action, sampleMember(m_other, m_phase)));
    });
    const Problem refusal = refusalOf(
        [&](Action& action) { return m_workbook->practice().removePhase(action, m_phase); });
    EXPECT_TRUE(refusal.sentence.startsWith(QStringLiteral("2 members stand")));
    // Another family's names are not for the screen.
    EXPECT_FALSE(refusal.sentence.contains(QStringLiteral("Ana")));
}

TEST_F(RefusedChangeTest, APotThatWasCookedStays) {
    doIt(*m_workbook, [&](Action& action) {
        return outcome(m_workbook->pots().addBatch(action, sampleBatch(m_family, m_pot)));
    });
    expectRefused([&](Action& action) { return m_workbook->pots().removePot(action, m_pot); },
                  refused, QStringLiteral("March 10, 2024"));
}

TEST_F(RefusedChangeTest, APotThatIsPlannedStays) {
    doIt(*m_workbook, [&](Action& action) {
        return outcome(m_workbook->weeks().setPlan(action, samplePlan(m_family, m_pot)));
    });
    expectRefused([&](Action& action) { return m_workbook->pots().removePot(action, m_pot); },
                  refused, QStringLiteral("March 20, 2024"));
}

TEST_F(RefusedChangeTest, APotOfAWeekThatIsKeptStays) {
    doIt(*m_workbook, [&](Action& action) {
        return outcome(
            m_workbook->weeks().addTemplate(action, sampleWeekTemplate(m_family, m_pot)));
    });
    expectRefused([&](Action& action) { return m_workbook->pots().removePot(action, m_pot); },
                  refused, QStringLiteral("week that is kept"));
}

TEST_F(RefusedChangeTest, AWeekThatIsKeptStaysInTheFamilyAndHasItsOwnName) {
    week::WeekTemplate kept = sampleWeekTemplate(m_family, m_pot);
    week::WeekTemplate second = kept;
    second.name = QStringLiteral("Second");
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        kept.id = m_workbook->weeks().addTemplate(action, kept).value();
        second.id = m_workbook->weeks().addTemplate(action, second).value();
        return m_workbook->weeks().changeTemplate(action, kept); // under its own name
    });
    second.name = kept.name.toUpper();
    expectRefused(
        [&](Action& action) { return m_workbook->weeks().changeTemplate(action, second); }, refused,
        QStringLiteral("kept already"));
    kept.family = m_other;
    expectRefused([&](Action& action) { return m_workbook->weeks().changeTemplate(action, kept); },
                  refused, QStringLiteral("stays with the family"));
}

TEST_F(RefusedChangeTest, PagesAndLabelSheetsDoNotTakeAnothersName) {
    casebook::HandoutTemplate pages = sampleHandoutTemplate();
    casebook::LabelStock labels = sampleLabelStock();
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->practice().addHandoutTemplate(action, pages));
        EXPECT_TRUE(m_workbook->practice().addLabelStock(action, labels));
        pages.name = labels.name = QStringLiteral("Second");
        pages.id = m_workbook->practice().addHandoutTemplate(action, pages).value();
        labels.id = m_workbook->practice().addLabelStock(action, labels).value();
        return {};
    });
    pages.name = sampleHandoutTemplate().name.toLower();
    expectRefused(
        [&](Action& action) { return m_workbook->practice().changeHandoutTemplate(action, pages); },
        refused, QStringLiteral("already"));
    labels.name = sampleLabelStock().name;
    expectRefused(
        [&](Action& action) { return m_workbook->practice().changeLabelStock(action, labels); },
        refused, QStringLiteral("already"));
}

TEST_F(RefusedChangeTest, APotThatTheLogNamesStays) {
    doIt(*m_workbook, [&](Action& action) {
        return outcome(m_workbook->log().addEntry(action, sampleEntry(m_member, m_pot, {})));
    });
    expectRefused([&](Action& action) { return m_workbook->pots().removePot(action, m_pot); },
                  refused, QStringLiteral("March 12, 2024"));
}

TEST_F(RefusedChangeTest, AMemberStaysInTheFamily) {
    people::Member moved = sampleMember(m_other, m_phase);
    moved.id = m_member;
    expectRefused(
        [&](Action& action) { return m_workbook->families().changeMember(action, moved); }, refused,
        QStringLiteral("stays in the family"));
}

TEST_F(RefusedChangeTest, AnEntryStaysInTheFamilyButMayChangeTheMember) {
    const IntakeId id = added<IntakeId>(*m_workbook, [&](Action& action) {
        return m_workbook->log().addEntry(action, sampleEntry(m_member, {}, {}));
    });
    const MemberId sister = added<MemberId>(*m_workbook, [&](Action& action) {
        return m_workbook->families().addMember(action, sampleMember(m_family, {}));
    });
    intake::IntakeEntry entry = sampleEntry(m_otherMember, {}, {});
    entry.id = id;
    expectRefused([&](Action& action) { return m_workbook->log().changeEntry(action, entry); },
                  refused, QStringLiteral("another family"));
    entry.member = sister;
    doIt(*m_workbook, [&](Action& action) { return m_workbook->log().changeEntry(action, entry); });
    EXPECT_EQ(m_workbook->log().entries(m_family).first().member, sister);
}

TEST_F(RefusedChangeTest, WhatIsFollowedOfAMemberStaysInTheFamily) {
    RetryPlanId retryId;
    ObservationId observationId;
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        retryId = m_workbook->families().addRetryPlan(action, sampleRetry(m_member)).value();
        observationId =
            m_workbook->families().addObservation(action, sampleObservation(m_member)).value();
        return {};
    });
    people::RetryPlan plan = sampleRetry(m_otherMember);
    plan.id = retryId;
    expectRefused(
        [&](Action& action) { return m_workbook->families().changeRetryPlan(action, plan); },
        refused, QStringLiteral("another family"));
    people::Observation observation = sampleObservation(m_otherMember);
    observation.id = observationId;
    expectRefused(
        [&](Action& action) {
            return m_workbook->families().changeObservation(action, observation);
        },
        refused, QStringLiteral("another family"));
}

TEST_F(RefusedChangeTest, ARetryThatIsNoLongerBarredByANoteCanStillBeWrittenDown) {
    people::ToleranceNote note = sampleTolerance(m_member);
    people::RetryPlan plan = sampleRetry(m_member);
    plan.outcome = people::RetryPlan::Ending::Open;
    plan.closed = QDate();
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        note.id = m_workbook->families().addTolerance(action, note).value();
        plan.id = m_workbook->families().addRetryPlan(action, plan).value();
        return m_workbook->families().removeTolerance(action, note.id);
    });
    plan.note = QStringLiteral("a good first step");
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->families().changeRetryPlan(action, plan); });
    plan.subject = {people::Subject::Kind::Animal, QStringLiteral("lamb")};
    expectRefused(
        [&](Action& action) { return m_workbook->families().changeRetryPlan(action, plan); },
        refused, QStringLiteral("tolerance note"));
}

TEST_F(RefusedChangeTest, AContainerStaysInTheKitchen) {
    const ContainerId id = added<ContainerId>(*m_workbook, [&](Action& action) {
        return m_workbook->families().addContainer(action, sampleContainer(m_family));
    });
    kitchen::Container moved = sampleContainer(m_other);
    moved.id = id;
    expectRefused(
        [&](Action& action) { return m_workbook->families().changeContainer(action, moved); },
        refused, QStringLiteral("stays in the family"));
    kitchen::Pot pot = samplePot(m_family, {}, id);
    pot.id = m_pot;
    doIt(*m_workbook, [&](Action& action) { return m_workbook->pots().changePot(action, pot); });
    pot.family = {}; // for all families: it cannot cool in one kitchen's tray
    expectRefused([&](Action& action) { return m_workbook->pots().changePot(action, pot); },
                  refused, QStringLiteral("another kitchen"));
}

TEST_F(RefusedChangeTest, ATemplateOrSymptomDoesNotTakeAnothersName) {
    intake::LadderTemplate second = sampleTemplate();
    second.name = QStringLiteral("Second");
    intake::Symptom symptom = m_workbook->practice().symptoms().at(1);
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->practice().addLadderTemplate(action, sampleTemplate()));
        second.id = m_workbook->practice().addLadderTemplate(action, second).value();
        symptom.redFlag = true; // under its own name it can be changed
        return m_workbook->practice().changeSymptom(action, symptom);
    });
    second.name = sampleTemplate().name;
    expectRefused(
        [&](Action& action) { return m_workbook->practice().changeLadderTemplate(action, second); },
        refused, QStringLiteral("already"));
    symptom.name = m_workbook->practice().symptoms().first().name;
    expectRefused(
        [&](Action& action) { return m_workbook->practice().changeSymptom(action, symptom); },
        refused, QStringLiteral("already"));
}

TEST_F(RefusedChangeTest, APriceThatIsNotThereIsTakenAwayWithoutATrace) {
    doIt(*m_workbook, [&](Action& action) {
        return m_workbook->practice().setPrice(action, QStringLiteral("onion"), {});
    });
    EXPECT_FALSE(m_workbook->history().nextUndo());
}

TEST_F(RefusedChangeTest, APotBecomesThePracticesButNotAnotherFamilys) {
    kitchen::Pot pot = samplePot(m_other, {});
    pot.id = m_pot;
    expectRefused([&](Action& action) { return m_workbook->pots().changePot(action, pot); },
                  refused, QStringLiteral("copy it"));
    pot.family = {};
    doIt(*m_workbook, [&](Action& action) { return m_workbook->pots().changePot(action, pot); });
    EXPECT_EQ(m_workbook->pots().pots(m_other).size(), 1);
}

TEST_F(RefusedChangeTest, ARecordThatIsNotThereIsNotFound) {
    const auto missing = Problem::Kind::NotFound;
    const QString gone = QStringLiteral("no longer in the workbook");
    const std::vector<std::function<Outcome(Action&)>> tries{
        [&](Action& a) { return m_workbook->families().removeFamily(a, FamilyId{999}); },
        [&](Action& a) { return m_workbook->families().changeFamily(a, sampleFamily()); },
        [&](Action& a) { return m_workbook->families().removeMember(a, MemberId{999}); },
        [&](Action& a) { return m_workbook->families().removeVessel(a, VesselId{999}); },
        [&](Action& a) { return m_workbook->families().removeTolerance(a, ToleranceId{999}); },
        [&](Action& a) { return m_workbook->families().removeCaution(a, CautionId{999}); },
        [&](Action& a) {
            return m_workbook->families().changeMember(a, sampleMember(m_family, {}));
        },
        [&](Action& a) { return m_workbook->families().changeVessel(a, sampleVessel(m_family)); },
        [&](Action& a) {
            return m_workbook->families().changeTolerance(a, sampleTolerance(m_member));
        },
        [&](Action& a) { return m_workbook->families().changeCaution(a, sampleCaution(m_member)); },
        [&](Action& a) { return m_workbook->families().removeContainer(a, ContainerId{999}); },
        [&](Action& a) { return m_workbook->families().removeRetryPlan(a, RetryPlanId{999}); },
        [&](Action& a) { return m_workbook->families().removeObservation(a, ObservationId{999}); },
        [&](Action& a) {
            return m_workbook->families().changeContainer(a, sampleContainer(m_family));
        },
        [&](Action& a) { return m_workbook->families().changeRetryPlan(a, sampleRetry(m_member)); },
        [&](Action& a) {
            return m_workbook->families().changeObservation(a, sampleObservation(m_member));
        },
        [&](Action& a) { return m_workbook->practice().changeSymptom(a, sampleSymptom()); },
        [&](Action& a) { return m_workbook->practice().removeSymptom(a, SymptomId{999}); },
        [&](Action& a) { return m_workbook->practice().changeLadderTemplate(a, sampleTemplate()); },
        [&](Action& a) {
            return m_workbook->practice().removeLadderTemplate(a, LadderTemplateId{999});
        },
        [&](Action& a) { return m_workbook->practice().changePhase(a, samplePhase()); },
        [&](Action& a) { return m_workbook->practice().removePhase(a, PhaseId{999}); },
        [&](Action& a) {
            return m_workbook->practice().changeHandoutTemplate(a, sampleHandoutTemplate());
        },
        [&](Action& a) {
            return m_workbook->practice().removeHandoutTemplate(a, HandoutTemplateId{999});
        },
        [&](Action& a) { return m_workbook->practice().changeLabelStock(a, sampleLabelStock()); },
        [&](Action& a) { return m_workbook->practice().removeLabelStock(a, LabelStockId{999}); },
        [&](Action& a) {
            return m_workbook->weeks().changeTemplate(a, sampleWeekTemplate(m_family, m_pot));
        },
        [&](Action& a) { return m_workbook->weeks().removeTemplate(a, WeekTemplateId{999}); },
        [&](Action& a) { return m_workbook->pots().changePot(a, samplePot(m_family, {})); },
        [&](Action& a) { return m_workbook->pots().removePot(a, PotId{999}); },
        [&](Action& a) { return m_workbook->pots().changeBatch(a, sampleBatch(m_family, m_pot)); },
        [&](Action& a) { return m_workbook->pots().removeBatch(a, BatchId{999}); },
        [&](Action& a) { return m_workbook->pots().changeLot(a, sampleLot({})); },
        [&](Action& a) { return m_workbook->pots().removeLot(a, LotId{999}); },
        [&](Action& a) { return m_workbook->climbs().changeTarget(a, sampleTarget(m_member)); },
        [&](Action& a) { return m_workbook->climbs().removeTarget(a, TargetId{999}); },
        [&](Action& a) { return m_workbook->climbs().changeLadder(a, sampleLadder(m_member)); },
        [&](Action& a) { return m_workbook->climbs().removeLadder(a, LadderId{999}); },
        [&](Action& a) { return m_workbook->climbs().removeDecision(a, DecisionId{999}); },
        [&](Action& a) { return m_workbook->log().changeEntry(a, sampleEntry(m_member, {}, {})); },
        [&](Action& a) { return m_workbook->log().removeEntry(a, IntakeId{999}); },
        [&](Action& a) { return m_workbook->log().changeReaction(a, sampleReaction(m_member)); },
        [&](Action& a) { return m_workbook->log().removeReaction(a, ReactionId{999}); },
        [&](Action& a) { return m_workbook->notes().changeNote(a, sampleNote(m_family)); },
        [&](Action& a) { return m_workbook->notes().removeNote(a, NoteId{999}); },
        [&](Action& a) { return m_workbook->handouts().removeHandout(a, HandoutId{999}); },
    };
    for (std::size_t index = 0; index < tries.size(); ++index) {
        SCOPED_TRACE(index);
        expectRefused(tries[index], missing, gone);
    }
    EXPECT_EQ(m_workbook->records(FamilyId{999}).error().kind, missing);
    EXPECT_TRUE(m_workbook->handouts().pdf(HandoutId{999}).isEmpty());
}

TEST_F(RefusedChangeTest, AHandoutWithoutPagesOrWeekIsRefused) {
    casebook::HandoutRecord record = sampleHandout(m_family);
    expectRefused(
        [&](Action& action) {
            return outcome(m_workbook->handouts().addHandout(action, record, {}, {}));
        },
        Problem::Kind::BadInput, QStringLiteral("no pages"));
    record.week = QDate();
    expectRefused(
        [&](Action& action) {
            return outcome(m_workbook->handouts().addHandout(action, record, "%PDF", "{}"));
        },
        Problem::Kind::BadInput, QStringLiteral("week"));
}

TEST_F(RefusedChangeTest, APracticeOutOfRangeIsRefused) {
    people::Practice practice = samplePractice();
    practice.fridgeDays = 5;
    expectRefused(
        [&](Action& action) { return m_workbook->practice().setPractice(action, practice); },
        Problem::Kind::BadInput, QStringLiteral("refrigerator"));
}

TEST_F(RefusedChangeTest, TodayIsTheFamilysToday) {
    // At noon UTC on the 15th it is still the 15th in Denver and already the 16th in Kiritimati.
    m_clock.set(testNow.addSecs(3 * 3600));
    const FamilyId east = added<FamilyId>(*m_workbook, [&](Action& action) {
        people::Family family = sampleFamily();
        family.zone = QTimeZone("Pacific/Kiritimati");
        return m_workbook->families().addFamily(action, family);
    });
    casebook::VisitNote note = sampleNote(east);
    note.day = QDate(2024, 3, 16);
    doIt(*m_workbook,
         [&](Action& action) { return outcome(m_workbook->notes().addNote(action, note)); });
    note.family = m_family;
    expectRefused(
        [&](Action& action) { return outcome(m_workbook->notes().addNote(action, note)); },
        Problem::Kind::BadInput, QStringLiteral("future"));
}

} // namespace
} // namespace ladlework::store
