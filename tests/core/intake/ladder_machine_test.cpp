// Hand-worked days: each row was worked out from the eight rules as the trade states them.
#include "intake/ladder_machine.h"

#include <QStringList>

#include <gtest/gtest.h>
#include <limits>
#include <stdexcept>

namespace ladlework::intake {
namespace {

using quantity::Volume;

const QDate firstDay(2024, 2, 26); // the month ends on a leap day

Ladder ladderOf(int rungs, const LadderRules& rules = {}) {
    Ladder ladder;
    for (int i = 1; i <= rungs; ++i)
        ladder.rungs.append(Volume::fromMillilitres(10.0 * i));
    ladder.rules = rules;
    return ladder;
}

struct Diary {
    QList<LogDay> log;
    QList<Decision> decisions;
    QDate today;
};

/// One word a day: g good, s short, . no entry, 0-9 and T(en) a reaction of that strength with all
/// drunk, x red flag, o nothing drunk and a red flag; ">n" behind it: a decision to resume at rung
/// n.
Diary diaryOf(const QString& words) {
    Diary diary;
    QDate day = firstDay;
    for (const QString& word : words.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        LogDay entry;
        entry.day = day;
        entry.drunk = Volume::fromMillilitres(100);
        const QChar what = word[0];
        if (what.isDigit())
            entry.worstReaction = what.digitValue();
        else if (what == QLatin1Char('T'))
            entry.worstReaction = 10;
        else if (what == QLatin1Char('s'))
            entry.drunk = Volume::fromMillilitres(5);
        entry.redFlag = what == QLatin1Char('x') || what == QLatin1Char('o');
        if (what == QLatin1Char('o'))
            entry.drunk = Volume();
        if (what != QLatin1Char('.'))
            diary.log.append(entry);
        if (word.size() > 2)
            diary.decisions.append({{}, {}, day, word[2].digitValue(), QStringLiteral("asked")});
        diary.today = day;
        day = day.addDays(1);
    }
    return diary;
}

/// "8stay/0" for each day: rule, decision and the rung in force that day.
QString told(const LadderReplay& replayed) {
    QStringList words;
    for (const LadderDay& day : replayed.days)
        words.append(
            QStringLiteral("%1%2/%3").arg(day.rule).arg(decisionId(day.decision)).arg(day.rung));
    return words.join(QLatin1Char(' '));
}

struct DiaryCase {
    const char* name;
    const char* days;
    const char* told;
    const char* state;
    int rung;
    int goodDays;
};

class LadderMachineTest : public ::testing::TestWithParam<DiaryCase> {};

TEST_P(LadderMachineTest, decidesEachDayByTheFirstRuleThatFits) {
    const DiaryCase& c = GetParam();
    const Diary diary = diaryOf(QString::fromLatin1(c.days));
    const LadderReplay replayed = replay(ladderOf(4), diary.log, diary.decisions, diary.today);
    EXPECT_EQ(told(replayed).toStdString(), c.told);
    EXPECT_EQ(stateId(replayed.state).toStdString(), c.state);
    EXPECT_EQ(replayed.rung, c.rung);
    EXPECT_EQ(replayed.goodDays, c.goodDays);
}

INSTANTIATE_TEST_SUITE_P(
    Days, LadderMachineTest,
    ::testing::Values(
        DiaryCase{"threeGoodDaysAdvance", "g g g g", "8stay/0 8stay/0 8advance/0 8stay/1",
                  "climbing", 1, 1},
        DiaryCase{"mildReactionIsAGoodDay", "2 1 2", "8stay/0 8stay/0 8advance/0", "climbing", 1,
                  0},
        DiaryCase{"shortDaysAndGapsKeepTheCount", "g s g . g",
                  "8stay/0 6stay/0 8stay/0 5gap/0 8advance/0", "climbing", 1, 0},
        DiaryCase{"moderateDayHoldsAndClearsTheCount", "g g 3 g g g",
                  "8stay/0 8stay/0 4hold/0 8stay/0 8stay/0 8advance/0", "climbing", 1, 0},
        DiaryCase{"moderateHoldIsThatDayAlone", "5", "4hold/0", "climbing", 0, 0},
        DiaryCase{"secondModerateWithinTheWindowGoesBack", "g g g 3 g 3",
                  "8stay/0 8stay/0 8advance/0 4hold/1 8stay/1 4back/1", "holding", 0, 0},
        DiaryCase{"secondModerateOutsideTheWindowHolds", "g g g 3 g g 3",
                  "8stay/0 8stay/0 8advance/0 4hold/1 8stay/1 8stay/1 4hold/1", "climbing", 1, 0},
        DiaryCase{"backClearsTheModerateDays", "3 3 3", "4hold/0 4back/0 4hold/0", "holding", 0, 0},
        DiaryCase{"strongerReactionGoesBackAtOnce", "g g g 6", "8stay/0 8stay/0 8advance/0 3back/1",
                  "holding", 0, 0},
        DiaryCase{"strengthEightStillGoesBack", "8", "3back/0", "holding", 0, 0},
        DiaryCase{"strengthNineStops", "9", "2stop/0", "stopped", 0, 0},
        DiaryCase{"holdLastsThreeDays", "6 g g g g g g",
                  "3back/0 7hold/0 7hold/0 7hold/0 8stay/0 8stay/0 8advance/0", "climbing", 1, 0},
        DiaryCase{"holdingUntilItsLastDay", "6 g g", "3back/0 7hold/0 7hold/0", "holding", 0, 0},
        DiaryCase{"holdOverOnItsLastDay", "6 g g g", "3back/0 7hold/0 7hold/0 7hold/0", "climbing",
                  0, 0},
        DiaryCase{"holdPassesDuringGaps", "6 . . . g", "3back/0 5gap/0 5gap/0 5gap/0 8stay/0",
                  "climbing", 0, 1},
        DiaryCase{"shortDayInsideAHoldStays", "6 s", "3back/0 6stay/0", "holding", 0, 0},
        DiaryCase{"newBackBeginsTheHoldAnew", "6 g 7 g g g g",
                  "3back/0 7hold/0 3back/0 7hold/0 7hold/0 7hold/0 8stay/0", "climbing", 0, 1},
        DiaryCase{
            "fifthGapIsStaleAndTheTenthAgain", "g g g g g g g . . . . . . . . . .",
            "8stay/0 8stay/0 8advance/0 8stay/1 8stay/1 8advance/1 8stay/2 5gap/2 5gap/2 5gap/2 "
            "5gap/2 5stale/2 5gap/1 5gap/1 5gap/1 5gap/1 5stale/1",
            "climbing", 0, 0},
        DiaryCase{"anEntryEndsTheRunOfGaps", "g . . . . s . . . .",
                  "8stay/0 5gap/0 5gap/0 5gap/0 5gap/0 6stay/0 5gap/0 5gap/0 5gap/0 5gap/0",
                  "climbing", 0, 1},
        DiaryCase{"staleOnTheFirstRungKeepsIt", "g . . . . .",
                  "8stay/0 5gap/0 5gap/0 5gap/0 5gap/0 5stale/0", "climbing", 0, 0},
        DiaryCase{"redFlagStopsUntilADecision", "g x g . g>0 g",
                  "8stay/0 2stop/0 1stop/0 1stop/0 8stay/0 8stay/0", "climbing", 0, 2},
        DiaryCase{"redFlagStopsWhenNothingWasDrunk", "g o", "8stay/0 2stop/0", "stopped", 0, 1},
        DiaryCase{"decisionOnTheDayOfTheStopHasNoEffect", "x>0 g", "2stop/0 1stop/0", "stopped", 0,
                  0},
        DiaryCase{"decisionWithoutAStopHasNoEffect", "g>3 g", "8stay/0 8stay/0", "climbing", 0, 2},
        DiaryCase{"decisionSetsTheRungOfItsDay", "x g>2 g", "2stop/0 8stay/2 8stay/2", "climbing",
                  2, 2},
        DiaryCase{"decisionBeyondTheLadderTakesItsLastRung", "x g>9", "2stop/0 8stay/3",
                  "at-target", 3, 1},
        DiaryCase{"decisionClearsTheHold", "6 x g>0", "3back/0 2stop/0 8stay/0", "climbing", 0, 1},
        DiaryCase{"decisionClearsTheModerateDays", "3 x 3>0", "4hold/0 2stop/0 4hold/0", "climbing",
                  0, 0},
        DiaryCase{"decisionDayIsUnderTheOtherRules", "x 9>1 .>1 s>1",
                  "2stop/0 2stop/1 5gap/1 6stay/1", "climbing", 1, 0},
        DiaryCase{"decisionStartsTheRunOfGapsAnew", "x . . . . .>1 . . . .",
                  "2stop/0 1stop/0 1stop/0 1stop/0 1stop/0 5gap/1 5gap/1 5gap/1 5gap/1 5stale/1",
                  "climbing", 0, 0},
        DiaryCase{"goodDaysAtTheTargetGoOnCounting", "x g>3 g g g g",
                  "2stop/0 8stay/3 8stay/3 8stay/3 8stay/3 8stay/3", "at-target", 3, 5},
        DiaryCase{"stopHidesTheTarget", "x g>3 T", "2stop/0 8stay/3 2stop/3", "stopped", 3, 1}),
    [](const auto& named) { return std::string(named.param.name); });

TEST_F(LadderMachineTest, stepsBackByTheRungsOfTheRulesButNotBelowTheFirst) {
    LadderRules rules;
    rules.rungsBack = 2;
    const Diary diary = diaryOf(QStringLiteral("x g>3 6 6"));
    const LadderReplay replayed =
        replay(ladderOf(4, rules), diary.log, diary.decisions, diary.today);
    EXPECT_EQ(told(replayed).toStdString(), "2stop/0 8stay/3 3back/3 3back/1");
    EXPECT_EQ(replayed.rung, 0);
}

TEST_F(LadderMachineTest, windowsOfNoneAndOneDayNeverFindAnotherDay) {
    for (int window : {0, 1}) {
        LadderRules rules;
        rules.moderateWindowDays = window;
        const Diary diary = diaryOf(QStringLiteral("3 3 3"));
        EXPECT_EQ(told(replay(ladderOf(2, rules), diary.log, {}, diary.today)).toStdString(),
                  "4hold/0 4hold/0 4hold/0");
    }
}

TEST_F(LadderMachineTest, noHoldAfterABackWhenTheRulesAskForNone) {
    LadderRules rules;
    rules.holdDays = 0;
    const Diary diary = diaryOf(QStringLiteral("6 g"));
    const LadderReplay replayed = replay(ladderOf(2, rules), diary.log, {}, diary.today);
    EXPECT_EQ(told(replayed).toStdString(), "3back/0 8stay/0");
    EXPECT_FALSE(replayed.holdUntil.isValid());
}

TEST_F(LadderMachineTest, staleDoesNotClearTheModerateDays) {
    LadderRules rules;
    rules.staleDays = 1;
    rules.moderateWindowDays = 3;
    const Diary diary = diaryOf(QStringLiteral("3 . 3"));
    EXPECT_EQ(told(replay(ladderOf(2, rules), diary.log, {}, diary.today)).toStdString(),
              "4hold/0 5stale/0 4back/0");
}

TEST_F(LadderMachineTest, easesOffAfterTheDaysAtTargetAndKeepsThemThroughABack) {
    LadderRules rules;
    rules.holdTargetDays = 4;
    Diary diary = diaryOf(QStringLiteral("x g>3 g g"));
    LadderReplay replayed = replay(ladderOf(4, rules), diary.log, diary.decisions, diary.today);
    EXPECT_EQ(replayed.state, LadderState::AtTarget);
    EXPECT_EQ(replayed.daysAtTarget, 3);

    diary = diaryOf(QStringLiteral("x g>3 g g g"));
    replayed = replay(ladderOf(4, rules), diary.log, diary.decisions, diary.today);
    EXPECT_EQ(replayed.state, LadderState::EasingOff);

    diary = diaryOf(QStringLiteral("x g>3 g g 6"));
    replayed = replay(ladderOf(4, rules), diary.log, diary.decisions, diary.today);
    EXPECT_EQ(replayed.state, LadderState::Holding);
    EXPECT_EQ(replayed.daysAtTarget, 3);
    EXPECT_EQ(replayed.holdUntil, diary.today.addDays(3));
}

TEST_F(LadderMachineTest, exactShareOfTheAmountIsAGoodDay) {
    // In decimals each second number is 0.9 times the first; in binary the product comes out
    // larger.
    const QList<std::pair<double, double>> exact{{0.05, 0.045}, {0.07, 0.063}, {0.04, 0.036}};
    for (const auto& [asked, drunk] : exact) {
        ASSERT_LT(drunk, 0.9 * asked);
        Ladder ladder;
        ladder.rungs = {Volume::fromMillilitres(asked)};
        const QList<LogDay> enough{{firstDay, Volume::fromMillilitres(drunk), {}, false}};
        EXPECT_EQ(replay(ladder, enough, {}, firstDay).days[0].rule, 8) << asked;
        const QList<LogDay> less{{firstDay, Volume::fromMillilitres(drunk * 0.9999), {}, false}};
        EXPECT_EQ(replay(ladder, less, {}, firstDay).days[0].rule, 6) << asked;
    }
}

TEST_F(LadderMachineTest, mergesTheItemsOfOneDay) {
    const QList<LogDay> log{{firstDay, Volume::fromMillilitres(4), 1, false},
                            {firstDay, Volume::fromMillilitres(5), 3, false}};
    const LadderReplay replayed = replay(ladderOf(2), log, {}, firstDay);
    ASSERT_EQ(replayed.days.size(), 1);
    EXPECT_EQ(replayed.days[0].rule, 4);
    const QList<LogDay> halves{{firstDay, Volume::fromMillilitres(4), {}, false},
                               {firstDay, Volume::fromMillilitres(5), {}, false}};
    EXPECT_EQ(replay(ladderOf(2), halves, {}, firstDay).days[0].rule, 8);
}

TEST_F(LadderMachineTest, lowestOfSeveralDecisionsHolds) {
    const QList<LogDay> log{{firstDay, {}, {}, true}};
    const QDate next = firstDay.addDays(1);
    const QList<Decision> decisions{{{}, {}, next, 2, QStringLiteral("a")},
                                    {{}, {}, next, 1, QStringLiteral("b")},
                                    {{}, {}, next, 3, QStringLiteral("c")}};
    EXPECT_EQ(replay(ladderOf(4), log, decisions, next).rung, 1);
}

TEST_F(LadderMachineTest, countsFromTheDayOfTheLadderToToday) {
    Ladder ladder = ladderOf(4);
    const Diary diary = diaryOf(QStringLiteral("g g g g g"));
    ladder.from = firstDay.addDays(2);
    const LadderReplay replayed = replay(ladder, diary.log, {}, firstDay.addDays(3));
    ASSERT_EQ(replayed.days.size(), 2);
    EXPECT_EQ(replayed.days[0].day, firstDay.addDays(2));
    EXPECT_EQ(replayed.goodDays, 2);
}

TEST_F(LadderMachineTest, aReplayThatStartsStoppedWaitsForADecision) {
    Ladder ladder = ladderOf(4);
    ladder.from = firstDay;
    const Diary diary = diaryOf(QStringLiteral(". g g g g"));
    const LadderReplay stopped = replay(ladder, diary.log, {}, diary.today, {true});
    ASSERT_EQ(stopped.days.size(), 5); // from the ladder's first day on
    for (const LadderDay& day : stopped.days)
        EXPECT_EQ(day.rule, 1);
    EXPECT_EQ(stopped.state, LadderState::Stopped);
    EXPECT_EQ(replay(ladder, {}, {}, firstDay.addDays(-1), {true}).state, LadderState::Stopped);
    const LadderReplay resumed =
        replay(ladder, diary.log, {{{}, {}, firstDay.addDays(2), 1, QStringLiteral("a")}},
               diary.today, {true});
    EXPECT_EQ(resumed.days[1].rule, 1);
    EXPECT_EQ(resumed.days[2].rule, 8);
    EXPECT_EQ(resumed.rung, 2); // three good days on rung 1
    EXPECT_EQ(resumed.state, LadderState::Climbing);
}

TEST_F(LadderMachineTest, emptyLogGivesNoDaysAndTheFirstRung) {
    const LadderReplay replayed =
        replay(ladderOf(3), {}, {{{}, {}, firstDay, 2, QStringLiteral("a")}}, firstDay);
    EXPECT_TRUE(replayed.days.isEmpty());
    EXPECT_EQ(replayed.rung, 0);
    EXPECT_EQ(replayed.state, LadderState::Climbing);
    EXPECT_EQ(replay(ladderOf(1), {}, {}, firstDay).state, LadderState::AtTarget);
}

TEST_F(LadderMachineTest, notANumberIsNoGoodDay) {
    const QList<LogDay> log{
        {firstDay, Volume::fromMillilitres(std::numeric_limits<double>::quiet_NaN()), {}, false}};
    EXPECT_EQ(replay(ladderOf(2), log, {}, firstDay).days[0].rule, 6);
}

TEST_F(LadderMachineTest, refusesALadderThatIsNone) {
    EXPECT_THROW(replay(Ladder{}, {}, {}, firstDay), std::invalid_argument);
}

} // namespace
} // namespace ladlework::intake
