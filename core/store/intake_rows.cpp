#include "store/intake_rows.h"

#include "store/statement.h"

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

using quantity::Volume;

Fields fieldsOf(const intake::Target& target) {
    return {{"member_id"_L1, target.member},
            {"low_ml"_L1, target.low.toMillilitres()},
            {"high_ml"_L1, target.high.toMillilitres()},
            {"from_day"_L1, target.from},
            {"hold_days"_L1, target.holdDays},
            {"ease_off_day"_L1, target.easeOffFrom},
            {"ease_every_days"_L1, target.easeEveryDays},
            {"ease_to_ml"_L1, target.easeTo.toMillilitres()}};
}

intake::Target readTarget(const Statement& row) {
    intake::Target target;
    target.id = row.id<TargetId>("id"_L1);
    target.member = row.id<MemberId>("member_id"_L1);
    target.low = Volume::fromMillilitres(row.real("low_ml"_L1));
    target.high = Volume::fromMillilitres(row.real("high_ml"_L1));
    target.from = row.day("from_day"_L1);
    target.holdDays = row.integer("hold_days"_L1);
    target.easeOffFrom = row.day("ease_off_day"_L1);
    target.easeEveryDays = row.integer("ease_every_days"_L1);
    target.easeTo = Volume::fromMillilitres(row.real("ease_to_ml"_L1));
    return target;
}

Fields fieldsOf(const intake::LadderRules& rules) {
    return {{"good_share"_L1, rules.goodShare},
            {"mild_to"_L1, rules.mildTo},
            {"moderate_to"_L1, rules.moderateTo},
            {"strong_to"_L1, rules.strongTo},
            {"days_to_advance"_L1, rules.daysToAdvance},
            {"hold_days"_L1, rules.holdDays},
            {"moderate_window_days"_L1, rules.moderateWindowDays},
            {"stale_days"_L1, rules.staleDays},
            {"rungs_back"_L1, rules.rungsBack},
            {"hold_target_days"_L1, rules.holdTargetDays}};
}

intake::LadderRules readRules(const Statement& row) {
    intake::LadderRules rules;
    rules.goodShare = row.real("good_share"_L1);
    rules.mildTo = row.integer("mild_to"_L1);
    rules.moderateTo = row.integer("moderate_to"_L1);
    rules.strongTo = row.integer("strong_to"_L1);
    rules.daysToAdvance = row.integer("days_to_advance"_L1);
    rules.holdDays = row.integer("hold_days"_L1);
    rules.moderateWindowDays = row.integer("moderate_window_days"_L1);
    rules.staleDays = row.integer("stale_days"_L1);
    rules.rungsBack = row.integer("rungs_back"_L1);
    rules.holdTargetDays = row.integer("hold_target_days"_L1);
    return rules;
}

Fields fieldsOf(const intake::LadderTemplate& ladderTemplate) {
    return {{"name"_L1, ladderTemplate.name.simplified()}};
}

intake::LadderTemplate readTemplate(const Statement& row) {
    intake::LadderTemplate ladderTemplate;
    ladderTemplate.id = row.id<LadderTemplateId>("id"_L1);
    ladderTemplate.name = row.text("name"_L1);
    return ladderTemplate;
}

Fields fieldsOf(const intake::Symptom& symptom) {
    return {{"name"_L1, symptom.name.simplified()},
            {"position"_L1, symptom.position},
            {"red_flag"_L1, symptom.redFlag}};
}

intake::Symptom readSymptom(const Statement& row) {
    intake::Symptom symptom;
    symptom.id = row.id<SymptomId>("id"_L1);
    symptom.name = row.text("name"_L1);
    symptom.position = row.integer("position"_L1);
    symptom.redFlag = row.flag("red_flag"_L1);
    return symptom;
}

Fields fieldsOf(const intake::Ladder& ladder) {
    Fields fields{{"member_id"_L1, ladder.member}, {"from_day"_L1, ladder.from}};
    fields += fieldsOf(ladder.rules);
    return fields;
}

intake::Ladder readLadder(const Statement& row) {
    intake::Ladder ladder;
    ladder.id = row.id<LadderId>("id"_L1);
    ladder.member = row.id<MemberId>("member_id"_L1);
    ladder.from = row.day("from_day"_L1);
    ladder.rules = readRules(row);
    return ladder;
}

Fields fieldsOf(const intake::Decision& decision) {
    return {{"member_id"_L1, decision.member},
            {"day"_L1, decision.day},
            {"resume_at_rung"_L1, decision.resumeAtRung},
            {"reason"_L1, decision.reason}};
}

intake::Decision readDecision(const Statement& row) {
    intake::Decision decision;
    decision.id = row.id<DecisionId>("id"_L1);
    decision.member = row.id<MemberId>("member_id"_L1);
    decision.day = row.day("day"_L1);
    decision.resumeAtRung = row.integer("resume_at_rung"_L1);
    decision.reason = row.text("reason"_L1);
    return decision;
}

Fields fieldsOf(const intake::IntakeEntry& entry) {
    return {{"member_id"_L1, entry.member},
            {"day"_L1, entry.day},
            {"drunk_ml"_L1, entry.drunk.toMillilitres()},
            {"pot_id"_L1, entry.pot},
            {"lot_id"_L1, entry.lot},
            {"note"_L1, entry.note},
            {"entered_at_utc"_L1, entry.enteredUtc}};
}

intake::IntakeEntry readEntry(const Statement& row) {
    intake::IntakeEntry entry;
    entry.id = row.id<IntakeId>("id"_L1);
    entry.member = row.id<MemberId>("member_id"_L1);
    entry.day = row.day("day"_L1);
    entry.drunk = Volume::fromMillilitres(row.real("drunk_ml"_L1));
    entry.pot = row.id<PotId>("pot_id"_L1);
    entry.lot = row.id<LotId>("lot_id"_L1);
    entry.note = row.text("note"_L1);
    entry.enteredUtc = row.momentUtc("entered_at_utc"_L1);
    return entry;
}

Fields fieldsOf(const intake::Reaction& reaction) {
    return {{"member_id"_L1, reaction.member},   {"day"_L1, reaction.day},
            {"symptom"_L1, reaction.symptom},    {"strength"_L1, reaction.strength},
            {"red_flag"_L1, reaction.redFlag},   {"start_minute"_L1, reaction.startMinute},
            {"length_min"_L1, reaction.minutes}, {"note"_L1, reaction.note}};
}

intake::Reaction readReaction(const Statement& row) {
    intake::Reaction reaction;
    reaction.id = row.id<ReactionId>("id"_L1);
    reaction.member = row.id<MemberId>("member_id"_L1);
    reaction.day = row.day("day"_L1);
    reaction.symptom = row.text("symptom"_L1);
    reaction.strength = row.integer("strength"_L1);
    reaction.redFlag = row.flag("red_flag"_L1);
    reaction.startMinute = row.optionalInteger("start_minute"_L1);
    reaction.minutes = row.optionalInteger("length_min"_L1);
    reaction.note = row.text("note"_L1);
    return reaction;
}

} // namespace ladlework::store
