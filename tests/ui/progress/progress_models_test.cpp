#include "casebook/member_intake.h"
#include "ui/progress/climbing_family.h"
#include "ui/progress/comparison.h"
#include "ui/progress/observation_values.h"
#include "ui/progress/observations_model.h"
#include "ui/progress/patterns_model.h"
#include "ui/progress/reaction_kinds.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using quantity::MeasureSystem;
using quantity::Volume;
using Tester = QAbstractItemModelTester;

intake::Reaction felt(const char* symptom, QDate day, int strength) {
    intake::Reaction reaction;
    reaction.day = day;
    reaction.symptom = QString::fromUtf8(symptom);
    reaction.strength = strength;
    return reaction;
}

/// Ana drinks chicken on even days of October and beef on odd ones; on the even days she feels
/// bloated. Thirty days.
casebook::FamilyRecords alternating(FamilyWorkbook& family) {
    casebook::FamilyRecords records = family.casebook()->records();
    const MemberId ana = records.members.first().id;
    for (int day = 1; day <= 30; ++day) {
        const bool even = day % 2 == 0;
        intake::IntakeEntry entry;
        entry.id = IntakeId{day};
        entry.member = ana;
        entry.day = QDate(2026, 10, day);
        entry.drunk = Volume::fromCups(1);
        entry.pot = even ? family.chicken : family.beef;
        records.entries.append(entry);
        if (!even)
            continue;
        intake::Reaction reaction = felt("bloating", entry.day, 4);
        reaction.member = ana;
        records.reactions.append(reaction);
    }
    return records;
}

} // namespace

TEST(ProgressModelsTest, ReactionsByKind) {
    const QList<ReactionKind> kinds = reactionKinds({felt("Nausea", QDate(2026, 10, 3), 2),
                                                     felt("headache", QDate(2026, 10, 9), 7),
                                                     felt("nausea", QDate(2026, 10, 1), 5)});
    ASSERT_EQ(kinds.size(), 2);
    EXPECT_EQ(kinds.at(0).times, 2);
    EXPECT_EQ(kinds.at(0).strongest, 5);
    EXPECT_EQ(kinds.at(0).first, QDate(2026, 10, 1));
    EXPECT_EQ(kinds.at(0).last, QDate(2026, 10, 3));
    EXPECT_EQ(kinds.at(1).symptom, QStringLiteral("headache"));
    ReactionKindsModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.setKinds(kinds);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(1, ReactionKindsModel::StrongestColumn).data().toInt(), 7);
}

TEST(ProgressModelsTest, PatternsInSoberWords) {
    FamilyWorkbook family;
    const auto book = family.casebook();
    const casebook::Casebook told(alternating(family), book->catalogue(), book->today());
    const MemberId ana = told.records().members.first().id;
    // With no day after it, chicken days are all felt and beef days none.
    const auto patterns = casebook::memberPatterns(told, ana, {0, 3});
    ASSERT_FALSE(patterns.isEmpty());
    PatternsModel model(book->catalogue(), nullptr);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.setPatterns(patterns);
    int chicken = -1;
    int beef = -1;
    for (int row = 0; row < model.rowCount(); ++row) {
        const QString name = model.index(row, PatternsModel::SubjectColumn).data().toString();
        if (name == book->catalogue().nameOf(QStringLiteral("chicken")))
            chicken = row;
        if (name == book->catalogue().nameOf(QStringLiteral("beef")))
            beef = row;
    }
    ASSERT_GE(chicken, 0);
    ASSERT_GE(beef, 0);
    EXPECT_EQ(model.index(chicken, PatternsModel::WithColumn).data().toString(),
              QStringLiteral("15 of 15 days"));
    EXPECT_EQ(model.index(chicken, PatternsModel::WithoutColumn).data().toString(),
              QStringLiteral("0 of 15 days"));
    const QString words = model.index(chicken, PatternsModel::WordsColumn).data().toString();
    EXPECT_TRUE(words.startsWith(QStringLiteral("Worth talking about")));
    EXPECT_TRUE(words.contains(QStringLiteral("does not say what the cause is")));
    EXPECT_EQ(model.index(beef, PatternsModel::WordsColumn).data().toString(),
              QStringLiteral("Nothing stands out."));
    // Three days are too few for a word.
    casebook::FamilyRecords few = told.records();
    few.entries = few.entries.first(3);
    few.reactions = few.reactions.first(1);
    const casebook::Casebook little(few, book->catalogue(), book->today());
    model.setPatterns(casebook::memberPatterns(little, ana, {0, 3}));
    ASSERT_GT(model.rowCount(), 0);
    for (int row = 0; row < model.rowCount(); ++row) {
        EXPECT_EQ(model.index(row, PatternsModel::WordsColumn).data().toString(),
                  QStringLiteral("Not enough days to say."));
        EXPECT_EQ(model.index(row, PatternsModel::RatioColumn).data().toString(),
                  QStringLiteral("–"));
    }
}

