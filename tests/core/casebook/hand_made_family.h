#pragma once

#include "casebook/family_records.h"

#include <QDate>

/// An invented family, small enough to reckon by hand. Today is Wednesday 4 November 2026.
namespace hand_made {

using namespace ladlework;

inline const QDate today(2026, 11, 4);
inline const QDate monday(2026, 11, 2);

inline constexpr MemberId ana{1}; ///< adult, climbing, good days since 2 November
inline constexpr MemberId ben{2}; ///< child, no beef, begins on 4 November
inline constexpr MemberId mia{3}; ///< child, sodium limit, stopped by a red flag on 30 October
inline constexpr MemberId leo{4}; ///< three months old
inline constexpr PotId legs{10};
inline constexpr PotId shank{11};
inline constexpr PotId broth{12};

quantity::Volume ml(double millilitres);
intake::IntakeEntry drank(MemberId member, QDate day, double millilitres);

/// The records as they stand: no batches, no lots, a plan for the week with the legs on Monday at
/// 9:00 and the shank on Thursday at 17:30.
casebook::FamilyRecords records();

} // namespace hand_made
