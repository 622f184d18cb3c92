#include "ui/shell/phases_model.h"

#include "ui/shared/workbook_fixture.h"

#include <QAbstractItemModelTester>
#include <QWidget>

namespace ladlework::ui {

class PhasesModelTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_model = new PhasesModel(*m_context, &m_widget);
        m_tester = std::make_unique<QAbstractItemModelTester>(
            m_model, QAbstractItemModelTester::FailureReportingMode::Fatal);
        QObject::connect(m_workbook.get(), &store::Workbook::changed, m_model,
                         &PhasesModel::refresh);
        QObject::connect(m_model, &PhasesModel::said, &m_widget,
                         [this](const QString& sentence) { m_said = sentence; });
    }
    [[nodiscard]] QString name(int row) const { return m_model->index(row, 0).data().toString(); }

    QWidget m_widget;
    QString m_said;
    PhasesModel* m_model = nullptr;
    std::unique_ptr<QAbstractItemModelTester> m_tester;
};

TEST_F(PhasesModelTest, shipsThreePhasesWithTheirRules) {
    ASSERT_EQ(m_model->rowCount(), 3);
    EXPECT_EQ(name(0), QStringLiteral("Opening"));
    EXPECT_EQ(name(2), QStringLiteral("Settled"));
    EXPECT_EQ(m_model->index(0, PhasesModel::BoneBrothColumn).data(Qt::CheckStateRole).toInt(),
              Qt::Unchecked);
}

TEST_F(PhasesModelTest, renamesAndTicksAreActions) {
    EXPECT_TRUE(m_model->setData(m_model->index(0, 0), QStringLiteral("First"), Qt::EditRole));
    EXPECT_EQ(m_workbook->practice().phases().first().name, QStringLiteral("First"));
    EXPECT_TRUE(m_model->setData(m_model->index(0, PhasesModel::GroundPepperColumn), Qt::Checked,
                                 Qt::CheckStateRole));
    EXPECT_TRUE(m_workbook->practice().phases().first().rules.groundPepper);
    ASSERT_TRUE(m_workbook->undo());
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(name(0), QStringLiteral("Opening"));
    EXPECT_FALSE(m_model->setData(m_model->index(0, 0), QStringLiteral("Opening"), Qt::EditRole))
        << "no change, no action";
}

TEST_F(PhasesModelTest, aBlankNameIsToldAndNotKept) {
    EXPECT_FALSE(m_model->setData(m_model->index(0, 0), QStringLiteral("  "), Qt::EditRole));
    EXPECT_FALSE(m_said.isEmpty());
    EXPECT_TRUE(m_desk.told.isEmpty());
    EXPECT_EQ(name(0), QStringLiteral("Opening"));
}

TEST_F(PhasesModelTest, phasesAreAddedMovedAndRemoved) {
    m_model->addPhase();
    ASSERT_EQ(m_model->rowCount(), 4);
    EXPECT_EQ(name(3), QStringLiteral("New phase"));
    m_model->movePhase(3, -1);
    EXPECT_TRUE(m_said.isEmpty()) << m_said.toStdString();
    EXPECT_EQ(name(2), QStringLiteral("New phase"));
    m_model->movePhase(0, -1);
    EXPECT_EQ(name(0), QStringLiteral("Opening")) << "nothing is before the first";
    m_model->removePhase(2);
    EXPECT_EQ(m_model->rowCount(), 3);
}

} // namespace ladlework::ui
