#pragma once

#include <QString>

class QAbstractItemModel;
class QTableView;
class QWidget;

namespace ladlework::ui {

/// A table as all screens show it: whole width, columns as wide as their content but for one that
/// takes what is left, Tab leaves it, typing changes a cell.
QTableView* makeTable(QAbstractItemModel* model, const QString& name, int stretchedColumn,
                      QWidget* parent);

/// Makes the table as high as its rows ask for, but room for at least `least` rows and no more
/// than `most`; beyond that it scrolls.
void fitRows(QTableView& table, int least, int most);

} // namespace ladlework::ui
