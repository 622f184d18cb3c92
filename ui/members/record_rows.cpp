#include "ui/members/record_rows.h"

#include "ui/shared/table_look.h"

#include <QTableView>
#include <algorithm>

namespace ladlework::ui {

namespace {
constexpr int mostRowsShown = 5;
}

void RecordRows::show(int row) const {
    const int rows = table->model()->rowCount();
    table->setVisible(rows > 0);
    fitRows(*table, 1, mostRowsShown);
    none->setVisible(rows == 0);
    line->setVisible(rows > 0);
    remove->setVisible(rows > 0);
    if (rows > 0)
        table->selectRow(std::clamp(row, 0, rows - 1));
}

} // namespace ladlework::ui
