#include "exchange/invented_follow_up.h"

namespace ladlework::exchange {

namespace {

constexpr int weeksOfWeights = 12;

void inventRetry(Chance& chance, const InventedGround& ground, const people::ToleranceNote& note,
                 casebook::FamilyRecords& records) {
    people::RetryPlan plan =
        people::usualRetry(note.member, note.subject, ground.today.addDays(chance.whole(-20, 20)));
    if (plan.lastDay() < ground.today && chance.happens(0.7)) {
        plan.outcome = people::RetryPlan::Ending::GivenUp;
        plan.closed = plan.lastDay();
        plan.note = QStringLiteral("Put off: a busy month");
    }
    records.retryPlans.append(plan);
}

/// Every fortnight, a little up or down from the last.
void inventWeights(Chance& chance, const InventedGround& ground, const people::Member& member,
                   casebook::FamilyRecords& records) {
    double kilograms = chance.whole(55, 90);
    for (int week = weeksOfWeights; week > 0; week -= 2) {
        people::Observation observation;
        observation.member = member.id;
        observation.day = ground.today.addDays(-week * week::daysAWeek);
        observation.kind = people::weightKind();
        observation.value = kilograms;
        observation.unit = QStringLiteral("kg");
        records.observations.append(observation);
        kilograms += chance.whole(-6, 4) / 10.0;
    }
}

/// Does another note of the member speak of the same, perhaps to let it in again?
bool isAlone(const people::ToleranceNote& note, const QList<people::ToleranceNote>& notes) {
    return std::ranges::count_if(notes, [&note](const people::ToleranceNote& other) {
               return other.member == note.member && other.subject == note.subject;
           }) == 1;
}

} // namespace

void inventFollowUp(Chance& chance, const InventedGround& ground,
                    casebook::FamilyRecords& records) {
    for (const people::ToleranceNote& note : std::as_const(records.tolerances)) {
        const bool hasCaution =
            std::ranges::any_of(records.cautions, [&note](const people::Caution& caution) {
                return caution.member == note.member;
            });
        if (people::forbids(note) && !hasCaution && isAlone(note, records.tolerances) &&
            chance.happens(0.3))
            inventRetry(chance, ground, note, records);
    }
    for (const people::Member& member : std::as_const(records.members))
        if (people::bandOf(member, ground.today) == AgeBand::Adult && chance.happens(0.25))
            inventWeights(chance, ground, member, records);
}

} // namespace ladlework::exchange
