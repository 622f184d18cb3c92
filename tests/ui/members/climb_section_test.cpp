#include "ui/members/climb_section.h"

#include "ui/members/members_screen.h"
#include "ui/members/rung_stairs.h"
#include "ui/shared/by_name.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Volume;

namespace {

class ClimbSectionTest : public ::testing::Test {
protected:
    ClimbSectionTest() : m_screen(m_family.context(), nullptr) {
        // The eldest is the member that a screen opens on.
        people::Member member;
        member.family = m_family.family;
        member.name = QStringLiteral("Flo Hale");
        member.birth = QDate(1950, 1, 1);
        const Outcome added = m_family.workbook().act(
            QStringLiteral("Added Flo Hale"), [&](store::Action& action) -> Outcome {
                const auto id = m_family.workbook().families().addMember(action, member);
                if (!id)
                    return passOn(id);
                m_flo = *id;
                return {};
            });
        EXPECT_TRUE(added);
        m_family.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] casebook::Standing flo() { return *m_family.casebook()->standing(m_flo); }
    [[nodiscard]] QString lastSentence() {
        return m_family.workbook().history().nextUndo()->sentence;
    }
    [[nodiscard]] qint64 lastAction() { return m_family.workbook().history().nextUndo()->id; }
    void type(const QString& name, const QString& text) {
        auto* edit = byName<QLineEdit>(m_screen, name);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    void press(const QString& text) { byText<QPushButton>(m_screen, text)->click(); }

    FamilyWorkbook m_family;
    MemberId m_flo;
    MembersScreen m_screen;
};

const auto low = QStringLiteral("Low end of the daily target");
const auto high = QStringLiteral("High end of the daily target");
const auto start = QStringLiteral("First amount of the ladder");
const auto rungs = QStringLiteral("Rungs of the ladder, separated by commas");

} // namespace

TEST_F(ClimbSectionTest, UsualTargetIsShownAndTakenByAButton) {
    EXPECT_EQ(byName<QLineEdit>(m_screen, low)->text(), QStringLiteral("4 cups"));
    EXPECT_FALSE(flo().target) << "shown is not set";
    press(QStringLiteral("Set this target"));
    ASSERT_TRUE(flo().target);
    EXPECT_EQ(flo().target->low, Volume::fromCups(4));
    EXPECT_EQ(flo().target->high, Volume::fromCups(6));
    EXPECT_EQ(lastSentence(), QStringLiteral("Set Flo Hale's target to 4 cups to 6 cups a day"));
}

TEST_F(ClimbSectionTest, TargetIsTyped) {
    type(low, QStringLiteral("2 cups"));
    ASSERT_TRUE(flo().target);
    EXPECT_EQ(flo().target->low, Volume::fromCups(2));
    EXPECT_EQ(flo().target->high, Volume::fromCups(6));
    const qint64 first = lastAction();
    type(high, QStringLiteral("3"));
    EXPECT_EQ(flo().target->high, Volume::fromCups(3));
    EXPECT_EQ(lastAction(), first + 1) << "one action";
    // The low end above the high end moves the range up; a high end below the low end is refused.
    type(low, QStringLiteral("4"));
    EXPECT_EQ(flo().target->high, Volume::fromCups(4));
    type(high, QStringLiteral("1"));
    EXPECT_FALSE(problemIn(m_screen).isEmpty());
    EXPECT_EQ(flo().target->high, Volume::fromCups(4));
    EXPECT_EQ(byName<QLineEdit>(m_screen, high)->text(), QStringLiteral("4 cups"));
}

TEST_F(ClimbSectionTest, WalkingThroughTheFieldsSetsNothing) {
    const qint64 before = lastAction();
    byName<QLineEdit>(m_screen, low)->setFocus();
    for (int i = 0; i < 12; ++i)
        QTest::keyClick(m_screen.focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(lastAction(), before);
    EXPECT_FALSE(flo().target);
}

TEST_F(ClimbSectionTest, RungsAreLaidOutFromTheStart) {
    EXPECT_FALSE(byText<QPushButton>(m_screen, QStringLiteral("Lay out the rungs"))->isEnabled());
    press(QStringLiteral("Set this target"));
    type(start, QStringLiteral("1 tbsp")); // Enter lays out the first ladder
    ASSERT_TRUE(flo().ladder);
    EXPECT_EQ(flo().ladder->rungs.first(), Volume::fromTablespoons(1));
    EXPECT_EQ(flo().ladder->rungs.last(), Volume::fromCups(4));
    EXPECT_EQ(flo().ladder->from, FamilyWorkbook::today());
    EXPECT_EQ(lastSentence(), QStringLiteral("Laid out Flo Hale's ladder from 1 tbsp to 4 cups"));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_FALSE(flo().ladder);
}

TEST_F(ClimbSectionTest, RungsAreTyped) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    type(rungs, QStringLiteral("1 tsp, 1/4 cup, 1 cup, 4 cups"));
    ASSERT_EQ(flo().ladder->rungs.size(), 4);
    EXPECT_EQ(flo().ladder->rungs.at(1), Volume::fromCups(0.25));
    // A rung that cannot be read, or one that goes down, is told and put back.
    type(rungs, QStringLiteral("1 tsp, a bit"));
    EXPECT_TRUE(problemIn(m_screen).contains(QStringLiteral("a bit")));
    type(rungs, QStringLiteral("1 cup, 1 tsp"));
    EXPECT_EQ(problemIn(m_screen),
              QStringLiteral("Each rung must be more than the one before it."));
    QCoreApplication::processEvents();
    auto* typed = byName<QLineEdit>(m_screen, rungs);
    for (ProblemLine* line : typed->parentWidget()->findChildren<ProblemLine*>())
        EXPECT_LT(line->y() - typed->geometry().bottom(), 2 * typed->height()) << "by the field";
    EXPECT_TRUE(m_family.desk().told.isEmpty()) << "beside the field, in no box";
    EXPECT_EQ(flo().ladder->rungs.size(), 4);
    EXPECT_EQ(byName<QLineEdit>(m_screen, rungs)->text(),
              QStringLiteral("1 tsp, ¼ cup, 1 cup, 4 cups"));
}

TEST_F(ClimbSectionTest, ARungWhoseWordsStandKeepsItsStoredAmount) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    intake::Ladder ladder = *flo().ladder;
    ladder.rungs = {Volume::fromMillilitres(5.2), Volume::fromMillilitres(61.3),
                    Volume::fromMillilitres(241.9), Volume::fromMillilitres(961.7)};
    ASSERT_TRUE(
        m_family.workbook().act(QStringLiteral("Changed rungs"), [&](store::Action& action) {
            return m_family.workbook().climbs().changeLadder(action, ladder);
        }));
    QStringList words = byName<QLineEdit>(m_screen, rungs)->text().split(QStringLiteral(", "));
    ASSERT_EQ(words.size(), 4);
    words[2] = QStringLiteral("2 cups");
    type(rungs, words.join(QStringLiteral(", ")));
    ladder.rungs[2] = Volume::fromCups(2);
    EXPECT_EQ(flo().ladder->rungs, ladder.rungs);
}

