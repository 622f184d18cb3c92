#include "core/intake/random_ladders.h"
#include "intake/ladder_machine.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

struct WordsCase {
    LadderDecision decision;
    int rule;
    int rung;
    int goodDays;
    const char* sentence;
};

class LadderWordsTest : public ::testing::TestWithParam<WordsCase> {};

TEST_P(LadderWordsTest, saysInOneSentenceWhatWasDecided) {
    const WordsCase& c = GetParam();
    LadderDay day;
    day.decision = c.decision;
    day.rule = c.rule;
    day.rung = c.rung;
    day.goodDays = c.goodDays;
    EXPECT_EQ(explain(day, LadderRules{}).toStdString(), c.sentence);
}

INSTANTIATE_TEST_SUITE_P(
    Days, LadderWordsTest,
    ::testing::Values(
        WordsCase{LadderDecision::Stop, 1, 2, 0,
                  "The ladder is stopped until a decision to go on is recorded."},
        WordsCase{LadderDecision::Stop, 2, 2, 0,
                  "A red flag or a reaction stronger than 8: the ladder stops until a decision to "
                  "go on is recorded."},
        WordsCase{LadderDecision::Back, 3, 2, 0,
                  "A reaction stronger than 5: the ladder goes down one rung and holds for the "
                  "next 3 days."},
        WordsCase{LadderDecision::Back, 3, 0, 0,
                  "A reaction stronger than 5: the ladder stays on its first rung and holds for "
                  "the next 3 days."},
        WordsCase{LadderDecision::Back, 4, 2, 0,
                  "The second reaction stronger than 2 within 3 days: the ladder goes down one "
                  "rung and holds for the next 3 days."},
        WordsCase{
            LadderDecision::Hold, 4, 2, 0,
            "A reaction stronger than 2: the amount is held and the good days count from 0 again."},
        WordsCase{LadderDecision::Gap, 5, 2, 1, "Nothing was entered: the count stays as it was."},
        WordsCase{LadderDecision::Stale, 5, 2, 0,
                  "Nothing was entered for 5 days running: the ladder goes down one rung."},
        WordsCase{LadderDecision::Stay, 6, 2, 1,
                  "Less than 90 % of the amount was drunk: the count stays as it was."},
        WordsCase{LadderDecision::Hold, 7, 2, 0, "A good day inside a hold: it is not counted."},
        WordsCase{LadderDecision::Stay, 8, 2, 1, "A good day: 1 good day counted on this rung."},
        WordsCase{LadderDecision::Advance, 8, 2, 0,
                  "A good day that makes 3 good days: the next rung begins tomorrow."}));

TEST_F(LadderWordsTest, saysSomethingOfEveryDay) {
    testing::RandomClimbs climbs(11);
    for (int i = 0; i < 50; ++i) {
        const testing::RandomClimb climb = climbs.next();
        for (const LadderDay& day :
             replay(climb.ladder, climb.log, climb.decisions, climb.today).days) {
            const QString sentence = explain(day, climb.ladder.rules);
            ASSERT_TRUE(sentence.endsWith(QLatin1Char('.'))) << qPrintable(sentence);
            ASSERT_FALSE(sentence.contains(QStringLiteral("rule"))) << qPrintable(sentence);
            ASSERT_EQ(ruleName(day), QStringLiteral("Rule %1 of the ladder").arg(day.rule));
            ASSERT_FALSE(sentence.contains(QLatin1Char('%')) && day.rule != 6)
                << qPrintable(sentence);
        }
    }
}

TEST_F(LadderWordsTest, namesEveryDecisionAndState) {
    EXPECT_EQ(decisionId(LadderDecision::Advance).toStdString(), "advance");
    EXPECT_EQ(decisionId(LadderDecision::Stay).toStdString(), "stay");
    EXPECT_EQ(decisionId(LadderDecision::Hold).toStdString(), "hold");
    EXPECT_EQ(decisionId(LadderDecision::Back).toStdString(), "back");
    EXPECT_EQ(decisionId(LadderDecision::Stop).toStdString(), "stop");
    EXPECT_EQ(decisionId(LadderDecision::Gap).toStdString(), "gap");
    EXPECT_EQ(decisionId(LadderDecision::Stale).toStdString(), "stale");
    EXPECT_EQ(stateId(LadderState::Climbing).toStdString(), "climbing");
    EXPECT_EQ(stateId(LadderState::Holding).toStdString(), "holding");
    EXPECT_EQ(stateId(LadderState::Stopped).toStdString(), "stopped");
    EXPECT_EQ(stateId(LadderState::AtTarget).toStdString(), "at-target");
    EXPECT_EQ(stateId(LadderState::EasingOff).toStdString(), "easing-off");
    EXPECT_EQ(stateName(LadderState::EasingOff).toStdString(), "easing off");
}

} // namespace
} // namespace ladlework::intake
