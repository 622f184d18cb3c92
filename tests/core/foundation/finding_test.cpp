#include "foundation/finding.h"

#include <gtest/gtest.h>

namespace ladlework {
namespace {

Finding finding(Finding::Severity severity, const QString& code) {
    Finding made;
    made.severity = severity;
    made.code = code;
    return made;
}

TEST(FindingTest, NamesSeveritiesForFiles) {
    EXPECT_EQ(severityId(Finding::Severity::Note), QStringLiteral("note"));
    EXPECT_EQ(severityId(Finding::Severity::Caution), QStringLiteral("caution"));
    EXPECT_EQ(severityId(Finding::Severity::Stop), QStringLiteral("stop"));
}

TEST(FindingTest, FindsTheWorst) {
    const Finding note = finding(Finding::Severity::Note, QStringLiteral("a"));
    const Finding caution = finding(Finding::Severity::Caution, QStringLiteral("b"));
    const Finding stop = finding(Finding::Severity::Stop, QStringLiteral("c"));
    EXPECT_EQ(worstOf({}), std::nullopt);
    EXPECT_EQ(worstOf({note}), Finding::Severity::Note);
    EXPECT_EQ(worstOf({caution, note}), Finding::Severity::Caution);
    EXPECT_EQ(worstOf({note, stop, caution}), Finding::Severity::Stop);
}

TEST(FindingTest, LooksForACodeAsAWhole) {
    const Findings findings{finding(Finding::Severity::Note, QStringLiteral("water-above-most"))};
    EXPECT_TRUE(hasCode(findings, u"water-above-most"));
    EXPECT_FALSE(hasCode(findings, u"water-above"));
    EXPECT_FALSE(hasCode({}, u"water-above-most"));
}

} // namespace
} // namespace ladlework