TEST(ProgressModelsTest, TotalsKnowThePotAndSayWhatTheyDoNotKnow) {
    FamilyWorkbook family;
    const auto book = family.casebook();
    casebook::FamilyRecords records = alternating(family);
    records.entries[29].pot = {}; // 30 October: nobody knows
    const casebook::Casebook told(records, book->catalogue(), book->today());
    const MemberId ana = records.members.first().id;
    const auto totals = casebook::memberTotals(told, ana, QDate(2026, 10, 29), QDate(2026, 10, 30));
    ASSERT_TRUE(totals);
    EXPECT_EQ(totals->days, 2);
    EXPECT_NEAR(totals->stock.toCups(), 1, 1e-9);
    EXPECT_NEAR(totals->ofUnknownPot.toCups(), 0.5, 1e-9);
    EXPECT_GT(totals->sodiumMg.best, 0);
    EXPECT_FALSE(casebook::memberTotals(told, ana, QDate(2027, 1, 1), QDate(2027, 1, 2)));
}

TEST(ProgressModelsTest, ComparisonSetsEachBesideItsOwnTarget) {
    ClimbingFamily family;
    const auto book = family.workbook.casebook();
    ClimbComparisonModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.show(*book);
    ASSERT_EQ(model.rowCount(), 4);
    int ana = 0;
    while (model.index(ana, 0).data().toString() != QStringLiteral("Ana Hale"))
        ++ana;
    EXPECT_EQ(model.index(ana, ClimbComparisonModel::ShareColumn).data().toString(),
              QStringLiteral("100 %"));
    EXPECT_EQ(model.memberAt(ana), book->records().members.first().id);
    const auto climbs = climbShares(*book);
    EXPECT_EQ(climbs.size(), 3) << "Gil has no target to be held against";
}

TEST(ProgressModelsTest, ValuesAreReadByKindAndMeasures) {
    struct ValueCase {
        const char* text;
        const char* kind;
        MeasureSystem measures;
        std::optional<double> stored;
    };
    // NIST SP 811: a pound is 0.453 592 37 kg.
    for (const ValueCase& expected : std::initializer_list<ValueCase>{
             {"72.4", "weight", MeasureSystem::Metric, 72.4},
             {"72.4 kg", "weight", MeasureSystem::UsCustomary, 72.4},
             {"160", "weight", MeasureSystem::UsCustomary, 72.5748},
             {"160 lb", "weight", MeasureSystem::Metric, 72.5748},
             {"8 lb 4 oz", "weight", MeasureSystem::UsCustomary, 3.74214},
             {"37.2", "temperature", MeasureSystem::Metric, 37.2},
             {"-2", "mood", MeasureSystem::Metric, -2.0},
             {"heavy", "weight", MeasureSystem::Metric, {}},
             {"", "weight", MeasureSystem::Metric, {}},
             {"3 cups", "sleep", MeasureSystem::Metric, {}},
             {"", "sleep", MeasureSystem::Metric, {}}}) {
        SCOPED_TRACE(expected.text);
        const auto value = readObservation(QString::fromUtf8(expected.text),
                                           QString::fromUtf8(expected.kind), expected.measures);
        ASSERT_EQ(value.has_value(), expected.stored.has_value());
        if (value)
            EXPECT_NEAR(*value, *expected.stored, 1e-4);
        else
            EXPECT_FALSE(value.error().sentence.isEmpty());
    }
}

TEST(ProgressModelsTest, ObservationsAreChangedInTheirCells) {
    people::Observation first;
    first.id = ObservationId{1};
    first.day = QDate(2026, 10, 1);
    first.kind = people::weightKind();
    first.unit = QStringLiteral("kg");
    first.value = 70;
    people::Observation second = first;
    second.id = ObservationId{2};
    second.day = QDate(2026, 10, 8);
    second.value = 69;
    ObservationsModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.show({first, second}, MeasureSystem::Metric);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.observationAt(0)->id.value, 2) << "the latest first";
    EXPECT_EQ(model.index(0, ObservationsModel::ValueColumn).data().toString(),
              QStringLiteral("69.0 kg"));
    QSignalSpy changed(&model, &ObservationsModel::observationChanged);
    QSignalSpy refused(&model, &ObservationsModel::refused);
    const QModelIndex value = model.index(0, ObservationsModel::ValueColumn);
    EXPECT_TRUE(model.setData(value, QStringLiteral("68,5 kg"), Qt::EditRole));
    EXPECT_NEAR(changed.takeLast().first().value<people::Observation>().value, 68.5, 1e-9);
    EXPECT_FALSE(model.setData(value, QStringLiteral("slim"), Qt::EditRole));
    EXPECT_EQ(refused.size(), 1);
    EXPECT_FALSE(model.setData(value, value.data(Qt::EditRole), Qt::EditRole)) << "walked through";
    EXPECT_FALSE(model.setData(model.index(0, ObservationsModel::DayColumn),
                               QStringLiteral("today"), Qt::EditRole));
}

} // namespace ladlework::ui
