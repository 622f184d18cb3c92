#include "core/store/sample_records.h"

namespace ladlework::store {

using quantity::Duration;
using quantity::Length;
using quantity::Mass;
using quantity::Volume;

people::Practice samplePractice() {
    people::Practice practice;
    practice.name = QStringLiteral("Ladle & Lantern");
    practice.practitioner = QStringLiteral("Édith O'Neil \"Eddie\"");
    practice.contact = QStringLiteral("12 Mill Lane\n+1 555 0100");
    practice.emergencyNumber = QStringLiteral("112");
    practice.measures = quantity::MeasureSystem::Metric;
    practice.paper = people::Paper::A4;
    practice.zone = QTimeZone("Pacific/Auckland");
    practice.fridgeDays = 2;
    practice.currency = QStringLiteral("NZ$");
    practice.spill = 0.15;
    practice.logo = QByteArray::fromHex("89504e470d0a1a0a00ff0001"); // a zero byte inside
    return practice;
}

people::Phase samplePhase() {
    people::Phase phase;
    phase.name = QStringLiteral("Between");
    phase.position = 7;
    phase.rules = {false, false, false, true, true};
    return phase;
}

intake::LadderRules sampleRules() {
    return {0.75, 1, 3, 6, 4, 2, 6, 7, 3, 45};
}

intake::Symptom sampleSymptom() {
    intake::Symptom symptom;
    symptom.name = QStringLiteral("cold feet");
    symptom.position = 99;
    symptom.redFlag = true;
    return symptom;
}

intake::LadderTemplate sampleTemplate() {
    intake::LadderTemplate ladderTemplate;
    ladderTemplate.name = QStringLiteral("Very slow");
    ladderTemplate.rungs = {Volume::fromDrops(2), Volume::fromTeaspoons(0.5),
                            Volume::fromTablespoons(1.1)};
    return ladderTemplate;
}

people::Family sampleFamily() {
    people::Family family;
    family.name = QStringLiteral("Ødegård-Łoś 😀");
    family.contact = QStringLiteral("'; DROP TABLE family; --\nsecond line");
    family.status = people::Family::Status::Resting;
    family.since = QDate(2023, 11, 2);
    family.zone = QTimeZone("America/Denver");
    family.measures = quantity::MeasureSystem::Metric;
    family.paper = people::Paper::A4;
    family.altitude = Length::fromFeet(5280);
    family.fridgeRoom = Volume::fromQuarts(5.3);
    family.freezerRoom = Volume::fromCups(7.7);
    family.meatPerDay = Mass::fromOunces(17.1);
    family.mostOfOneAnimal = 3;
    family.handoutLanguage = QStringLiteral("es");
    family.reviewOn = QDate(2024, 4, 1);
    family.remarks = QStringLiteral("Dog bites.");
    return family;
}

people::Member sampleMember(FamilyId family, PhaseId phase) {
    people::Member member;
    member.family = family;
    member.name = QStringLiteral("Ana");
    member.birth = QDate(2020, 2, 29);
    member.bandOverride = people::Member::BandOverride{AgeBand::InfantStartingSolids,
                                                       QStringLiteral("eats like a baby")};
    member.phase = phase;
    member.remarks = QStringLiteral("likes carrots");
    return member;
}

people::ToleranceNote sampleTolerance(MemberId member) {
    people::ToleranceNote note;
    note.member = member;
    note.subject = {people::Subject::Kind::Cut, QStringLiteral("beef-shank")};
    note.verdict = people::ToleranceNote::Verdict::TryAgainOn;
    note.reason = QStringLiteral("belly ache in January");
    note.tryAgainOn = QDate(2024, 5, 5);
    note.noted = QDate(2024, 3, 1);
    return note;
}

people::Caution sampleCaution(MemberId member) {
    people::Caution caution;
    caution.member = member;
    caution.kind = QStringLiteral("sodium-restricted");
    caution.detail = QStringLiteral("Dr. Lind, since 2022");
    caution.sodiumLimitMg = 1500.5;
    return caution;
}

people::RetryPlan sampleRetry(MemberId member) {
    people::RetryPlan plan;
    plan.member = member;
    plan.subject = {people::Subject::Kind::Cut, QStringLiteral("beef-shank")};
    plan.start = QDate(2024, 3, 3);
    plan.watchDays = 3;
    plan.steps = {Volume::fromTeaspoons(1.3), Volume::fromTablespoons(1.7)};
    plan.outcome = people::RetryPlan::Ending::NotBorne;
    plan.closed = QDate(2024, 3, 8);
    plan.note = QStringLiteral("bloated after the second step");
    return plan;
}

people::Observation sampleObservation(MemberId member) {
    people::Observation observation;
    observation.member = member;
    observation.day = QDate(2024, 3, 11);
    observation.kind = QStringLiteral("steps walked");
    observation.value = 4321.5;
    observation.unit = QStringLiteral("steps");
    observation.note = QStringLiteral("by her watch");
    return observation;
}

kitchen::Container sampleContainer(FamilyId family) {
    kitchen::Container container;
    container.family = family;
    container.name = QStringLiteral("the roasting tray");
    container.shape = kitchen::Container::Shape::Tray;
    container.across = Length::fromInches(13.1);
    container.width = Length::fromInches(9.2);
    container.height = Length::fromInches(2.3);
    container.material = kitchen::Container::Material::Glass;
    container.covered = true;
    return container;
}

kitchen::Vessel sampleVessel(FamilyId family) {
    kitchen::Vessel vessel;
    vessel.family = family;
    vessel.name = QStringLiteral("the big enamel pot");
    vessel.diameter = Length::fromInches(11.1);
    vessel.height = Length::fromInches(8.3);
    vessel.lid = kitchen::Vessel::Lid::On;
    vessel.place = kitchen::Vessel::Place::SlowCooker;
    vessel.evaporationFactor = 0.7;
    return vessel;
}

kitchen::Pot samplePot(FamilyId family, VesselId vessel, ContainerId coolIn) {
    kitchen::Pot pot;
    pot.family = family;
    pot.name = QStringLiteral("Sunday pot");
    pot.brew = kitchen::Pot::Brew::BoneBroth;
    pot.vessel = vessel;
    pot.water = Volume::fromQuarts(3.3);
    pot.salt = Mass::fromGrams(6.1);
    pot.simmer = Duration::fromHours(2.2);
    pot.cuts = {{QStringLiteral("chicken-drumstick"), Mass::fromPounds(1.7), true},
                {QStringLiteral("chicken-whole"), Mass::fromPounds(0.3), false},
                {QStringLiteral("chicken-drumstick"), Mass::fromPounds(1.1), true}};
    pot.extras = {{QStringLiteral("onion"), Mass::fromOunces(7.7)}};
    pot.coolIn = coolIn;
    pot.coolingWay = kitchen::CoolingWay::IceBath;
    pot.note = QStringLiteral("strain twice");
    return pot;
}

kitchen::Batch sampleBatch(FamilyId family, PotId pot, VesselId vessel) {
    kitchen::Batch batch;
    batch.family = family;
    batch.pot = pot;
    batch.day = QDate(2024, 3, 10);
    batch.cooked = {vessel, kitchen::Vessel::Lid::Open, Volume::fromQuarts(3.1),
                    Duration::fromHours(2.6)};
    batch.yield = Volume::fromCups(11.3);
    batch.note = QStringLiteral("lid slipped");
    return batch;
}

kitchen::Lot sampleLot(BatchId batch) {
    kitchen::Lot lot;
    lot.batch = batch;
    lot.container = QStringLiteral("jar 1");
    lot.volume = Volume::fromCups(3.1);
    lot.place = kitchen::Lot::Place::Freezer;
    lot.stored = QDate(2024, 3, 10);
    lot.useBy = QDate(2024, 5, 10);
    lot.goneOn = QDate(2024, 3, 14);
    return lot;
}

intake::Target sampleTarget(MemberId member) {
    intake::Target target;
    target.member = member;
    target.low = Volume::fromCups(2.2);
    target.high = Volume::fromCups(3.3);
    target.from = QDate(2024, 1, 1);
    target.holdDays = 120;
    target.easeOffFrom = QDate(2024, 9, 1);
    target.easeEveryDays = 10;
    target.easeTo = Volume::fromCups(0.7);
    return target;
}

intake::Ladder sampleLadder(MemberId member) {
    intake::Ladder ladder;
    ladder.member = member;
    ladder.from = QDate(2024, 1, 2);
    ladder.rungs = {Volume::fromDrops(3), Volume::fromTeaspoons(1), Volume::fromCups(0.3)};
    ladder.rules = {0.8, 1, 4, 7, 2, 4, 5, 6, 2, 60};
    return ladder;
}

intake::Decision sampleDecision(MemberId member) {
    intake::Decision decision;
    decision.member = member;
    decision.day = QDate(2024, 2, 2);
    decision.resumeAtRung = 1;
    decision.reason = QStringLiteral("the doctor agrees");
    return decision;
}

intake::IntakeEntry sampleEntry(MemberId member, PotId pot, LotId lot) {
    intake::IntakeEntry entry;
    entry.member = member;
    entry.day = QDate(2024, 3, 12);
    entry.drunk = Volume::fromTablespoons(1.5);
    entry.pot = pot;
    entry.lot = lot;
    entry.note = QStringLiteral("warm, at breakfast");
    entry.enteredUtc = QDateTime(QDate(2024, 3, 13), QTime(6, 7, 8, 901), Qt::UTC);
    return entry;
}

intake::Reaction sampleReaction(MemberId member) {
    intake::Reaction reaction;
    reaction.member = member;
    reaction.day = QDate(2024, 3, 12);
    reaction.symptom = QStringLiteral("rash");
    reaction.strength = 4;
    reaction.redFlag = true;
    reaction.startMinute = 754;
    reaction.minutes = 35;
    reaction.note = QStringLiteral("left arm");
    return reaction;
}

week::WeekPlan samplePlan(FamilyId family, PotId pot) {
    week::WeekPlan plan;
    plan.family = family;
    plan.start = QDate(2024, 3, 18);
    plan.placements = {{QDate(2024, 3, 20), pot, QTime(17, 45)},
                       {QDate(2024, 3, 19), pot, QTime()}};
    plan.lockedDays = {QDate(2024, 3, 19), QDate(2024, 3, 24)};
    plan.hours = {
        {QDate(2024, 3, 18),
         {{QTime(6, 15), Duration::fromMinutes(200.5), 2}, {QTime(), Duration::fromHours(3), 6}}},
        {QDate(2024, 3, 21), {}}};
    plan.extras = {{QStringLiteral("two bags of rice"), week::ShopSection::Household},
                   {QStringLiteral("trout, if fresh"), week::ShopSection::Fish}};
    plan.atHome = {{QStringLiteral("chicken-drumstick"), Mass::fromPounds(0.3)},
                   {QStringLiteral("onion"), Mass::fromOunces(7.7)}};
    plan.note = QStringLiteral("grandma cooks");
    return plan;
}

QList<week::UsualHours> sampleHours() {
    return {{6, {QTime(9, 30), Duration::fromHours(6.25), 2}},
            {1, {QTime(), Duration::fromMinutes(190), 1}},
            {6, {QTime(17, 0), Duration::fromHours(3), 1}}};
}

week::WeekTemplate sampleWeekTemplate(FamilyId family, PotId pot) {
    week::WeekTemplate kept;
    kept.family = family;
    kept.name = QStringLiteral("Weeks with night shifts");
    kept.placements = {{6, pot, QTime(7, 5)}, {0, pot, QTime()}, {6, pot, QTime(0, 0)}};
    return kept;
}

casebook::HandoutTemplate sampleHandoutTemplate() {
    casebook::HandoutTemplate kept;
    kept.name = QStringLiteral("Für Großeltern");
    kept.sections = casebook::usualSections();
    kept.sections.swapItemsAt(1, 2);
    kept.sections.append({casebook::HandoutPart::OwnWords, true, QStringLiteral("Before you start"),
                          QStringLiteral("Read this.\nTwice.")});
    kept.largePrint = true;
    return kept;
}

casebook::LabelStock sampleLabelStock() {
    return {{}, QStringLiteral("3 x 7 on A4"), 210, 297, 3, 7, 7.1, 15.2, 63.5, 38.1, 2.5, 0.1};
}

casebook::VisitNote sampleNote(FamilyId family) {
    casebook::VisitNote note;
    note.family = family;
    note.day = QDate(2024, 3, 14);
    note.text = QStringLiteral("Talked about mornings.");
    note.agreed = QStringLiteral("Smaller sips");
    note.reviewOn = QDate(2024, 3, 28);
    return note;
}

casebook::HandoutRecord sampleHandout(FamilyId family) {
    casebook::HandoutRecord record;
    record.family = family;
    record.week = QDate(2024, 3, 18);
    record.madeUtc = QDateTime(QDate(2024, 3, 15), QTime(9, 10, 11, 120), Qt::UTC);
    record.title = QStringLiteral("Week of March 18");
    return record;
}

} // namespace ladlework::store
