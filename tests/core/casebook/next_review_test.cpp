#include "casebook/next_review.h"

#include <gtest/gtest.h>

using namespace ladlework;

namespace {
casebook::VisitNote noteWith(QDate reviewOn) {
    casebook::VisitNote note;
    note.day = QDate(2026, 10, 1);
    note.reviewOn = reviewOn;
    return note;
}
} // namespace

TEST(NextReviewTest, isTheLatestDaySet) {
    casebook::FamilyRecords records;
    EXPECT_TRUE(casebook::nextReview(records).isNull());
    records.notes = {noteWith({})};
    EXPECT_TRUE(casebook::nextReview(records).isNull());
    records.notes = {noteWith(QDate(2026, 10, 20)), noteWith(QDate(2026, 11, 20)), noteWith({})};
    EXPECT_EQ(casebook::nextReview(records), QDate(2026, 11, 20)) << "whatever their order";
    records.family.reviewOn = QDate(2026, 11, 1);
    EXPECT_EQ(casebook::nextReview(records), QDate(2026, 11, 20));
    records.family.reviewOn = QDate(2026, 12, 1);
    EXPECT_EQ(casebook::nextReview(records), QDate(2026, 12, 1));
}
