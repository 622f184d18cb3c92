#include "intake/patterns.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace ladlework::intake {
namespace {

const QDate first(2024, 2, 27);
const QString beef = QStringLiteral("beef");
const QString celery = QStringLiteral("celery");

PatternDay dayOf(int offset, const QStringList& exposures, int worst = 0) {
    return {first.addDays(offset), exposures, worst};
}

const Pattern& of(const QList<Pattern>& found, const QString& subject) {
    const auto pattern = std::ranges::find(found, subject, &Pattern::subject);
    EXPECT_NE(pattern, found.end());
    return *pattern;
}

QList<int> counts(const Pattern& pattern) {
    return {pattern.exposedReacted, pattern.exposedFine, pattern.otherReacted, pattern.otherFine};
}

TEST(PatternsTest, exposesTheDayItselfAndTheDaysOfTheWindowAfterIt) {
    const QList<PatternDay> days{dayOf(0, {}, 5), dayOf(1, {beef}), dayOf(2, {}, 4),
                                 dayOf(3, {}, 3), dayOf(4, {}, 2)};
    EXPECT_EQ(counts(patterns(days, {0, 3})[0]), (QList<int>{0, 1, 3, 1}));
    EXPECT_EQ(counts(patterns(days, {1, 3})[0]), (QList<int>{1, 1, 2, 1}));
    EXPECT_EQ(counts(patterns(days, {2, 3})[0]), (QList<int>{2, 1, 1, 1}));
    EXPECT_EQ(counts(patterns(days, {30, 3})[0]), (QList<int>{2, 2, 1, 0}));
    // The threshold itself is a reaction.
    EXPECT_EQ(counts(patterns(days, {0, 2})[0]), (QList<int>{0, 1, 4, 0}));
}

TEST(PatternsTest, countsTheCalendarAndOnlyTheDaysGiven) {
    // Beef on the 27th; the 28th is not in the list, the 29th is two days on.
    const QList<PatternDay> days{dayOf(0, {beef}), dayOf(2, {}, 5)};
    EXPECT_EQ(counts(patterns(days, {1, 3})[0]), (QList<int>{0, 1, 1, 0}));
    EXPECT_EQ(counts(patterns(days, {2, 3})[0]), (QList<int>{1, 1, 0, 0}));
}

TEST(PatternsTest, mergesADayThatStandsTwiceInAnyOrder) {
    QList<PatternDay> days{dayOf(0, {beef}), dayOf(1, {celery}, 2), dayOf(1, {celery, beef}, 6),
                           dayOf(2, {})};
    const QList<Pattern> found = patterns(days, {0, 3});
    EXPECT_EQ(counts(of(found, beef)), (QList<int>{1, 1, 0, 1}));
    EXPECT_EQ(counts(of(found, celery)), (QList<int>{1, 0, 0, 2}));
    std::ranges::reverse(days);
    EXPECT_EQ(counts(of(patterns(days, {0, 3}), beef)), (QList<int>{1, 1, 0, 1}));
    EXPECT_TRUE(patterns({}, {}).isEmpty());
    EXPECT_TRUE(patterns({{QDate(), {beef}, 5}}, {}).isEmpty());
}

TEST(PatternsTest, hasNoRatioWithoutADayOfEachKind) {
    QList<PatternDay> days;
    for (int i = 0; i < 20; ++i)
        days.append(dayOf(i, {beef}, i % 2 == 0 ? 6 : 0));
    const Pattern always = patterns(days, {0, 3})[0];
    EXPECT_FALSE(always.riskRatio.has_value());
    EXPECT_EQ(always.p, 1);
    EXPECT_FALSE(always.enough);
}

TEST(PatternsTest, asksForDaysOnBothSidesAndForReactions) {
    const auto enough = [](int exposed, int other, int reacted) {
        QList<PatternDay> days;
        for (int i = 0; i < exposed + other; ++i)
            days.append(
                dayOf(i, i < exposed ? QStringList{beef} : QStringList{}, i < reacted ? 5 : 0));
        return patterns(days, {0, 3})[0].enough;
    };
    // resources/reference/pattern-figures.csv: 5, 5 and 3 days.
    EXPECT_TRUE(enough(5, 5, 3));
    EXPECT_FALSE(enough(4, 50, 3));
    EXPECT_FALSE(enough(50, 4, 3));
    EXPECT_FALSE(enough(50, 50, 2));
}

/// Days on which each of the subjects is taken or not by the toss of a coin.
QList<PatternDay> tossed(std::mt19937& engine, int count, int subjects) {
    QList<PatternDay> days;
    for (int i = 0; i < count; ++i) {
        PatternDay day = dayOf(i, {});
        for (int s = 0; s < subjects; ++s)
            if (engine() % 2 == 0)
                day.exposures.append(QStringLiteral("subject %1").arg(s));
        days.append(day);
    }
    return days;
}

TEST(PatternsTest, findsTheSubjectThatWasPlanted) {
    std::mt19937 engine(3);
    QList<PatternDay> days = tossed(engine, 90, 8);
    for (PatternDay& day : days) {
        const bool planted = day.exposures.contains(QStringLiteral("subject 5"));
        day.worstReaction = engine() % 10 < (planted ? 6u : 1u) ? 5 : 0;
    }
    const QList<Pattern> found = patterns(days, {0, 3});
    EXPECT_EQ(found.first().subject, QStringLiteral("subject 5"));
    EXPECT_TRUE(isWorthTalkingAbout(found.first()));
    EXPECT_TRUE(std::ranges::is_sorted(found, {}, &Pattern::q));
    for (const Pattern& pattern : found)
        EXPECT_GE(pattern.q, pattern.p);
}

TEST(PatternsTest, seldomSpeaksOfWhatIsChance) {
    // Without any effect a named subject is a false one, so the share of families with one is the
    // false discovery rate: at most 0.1 by Benjamini & Hochberg 1995, and 4 standard errors of 500
    // draws are 0.054.
    std::mt19937 engine(4);
    int spoke = 0;
    constexpr int families = 500;
    for (int family = 0; family < families; ++family) {
        QList<PatternDay> days = tossed(engine, 80, 6);
        for (PatternDay& day : days)
            day.worstReaction = engine() % 10 < 3 ? 5 : 0;
        spoke += std::ranges::any_of(patterns(days, {0, 3}), isWorthTalkingAbout) ? 1 : 0;
    }
    EXPECT_LE(spoke, families * (0.1 + 0.054));
    EXPECT_GT(spoke, 0);
}

TEST(PatternsTest, fewerReactionsAreNotWorthTalkingAbout) {
    QList<PatternDay> days;
    for (int i = 0; i < 60; ++i)
        days.append(dayOf(i, i % 2 == 0 ? QStringList{beef} : QStringList{}, i % 2 == 0 ? 0 : 6));
    const Pattern pattern = patterns(days, {0, 3})[0];
    EXPECT_LT(pattern.q, 0.001);
    EXPECT_FALSE(isWorthTalkingAbout(pattern));
}

TEST(PatternsTest, speaksSoberly) {
    Pattern pattern;
    pattern.subject = beef;
    pattern.exposedReacted = 1;
    pattern.otherReacted = 1;
    pattern.otherFine = 9;
    EXPECT_EQ(explain(pattern, QStringLiteral("Beef")).toStdString(),
              "Beef: reactions on 1 of 1 day with or soon after it and on 1 of 10 days without it. "
              "There are not enough days to say anything.");
    pattern.enough = true;
    pattern.riskRatio = 2;
    pattern.q = 0.5;
    EXPECT_TRUE(explain(pattern, beef).endsWith(QStringLiteral("Nothing stands out.")));
    pattern.q = 0.01;
    EXPECT_TRUE(
        explain(pattern, beef)
            .endsWith(QStringLiteral("Worth talking about; it does not say what the cause is.")));
}

} // namespace
} // namespace ladlework::intake
