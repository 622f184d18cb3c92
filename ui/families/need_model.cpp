#include "ui/families/need_model.h"

#include "ui/paint/finding_mark.h"

#include <algorithm>

namespace ladlework::ui {

int NeedModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_needs.size());
}

int NeedModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant NeedModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Need& need = m_needs[index.row()];
    if (role == SeverityRole)
        return need.severity ? QVariant(static_cast<int>(*need.severity)) : QVariant();
    if (role == Qt::ToolTipRole)
        return need.what;
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case MarkColumn:
        return need.severity ? severityWord(*need.severity) : need.when;
    case FamilyColumn:
        return need.familyName;
    case WhatColumn:
        return need.what;
    default:
        return {};
    }
}

QVariant NeedModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case MarkColumn:
        return tr("When");
    case FamilyColumn:
        return tr("Family");
    case WhatColumn:
        return tr("What");
    default:
        return {};
    }
}

void NeedModel::setNeeds(const QList<Need>& needs) {
    const qsizetype common = std::min(needs.size(), m_needs.size());
    for (qsizetype row = 0; row < common; ++row) {
        if (m_needs[row] == needs[row])
            continue;
        m_needs[row] = needs[row];
        const int at = static_cast<int>(row);
        Q_EMIT dataChanged(index(at, 0), index(at, ColumnCount - 1));
    }
    if (needs.size() > common) {
        beginInsertRows({}, static_cast<int>(common), static_cast<int>(needs.size()) - 1);
        m_needs = needs;
        endInsertRows();
    } else if (m_needs.size() > common) {
        beginRemoveRows({}, static_cast<int>(common), static_cast<int>(m_needs.size()) - 1);
        m_needs = needs;
        endRemoveRows();
    }
}

} // namespace ladlework::ui
