#include "ui/shared/table_look.h"

#include <QHeaderView>
#include <QTableView>

#include <algorithm>

namespace ladlework::ui {

QTableView* makeTable(QAbstractItemModel* model, const QString& name, int stretchedColumn,
                      QWidget* parent) {
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setAccessibleName(name);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                           QAbstractItemView::DoubleClicked);
    table->verticalHeader()->hide();
    QHeaderView* head = table->horizontalHeader();
    head->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    head->setHighlightSections(false);
    head->setSectionResizeMode(QHeaderView::ResizeToContents);
    head->setSectionResizeMode(stretchedColumn, QHeaderView::Stretch);
    return table;
}

void fitRows(QTableView& table, int least, int most) {
    // A row follows the size of the text, also when that was changed since.
    constexpr double linesARow = 1.8;
    QHeaderView* rows = table.verticalHeader();
    const auto rowHeight = static_cast<int>(table.fontMetrics().height() * linesARow);
    if (rowHeight != rows->defaultSectionSize()) // who listens to it may ask to fit again
        rows->setDefaultSectionSize(rowHeight);
    const int count = table.model()->rowCount();
    const int edge = table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth();
    int height = 0;
    for (int row = 0; row < std::min(count, most); ++row)
        height += table.rowHeight(row);
    height += std::max(0, least - count) * rows->defaultSectionSize();
    table.setFixedHeight(edge + height);
}

} // namespace ladlework::ui
