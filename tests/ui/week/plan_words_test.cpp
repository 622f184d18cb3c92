#include "ui/week/plan_words.h"

#include "ui/shared/family_workbook.h"
#include "ui/week/small_week.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class PlanWordsTest : public ::testing::Test {
protected:
    PlanWordsTest() : m_book(m_family.casebook()) {
        m_plan.family = m_family.family;
        m_plan.start = FamilyWorkbook::monday();
    }
    FamilyWorkbook m_family;
    std::shared_ptr<const casebook::Casebook> m_book;
    week::WeekPlan m_plan;
};

} // namespace

TEST_F(PlanWordsTest, LevelsAreNamedFromTheLast) {
    const QStringList names{QStringLiteral("room for everything"), QStringLiteral("nobody short"),
                            QStringLiteral("nothing spoilt"),      QStringLiteral("no meat spoilt"),
                            QStringLiteral("fewest cookings"),     QStringLiteral("least work"),
                            QStringLiteral("least cost"),          QStringLiteral("most variety")};
    for (int level = 0; level < 8; ++level)
        EXPECT_EQ(levelWords({level, 8, 0, 0}), names.at(level));
    for (int level = 0; level < 7; ++level)
        EXPECT_EQ(levelWords({level, 7, 0, 0}), names.at(level + 1)) << "the rooms hold anything";
}

TEST_F(PlanWordsTest, ProgressSaysBestAndBound) {
    const QString words = progressWords(*m_book, {3, 7, 5, 4});
    EXPECT_TRUE(words.contains(QStringLiteral("fewest cookings (4 of 7)"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("Best so far 5 cookings")));
    EXPECT_TRUE(words.contains(QStringLiteral("no plan is below 4 cookings")));
    EXPECT_TRUE(
        progressWords(*m_book, {0, 7, 236.588, 0}).contains(QStringLiteral("Best so far 1 cup")))
        << "volumes are told in mL";
    EXPECT_FALSE(progressWords(*m_book, {3, 7, 1e300, 4}).contains(QStringLiteral("Best")));
}

TEST_F(PlanWordsTest, ResultSaysWhatIsProvenAndOtherwiseHowFar) {
    const casebook::WeekAhead ahead = smallWeek();
    week::WeekSolution solution = week::solveWeek(ahead.problem);
    const QString proven = resultWords(*m_book, ahead.problem, solution);
    EXPECT_EQ(proven, QStringLiteral("Proven: no week can be better. Nobody is short, nothing "
                                     "spoils, 2 cookings, 1 h 20 min of work."))
        << proven.toStdString();
    solution.gap = 0.125;
    const QString cut = resultWords(*m_book, ahead.problem, solution);
    EXPECT_FALSE(cut.contains(QStringLiteral("Proven")));
    EXPECT_TRUE(cut.contains(QStringLiteral("13 %"))) << cut.toStdString();
}

TEST_F(PlanWordsTest, ShortWeekNamesWhoAndTheWaysOut) {
    casebook::WeekAhead ahead = smallWeek();
    ahead.problem.freeTimes.resize(1);
    const week::WeekSolution solution = week::solveWeek(ahead.problem);
    EXPECT_TRUE(resultWords(*m_book, ahead.problem, solution)
                    .contains(QStringLiteral("Short: Ana by 6 cups")))
        << resultWords(*m_book, ahead.problem, solution).toStdString();
    const QList<PlanHint> found = hints(*m_book, ahead, week::waysOut(ahead.problem, solution));
    ASSERT_FALSE(found.isEmpty());
    for (const PlanHint& hint : found) {
        EXPECT_FALSE(hint.what.isEmpty());
        EXPECT_FALSE(hint.wouldHelp.isEmpty());
        EXPECT_FALSE(hint.screen.isEmpty());
    }
    EXPECT_EQ(found.first().screen, QStringLiteral("hours"));
}

TEST_F(PlanWordsTest, EachObstacleIsASentenceWithAWayToMendIt) {
    const casebook::WeekAhead good = smallWeek();
    EXPECT_EQ(obstacle(*m_book, m_plan, good), std::nullopt);
    struct Case {
        const char* what;
        const char* screen;
        std::function<void(casebook::WeekAhead&)> spoil;
    };
    const Case cases[] = {
        {"no members", "members",
         [](auto& ahead) {
             ahead.members.clear();
         }},
        {"Nobody in this family drinks", "members",
         [](auto& ahead) {
             ahead.problem.drinkers[0].perDay.assign(7, quantity::Volume());
         }},
        {"None of the pots can be planned", "pots",
         [](auto& ahead) {
             ahead.problem.pots.clear();
             ahead.unfit = {{PotId{1}, QStringLiteral("too big for its vessel")}};
         }},
        {"may have any of the pots", "pots",
         [](auto& ahead) {
             ahead.problem.pots[0].may = {false};
         }},
        {"not told when it is free", "members",
         [](auto& ahead) {
             ahead.problem.freeTimes.clear();
         }},
    };
    for (const Case& one : cases) {
        casebook::WeekAhead ahead = good;
        one.spoil(ahead);
        const std::optional<PlanHint> why = obstacle(*m_book, m_plan, ahead);
        ASSERT_TRUE(why) << one.what;
        EXPECT_TRUE(why->what.contains(QString::fromUtf8(one.what))) << why->what.toStdString();
        EXPECT_FALSE(why->wouldHelp.isEmpty());
        EXPECT_EQ(why->screen, QString::fromUtf8(one.screen)) << one.what;
    }
    casebook::WeekAhead locked = good;
    locked.problem.freeTimes.clear();
    for (int day = 0; day < 7; ++day)
        m_plan.lockedDays << good.start.addDays(day);
    EXPECT_TRUE(obstacle(*m_book, m_plan, locked)->what.contains(QStringLiteral("locked")));
}

TEST_F(PlanWordsTest, NoRoomAtAllIsSaid) {
    casebook::WeekAhead ahead = smallWeek();
    ahead.problem.fridgeRoom = {};
    ahead.unfit = {{m_family.beef, QStringLiteral("It boils over.")}};
    const QList<PlanHint> found = hints(*m_book, ahead, {});
    ASSERT_EQ(found.size(), 2);
    EXPECT_TRUE(found.first().what.contains(QStringLiteral("no room")));
    EXPECT_EQ(found.last().what, QStringLiteral("Beef shank was left out."));
    EXPECT_EQ(found.last().wouldHelp, QStringLiteral("It boils over."));
    ahead.unfit << casebook::UnfitPot{m_family.chicken, QStringLiteral("It boils dry.")};
    EXPECT_EQ(hints(*m_book, ahead, {}).last().what,
              QStringLiteral("2 pots were left out: Beef shank and Chicken legs."));
}

} // namespace ladlework::ui
