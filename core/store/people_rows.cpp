#include "store/people_rows.h"

#include "store/statement.h"
#include "store/words.h"

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

using quantity::Length;
using quantity::Mass;
using quantity::Volume;

namespace {
QString zoneId(const QTimeZone& zone) {
    return QString::fromLatin1(zone.id());
}

QTimeZone zoneFrom(const QString& id) {
    return QTimeZone(id.toLatin1());
}
} // namespace

Fields fieldsOf(const people::Practice& practice) {
    return {{"name"_L1, practice.name},
            {"practitioner"_L1, practice.practitioner},
            {"contact"_L1, practice.contact},
            {"emergency_number"_L1, practice.emergencyNumber},
            {"measures"_L1, measuresWord(practice.measures)},
            {"paper"_L1, paperWord(practice.paper)},
            {"zone"_L1, zoneId(practice.zone)},
            {"fridge_days"_L1, practice.fridgeDays},
            {"currency"_L1, practice.currency},
            {"spill_share"_L1, practice.spill},
            {"logo"_L1,
             practice.logo.isEmpty() ? std::nullopt : std::optional<QByteArray>(practice.logo)}};
}

people::Practice readPractice(const Statement& row) {
    people::Practice practice;
    practice.name = row.text("name"_L1);
    practice.practitioner = row.text("practitioner"_L1);
    practice.contact = row.text("contact"_L1);
    practice.emergencyNumber = row.text("emergency_number"_L1);
    practice.measures = row.word("measures"_L1, measuresFromWord);
    practice.paper = row.word("paper"_L1, paperFromWord);
    practice.zone = zoneFrom(row.text("zone"_L1));
    practice.fridgeDays = row.integer("fridge_days"_L1);
    practice.currency = row.text("currency"_L1);
    practice.spill = row.real("spill_share"_L1);
    if (!row.isNull("logo"_L1))
        practice.logo = row.bytes("logo"_L1);
    return practice;
}

Fields fieldsOf(const people::Phase& phase) {
    return {{"name"_L1, phase.name.simplified()},
            {"position"_L1, phase.position},
            {"strain_herbs"_L1, phase.rules.strainHerbs},
            {"strain_vegetables"_L1, phase.rules.strainVegetables},
            {"strain_peppercorns"_L1, phase.rules.strainPeppercorns},
            {"ground_pepper"_L1, phase.rules.groundPepper},
            {"bone_broth"_L1, phase.rules.boneBroth}};
}

people::Phase readPhase(const Statement& row) {
    people::Phase phase;
    phase.id = row.id<PhaseId>("id"_L1);
    phase.name = row.text("name"_L1);
    phase.position = row.integer("position"_L1);
    phase.rules.strainHerbs = row.flag("strain_herbs"_L1);
    phase.rules.strainVegetables = row.flag("strain_vegetables"_L1);
    phase.rules.strainPeppercorns = row.flag("strain_peppercorns"_L1);
    phase.rules.groundPepper = row.flag("ground_pepper"_L1);
    phase.rules.boneBroth = row.flag("bone_broth"_L1);
    return phase;
}

Fields fieldsOf(const people::Family& family) {
    return {{"name"_L1, family.name.simplified()},
            {"contact"_L1, family.contact},
            {"status"_L1, people::statusId(family.status)},
            {"since_day"_L1, family.since},
            {"zone"_L1, zoneId(family.zone)},
            {"measures"_L1, measuresWord(family.measures)},
            {"paper"_L1, paperWord(family.paper)},
            {"altitude_cm"_L1, family.altitude.toCentimetres()},
            {"fridge_room_ml"_L1, family.fridgeRoom.toMillilitres()},
            {"freezer_room_ml"_L1, family.freezerRoom.toMillilitres()},
            {"meat_a_day_g"_L1, family.meatPerDay.toGrams()},
            {"most_of_one_animal"_L1, family.mostOfOneAnimal},
            {"handout_language"_L1, family.handoutLanguage},
            {"review_day"_L1, family.reviewOn},
            {"remarks"_L1, family.remarks}};
}

people::Family readFamily(const Statement& row) {
    people::Family family;
    family.id = row.id<FamilyId>("id"_L1);
    family.name = row.text("name"_L1);
    family.contact = row.text("contact"_L1);
    family.status = row.word("status"_L1, people::statusFromId);
    family.since = row.day("since_day"_L1);
    family.zone = zoneFrom(row.text("zone"_L1));
    family.measures = row.word("measures"_L1, measuresFromWord);
    family.paper = row.word("paper"_L1, paperFromWord);
    family.altitude = Length::fromCentimetres(row.real("altitude_cm"_L1));
    family.fridgeRoom = Volume::fromMillilitres(row.real("fridge_room_ml"_L1));
    family.freezerRoom = Volume::fromMillilitres(row.real("freezer_room_ml"_L1));
    family.meatPerDay = Mass::fromGrams(row.real("meat_a_day_g"_L1));
    family.mostOfOneAnimal = row.integer("most_of_one_animal"_L1);
    family.handoutLanguage = row.text("handout_language"_L1);
    family.reviewOn = row.day("review_day"_L1);
    family.remarks = row.text("remarks"_L1);
    return family;
}