TEST_F(ClimbSectionTest, WhileStoppedTheDecisionComesFirst) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    intake::Reaction reaction;
    reaction.member = m_flo;
    reaction.day = FamilyWorkbook::today();
    reaction.symptom = QStringLiteral("odd");
    reaction.strength = 10;
    reaction.redFlag = true;
    ASSERT_TRUE(
        m_family.workbook().act(QStringLiteral("Felt"), [&](store::Action& action) -> Outcome {
            const auto added = m_family.workbook().log().addReaction(action, reaction);
            return added ? Outcome{} : Outcome(passOn(added));
        }));
    ASSERT_EQ(flo().replay.state, intake::LadderState::Stopped);
    const std::vector<QWidget*> held{
        byText<QPushButton>(m_screen, QStringLiteral("Lay out the rungs")),
        byText<QPushButton>(m_screen, QStringLiteral("Start a new ladder today")),
        byName<QLineEdit>(m_screen, rungs), byName<QLineEdit>(m_screen, start)};
    for (const QWidget* part : held) {
        EXPECT_FALSE(part->isEnabled());
        EXPECT_TRUE(part->toolTip().contains(QStringLiteral("decision to go on comes first")));
    }
    EXPECT_FALSE(byName<QSpinBox>(m_screen, QStringLiteral("Mild up to"))->isEnabled());
    ASSERT_TRUE(m_family.workbook().undo());
    for (const QWidget* part : held) {
        EXPECT_TRUE(part->isEnabled());
        EXPECT_FALSE(part->toolTip().contains(QStringLiteral("decision")));
    }
}

