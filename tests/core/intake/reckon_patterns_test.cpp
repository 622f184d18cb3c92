#include "intake/reckon_patterns.h"

#include <QJsonArray>

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

QString text(const char* words) {
    return QString::fromLatin1(words);
}

QJsonObject dayOf(int offset, const QStringList& exposures, const QJsonValue& worst) {
    return {{text("day"), QDate(2024, 2, 20).addDays(offset).toString(Qt::ISODate)},
            {text("exposures"), QJsonArray::fromStringList(exposures)},
            {text("worst_reaction"), worst}};
}

/// The tea tasting: 3 of 4 exposed days reacted, 1 of 4 others.
QJsonObject tea() {
    QJsonArray days;
    for (int i = 0; i < 8; ++i)
        days.append(dayOf(i, i < 4 ? QStringList{text("tea")} : QStringList{},
                          i == 0 || i == 1 || i == 2 || i == 7 ? QJsonValue(5) : QJsonValue(1)));
    return {{text("days"), days}, {text("window_days"), 0}, {text("reaction_at_least"), 3}};
}

QStringList codes(const QJsonObject& out) {
    QStringList found;
    for (const QJsonValue& finding : out.value(text("findings")).toArray())
        found.append(finding.toObject().value(text("code")).toString());
    return found;
}

TEST(ReckonPatternsTest, reckonsThePublishedTable) {
    const Result<QJsonObject> out = reckonPatterns(tea());
    ASSERT_TRUE(out.has_value()) << qPrintable(toLine(out.error()));
    const QJsonArray subjects = out->value(text("subjects")).toArray();
    ASSERT_EQ(subjects.size(), 1);
    const QJsonObject one = subjects[0].toObject();
    EXPECT_EQ(one.value(text("subject")).toString(), text("tea"));
    EXPECT_EQ(one.value(text("exposed_reacted")).toInt(), 3);
    EXPECT_EQ(one.value(text("exposed_fine")).toInt(), 1);
    EXPECT_EQ(one.value(text("other_reacted")).toInt(), 1);
    EXPECT_EQ(one.value(text("other_fine")).toInt(), 3);
    EXPECT_NEAR(one.value(text("risk_ratio")).toDouble(), 3, 1e-12);
    // By hand: exp(ln 3 -+ 1.959964 sqrt(1/3 - 1/4 + 1 - 1/4)).
    const QJsonArray interval = one.value(text("risk_ratio_95")).toArray();
    ASSERT_EQ(interval.size(), 2);
    EXPECT_NEAR(interval[0].toDouble(), 3 * std::exp(-1.959964 * std::sqrt(5.0 / 6)), 1e-6);
    EXPECT_NEAR(interval[1].toDouble(), 3 * std::exp(1.959964 * std::sqrt(5.0 / 6)), 1e-4);
    EXPECT_NEAR(one.value(text("p")).toDouble(), 34.0 / 70, 1e-12);
    EXPECT_NEAR(one.value(text("q")).toDouble(), 34.0 / 70, 1e-12);
    EXPECT_EQ(one.value(text("enough")), QJsonValue(false));
    EXPECT_EQ(codes(*out), (QStringList{text("patterns-not-enough"), text("pattern-is-no-cause")}));
}

TEST(ReckonPatternsTest, saysWhatIsWorthTalkingAbout) {
    QJsonArray days;
    for (int i = 0; i < 40; ++i)
        days.append(dayOf(i, i % 2 == 0 ? QStringList{text("beef")} : QStringList{},
                          i % 2 == 0 && i > 4 ? QJsonValue(6) : QJsonValue()));
    QJsonObject input = tea();
    input.insert(text("days"), days);
    const Result<QJsonObject> out = reckonPatterns(input);
    ASSERT_TRUE(out.has_value());
    EXPECT_EQ(codes(*out),
              (QStringList{text("pattern-worth-talking-about"), text("pattern-is-no-cause")}));
}

TEST(ReckonPatternsTest, hasNoRatioForWhatIsTakenEveryDay) {
    QJsonObject input = tea();
    input.insert(text("days"), QJsonArray{dayOf(0, {text("tea")}, 5), dayOf(1, {text("tea")}, 0)});
    const Result<QJsonObject> out = reckonPatterns(input);
    ASSERT_TRUE(out.has_value());
    const QJsonObject one = out->value(text("subjects")).toArray()[0].toObject();
    EXPECT_TRUE(one.value(text("risk_ratio")).isNull());
    EXPECT_TRUE(one.value(text("risk_ratio_95")).isNull());
    EXPECT_EQ(one.value(text("p")).toDouble(), 1);
}

TEST(ReckonPatternsTest, takesNoDaysAtAll) {
    QJsonObject input = tea();
    input.insert(text("days"), QJsonArray());
    const Result<QJsonObject> out = reckonPatterns(input);
    ASSERT_TRUE(out.has_value());
    EXPECT_TRUE(out->value(text("subjects")).toArray().isEmpty());
    EXPECT_EQ(codes(*out), QStringList{text("patterns-not-enough")});
}

} // namespace
} // namespace ladlework::intake
