#include "ui/log/drink_source.h"
#include "ui/log/drinks_model.h"
#include "ui/log/log_day_model.h"
#include "ui/log/reactions_model.h"
#include "ui/shared/family_workbook.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Volume;

namespace {

using Tester = QAbstractItemModelTester;

class LogModelsTest : public ::testing::Test {
protected:
    LogModelsTest() : m_ana(m_family.casebook()->standings().front().member.id) {}
    IntakeId drank(Volume volume, PotId pot = {}) {
        IntakeId id;
        intake::IntakeEntry entry;
        entry.member = m_ana;
        entry.day = FamilyWorkbook::today();
        entry.drunk = volume;
        entry.pot = pot;
        const Outcome stored = m_family.workbook().act(
            QStringLiteral("Entered a drink"), [&](store::Action& action) -> Outcome {
                const auto added = m_family.workbook().log().addEntry(action, entry);
                if (!added)
                    return passOn(added);
                id = *added;
                return {};
            });
        EXPECT_TRUE(stored);
        return id;
    }
    FamilyWorkbook m_family;
    MemberId m_ana;
};

} // namespace

TEST_F(LogModelsTest, DayOfAFamily) {
    LogDayModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.show(m_family.casebook(), FamilyWorkbook::today());
    ASSERT_EQ(model.rowCount(), 3);
    const auto cell = [&](int column) {
        return model.index(0, column).data().toString();
    };
    EXPECT_EQ(cell(LogDayModel::MemberColumn), QStringLiteral("Ana Hale"));
    EXPECT_EQ(cell(LogDayModel::AskedColumn), QStringLiteral("4 cups"));
    EXPECT_TRUE(cell(LogDayModel::DrunkColumn).isEmpty());
    drank(Volume::fromCups(3));
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.show(m_family.casebook(), FamilyWorkbook::today());
    EXPECT_EQ(reset.size(), 0);
    EXPECT_EQ(cell(LogDayModel::DrunkColumn), QStringLiteral("3 cups"));
    EXPECT_TRUE(cell(LogDayModel::DecisionColumn).contains(QStringLiteral("90 %")));
    drank(Volume::fromCups(1));
    model.show(m_family.casebook(), FamilyWorkbook::today());
    EXPECT_EQ(cell(LogDayModel::DrunkColumn), QStringLiteral("4 cups in 2 drinks"));
    model.show(m_family.casebook(), FamilyWorkbook::today().addDays(-1));
    EXPECT_TRUE(cell(LogDayModel::DrunkColumn).isEmpty());
}

TEST_F(LogModelsTest, UntouchedCellSaysNothing) {
    drank(Volume::fromMillilitres(333)); // printed as 1 1/3 or 1 1/2 cups, stored exactly
    LogDayModel model;
    model.show(m_family.casebook(), FamilyWorkbook::today());
    QSignalSpy typed(&model, &LogDayModel::drinkTyped);
    const QModelIndex cell = model.index(0, LogDayModel::DrunkColumn);
    EXPECT_FALSE(model.setData(cell, cell.data(Qt::EditRole), Qt::EditRole));
    EXPECT_EQ(typed.size(), 0);
    EXPECT_TRUE(model.setData(cell, QStringLiteral("1"), Qt::EditRole));
    EXPECT_EQ(typed.size(), 1);
    EXPECT_FALSE(
        model.setData(model.index(0, LogDayModel::AskedColumn), QStringLiteral("1"), Qt::EditRole));
}

TEST_F(LogModelsTest, DrinksOfADay) {
    drank(Volume::fromCups(3));
    drank(Volume{}, m_family.chicken);
    DrinksModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.show(m_family.casebook(), m_ana, FamilyWorkbook::today());
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(1, DrinksModel::AmountColumn).data().toString(),
              QStringLiteral("missed"));
    EXPECT_EQ(model.index(1, DrinksModel::SourceColumn).data().toString(),
              QStringLiteral("Chicken legs"));
    QSignalSpy changed(&model, &DrinksModel::entryChanged);
    const QModelIndex source = model.index(0, DrinksModel::SourceColumn);
    EXPECT_TRUE(model.setData(source, 1, Qt::EditRole)); // the first after "not said"
    ASSERT_EQ(changed.size(), 1);
    EXPECT_EQ(changed.first().first().value<intake::IntakeEntry>().pot,
              drinkSources(*m_family.casebook()).at(1).pot);
    EXPECT_FALSE(model.setData(source, 0, Qt::EditRole)) << "not said it is already";
}

TEST_F(LogModelsTest, ReactionsOfADay) {
    intake::Reaction reaction;
    reaction.id = ReactionId{1};
    reaction.member = m_ana;
    reaction.day = FamilyWorkbook::today();
    reaction.symptom = QStringLiteral("bloating");
    reaction.strength = 3;
    ReactionsModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    casebook::FamilyRecords records = m_family.casebook()->records();
    records.reactions = {reaction};
    model.show(records, m_ana, FamilyWorkbook::today());
    ASSERT_EQ(model.rowCount(), 1);
    QSignalSpy changed(&model, &ReactionsModel::reactionChanged);
    QSignalSpy refused(&model, &ReactionsModel::refused);
    const auto type = [&](int column, const QString& text) {
        return model.setData(model.index(0, column), text, Qt::EditRole);
    };
    EXPECT_TRUE(type(ReactionsModel::BeganColumn, QStringLiteral("14:30")));
    EXPECT_EQ(changed.takeLast().first().value<intake::Reaction>().startMinute, 14 * 60 + 30);
    EXPECT_TRUE(type(ReactionsModel::LastedColumn, QStringLiteral("1 h 30 min")));
    EXPECT_EQ(changed.takeLast().first().value<intake::Reaction>().minutes, 90);
    EXPECT_FALSE(type(ReactionsModel::StrengthColumn, QStringLiteral("11")));
    EXPECT_FALSE(type(ReactionsModel::StrengthColumn, QStringLiteral("some")));
    EXPECT_FALSE(type(ReactionsModel::BeganColumn, QStringLiteral("25:00")));
    EXPECT_FALSE(type(ReactionsModel::LastedColumn, QStringLiteral("long")));
    EXPECT_EQ(refused.size(), 4);
    EXPECT_EQ(changed.size(), 0);
    EXPECT_FALSE(type(ReactionsModel::SymptomColumn, QStringLiteral("bloating")));
    EXPECT_TRUE(type(ReactionsModel::SymptomColumn, QStringLiteral("nausea")));
    EXPECT_EQ(changed.takeLast().first().value<intake::Reaction>().symptom,
              QStringLiteral("Nausea"))
        << "as the list writes it";
}

} // namespace ladlework::ui
