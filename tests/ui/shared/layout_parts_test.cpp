#include "ui/shared/character_width.h"
#include "ui/shared/choices.h"
#include "ui/shared/page_scroll.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/table_look.h"

#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QSignalSpy>
#include <QStandardItemModel>
#include <QTableView>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <gtest/gtest.h>

namespace ladlework::ui {

TEST(LayoutPartsTest, PartsStandBelowEachOtherWhenTheWidthDoesNotDo) {
    QWidget page; // a window of its own would not be narrower than its layout
    SideBySide sides(&page);
    auto* first = new QLabel;
    auto* second = new QLabel;
    first->setMinimumWidth(200);
    second->setMinimumWidth(150);
    sides.add(first);
    sides.add(second);
    sides.setSpacing(10);
    page.show();
    sides.resize(400, 100);
    QCoreApplication::processEvents();
    EXPECT_GT(second->x(), first->x());
    EXPECT_EQ(second->y(), first->y());
    sides.resize(300, 100);
    QCoreApplication::processEvents();
    EXPECT_EQ(second->x(), first->x());
    EXPECT_GT(second->y(), first->y());
    EXPECT_EQ(sides.minimumSizeHint().width(), 200) << "the widest part";
    first->hide();
    QCoreApplication::processEvents();
    EXPECT_EQ(sides.minimumSizeHint().width(), 150);
}

TEST(LayoutPartsTest, ChoicesAreChangedOnlyWhenTheyDiffer) {
    QComboBox box;
    QSignalSpy chosen(&box, &QComboBox::currentIndexChanged);
    const QList<Choice> choices{{QStringLiteral("one"), 1}, {QStringLiteral("two"), 2}};
    setChoices(box, choices, 2);
    EXPECT_EQ(box.currentText(), QStringLiteral("two"));
    QSignalSpy emptied(box.model(), &QAbstractItemModel::rowsRemoved);
    setChoices(box, choices, 1);
    EXPECT_EQ(emptied.size(), 0);
    EXPECT_EQ(box.currentText(), QStringLiteral("one"));
    setChoices(box, {{QStringLiteral("three"), 3}}, 7);
    EXPECT_EQ(box.count(), 1);
    EXPECT_EQ(box.currentIndex(), 0) << "an unknown value chooses the first";
    EXPECT_EQ(chosen.size(), 0) << "nobody chose anything";
}

TEST(LayoutPartsTest, WheelScrollsThePageAndTurnsNoBox) {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    auto* box = new QComboBox;
    box->addItems({QStringLiteral("a"), QStringLiteral("b")});
    layout->addWidget(box);
    auto* other = new QComboBox;
    layout->addWidget(other);
    PageScroll scroll(page, nullptr);
    scroll.show();
    QApplication::setActiveWindow(&scroll);
    const auto turn = [box] {
        QWheelEvent wheel(QPointF(5, 5), box->mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, -120),
                          Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(box, &wheel);
    };
    other->setFocus();
    turn();
    EXPECT_EQ(box->currentIndex(), 0);
    box->setFocus();
    turn();
    EXPECT_EQ(box->currentIndex(), 1) << "with the focus it does turn";
    EXPECT_GE(scroll.minimumSizeHint().width(), page->minimumSizeHint().width());
}

TEST(LayoutPartsTest, WidthFollowsTheFont) {
    QLabel label;
    CharacterWidth::hold(label, 20);
    const int before = label.minimumWidth();
    EXPECT_EQ(before, 20 * label.fontMetrics().averageCharWidth());
    QFont larger = label.font();
    larger.setPointSizeF(larger.pointSizeF() * 2);
    label.setFont(larger);
    EXPECT_GT(label.minimumWidth(), before);
    EXPECT_EQ(label.minimumWidth(), label.maximumWidth());
}

TEST(LayoutPartsTest, TableIsAsHighAsItsRows) {
    QStandardItemModel model(3, 2);
    QTableView* table = makeTable(&model, QStringLiteral("Things"), 1, nullptr);
    const std::unique_ptr<QTableView> keeper(table);
    fitRows(*table, 1, 5);
    const int three = table->height();
    model.setRowCount(4);
    fitRows(*table, 1, 5);
    EXPECT_EQ(table->height() - three, table->rowHeight(0));
    model.setRowCount(50);
    fitRows(*table, 1, 5);
    EXPECT_EQ(table->height() - three, 2 * table->rowHeight(0)) << "five at most";
    model.setRowCount(0);
    fitRows(*table, 1, 5);
    EXPECT_EQ(three - table->height(), 2 * table->verticalHeader()->defaultSectionSize())
        << "room for one at least";
}

} // namespace ladlework::ui
