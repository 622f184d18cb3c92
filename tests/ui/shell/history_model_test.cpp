#include "ui/shell/history_model.h"

#include "ui/shared/workbook_fixture.h"
#include "ui/shell/history_panel.h"

#include <QAbstractItemModelTester>
#include <QListView>
#include <QPushButton>

namespace ladlework::ui {

class HistoryModelTest : public WorkbookFixture {};

TEST_F(HistoryModelTest, newestFirstAndMoreOnDemand) {
    constexpr int actions = 130;
    for (int number = 0; number < actions; ++number)
        addFamily(QStringLiteral("Family %1").arg(number));
    HistoryModel model(*m_workbook, nullptr);
    model.refresh();
    EXPECT_EQ(model.rowCount(), 100);
    ASSERT_TRUE(model.canFetchMore({}));
    model.fetchMore({});
    EXPECT_EQ(model.rowCount(), actions);
    EXPECT_FALSE(model.canFetchMore({}));
    EXPECT_GT(model.entry(0).id, model.entry(1).id);
}

TEST_F(HistoryModelTest, whatWasTakenBackSaysSo) {
    addFamily(QStringLiteral("Ash"));
    ASSERT_TRUE(m_workbook->undo());
    HistoryModel model(*m_workbook, nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.refresh();
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_TRUE(model.index(0).data().toString().contains(QStringLiteral("taken back")));
}

TEST_F(HistoryModelTest, thePanelTakesBackToAnEntry) {
    addFamily(QStringLiteral("Ash"));
    addFamily(QStringLiteral("Birch"));
    addFamily(QStringLiteral("Cedar"));
    HistoryPanel panel(*m_context, nullptr);
    panel.show();
    auto* view = panel.findChild<QListView*>();
    auto* back = panel.findChild<QPushButton*>();
    ASSERT_EQ(view->model()->rowCount(), 3);
    EXPECT_FALSE(back->isEnabled());
    view->setCurrentIndex(view->model()->index(1, 0));
    ASSERT_TRUE(back->isEnabled());
    back->click();
    const auto left = m_workbook->families().families();
    ASSERT_EQ(left.size(), 1);
    EXPECT_EQ(left.first().name, QStringLiteral("Ash"));
}

} // namespace ladlework::ui
