#include "ui/shell/practice_page.h"

#include "ui/shared/by_name.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/text_field.h"
#include "ui/shared/workbook_fixture.h"
#include "ui/shell/symptoms_model.h"
#include "ui/shell/symptoms_section.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTest>

namespace ladlework::ui {

class PracticePageTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_page = std::make_unique<PracticePage>(*m_context, nullptr);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
    }
    void TearDown() override { m_page.reset(); }
    /// The sentence in sight that says why something was not kept.
    [[nodiscard]] QString problem() const {
        for (const auto* line : m_page->findChildren<ProblemLine*>())
            if (line->isVisible())
                return line->sentence();
        return {};
    }
    std::unique_ptr<PracticePage> m_page;
};

TEST_F(PracticePageTest, everyChangeIsMadeAtOnceAndCanBeUndone) {
    auto* name = m_page->findChildren<TextField*>().first();
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("Kettle Lane"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(m_workbook->practice().practice().name, QStringLiteral("Kettle Lane"));
    EXPECT_EQ(m_workbook->history().nextUndo()->sentence,
              QStringLiteral("Changed the practice's name"));
    auto* days = m_page->findChildren<QSpinBox*>().first();
    days->setValue(2);
    EXPECT_EQ(m_workbook->practice().practice().fridgeDays, 2);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(days->value(), 3);
    EXPECT_TRUE(m_desk.told.isEmpty());
}

TEST_F(PracticePageTest, refrigeratorDaysCannotBeLoosenedBeyondTheChart) {
    auto* days = m_page->findChildren<QSpinBox*>().first();
    // FoodSafety.gov cold storage chart: soups and stews 3 to 4 days.
    days->setValue(9);
    EXPECT_EQ(days->value(), 4);
    EXPECT_EQ(m_workbook->practice().practice().fridgeDays, 4);
}

TEST_F(PracticePageTest, anUnusableEmergencyNumberIsToldAndTakenBack) {
    auto* number = m_page->findChildren<TextField*>().at(2); // after name and practitioner
    ASSERT_EQ(number->placeholderText(), QStringLiteral("the number to dial in an emergency"));
    const QString before = number->text();
    number->setFocus();
    number->selectAll();
    QTest::keyClicks(number, QStringLiteral("ask next door"));
    QTest::keyClick(number, Qt::Key_Return);
    EXPECT_TRUE(m_desk.told.isEmpty()) << "said on the page, in no box";
    EXPECT_FALSE(problem().isEmpty());
    EXPECT_EQ(number->text(), before);
    EXPECT_EQ(m_workbook->practice().practice().emergencyNumber, before);
}

TEST_F(PracticePageTest, TheCurrencyIsASignAndNoPrice) {
    auto* currency = m_page->findChildren<TextField*>().at(3);
    ASSERT_EQ(currency->placeholderText(), QStringLiteral("such as $"));
    const auto type = [currency](const QString& text) {
        currency->setFocus();
        currency->selectAll();
        QTest::keyClicks(currency, text);
        QTest::keyClick(currency, Qt::Key_Return);
    };
    type(QStringLiteral("CHF"));
    EXPECT_EQ(m_workbook->practice().practice().currency, QStringLiteral("CHF"));
    type(QStringLiteral("$4"));
    EXPECT_FALSE(problem().isEmpty());
    EXPECT_EQ(m_workbook->practice().practice().currency, QStringLiteral("CHF"));
}

TEST_F(PracticePageTest, ReactionsAreAddedOrderedAndTakenOffByKeys) {
    auto* table = byName<QTableView>(*m_page, QStringLiteral("Reactions"));
    const int shipped = table->model()->rowCount();
    ASSERT_GT(shipped, 5) << "a new workbook has the ordinary ones";
    auto* name = byName<QLineEdit>(*m_page, QStringLiteral("Name of another reaction"));
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("Shaking spells"));
    QTest::keyClick(name, Qt::Key_Return);
    ASSERT_EQ(table->model()->rowCount(), shipped + 1);
    EXPECT_TRUE(name->text().isEmpty());
    const auto last = [this] {
        return m_workbook->practice().symptoms().last();
    };
    EXPECT_EQ(last().name, QStringLiteral("Shaking spells"));
    EXPECT_FALSE(last().redFlag);
    // Space ticks the red flag.
    table->setFocus();
    table->setCurrentIndex(table->model()->index(shipped, SymptomsModel::RedFlagColumn));
    QTest::keyClick(table, Qt::Key_Space);
    EXPECT_TRUE(last().redFlag);
    // The same name twice is said, not kept.
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("shaking spells"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(table->model()->rowCount(), shipped + 1);
    EXPECT_FALSE(problem().isEmpty());
    // One earlier, and off the list again; the reactions in the log keep their name.
    table->setCurrentIndex(table->model()->index(shipped, 0));
    auto* section = m_page->findChild<SymptomsSection*>();
    byText<QPushButton>(*section, QStringLiteral("Earlier"))->click();
    EXPECT_EQ(m_workbook->practice().symptoms().at(shipped - 1).name,
              QStringLiteral("Shaking spells"));
    EXPECT_EQ(table->currentIndex().row(), shipped - 1) << "the line in hand stays in hand";
    byText<QPushButton>(*section, QStringLiteral("Remove"))->click();
    EXPECT_EQ(table->model()->rowCount(), shipped);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(table->model()->rowCount(), shipped + 1);
}

TEST_F(PracticePageTest, HouseRulesOfLaddersAreStepped) {
    auto* days = byName<QSpinBox>(*m_page, QStringLiteral("Good days for a step up"));
    days->setFocus();
    QTest::keyClick(days, Qt::Key_Up);
    QTest::keyClick(days, Qt::Key_Return);
    EXPECT_EQ(m_workbook->practice().houseRules().daysToAdvance, 4);
    auto* mild = byName<QSpinBox>(*m_page, QStringLiteral("Mild up to"));
    mild->setFocus();
    mild->setValue(9);
    QTest::keyClick(mild, Qt::Key_Return);
    EXPECT_FALSE(problem().isEmpty());
    EXPECT_EQ(mild->value(), 2);
}

TEST_F(PracticePageTest, TemplatesAreTypedOverAndRemoved) {
    intake::LadderTemplate kept;
    kept.name = QStringLiteral("Careful");
    kept.rungs = {quantity::Volume::fromTeaspoons(1), quantity::Volume::fromCups(1)};
    act([&](store::Action& action) -> Outcome {
        const auto added = m_workbook->practice().addLadderTemplate(action, kept);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    auto* table = byName<QTableView>(*m_page, QStringLiteral("Ladder templates"));
    ASSERT_EQ(table->model()->rowCount(), 1);
    const QModelIndex rungs = table->model()->index(0, 1);
    EXPECT_EQ(rungs.data().toString(), QStringLiteral("1 tsp, 1 cup"));
    EXPECT_TRUE(
        table->model()->setData(rungs, QStringLiteral("1 tsp, 1/2 cup, 1 cup"), Qt::EditRole));
    EXPECT_EQ(m_workbook->practice().ladderTemplates().first().rungs.size(), 3);
    EXPECT_FALSE(table->model()->setData(table->model()->index(0, 1), QStringLiteral("a bit"),
                                         Qt::EditRole));
    EXPECT_TRUE(problem().contains(QStringLiteral("a bit")));
    table->setCurrentIndex(table->model()->index(0, 0));
    byText<QPushButton>(*m_page, QStringLiteral("Remove template"))->click();
    EXPECT_TRUE(m_workbook->practice().ladderTemplates().isEmpty());
}

} // namespace ladlework::ui
