#pragma once

#include <QHashFunctions>
#include <compare>

namespace ladlework {

/// A row's number that cannot be mistaken for another table's. 0 means "not stored yet".
template <class Tag>
struct Id {
    qint64 value = 0;

    [[nodiscard]] bool isStored() const { return value > 0; }
    // clang-tidy 14 takes the zero inside a defaulted comparison for a null pointer.
    // NOLINTNEXTLINE(modernize-use-nullptr)
    friend auto operator<=>(const Id&, const Id&) = default;
};

template <class Tag>
size_t qHash(const Id<Tag>& id, size_t seed = 0) {
    return ::qHash(id.value, seed);
}

using PhaseId = Id<struct PhaseTag>;
using FamilyId = Id<struct FamilyTag>;
using MemberId = Id<struct MemberTag>;
using VesselId = Id<struct VesselTag>;
using ToleranceId = Id<struct ToleranceTag>;
using CautionId = Id<struct CautionTag>;
using TargetId = Id<struct TargetTag>;
using LadderId = Id<struct LadderTag>;
using LadderTemplateId = Id<struct LadderTemplateTag>;
using DecisionId = Id<struct DecisionTag>;
using PotId = Id<struct PotTag>;
using ContainerId = Id<struct ContainerTag>;
using BatchId = Id<struct BatchTag>;
using LotId = Id<struct LotTag>;
using IntakeId = Id<struct IntakeTag>;
using ReactionId = Id<struct ReactionTag>;
using SymptomId = Id<struct SymptomTag>;
using RetryPlanId = Id<struct RetryPlanTag>;
using ObservationId = Id<struct ObservationTag>;
using WeekPlanId = Id<struct WeekPlanTag>;
using WeekTemplateId = Id<struct WeekTemplateTag>;
using NoteId = Id<struct NoteTag>;
using HandoutId = Id<struct HandoutTag>;
using HandoutTemplateId = Id<struct HandoutTemplateTag>;
using LabelStockId = Id<struct LabelStockTag>;

} // namespace ladlework
