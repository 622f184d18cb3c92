#include "ui/pot/comparison_model.h"

#include <QFont>
#include <QGuiApplication>

namespace ladlework::ui {

void ComparisonModel::show(const QString& first, const QString& second, QList<ComparedLine> lines) {
    const bool sameShape = lines.size() == m_lines.size();
    if (!sameShape)
        beginResetModel();
    m_first = first;
    m_second = second;
    m_lines = std::move(lines);
    if (!sameShape)
        endResetModel();
    else if (!m_lines.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    Q_EMIT headerDataChanged(Qt::Horizontal, FirstColumn, SecondColumn);
}

int ComparisonModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int ComparisonModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ComparisonModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const ComparedLine& line = m_lines.at(index.row());
    if (role == Qt::FontRole && line.clearly && index.column() == DifferenceColumn) {
        QFont font = QGuiApplication::font();
        font.setBold(true);
        return font;
    }
    if (role == Qt::AccessibleTextRole)
        return tr("%1: %2, against %3: %4")
            .arg(line.what, line.first, line.second, line.difference);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole)
        return {};
    switch (index.column()) {
    case WhatColumn:
        return line.what;
    case FirstColumn:
        return line.first;
    case SecondColumn:
        return line.second;
    default:
        return line.difference;
    }
}

QVariant ComparisonModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case WhatColumn:
        return QString();
    case FirstColumn:
        return m_first;
    case SecondColumn:
        return m_second;
    default:
        return tr("The second against the first");
    }
}

} // namespace ladlework::ui