TEST_F(ClimbSectionTest, RulesAreSteppedInOneAction) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    const qint64 before = lastAction();
    auto* days = byName<QSpinBox>(m_screen, QStringLiteral("Good days for a step up"));
    days->setFocus();
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(days, Qt::Key_Up);
    EXPECT_EQ(lastAction(), before) << "still stepping";
    QTest::keyClick(days, Qt::Key_Return);
    EXPECT_EQ(flo().ladder->rules.daysToAdvance, 6);
    EXPECT_EQ(lastAction(), before + 1);
    // Strengths out of order are refused with a sentence, and the box goes back.
    auto* mild = byName<QSpinBox>(m_screen, QStringLiteral("Mild up to"));
    mild->setFocus();
    mild->setValue(9);
    QTest::keyClick(mild, Qt::Key_Return);
    EXPECT_FALSE(problemIn(m_screen).isEmpty());
    EXPECT_EQ(mild->value(), 2);
}

TEST_F(ClimbSectionTest, NewLadderStartsWithTheHouseRules) {
    intake::LadderRules house;
    house.daysToAdvance = 5;
    ASSERT_TRUE(m_family.workbook().act(QStringLiteral("House"), [&](store::Action& action) {
        return m_family.workbook().practice().setHouseRules(action, house);
    }));
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    EXPECT_EQ(flo().ladder->rules.daysToAdvance, 5);
}

TEST_F(ClimbSectionTest, RungIsChangedOnTheStaircaseByKeys) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    type(rungs, QStringLiteral("1 tsp, 1 cup, 4 cups"));
    auto* stairs = m_screen.findChild<RungStairs*>();
    ASSERT_TRUE(stairs->isVisible());
    stairs->setFocus();
    const qint64 before = lastAction();
    QTest::keyClick(stairs, Qt::Key_Right);
    EXPECT_TRUE(stairs->accessibleDescription().contains(QStringLiteral("Rung 2 of 3: 1 cup")));
    QTest::keyClick(stairs, Qt::Key_Up); // 1 1/4 cups, by the marks of the measuring cups
    QTest::keyClick(stairs, Qt::Key_Up); // 1 1/3 cups
    EXPECT_EQ(lastAction(), before) << "still stepping";
    QTest::keyClick(stairs, Qt::Key_Return);
    EXPECT_EQ(lastAction(), before + 1);
    EXPECT_NEAR(flo().ladder->rungs.at(1).toCups(), 4.0 / 3, 1e-9);
    // Escape takes a step back; a rung never passes its neighbour.
    QTest::keyClick(stairs, Qt::Key_Down);
    QTest::keyClick(stairs, Qt::Key_Escape);
    QTest::keyClick(stairs, Qt::Key_Return);
    EXPECT_EQ(lastAction(), before + 1);
    for (int i = 0; i < 40; ++i)
        QTest::keyClick(stairs, Qt::Key_Up);
    QTest::keyClick(stairs, Qt::Key_Return);
    EXPECT_LT(flo().ladder->rungs.at(1), Volume::fromCups(4));
    // Delete takes a rung out, Insert puts one between.
    QTest::keyClick(stairs, Qt::Key_Delete);
    EXPECT_EQ(flo().ladder->rungs.size(), 2);
    QTest::keyClick(stairs, Qt::Key_Insert);
    ASSERT_EQ(flo().ladder->rungs.size(), 3);
    EXPECT_GT(flo().ladder->rungs.at(1), flo().ladder->rungs.at(0));
    EXPECT_LT(flo().ladder->rungs.at(1), flo().ladder->rungs.at(2));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(flo().ladder->rungs.size(), 2);
}

TEST_F(ClimbSectionTest, RungIsDragged) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    type(rungs, QStringLiteral("1 tsp, 1 cup, 4 cups"));
    auto* stairs = m_screen.findChild<RungStairs*>();
    const qint64 before = lastAction();
    const QPoint middle(stairs->width() / 2, stairs->height() / 2);
    QTest::mousePress(stairs, Qt::LeftButton, Qt::NoModifier, middle);
    for (int y = 0; y < 12; ++y)
        QTest::mouseMove(stairs, middle + QPoint(0, y));
    EXPECT_EQ(lastAction(), before) << "while it is dragged nothing is kept";
    QTest::mouseRelease(stairs, Qt::LeftButton, Qt::NoModifier, middle + QPoint(0, 12));
    EXPECT_EQ(lastAction(), before + 1);
    const Volume dragged = flo().ladder->rungs.at(1);
    EXPECT_NE(dragged, Volume::fromCups(1));
    EXPECT_EQ(dragged, quantity::roundToKitchen(dragged, quantity::MeasureSystem::UsCustomary))
        << "an amount that the kitchen measures";
}

