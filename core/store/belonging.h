#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"

#include <QLatin1StringView>
#include <optional>

namespace ladlework::store {

class Database;

/// Which family a stored record belongs to: nothing when there is no such record.
class Belonging {
public:
    explicit Belonging(Database& database) : m_database(database) {}

    [[nodiscard]] std::optional<FamilyId> familyOf(MemberId member) const;
    [[nodiscard]] std::optional<FamilyId> familyOf(VesselId vessel) const;
    [[nodiscard]] std::optional<FamilyId> familyOf(ContainerId container) const;
    [[nodiscard]] std::optional<FamilyId> familyOf(BatchId batch) const;
    [[nodiscard]] std::optional<FamilyId> familyOf(LotId lot) const;
    /// Not stored (0) for one of the practice's own pots.
    [[nodiscard]] std::optional<FamilyId> familyOf(PotId pot) const;
    /// The family of the member that a row of `table` belongs to.
    [[nodiscard]] std::optional<FamilyId> familyOfMemberRow(QLatin1StringView table,
                                                            qint64 id) const;

    /// The local day of a family now; an invalid day when there is no such family.
    [[nodiscard]] QDate today(FamilyId family, const Clock& clock) const;

    /// The day of the member's family now; NotFound when there is no such member.
    [[nodiscard]] Result<QDate> todayOf(MemberId member, const Clock& clock) const;
    /// NotFound when there is no such family.
    [[nodiscard]] Result<QDate> todayOf(FamilyId family, const Clock& clock) const;

    /// Refuses a pot that is neither the family's nor the practice's, or is not there.
    [[nodiscard]] Outcome mayUse(FamilyId family, PotId pot) const;
    /// Refuses a vessel that is not this family's, or is not there.
    [[nodiscard]] Outcome mayUse(FamilyId family, VesselId vessel) const;
    /// Refuses a container that is not this family's, or is not there.
    [[nodiscard]] Outcome mayUse(FamilyId family, ContainerId container) const;
    /// Refuses to give a member's record to a member of another family; NotFound when the record
    /// is not there.
    [[nodiscard]] Outcome mayMove(QLatin1StringView table, qint64 id, MemberId member) const;

private:
    [[nodiscard]] std::optional<FamilyId> look(const QString& sql, qint64 id) const;

    Database& m_database;
};

/// The NotFound problem of a record that is not, or no longer, in the workbook.
tl::unexpected<Problem> noSuchRecord();
/// BadInput unless the day is valid; `sentence` asks for it.
Outcome requireDay(QDate day, const QString& sentence, const QString& place);

} // namespace ladlework::store
