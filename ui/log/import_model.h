#pragma once

#include "ui/log/import_lines.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The lines of a sheet with what would become of each.
class ImportModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { LineColumn, FateColumn, WordsColumn, TextColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void setLines(const QList<ImportLine>& lines);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    QList<ImportLine> m_lines;
};

} // namespace ladlework::ui
