#include "ui/members/members_screen.h"

#include "ui/members/phase_change.h"
#include "ui/members/subject_picker.h"
#include "ui/members/tolerance_model.h"
#include "ui/shared/by_name.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/note_edit.h"
#include "ui/shared/text_field.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class MembersScreenTest : public ::testing::Test {
protected:
    MembersScreenTest() : m_screen(m_family.context(), nullptr) {
        m_family.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QString lastSentence() {
        const auto entry = m_family.workbook().history().nextUndo();
        return entry ? entry->sentence : QString();
    }
    [[nodiscard]] const casebook::Standing* standing(const QString& name) {
        m_book = m_family.casebook();
        for (const casebook::Standing& one : m_book->standings())
            if (one.member.name == name)
                return &one;
        return nullptr;
    }
    void trigger(const QString& text) {
        for (QAction* action : m_screen.actions())
            if (action->text() == text)
                action->trigger();
    }
    void choose(int row) {
        auto* list = byName<QListView>(m_screen, QStringLiteral("Members of the family"));
        list->setCurrentIndex(list->model()->index(row, 0));
    }
    void addByKeys(const QString& name, const QString& birth) {
        trigger(QStringLiteral("Add a member"));
        auto* field = byName<TextField>(m_screen, QStringLiteral("Name of the new member"));
        EXPECT_TRUE(field->hasFocus());
        QTest::keyClicks(field, name);
        QTest::keyClick(field, Qt::Key_Return);
        auto* born = byName<DayEdit>(m_screen, QStringLiteral("Birth date of the new member"));
        EXPECT_TRUE(born->hasFocus()) << "Enter goes on to the birth date";
        QTest::keyClicks(born, birth);
        QTest::keyClick(born, Qt::Key_Return);
    }
    template <class Edit>
    void type(const QString& name, const QString& text) {
        auto* edit = byName<Edit>(m_screen, name);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
    }

    FamilyWorkbook m_family;
    MembersScreen m_screen;
    std::shared_ptr<const casebook::Casebook> m_book;
};

} // namespace

TEST_F(MembersScreenTest, MemberIsAddedByKeys) {
    addByKeys(QStringLiteral("Dot Hale"), QStringLiteral("2020-03-04"));
    const casebook::Standing* dot = standing(QStringLiteral("Dot Hale"));
    ASSERT_NE(dot, nullptr);
    EXPECT_EQ(dot->member.birth, QDate(2020, 3, 4));
    EXPECT_EQ(lastSentence(), QStringLiteral("Added Dot Hale"));
    EXPECT_TRUE(
        byName<QLineEdit>(m_screen, QStringLiteral("Low end of the daily target"))->hasFocus())
        << "the target comes next";
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(standing(QStringLiteral("Dot Hale")), nullptr);
}

TEST_F(MembersScreenTest, InfantIsAddedWithoutATarget) {
    addByKeys(QStringLiteral("Eli Hale"), QStringLiteral("2026-09-01"));
    ASSERT_NE(standing(QStringLiteral("Eli Hale")), nullptr);
    EXPECT_FALSE(
        byName<QLineEdit>(m_screen, QStringLiteral("Low end of the daily target"))->isVisible());
    ASSERT_FALSE(m_screen.findings().isEmpty());
    EXPECT_EQ(m_screen.findings().first().severity, Finding::Severity::Stop);
}

TEST_F(MembersScreenTest, BirthInTheFutureIsRefusedInWords) {
    addByKeys(QStringLiteral("Dot Hale"), QStringLiteral("2026-11-05"));
    EXPECT_EQ(standing(QStringLiteral("Dot Hale")), nullptr);
    auto* born = byName<DayEdit>(m_screen, QStringLiteral("Birth date of the new member"));
    EXPECT_FALSE(born->isGood());
    EXPECT_TRUE(born->problemSentence().contains(QStringLiteral("Wed, Nov 4, 2026")))
        << born->problemSentence().toStdString();
    // Without a birth date the record is refused as well, with a sentence on the panel.
    QTest::keyClick(born, Qt::Key_Escape);
    QTest::keyClick(born, Qt::Key_Return);
    EXPECT_FALSE(problemIn(m_screen).isEmpty());
    EXPECT_TRUE(m_family.desk().told.isEmpty());
    EXPECT_EQ(standing(QStringLiteral("Dot Hale")), nullptr);
}

