#pragma once

#include "casebook/casebook.h"
#include "casebook/climb_so_far.h"

#include <QHash>

namespace ladlework::casebook {

/// A cooking that was planned and of which nothing was recorded.
struct OpenCooking {
    QDate day;
    QString pot; ///< its name
    friend bool operator==(const OpenCooking&, const OpenCooking&) = default;
};

/// What a practitioner wants to know of a family without opening it.
struct FamilyNeeds {
    Findings attention; ///< worst first
    QDate nextReview;   ///< null when none is set
    QList<OpenCooking> openCookings;
    friend bool operator==(const FamilyNeeds&, const FamilyNeeds&) = default;
};

/// The part of a family's records that its needs follow from on a day, with where each log has led
/// in place of the log. Of `records` are filled
///  - whole: family, members, targets, ladders, decisions;
///  - of members with a retry that may be due: tolerances, cautions, open retryPlans;
///  - observations that weightFindings() may still count; reactions that are red flags;
///  - the latest day of a note and the latest day set for a review, as one note;
///  - lots past their use-by, with the entries drunk from them, their batches and pots;
///  - weeks and batches that cookingsToConfirm() may ask for, and their pots.
/// Lists that hold more than that change nothing.
struct FamilyExcerpt {
    FamilyRecords records;
    QHash<MemberId, ClimbSoFar> climbs;
};

FamilyNeeds needsOf(const Casebook& book);

/// The same from an excerpt; nothing when it does not tell (see canGoOn()): then it takes the whole
/// records.
std::optional<FamilyNeeds> needsOf(FamilyExcerpt excerpt, const kitchen::Catalogue& catalogue,
                                   QDate today);

} // namespace ladlework::casebook