Fields fieldsOf(const people::Member& member) {
    std::optional<QString> band;
    std::optional<QString> reason;
    if (member.bandOverride) {
        band = ageBandId(member.bandOverride->band);
        reason = member.bandOverride->reason;
    }
    return {{"family_id"_L1, member.family}, {"name"_L1, member.name.simplified()},
            {"birth_day"_L1, member.birth},  {"band_override"_L1, band},
            {"band_reason"_L1, reason},      {"phase_id"_L1, member.phase},
            {"remarks"_L1, member.remarks}};
}

people::Member readMember(const Statement& row) {
    people::Member member;
    member.id = row.id<MemberId>("id"_L1);
    member.family = row.id<FamilyId>("family_id"_L1);
    member.name = row.text("name"_L1);
    member.birth = row.day("birth_day"_L1);
    if (!row.isNull("band_override"_L1))
        member.bandOverride = people::Member::BandOverride{
            row.word("band_override"_L1, ageBandFromId), row.text("band_reason"_L1)};
    member.phase = row.id<PhaseId>("phase_id"_L1);
    member.remarks = row.text("remarks"_L1);
    return member;
}

Fields fieldsOf(const people::ToleranceNote& note) {
    return {{"member_id"_L1, note.member},
            {"subject_kind"_L1, people::subjectKindId(note.subject.kind)},
            {"subject_id"_L1, note.subject.id},
            {"verdict"_L1, people::verdictId(note.verdict)},
            {"allergy"_L1, note.allergy},
            {"reason"_L1, note.reason},
            {"try_again_day"_L1, note.tryAgainOn},
            {"noted_day"_L1, note.noted}};
}

people::ToleranceNote readTolerance(const Statement& row) {
    people::ToleranceNote note;
    note.id = row.id<ToleranceId>("id"_L1);
    note.member = row.id<MemberId>("member_id"_L1);
    note.subject.kind = row.word("subject_kind"_L1, people::subjectKindFromId);
    note.subject.id = row.text("subject_id"_L1);
    note.verdict = row.word("verdict"_L1, people::verdictFromId);
    note.allergy = row.flag("allergy"_L1);
    note.reason = row.text("reason"_L1);
    if (!row.isNull("try_again_day"_L1))
        note.tryAgainOn = row.day("try_again_day"_L1);
    note.noted = row.day("noted_day"_L1);
    return note;
}

Fields fieldsOf(const people::Caution& caution) {
    return {{"member_id"_L1, caution.member},
            {"kind"_L1, caution.kind},
            {"detail"_L1, caution.detail},
            {"sodium_limit_mg"_L1, caution.sodiumLimitMg}};
}

people::Caution readCaution(const Statement& row) {
    people::Caution caution;
    caution.id = row.id<CautionId>("id"_L1);
    caution.member = row.id<MemberId>("member_id"_L1);
    caution.kind = row.text("kind"_L1);
    caution.detail = row.text("detail"_L1);
    caution.sodiumLimitMg = row.optionalReal("sodium_limit_mg"_L1);
    return caution;
}

Fields fieldsOf(const people::RetryPlan& plan) {
    return {{"member_id"_L1, plan.member},
            {"subject_kind"_L1, people::subjectKindId(plan.subject.kind)},
            {"subject_id"_L1, plan.subject.id},
            {"start_day"_L1, plan.start},
            {"watch_days"_L1, plan.watchDays},
            {"outcome"_L1, people::retryOutcomeId(plan.outcome)},
            {"closed_day"_L1, plan.closed},
            {"note"_L1, plan.note}};
}

people::RetryPlan readRetryPlan(const Statement& row) {
    people::RetryPlan plan;
    plan.id = row.id<RetryPlanId>("id"_L1);
    plan.member = row.id<MemberId>("member_id"_L1);
    plan.subject.kind = row.word("subject_kind"_L1, people::subjectKindFromId);
    plan.subject.id = row.text("subject_id"_L1);
    plan.start = row.day("start_day"_L1);
    plan.watchDays = row.integer("watch_days"_L1);
    plan.outcome = row.word("outcome"_L1, people::retryOutcomeFromId);
    plan.closed = row.day("closed_day"_L1);
    plan.note = row.text("note"_L1);
    return plan;
}

Fields fieldsOf(const people::Observation& observation) {
    return {{"member_id"_L1, observation.member}, {"day"_L1, observation.day},
            {"kind"_L1, observation.kind},        {"value"_L1, observation.value},
            {"unit"_L1, observation.unit},        {"note"_L1, observation.note}};
}

people::Observation readObservation(const Statement& row) {
    people::Observation observation;
    observation.id = row.id<ObservationId>("id"_L1);
    observation.member = row.id<MemberId>("member_id"_L1);
    observation.day = row.day("day"_L1);
    observation.kind = row.text("kind"_L1);
    observation.value = row.real("value"_L1);
    observation.unit = row.text("unit"_L1);
    observation.note = row.text("note"_L1);
    return observation;
}

} // namespace ladlework::store