TEST_F(MembersScreenTest, EscapeLeavesTheAddPanel) {
    trigger(QStringLiteral("Add a member"));
    auto* field = byName<TextField>(m_screen, QStringLiteral("Name of the new member"));
    QTest::keyClick(field, Qt::Key_Escape);
    EXPECT_FALSE(field->isVisible());
}

TEST_F(MembersScreenTest, RenamingKeepsFocusAndUndoes) {
    auto* name = m_screen.findChildren<TextField*>().first();
    for (TextField* field : m_screen.findChildren<TextField*>())
        if (field->text() == QStringLiteral("Ana Hale"))
            name = field;
    ASSERT_EQ(name->text(), QStringLiteral("Ana Hale"));
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Anna Hale"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_NE(standing(QStringLiteral("Anna Hale")), nullptr);
    EXPECT_TRUE(name->hasFocus());
    EXPECT_EQ(lastSentence(), QStringLiteral("Renamed Ana Hale to Anna Hale"));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(name->text(), QStringLiteral("Ana Hale"));
}

TEST_F(MembersScreenTest, BlankNameIsRefusedAndPutBack) {
    for (TextField* field : m_screen.findChildren<TextField*>())
        if (field->text() == QStringLiteral("Ana Hale")) {
            field->setFocus();
            field->clear();
            field->setModified(true);
            QTest::keyClick(field, Qt::Key_Return);
            EXPECT_FALSE(problemIn(m_screen).isEmpty());
            EXPECT_EQ(field->text(), QStringLiteral("Ana Hale"));
            return;
        }
    FAIL() << "no name field";
}

TEST_F(MembersScreenTest, OwnAgeBandNeedsAReason) {
    QComboBox* band = nullptr;
    for (QComboBox* box : m_screen.findChildren<QComboBox*>())
        if (box->itemText(0) == QStringLiteral("by birth date"))
            band = box;
    ASSERT_NE(band, nullptr);
    band->setCurrentIndex(band->findText(QStringLiteral("child")));
    Q_EMIT band->activated(band->currentIndex());
    EXPECT_FALSE(standing(QStringLiteral("Ana Hale"))->member.bandOverride);
    TextField* reason = nullptr;
    for (TextField* field : m_screen.findChildren<TextField*>())
        if (field->placeholderText() == QStringLiteral("needed for another band"))
            reason = field;
    ASSERT_NE(reason, nullptr);
    EXPECT_TRUE(reason->hasFocus());
    QTest::keyClicks(reason, QStringLiteral("very small for her age"));
    QTest::keyClick(reason, Qt::Key_Return);
    ASSERT_TRUE(standing(QStringLiteral("Ana Hale"))->member.bandOverride);
    EXPECT_EQ(standing(QStringLiteral("Ana Hale"))->band, AgeBand::Child);
    // Taking the reason away alone is refused.
    reason->selectAll();
    QTest::keyClick(reason, Qt::Key_Delete);
    QTest::keyClick(reason, Qt::Key_Return);
    EXPECT_FALSE(problemIn(m_screen).isEmpty());
    EXPECT_EQ(reason->text(), QStringLiteral("very small for her age"));
}

TEST_F(MembersScreenTest, ToleranceNoteIsAddedAndTakenOut) {
    trigger(QStringLiteral("Write a tolerance note"));
    auto* subject = m_screen.findChild<SubjectPicker*>();
    EXPECT_TRUE(subject->hasFocus() || subject->lineEdit()->hasFocus());
    subject->setEditText(QStringLiteral("celery"));
    auto* reason = byName<TextField>(m_screen, QStringLiteral("Why"));
    QTest::keyClicks(reason, QStringLiteral("an itch in October"));
    QTest::keyClick(reason, Qt::Key_Return);
    ASSERT_EQ(standing(QStringLiteral("Ana Hale"))->tolerances.size(), 1);
    EXPECT_EQ(lastSentence(), QStringLiteral("Noted celery for Ana Hale: avoid"));
    EXPECT_TRUE(reason->text().isEmpty());

    auto* table = byName<QTableView>(m_screen, QStringLiteral("Tolerance notes"));
    EXPECT_TRUE(table->isVisible());
    table->setFocus();
    table->selectRow(0);
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_TRUE(standing(QStringLiteral("Ana Hale"))->tolerances.isEmpty());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(standing(QStringLiteral("Ana Hale"))->tolerances.size(), 1);
}

