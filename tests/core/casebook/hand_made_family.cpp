#include "core/casebook/hand_made_family.h"

namespace hand_made {

using quantity::Duration;
using quantity::Mass;

namespace {
constexpr FamilyId family{1};
constexpr PhaseId opening{1};
constexpr PhaseId settled{2};

people::Member member(MemberId id, const QString& name, QDate birth, PhaseId phase) {
    people::Member made;
    made.id = id;
    made.family = family;
    made.name = name;
    made.birth = birth;
    made.phase = phase;
    return made;
}

intake::Ladder ladder(int id, MemberId who, QDate from, const QList<double>& rungs) {
    intake::Ladder made;
    made.id = LadderId{id};
    made.member = who;
    made.from = from;
    for (const double rung : rungs)
        made.rungs.append(ml(rung));
    return made;
}

intake::Target target(int id, MemberId who, double low, double high) {
    intake::Target made;
    made.id = TargetId{id};
    made.member = who;
    made.low = ml(low);
    made.high = ml(high);
    made.from = QDate(2026, 10, 1);
    return made;
}

kitchen::Pot pot(PotId id, const QString& name, const QString& cut, double hours) {
    kitchen::Pot made;
    made.id = id;
    made.family = family;
    made.name = name;
    made.vessel = VesselId{1};
    made.water = quantity::Volume::fromQuarts(3);
    made.salt = Mass::fromGrams(6);
    made.simmer = Duration::fromHours(hours);
    made.cuts = {{cut, Mass::fromPounds(3), true}};
    made.extras = {{QStringLiteral("onion"), Mass::fromGrams(220)},
                   {QStringLiteral("garlic"), Mass::fromGrams(6)},
                   {QStringLiteral("peppercorns"), Mass::fromGrams(2.9)}};
    return made;
}

QList<people::Phase> phases() {
    people::Phase first;
    first.id = opening;
    first.name = QStringLiteral("Opening");
    people::Phase last;
    last.id = settled;
    last.name = QStringLiteral("Settled");
    last.position = 2;
    last.rules = {false, false, false, true, true};
    return {first, last};
}

people::Practice practice() {
    people::Practice made;
    made.name = QStringLiteral("Harbour Street Practice");
    made.practitioner = QStringLiteral("Ines Moreau");
    made.contact = QStringLiteral("555 0142\ninfo@harbour.example");
    made.emergencyNumber = QStringLiteral("911");
    return made;
}

void addClimbs(casebook::FamilyRecords& records) {
    records.targets = {target(1, ana, 946, 1420), target(2, ben, 473, 710),
                       target(3, mia, 473, 710)};
    records.ladders = {ladder(1, ana, QDate(2026, 10, 5), {60, 120, 240, 480, 960}),
                       ladder(2, ben, today, {5, 15, 30, 60}),
                       ladder(3, mia, QDate(2026, 10, 19), {30, 60, 120})};
    for (int day = 2; day <= 3; ++day)
        records.entries.append(drank(ana, QDate(2026, 11, day), 60));
    for (int day = 28; day <= 29; ++day)
        records.entries.append(drank(mia, QDate(2026, 10, day), 30));
    intake::Reaction reaction;
    reaction.id = ReactionId{1};
    reaction.member = mia;
    reaction.day = QDate(2026, 10, 30);
    reaction.symptom = QStringLiteral("Fainting, collapse or going limp");
    reaction.strength = 7;
    reaction.redFlag = true;
    records.reactions = {reaction};
}

void addNotes(casebook::FamilyRecords& records) {
    people::ToleranceNote older;
    older.id = ToleranceId{1};
    older.member = ben;
    older.subject = {people::Subject::Kind::Animal, QStringLiteral("beef")};
    older.verdict = people::ToleranceNote::Verdict::Fine;
    older.noted = QDate(2026, 9, 1);
    people::ToleranceNote newer = older;
    newer.id = ToleranceId{2};
    newer.verdict = people::ToleranceNote::Verdict::Avoid;
    newer.reason = QStringLiteral("belly ache");
    newer.noted = QDate(2026, 10, 1);
    // Out of order on purpose: the day decides, not the place.
    records.tolerances = {newer, older};
    people::Caution caution;
    caution.id = CautionId{1};
    caution.member = mia;
    caution.kind = QStringLiteral("sodium-restricted");
    caution.sodiumLimitMg = 900;
    records.cautions = {caution};
}
} // namespace

quantity::Volume ml(double millilitres) {
    return quantity::Volume::fromMillilitres(millilitres);
}

intake::IntakeEntry drank(MemberId member, QDate day, double millilitres) {
    intake::IntakeEntry entry;
    entry.member = member;
    entry.day = day;
    entry.drunk = ml(millilitres);
    return entry;
}

casebook::FamilyRecords records() {
    casebook::FamilyRecords records;
    records.practice = practice();
    records.phases = phases();
    records.family.id = family;
    records.family.name = QStringLiteral("Hartley");
    records.family.since = QDate(2026, 10, 1);
    records.members = {member(ana, QStringLiteral("Ana Hartley"), QDate(1988, 3, 14), settled),
                       member(ben, QStringLiteral("Ben Hartley"), QDate(2017, 6, 1), opening),
                       member(mia, QStringLiteral("Mia Hartley"), QDate(2019, 5, 9), opening),
                       member(leo, QStringLiteral("Leo Hartley"), QDate(2026, 8, 1), {})};
    kitchen::Vessel big;
    big.id = VesselId{1};
    big.family = family;
    big.name = QStringLiteral("the big enamel pot");
    big.diameter = quantity::Length::fromCentimetres(28);
    big.height = quantity::Length::fromCentimetres(22);
    kitchen::Vessel small = big;
    small.id = VesselId{2};
    small.name = QStringLiteral("the small pot");
    small.diameter = quantity::Length::fromCentimetres(20);
    records.vessels = {small, big};
    records.pots = {
        pot(legs, QStringLiteral("Chicken legs"), QStringLiteral("chicken-leg"), 2.5),
        pot(shank, QStringLiteral("Beef shank"), QStringLiteral("beef-shank"), 5),
        pot(broth, QStringLiteral("Long broth"), QStringLiteral("chicken-carcass"), 20)};
    records.pots.last().brew = kitchen::Pot::Brew::BoneBroth;
    addClimbs(records);
    addNotes(records);
    week::WeekPlan plan;
    plan.id = WeekPlanId{1};
    plan.family = family;
    plan.start = monday;
    plan.placements = {{monday, legs, QTime(9, 0)}, {monday.addDays(3), shank, QTime(17, 30)}};
    records.weeks = {plan};
    return records;
}

} // namespace hand_made
