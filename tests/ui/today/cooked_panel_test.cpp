#include "ui/today/cooked_panel.h"

#include "casebook/casebook.h"
#include "ui/shared/by_name.h"
#include "ui/shared/workbook_fixture.h"

#include <QComboBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>

namespace ladlework::ui {

class CookedPanelTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_family = addFamily(QStringLiteral("Hale"));
        kitchen::Pot pot;
        pot.family = m_family;
        pot.name = QStringLiteral("Legs, double");
        pot.water = quantity::Volume::fromLitres(3);
        pot.simmer = quantity::Duration::fromHours(2);
        pot.cuts = {
            {QStringLiteral("chicken-drumstick"), quantity::Mass::fromKilograms(1.5), true}};
        act([&](store::Action& action) {
            return m_workbook->pots().addPot(action, pot).map([&](PotId id) { m_pot = id; });
        });
        m_panel = std::make_unique<CookedPanel>(*m_context, nullptr);
        take();
        m_panel->show();
        QApplication::processEvents(); // until the window is the active one
    }
    void take() {
        m_panel->take(casebook::Casebook(*m_workbook->records(m_family), *m_catalogue, m_today));
    }
    VesselId addVessel() {
        kitchen::Vessel vessel;
        vessel.family = m_family;
        vessel.name = QStringLiteral("the pot with the tight lid");
        vessel.diameter = quantity::Length::fromCentimetres(26);
        vessel.height = quantity::Length::fromCentimetres(18);
        vessel.lid = kitchen::Vessel::Lid::On;
        VesselId made;
        act([&](store::Action& action) {
            return m_workbook->families().addVessel(action, vessel).map([&](VesselId id) {
                made = id;
            });
        });
        return made;
    }
    void type(const QString& yield) {
        auto* field = byName<VolumeEdit>(*m_panel, QStringLiteral("Stock that came out"));
        field->setFocus();
        QTest::keyClicks(field, yield);
    }
    void record() { byText<QPushButton>(*m_panel, QStringLiteral("Record it"))->click(); }

    FamilyId m_family;
    PotId m_pot;
    std::unique_ptr<CookedPanel> m_panel;
};

TEST_F(CookedPanelTest, MakesABatchAndItsJarsInOneAction) {
    const QSignalSpy recorded(m_panel.get(), &CookedPanel::recorded);
    byName<QSpinBox>(*m_panel, QStringLiteral("Jars in the refrigerator"))->setValue(2);
    byName<QSpinBox>(*m_panel, QStringLiteral("Jars in the freezer"))->setValue(1);
    type(QStringLiteral("2.4 L"));
    record();
    EXPECT_EQ(recorded.size(), 1);
    const casebook::FamilyRecords records = *m_workbook->records(m_family);
    ASSERT_EQ(records.batches.size(), 1);
    EXPECT_EQ(records.batches.first().pot, m_pot);
    EXPECT_EQ(records.batches.first().day, m_today);
    ASSERT_EQ(records.lots.size(), 3);
    // 3 days in the refrigerator; 2 months, the shorter end of the published chart, in the freezer.
    EXPECT_EQ(records.lots.at(0).useBy, QDate(2026, 11, 7));
    EXPECT_EQ(records.lots.at(2).useBy, QDate(2027, 1, 4));
    for (const kitchen::Lot& lot : records.lots)
        EXPECT_NEAR(lot.volume.toMillilitres(), 800.0, 1e-6);
    EXPECT_TRUE(
        m_workbook->history().nextUndo()->sentence.contains(QStringLiteral("Legs, double")));
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_TRUE(m_workbook->records(m_family)->batches.isEmpty());
    EXPECT_TRUE(m_workbook->records(m_family)->lots.isEmpty());
}

TEST_F(CookedPanelTest, AsksForTheYieldAndWritesNothingWithoutIt) {
    record();
    EXPECT_EQ(m_desk.told.size(), 1);
    EXPECT_TRUE(m_workbook->records(m_family)->batches.isEmpty());
}

TEST_F(CookedPanelTest, PutsWhatWasPlannedFirstWithItsDay) {
    week::WeekPlan plan;
    plan.family = m_family;
    plan.start = QDate(2026, 11, 2);
    plan.placements = {{QDate(2026, 11, 3), m_pot, QTime(10, 0)}};
    act([&](store::Action& action) {
        return m_workbook->weeks().setPlan(action, plan).map([](WeekPlanId) {});
    });
    take();
    EXPECT_TRUE(byName<QComboBox>(*m_panel, QStringLiteral("Pot"))
                    ->currentText()
                    .contains(QStringLiteral("planned for")));
    type(QStringLiteral("2 L"));
    record();
    EXPECT_EQ(m_workbook->records(m_family)->batches.first().day, QDate(2026, 11, 3));
}

TEST_F(CookedPanelTest, RecordsWhatThePotAsksForWhenNothingElseIsSaid) {
    const VesselId vessel = addVessel();
    take();
    type(QStringLiteral("2 L"));
    record();
    const kitchen::AsCooked cooked = m_workbook->records(m_family)->batches.first().cooked;
    EXPECT_NEAR(cooked.water.toLitres(), 3, 1e-9);
    EXPECT_NEAR(cooked.simmer.toHours(), 2, 1e-9);
    EXPECT_EQ(cooked.vessel, vessel) << "the family's only one";
    EXPECT_EQ(cooked.lid, kitchen::Vessel::Lid::On) << "as this vessel is used";
}

TEST_F(CookedPanelTest, WhatWasDoneInsteadIsFoldedAwayAndRecorded) {
    addVessel();
    take();
    auto* fold = byText<QToolButton>(*m_panel, QStringLiteral("Cooked differently?"));
    auto* water = byName<VolumeEdit>(*m_panel, QStringLiteral("Water that went in"));
    EXPECT_FALSE(water->isVisible());
    fold->click();
    ASSERT_TRUE(water->isVisible());
    EXPECT_TRUE(water->hasFocus());
    water->selectAll();
    QTest::keyClicks(water, QStringLiteral("2.5 L"));
    QTest::keyClick(water, Qt::Key_Tab);
    auto* simmer = byName<DurationEdit>(*m_panel, QStringLiteral("Simmered"));
    EXPECT_TRUE(simmer->hasFocus());
    QTest::keyClicks(simmer, QStringLiteral("3"));
    auto* lid = byName<QComboBox>(*m_panel, QStringLiteral("Lid"));
    lid->setCurrentText(QStringLiteral("lid off"));
    type(QStringLiteral("1 L"));
    record();
    const kitchen::AsCooked cooked = m_workbook->records(m_family)->batches.first().cooked;
    EXPECT_NEAR(cooked.water.toLitres(), 2.5, 1e-9);
    EXPECT_NEAR(cooked.simmer.toHours(), 3, 1e-9);
    EXPECT_EQ(cooked.lid, kitchen::Vessel::Lid::Open);
    take();
    EXPECT_FALSE(water->isVisible()) << "the next cooking is as its pot asks again";
    const casebook::Casebook book(*m_workbook->records(m_family), *m_catalogue, m_today);
    ASSERT_NE(book.calibration(cooked.vessel), nullptr) << "the vessel learns from it";
    EXPECT_EQ(book.calibration(cooked.vessel)->points.size(), 1U);
}

} // namespace ladlework::ui