TEST_F(MembersScreenTest, NoteOnNothingIsRefused) {
    QTest::keyClick(byName<TextField>(m_screen, QStringLiteral("Why")), Qt::Key_Return);
    EXPECT_FALSE(problemIn(m_screen).isEmpty());
    EXPECT_TRUE(standing(QStringLiteral("Ana Hale"))->tolerances.isEmpty());
}

TEST_F(MembersScreenTest, DraftOfANoteDoesNotGoToAnotherMember) {
    m_screen.findChild<SubjectPicker*>()->setEditText(QStringLiteral("celery"));
    auto* reason = byName<TextField>(m_screen, QStringLiteral("Why"));
    QTest::keyClicks(reason, QStringLiteral("an itch"));
    choose(1);
    EXPECT_TRUE(reason->text().isEmpty());
    EXPECT_FALSE(m_screen.findChild<SubjectPicker*>()->subject());
}

TEST_F(MembersScreenTest, CautionIsAddedAndShowsInTheFindings) {
    auto* kind = byName<QComboBox>(m_screen, QStringLiteral("Kind of caution"));
    kind->setCurrentIndex(0);
    auto* detail = byName<TextField>(m_screen, QStringLiteral("Details of the caution"));
    QTest::keyClicks(detail, QStringLiteral("second trimester"));
    QTest::keyClick(detail, Qt::Key_Return);
    ASSERT_EQ(standing(QStringLiteral("Ana Hale"))->cautions.size(), 1);
    ASSERT_FALSE(m_screen.findings().isEmpty());
    EXPECT_EQ(m_screen.findings().last().field, QStringLiteral("cautions"));
    m_screen.showField(QStringLiteral("cautions"));
    auto* list = byName<QListWidget>(m_screen, QStringLiteral("Cautions"));
    EXPECT_TRUE(list->hasFocus());
    QTest::keyClick(list, Qt::Key_Delete);
    EXPECT_TRUE(standing(QStringLiteral("Ana Hale"))->cautions.isEmpty());
}

TEST_F(MembersScreenTest, ChangedVerdictKeepsTheOldNoteAsHistory) {
    choose(2); // Cy: no poultry
    auto* table = byName<QTableView>(m_screen, QStringLiteral("Tolerance notes"));
    ASSERT_EQ(table->model()->rowCount(), 1);
    byText<QPushButton>(m_screen, QStringLiteral("Change the verdict"))->click();
    auto* verdict = byName<QComboBox>(m_screen, QStringLiteral("How it is taken"));
    EXPECT_TRUE(verdict->hasFocus());
    verdict->setCurrentIndex(verdict->findText(QStringLiteral("small amounts")));
    auto* reason = byName<TextField>(m_screen, QStringLiteral("Why"));
    reason->setFocus();
    QTest::keyClicks(reason, QStringLiteral("bore a spoonful"));
    QTest::keyClick(reason, Qt::Key_Return);
    ASSERT_EQ(standing(QStringLiteral("Cy Hale"))->tolerances.size(), 1);
    EXPECT_EQ(standing(QStringLiteral("Cy Hale"))->tolerances.first().verdict,
              people::ToleranceNote::Verdict::SmallAmounts);
    EXPECT_EQ(m_family.casebook()->records().tolerances.size(), 2) << "the old note stays";
    ASSERT_EQ(table->model()->rowCount(), 1);
    table->setFocus();
    table->selectRow(0);
    QTest::keyClick(table, Qt::Key_Right);
    EXPECT_EQ(table->model()->rowCount(), 2);
    QTest::keyClick(table, Qt::Key_Left);
    EXPECT_EQ(table->model()->rowCount(), 1);
}

