#include "foundation/finding_json.h"

#include <QJsonObject>

#include <gtest/gtest.h>

namespace ladlework {
namespace {

Finding finding(Finding::Severity severity, const QString& code) {
    return makeFinding(severity, code, QString());
}

TEST(FindingTest, NamesSeveritiesForFiles) {
    EXPECT_EQ(severityId(Finding::Severity::Note), QStringLiteral("note"));
    EXPECT_EQ(severityId(Finding::Severity::Caution), QStringLiteral("caution"));
    EXPECT_EQ(severityId(Finding::Severity::Stop), QStringLiteral("stop"));
}

TEST(FindingTest, IsMadeWithoutANumber) {
    const Finding made = makeFinding(Finding::Severity::Stop, QStringLiteral("pot-dry"),
                                     QStringLiteral("The pot boils dry."), QStringLiteral("water"));
    EXPECT_EQ(made.severity, Finding::Severity::Stop);
    EXPECT_EQ(made.code, QStringLiteral("pot-dry"));
    EXPECT_EQ(made.text, QStringLiteral("The pot boils dry."));
    EXPECT_EQ(made.field, QStringLiteral("water"));
    EXPECT_FALSE(made.value.has_value());
    EXPECT_FALSE(made.limit.has_value());
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

TEST(FindingTest, PrintsAsJsonWithNullForANumberItDoesNotHave) {
    Finding made = finding(Finding::Severity::Caution, QStringLiteral("a"));
    made.text = QStringLiteral("Mind this.");
    made.value = 2.5;
    made.unit = QStringLiteral("g");
    made.source = QStringLiteral("a table");
    const QJsonArray list = findingsJson({made});
    ASSERT_EQ(list.size(), 1);
    EXPECT_EQ(list[0].toObject(),
              (QJsonObject{{QStringLiteral("severity"), QStringLiteral("caution")},
                           {QStringLiteral("code"), QStringLiteral("a")},
                           {QStringLiteral("text"), QStringLiteral("Mind this.")},
                           {QStringLiteral("value"), 2.5},
                           {QStringLiteral("limit"), QJsonValue(QJsonValue::Null)},
                           {QStringLiteral("unit"), QStringLiteral("g")},
                           {QStringLiteral("source"), QStringLiteral("a table")}}));
    EXPECT_TRUE(findingsJson({}).isEmpty());
}

} // namespace
} // namespace ladlework
