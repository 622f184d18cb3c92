// The bands that the code knows are those of the shipped table.
#include "foundation/age_band.h"
#include "foundation/reference_table.h"

#include <gtest/gtest.h>

namespace ladlework {
namespace {

TEST(AgeBandTableTest, agreesWithTheCodeAtEveryEdge) {
    const Result<ReferenceTable> table = ReferenceTable::load(QStringLiteral("age-bands"));
    ASSERT_TRUE(table.has_value()) << qPrintable(toLine(table.error()));
    ASSERT_EQ(table->size(), 4);
    const QDate birth(2000, 1, 15);
    for (qsizetype i = 0; i < table->size(); ++i) {
        const ReferenceTable::Row row = table->row(i);
        const auto band = ageBandFromId(row.text(QStringLiteral("band")));
        ASSERT_TRUE(band.has_value()) << qPrintable(row.text(QStringLiteral("band")));
        const int from = static_cast<int>(row.number(QStringLiteral("from_month")));
        EXPECT_EQ(ageBandOn(birth, birth.addMonths(from)), band);
        if (row.text(QStringLiteral("to_month")).isEmpty()) {
            EXPECT_EQ(ageBandOn(birth, birth.addYears(90)), band);
            continue;
        }
        const int to = static_cast<int>(row.number(QStringLiteral("to_month")));
        EXPECT_EQ(ageBandOn(birth, birth.addMonths(to).addDays(-1)), band);
        EXPECT_NE(ageBandOn(birth, birth.addMonths(to)), band);
    }
}

} // namespace
} // namespace ladlework
