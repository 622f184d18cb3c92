#pragma once

#include "casebook/family_records.h"

#include <tuple>

namespace ladlework::store {

// One of each record with no field at its default, seen from 15 March 2024.

people::Practice samplePractice();
people::Phase samplePhase();
intake::LadderRules sampleRules();
intake::Symptom sampleSymptom();
intake::LadderTemplate sampleTemplate();
people::Family sampleFamily();
people::Member sampleMember(FamilyId family, PhaseId phase);
people::ToleranceNote sampleTolerance(MemberId member);
people::Caution sampleCaution(MemberId member);
people::RetryPlan sampleRetry(MemberId member);
people::Observation sampleObservation(MemberId member);
kitchen::Vessel sampleVessel(FamilyId family);
kitchen::Container sampleContainer(FamilyId family);
kitchen::Pot samplePot(FamilyId family, VesselId vessel, ContainerId coolIn = {});
kitchen::Batch sampleBatch(FamilyId family, PotId pot, VesselId vessel = {});
kitchen::Lot sampleLot(BatchId batch);
intake::Target sampleTarget(MemberId member);
intake::Ladder sampleLadder(MemberId member);
intake::Decision sampleDecision(MemberId member);
intake::IntakeEntry sampleEntry(MemberId member, PotId pot, LotId lot);
intake::Reaction sampleReaction(MemberId member);
week::WeekPlan samplePlan(FamilyId family, PotId pot);
QList<week::UsualHours> sampleHours();
week::WeekTemplate sampleWeekTemplate(FamilyId family, PotId pot);
casebook::HandoutTemplate sampleHandoutTemplate();
casebook::LabelStock sampleLabelStock();
casebook::VisitNote sampleNote(FamilyId family);
casebook::HandoutRecord sampleHandout(FamilyId family);

// All fields of a record, to compare. A structured binding names every field, so that a field that
// is added to a record later stops these from compiling until it is compared as well.

inline auto all(const people::Practice& record) {
    const auto& [a, b, c, d, e, f, g, h, i, j, k] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i, j, k);
}
inline auto all(const intake::Symptom& record) {
    const auto& [a, b, c, d] = record;
    return std::tuple(a, b, c, d);
}
inline auto all(const intake::LadderTemplate& record) {
    const auto& [a, b, c] = record;
    return std::tuple(a, b, c);
}
inline auto all(const people::Phase& record) {
    const auto& [a, b, c, d] = record;
    return std::tuple(a, b, c, d);
}
inline auto all(const people::Family& record) {
    const auto& [a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p);
}
inline auto all(const people::Member& record) {
    const auto& [a, b, c, d, e, f, g] = record;
    return std::tuple(a, b, c, d, e, f, g);
}
inline auto all(const people::ToleranceNote& record) {
    const auto& [a, b, c, d, e, f, g, h] = record;
    return std::tuple(a, b, c, d, e, f, g, h);
}
inline auto all(const people::Caution& record) {
    const auto& [a, b, c, d, e] = record;
    return std::tuple(a, b, c, d, e);
}
inline auto all(const people::RetryPlan& record) {
    const auto& [a, b, c, d, e, f, g, h, i] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i);
}
inline auto all(const people::Observation& record) {
    const auto& [a, b, c, d, e, f, g] = record;
    return std::tuple(a, b, c, d, e, f, g);
}
inline auto all(const kitchen::Container& record) {
    const auto& [a, b, c, d, e, f, g, h, i] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i);
}
inline auto all(const kitchen::Vessel& record) {
    const auto& [a, b, c, d, e, f, g, h] = record;
    return std::tuple(a, b, c, d, e, f, g, h);
}
inline auto all(const kitchen::Pot& record) {
    const auto& [a, b, c, d, e, f, g, h, i, j, k, l, m] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i, j, k, l, m);
}
inline auto all(const kitchen::AsCooked& record) {
    const auto& [a, b, c, d] = record;
    return std::tuple(a, b, c, d);
}
inline auto all(const kitchen::Batch& record) {
    const auto& [a, b, c, d, cooked, f, g] = record;
    return std::tuple(a, b, c, d, all(cooked), f, g);
}
inline auto all(const kitchen::Lot& record) {
    const auto& [a, b, c, d, e, f, g, h] = record;
    return std::tuple(a, b, c, d, e, f, g, h);
}
inline auto all(const intake::Target& record) {
    const auto& [a, b, c, d, e, f, g, h, i] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i);
}
inline auto all(const intake::Ladder& record) {
    const auto& [a, b, c, d, e] = record;
    return std::tuple(a, b, c, d, e);
}
inline auto all(const intake::Decision& record) {
    const auto& [a, b, c, d, e] = record;
    return std::tuple(a, b, c, d, e);
}
inline auto all(const intake::IntakeEntry& record) {
    const auto& [a, b, c, d, e, f, g, h] = record;
    return std::tuple(a, b, c, d, e, f, g, h);
}
inline auto all(const intake::Reaction& record) {
    const auto& [a, b, c, d, e, f, g, h, i] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i);
}
inline auto all(const week::WeekPlan& record) {
    const auto& [a, b, c, d, e, f, g, h, i] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i);
}
inline auto all(const week::WeekTemplate& record) {
    const auto& [a, b, c, d] = record;
    return std::tuple(a, b, c, d);
}
inline auto all(const casebook::HandoutTemplate& record) {
    const auto& [a, b, c, d] = record;
    return std::tuple(a, b, c, d);
}
inline auto all(const casebook::LabelStock& record) {
    const auto& [a, b, c, d, e, f, g, h, i, j, k, l] = record;
    return std::tuple(a, b, c, d, e, f, g, h, i, j, k, l);
}
inline auto all(const casebook::VisitNote& record) {
    const auto& [a, b, c, d, e, f] = record;
    return std::tuple(a, b, c, d, e, f);
}
inline auto all(const casebook::HandoutRecord& record) {
    const auto& [a, b, c, d, e] = record;
    return std::tuple(a, b, c, d, e);
}

} // namespace ladlework::store
