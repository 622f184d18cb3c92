#include "ui/week/pots_model.h"

#include "ui/week/board_model.h"

#include <QMimeData>

namespace ladlework::ui {

void PotsModel::setRows(QList<Row> rows) {
    if (rows == m_rows)
        return;
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

PotId PotsModel::potAt(int row) const {
    return row >= 0 && row < m_rows.size() ? m_rows.at(row).pot : PotId{};
}

int PotsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant PotsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_rows.size())
        return {};
    const Row& row = m_rows.at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return QString(row.name + QLatin1Char('\n') + row.remark);
    case Qt::AccessibleTextRole:
        return QString(row.name + QStringLiteral(", ") + row.remark);
    case NameRole:
        return row.name;
    case PotRole:
        return row.pot.value;
    default:
        return {};
    }
}

Qt::ItemFlags PotsModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractListModel::flags(index);
    return index.isValid() ? flags | Qt::ItemIsDragEnabled : flags;
}

QStringList PotsModel::mimeTypes() const {
    return {potMimeType()};
}

QMimeData* PotsModel::mimeData(const QModelIndexList& indexes) const {
    return indexes.isEmpty() ? nullptr : potMimeData(potAt(indexes.first().row()));
}

} // namespace ladlework::ui
