#include "foundation/reference_table.h"

#include <stdexcept>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ladlework {
namespace {

using ::testing::HasSubstr;

std::string reasonOf(const std::function<void()>& reading) {
    try {
        reading();
    } catch (const std::runtime_error& error) {
        return error.what();
    }
    return "nothing was thrown";
}

class ReferenceTableTest : public ::testing::Test {
protected:
    const Result<ReferenceTable> m_sound = ReferenceTable::load(QStringLiteral("test-sound"));
};

TEST_F(ReferenceTableTest, ReadsRowsByColumn) {
    ASSERT_TRUE(m_sound.has_value()) << toLine(m_sound.error()).toStdString();
    EXPECT_EQ(m_sound->name(), QStringLiteral("test-sound"));
    ASSERT_EQ(m_sound->size(), 3);
    const ReferenceTable::Row first = m_sound->row(0);
    EXPECT_EQ(first.text(QStringLiteral("id")), QStringLiteral("first"));
    EXPECT_EQ(first.text(QStringLiteral("label")), QStringLiteral("Of two lines,\n# not a remark"));
    EXPECT_EQ(first.text(QStringLiteral("source")), QStringLiteral("A table, page \"7\""));
    EXPECT_EQ(first.number(QStringLiteral("value")), 1.5);
    EXPECT_TRUE(first.flag(QStringLiteral("allowed")));
    const ReferenceTable::Row second = m_sound->row(1);
    EXPECT_EQ(second.number(QStringLiteral("value")), -2000.0);
    EXPECT_FALSE(second.flag(QStringLiteral("allowed")));
    EXPECT_EQ(second.text(QStringLiteral("source")), QString());
}

TEST_F(ReferenceTableTest, ThrowsOnABrokenInvariant) {
    ASSERT_TRUE(m_sound.has_value());
    const ReferenceTable::Row third = m_sound->row(2);
    // Line 8 of the fixture: the quoted line break and the remarks count.
    EXPECT_THAT(reasonOf([&] { (void)third.number(QStringLiteral("value")); }),
                HasSubstr("test-sound.csv, line 8, column \"value\": \"about two\""));
    EXPECT_THAT(reasonOf([&] { (void)third.flag(QStringLiteral("allowed")); }),
                HasSubstr("line 8, column \"allowed\": \"perhaps\""));
    EXPECT_THAT(reasonOf([&] { (void)third.text(QStringLiteral("colour")); }),
                HasSubstr("no column \"colour\""));
    EXPECT_THAT(reasonOf([&] { (void)third.number(QStringLiteral("source")); }),
                HasSubstr("\"\" is not a number"));
}

TEST_F(ReferenceTableTest, AcceptsATableWithoutRows) {
    const Result<ReferenceTable> table = ReferenceTable::load(QStringLiteral("test-no-rows"));
    ASSERT_TRUE(table.has_value()) << toLine(table.error()).toStdString();
    EXPECT_EQ(table->size(), 0);
}

TEST_F(ReferenceTableTest, CallsABadTableDamagedAndNamesThePlace) {
    const std::pair<QString, QString> cases[] = {
        {QStringLiteral("test-absent"), QStringLiteral(":/reference/test-absent.csv")},
        {QStringLiteral("test-ragged"), QStringLiteral("test-ragged.csv, line 3")},
        {QStringLiteral("test-twice"), QStringLiteral("test-twice.csv, line 1")},
        {QStringLiteral("test-no-basis"), QStringLiteral("test-no-basis.csv, line 1")},
        {QStringLiteral("test-open-quote"), QStringLiteral("test-open-quote.csv, line 2")},
        {QStringLiteral("test-empty"), QStringLiteral("test-empty.csv, line 1")},
    };
    for (const auto& [name, place] : cases) {
        SCOPED_TRACE(name.toStdString());
        const Result<ReferenceTable> table = ReferenceTable::load(name);
        ASSERT_FALSE(table.has_value());
        EXPECT_EQ(table.error().kind, Problem::Kind::Damaged);
        EXPECT_EQ(table.error().place, place);
        EXPECT_FALSE(table.error().sentence.isEmpty());
    }
}

} // namespace
} // namespace ladlework
