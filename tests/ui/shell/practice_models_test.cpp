#include "ui/shared/workbook_fixture.h"
#include "ui/shell/symptoms_model.h"
#include "ui/shell/templates_model.h"

#include <QAbstractItemModelTester>

namespace ladlework::ui {

using Tester = QAbstractItemModelTester;

class PracticeModelsTest : public WorkbookFixture {};

TEST_F(PracticeModelsTest, SymptomsHoldWithTheModelTester) {
    SymptomsModel model(*m_context, nullptr);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    QObject::connect(m_workbook.get(), &store::Workbook::changed, &model, &SymptomsModel::refresh);
    const int shipped = model.rowCount();
    const QModelIndex first = model.index(0, SymptomsModel::NameColumn);
    EXPECT_TRUE(model.setData(first, QStringLiteral("Loose stools"), Qt::EditRole));
    EXPECT_EQ(m_workbook->practice().symptoms().first().name, QStringLiteral("Loose stools"));
    EXPECT_FALSE(model.setData(first, QStringLiteral("Loose stools"), Qt::EditRole));
    EXPECT_FALSE(model.setData(first, QStringLiteral("  "), Qt::EditRole));
    EXPECT_TRUE(model.addSymptom(QStringLiteral("Itchy ears")));
    EXPECT_EQ(model.rowCount(), shipped + 1);
    EXPECT_EQ(model.moveSymptom(0, -1), -1);
    EXPECT_EQ(model.moveSymptom(shipped, 1), -1);
    model.removeSymptom(shipped);
    EXPECT_EQ(model.rowCount(), shipped);
}

TEST_F(PracticeModelsTest, TemplatesHoldWithTheModelTester) {
    TemplatesModel model(*m_context, nullptr);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    QObject::connect(m_workbook.get(), &store::Workbook::changed, &model, &TemplatesModel::refresh);
    EXPECT_EQ(model.rowCount(), 0);
    intake::LadderTemplate kept;
    kept.name = QStringLiteral("Careful");
    kept.rungs = {quantity::Volume::fromMillilitres(5.2), quantity::Volume::fromCups(1)};
    act([&](store::Action& action) -> Outcome {
        const auto added = m_workbook->practice().addLadderTemplate(action, kept);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    ASSERT_EQ(model.rowCount(), 1);
    const QModelIndex rungs = model.index(0, TemplatesModel::RungsColumn);
    const QString more = rungs.data().toString() + QStringLiteral(", 2 cups");
    EXPECT_TRUE(model.setData(rungs, more, Qt::EditRole));
    const auto stored = m_workbook->practice().ladderTemplates().first().rungs;
    ASSERT_EQ(stored.size(), 3);
    EXPECT_EQ(stored.at(0), quantity::Volume::fromMillilitres(5.2)) << "its words were rounded";
}

} // namespace ladlework::ui
