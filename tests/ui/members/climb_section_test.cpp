#include "ui/members/climb_section.h"

#include "ui/members/members_screen.h"
#include "ui/shared/by_name.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/text_field.h"

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
    EXPECT_EQ(m_family.desk().told.size(), 1);
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
    EXPECT_EQ(m_family.desk().told.size(), 1);
    type(rungs, QStringLiteral("1 cup, 1 tsp"));
    EXPECT_EQ(m_family.desk().told.size(), 2);
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
    EXPECT_EQ(m_family.desk().told.size(), 1);
    EXPECT_EQ(mild->value(), 2);
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