TEST_F(MembersScreenTest, RetryIsPlannedAndItsOutcomeWritesTheNote) {
    choose(2); // Cy: no poultry
    byText<QPushButton>(m_screen, QStringLiteral("Plan a retry"))->click();
    auto* start = byName<DayEdit>(m_screen, QStringLiteral("First day of the retry"));
    ASSERT_TRUE(start->hasFocus());
    type<DayEdit>(QStringLiteral("First day of the retry"), QStringLiteral("2026-11-04"));
    QTest::keyClick(start, Qt::Key_Tab);
    type<QLineEdit>(QStringLiteral("Amounts of the steps, separated by commas"),
                    QStringLiteral("1 tsp, 1 tbsp"));
    byText<QPushButton>(m_screen, QStringLiteral("Plan the retry"))->click();
    auto plans = m_family.casebook()->records().retryPlans;
    ASSERT_EQ(plans.size(), 1);
    EXPECT_EQ(plans.first().start, FamilyWorkbook::today());
    EXPECT_EQ(plans.first().steps.size(), 2);
    EXPECT_EQ(lastSentence(), QStringLiteral("Planned a retry of all poultry for Cy Hale"));
    EXPECT_FALSE(start->isVisible());
    EXPECT_TRUE(hasCode(m_family.casebook()->attention(), u"retry-step-due"));
    // Borne: the note says small amounts, in the same action.
    auto* seen = byName<QLineEdit>(m_screen, QStringLiteral("What was seen in the retry"));
    ASSERT_TRUE(seen->isVisible());
    QTest::keyClicks(seen, QStringLiteral("nothing at all"));
    QTest::keyClick(seen, Qt::Key_Return);
    plans = m_family.casebook()->records().retryPlans;
    EXPECT_EQ(plans.first().outcome, people::RetryPlan::Ending::Borne);
    EXPECT_EQ(standing(QStringLiteral("Cy Hale"))->tolerances.first().verdict,
              people::ToleranceNote::Verdict::SmallAmounts);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(m_family.casebook()->records().retryPlans.first().outcome,
              people::RetryPlan::Ending::Open);
    EXPECT_EQ(standing(QStringLiteral("Cy Hale"))->tolerances.first().verdict,
              people::ToleranceNote::Verdict::Avoid);
}

TEST_F(MembersScreenTest, ChangedVerdictCarriesTheAllergyOver) {
    choose(2);
    people::ToleranceNote allergy = standing(QStringLiteral("Cy Hale"))->tolerances.first();
    allergy.allergy = true;
    allergy.noted = FamilyWorkbook::today();
    ASSERT_TRUE(
        m_family.workbook().act(QStringLiteral("Noted"), [&](store::Action& action) -> Outcome {
            const auto added = m_family.workbook().families().addTolerance(action, allergy);
            return added ? Outcome{} : Outcome(passOn(added));
        }));
    auto* change = byText<QPushButton>(m_screen, QStringLiteral("Change the verdict"));
    auto* tick = byText<QCheckBox>(m_screen, QStringLiteral("Allergy or severe reaction"));
    auto* reason = byName<TextField>(m_screen, QStringLiteral("Why"));
    const auto writeReason = [reason] {
        reason->setFocus();
        QTest::keyClicks(reason, QStringLiteral("hives again"));
        QTest::keyClick(reason, Qt::Key_Return);
    };
    change->click();
    EXPECT_TRUE(tick->isChecked());
    EXPECT_TRUE(tick->hasFocus());
    writeReason();
    EXPECT_EQ(m_family.casebook()->records().tolerances.size(), 3);
    EXPECT_TRUE(m_family.casebook()->records().tolerances.last().allergy);
    // A plain avoid, ticked off by hand, takes the allergy from no pot, and the tick comes again.
    change->click();
    tick->click();
    ASSERT_FALSE(tick->isChecked());
    writeReason();
    EXPECT_FALSE(m_family.casebook()->records().tolerances.last().allergy);
    EXPECT_TRUE(standing(QStringLiteral("Cy Hale"))->tolerances.first().allergy);
    auto* table = byName<QTableView>(m_screen, QStringLiteral("Tolerance notes"));
    EXPECT_EQ(table->model()->index(0, ToleranceModel::VerdictColumn).data().toString(),
              QStringLiteral("Avoid: allergy"));
    table->selectRow(0);
    change->click();
    EXPECT_TRUE(tick->isChecked());
    // A note without an allergy brings no tick.
    choose(0);
    EXPECT_FALSE(tick->isChecked());
}

