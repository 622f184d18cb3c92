#pragma once

class QTableView;
class QWidget;

namespace ladlework::ui {

/// The parts of a section that lists records: a table, the line that changes the chosen one, the
/// button that removes it, and the words that stand there while there are none.
struct RecordRows {
    QTableView* table;
    QWidget* line;
    QWidget* remove;
    QWidget* none;

    /// Shows what fits the rows of the model, and chooses `row` or the nearest there is.
    void show(int row) const;
};

} // namespace ladlework::ui