TEST_F(ClimbSectionTest, TemplateIsKeptAndGivenUpToTheTarget) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    type(rungs, QStringLiteral("1 tsp, 1 cup, 2 cups, 4 cups"));
    type(QStringLiteral("Name of the template"), QStringLiteral("Careful"));
    ASSERT_EQ(m_family.workbook().practice().ladderTemplates().size(), 1);
    EXPECT_EQ(m_family.workbook().practice().ladderTemplates().first().rungs.size(), 4);
    press(QStringLiteral("Keep these rungs as a template"));
    EXPECT_FALSE(problemIn(m_screen).isEmpty()) << "a template has a name";
    type(low, QStringLiteral("1 1/2 cups"));
    auto* templates = byName<QComboBox>(m_screen, QStringLiteral("Start from a template"));
    ASSERT_TRUE(templates->isVisible());
    templates->setCurrentIndex(1);
    Q_EMIT templates->activated(1);
    const QList<Volume> expected{Volume::fromTeaspoons(1), Volume::fromCups(1),
                                 Volume::fromCups(1.5)}; // half a cup more is no leap to fill
    EXPECT_EQ(flo().ladder->rungs, expected) << "the rungs below the target, then the target";
    EXPECT_EQ(templates->currentIndex(), 0);
}

TEST_F(ClimbSectionTest, EasingOffIsPlannedInWords) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    type(rungs, QStringLiteral("1 tsp, 1 cup, 2 cups, 3 cups, 4 cups"));
    type(QStringLiteral("Easing off from"), QStringLiteral("2026-12-01"));
    ASSERT_EQ(flo().target->easeOffFrom, QDate(2026, 12, 1));
    type(QStringLiteral("Amount that stays after easing off"), QStringLiteral("1 cup"));
    EXPECT_EQ(flo().target->easeTo, Volume::fromCups(1));
    auto* every =
        byName<QSpinBox>(m_screen, QStringLiteral("Days between two steps of easing off"));
    every->setFocus();
    every->setValue(14);
    QTest::keyClick(every, Qt::Key_Return);
    EXPECT_EQ(flo().target->easeEveryDays, 14);
    QString words;
    for (const QLabel* label : m_screen.findChildren<QLabel*>())
        if (label->text().startsWith(QStringLiteral("A rung less")))
            words = label->text();
    EXPECT_EQ(words, QStringLiteral("A rung less every 14 days from Tue, Dec 1, 2026: 3 cups, 2 "
                                    "cups, down to 1 cup by Tue, Dec 29, 2026."));
    EXPECT_EQ(m_family.casebook()->records().targets.size(), 4) << "the same target, planned on";
    auto* from = byName<QLineEdit>(m_screen, QStringLiteral("Easing off from"));
    from->setFocus();
    from->selectAll();
    QTest::keyClick(from, Qt::Key_Delete);
    QTest::keyClick(from, Qt::Key_Return);
    EXPECT_EQ(lastSentence(), QStringLiteral("Took back the plan to ease off Flo Hale's stock"));
}

TEST_F(ClimbSectionTest, HoldingLongerCountsOnTheLadderToo) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    auto* hold =
        byName<QSpinBox>(m_screen, QStringLiteral("Good days for which the target is held"));
    hold->setFocus();
    hold->setValue(120);
    QTest::keyClick(hold, Qt::Key_Return);
    EXPECT_EQ(flo().target->holdDays, 120);
    EXPECT_EQ(flo().ladder->rules.holdTargetDays, 120);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(flo().ladder->rules.holdTargetDays, flo().target->holdDays) << "one action";
}

TEST_F(ClimbSectionTest, NewLadderStartsTodayOnTheSameRungs) {
    press(QStringLiteral("Set this target"));
    press(QStringLiteral("Lay out the rungs"));
    const auto laid = flo().ladder->rungs;
    press(QStringLiteral("Start a new ladder today"));
    EXPECT_EQ(flo().ladder->from, FamilyWorkbook::today());
    EXPECT_EQ(flo().ladder->rungs, laid);
}

} // namespace ladlework::ui
