#include "ui/shell/family_controller.h"

#include "store/database.h"
#include "ui/shared/workbook_fixture.h"

#include <QSignalSpy>

namespace ladlework::ui {

class FamilyControllerTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_family = addFamily(QStringLiteral("Ash"));
        m_controller = std::make_unique<FamilyController>(*m_context, nullptr);
    }
    void TearDown() override { m_controller.reset(); }
    FamilyId m_family;
    std::unique_ptr<FamilyController> m_controller;
};

TEST_F(FamilyControllerTest, choosesAFamilyAndFollowsTheWorkbook) {
    const QSignalSpy chosen(m_controller.get(), &FamilyController::currentChanged);
    const QSignalSpy newer(m_controller.get(), &FamilyController::casebookChanged);
    m_controller->setCurrent(m_family);
    EXPECT_EQ(chosen.count(), 1);
    EXPECT_EQ(newer.count(), 1);
    const auto before = m_controller->casebook();
    addMember(m_family, QStringLiteral("Ana"));
    EXPECT_EQ(newer.count(), 2);
    EXPECT_EQ(m_controller->casebook()->records().members.size(), 1);
    EXPECT_TRUE(before->records().members.isEmpty()) << "a snapshot stays as it was";
}

TEST_F(FamilyControllerTest, aFamilyThatIsNotThereIsNone) {
    m_controller->setCurrent(FamilyId{999});
    EXPECT_EQ(m_controller->current(), FamilyId());
    EXPECT_EQ(m_controller->casebook(), nullptr);
    m_controller->setCurrent(m_family);
    const QSignalSpy chosen(m_controller.get(), &FamilyController::currentChanged);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(chosen.count(), 1);
    EXPECT_EQ(m_controller->current(), FamilyId());
}

TEST_F(FamilyControllerTest, recordsThatCannotBeWorkedOutAreToldNotThrown) {
    addLadder(addMember(m_family, QStringLiteral("Ana")));
    m_controller->setCurrent(m_family);
    const auto before = m_controller->casebook();
    ASSERT_NE(before, nullptr);
    {
        store::Database other(path(), store::Database::Access::ReadWrite);
        other.script(QStringLiteral("UPDATE ladder_rung SET volume_ml = 100"));
    }
    const QSignalSpy broke(m_controller.get(), &FamilyController::broke);
    addMember(m_family, QStringLiteral("Ben"));
    EXPECT_EQ(broke.count(), 1);
    EXPECT_TRUE(m_desk.told.isEmpty()) << "the action itself was done";
    EXPECT_EQ(m_controller->casebook(), before) << "the last casebook stays";
}

TEST_F(FamilyControllerTest, midnightMakesAnotherDay) {
    m_controller->setCurrent(m_family);
    const QSignalSpy day(m_controller.get(), &FamilyController::dayChanged);
    m_controller->checkDay();
    EXPECT_EQ(day.count(), 0);
    m_clock.set(QDateTime(m_today.addDays(1), QTime(0, 0, 1), Qt::UTC));
    m_controller->checkDay();
    EXPECT_EQ(day.count(), 1);
    EXPECT_EQ(m_controller->casebook()->today(), m_today.addDays(1));
}

} // namespace ladlework::ui
