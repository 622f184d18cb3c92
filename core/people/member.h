#pragma once

#include "foundation/age_band.h"
#include "foundation/id.h"
#include "foundation/result.h"

#include <QDate>
#include <QString>
#include <optional>

namespace ladlework::people {

/// A person in a family.
struct Member {
    /// The practitioner's own band for this person, with the reason. It can never lift a member
    /// under 6 months into another band.
    struct BandOverride {
        AgeBand band = AgeBand::Adult;
        QString reason;
        friend bool operator==(const BandOverride&, const BandOverride&) = default;
    };

    MemberId id;
    FamilyId family;
    QString name;
    QDate birth;
    std::optional<BandOverride> bandOverride;
    PhaseId phase; ///< not stored (0) while no phase is set
    QString remarks;
};

/// Non-blank name; a birth date that is valid, not after `today` and not over 120 years before it;
/// a band override with a reason, and none for a member under 6 months.
Outcome check(const Member& member, QDate today);

/// The override's band when there is one and the member is not under 6 months, else that of the
/// birth date. `day` before the birth gives the youngest band.
AgeBand bandOf(const Member& member, QDate day);

} // namespace ladlework::people