TEST_F(MembersScreenTest, AllergyOffersNoRetry) {
    choose(2);
    people::ToleranceNote allergy = standing(QStringLiteral("Cy Hale"))->tolerances.first();
    allergy.allergy = true;
    allergy.noted = QDate(2026, 9, 1); // an older note, and it still counts
    ASSERT_TRUE(
        m_family.workbook().act(QStringLiteral("Noted"), [&](store::Action& action) -> Outcome {
            const auto added = m_family.workbook().families().addTolerance(action, allergy);
            return added ? Outcome{} : Outcome(passOn(added));
        }));
    byText<QPushButton>(m_screen, QStringLiteral("Plan a retry"))->click();
    EXPECT_TRUE(problemIn(m_screen).contains(QStringLiteral("clinician")));
    EXPECT_FALSE(byName<DayEdit>(m_screen, QStringLiteral("First day of the retry"))->isVisible());
    // Nor can a day for it be written into a note.
    byText<QPushButton>(m_screen, QStringLiteral("Change the verdict"))->click();
    byText<QCheckBox>(m_screen, QStringLiteral("Allergy or severe reaction"))->click();
    auto* verdict = byName<QComboBox>(m_screen, QStringLiteral("How it is taken"));
    verdict->setCurrentIndex(
        verdict->findData(people::verdictId(people::ToleranceNote::Verdict::TryAgainOn)));
    type<DayEdit>(QStringLiteral("Try again on"), QStringLiteral("2026-12-01"));
    auto* reason = byName<TextField>(m_screen, QStringLiteral("Why"));
    reason->setFocus();
    QTest::keyClicks(reason, QStringLiteral("hope"));
    QTest::keyClick(reason, Qt::Key_Return);
    EXPECT_EQ(m_family.casebook()->records().tolerances.size(), 2);
}

TEST_F(MembersScreenTest, PhaseShowsWhatChangesBeforeItIsMade) {
    const auto phases = m_family.casebook()->records().phases;
    auto* box = [this] {
        for (QComboBox* each : m_screen.findChildren<QComboBox*>())
            if (each->itemText(0) == QStringLiteral("no phase yet"))
                return each;
        throw std::runtime_error("no phases");
    }();
    const auto pick = [&](int index) {
        box->setCurrentIndex(index);
        Q_EMIT box->activated(index);
    };
    pick(1); // the first phase is set at once
    EXPECT_EQ(standing(QStringLiteral("Ana Hale"))->member.phase, phases.at(0).id);
    pick(3);
    EXPECT_EQ(standing(QStringLiteral("Ana Hale"))->member.phase, phases.at(0).id)
        << "not before it is said";
    auto* change = m_screen.findChild<PhaseChange*>();
    ASSERT_TRUE(change->isVisible());
    QTest::keyClick(change, Qt::Key_Escape);
    EXPECT_FALSE(change->isVisible());
    EXPECT_EQ(box->currentIndex(), 1);
    pick(3);
    byText<QPushButton>(m_screen, QStringLiteral("Move Ana Hale to %1").arg(phases.at(2).name))
        ->click();
    EXPECT_EQ(standing(QStringLiteral("Ana Hale"))->member.phase, phases.at(2).id);
    EXPECT_FALSE(change->isVisible());
}

TEST_F(MembersScreenTest, RemovedMemberComesBackWithUndo) {
    choose(1);
    trigger(QStringLiteral("Remove the chosen member"));
    EXPECT_EQ(standing(QStringLiteral("Bo Hale")), nullptr);
    ASSERT_TRUE(m_family.workbook().undo());
    ASSERT_NE(standing(QStringLiteral("Bo Hale")), nullptr);
    EXPECT_TRUE(standing(QStringLiteral("Bo Hale"))->ladder);
}

TEST_F(MembersScreenTest, StopLeadsToTheDecision) {
    QSignalSpy wanted(&m_screen, &FamilyScreen::screenWanted);
    m_screen.showField(QStringLiteral("decision"));
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("progress"));
}

} // namespace ladlework::ui
