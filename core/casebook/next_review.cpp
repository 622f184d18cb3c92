#include "casebook/next_review.h"

namespace ladlework::casebook {

QDate nextReview(const FamilyRecords& records) {
    QDate next = records.family.reviewOn;
    for (const VisitNote& note : records.notes) {
        if (note.reviewOn.isValid() && (next.isNull() || note.reviewOn > next))
            next = note.reviewOn;
    }
    return next;
}

} // namespace ladlework::casebook
