#include "ui/pot/pot_library_model.h"

#include <algorithm>

namespace ladlework::ui {

void PotLibraryModel::show(QList<kitchen::Pot> pots) {
    std::stable_partition(pots.begin(), pots.end(),
                          [](const kitchen::Pot& pot) { return pot.family.isStored(); });
    const bool same = std::ranges::equal(pots, m_pots, {}, &kitchen::Pot::id, &kitchen::Pot::id);
    if (!same)
        beginResetModel();
    m_pots = std::move(pots);
    if (!same)
        endResetModel();
    else if (!m_pots.isEmpty())
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

const kitchen::Pot* PotLibraryModel::potAt(int row) const {
    return row >= 0 && row < m_pots.size() ? &m_pots.at(row) : nullptr;
}

int PotLibraryModel::rowOf(PotId pot) const {
    const auto found = std::ranges::find(m_pots, pot, &kitchen::Pot::id);
    return found == m_pots.end() ? -1 : static_cast<int>(found - m_pots.begin());
}

int PotLibraryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_pots.size());
}

QVariant PotLibraryModel::data(const QModelIndex& index, int role) const {
    const kitchen::Pot* pot = index.isValid() ? potAt(index.row()) : nullptr;
    if (!pot)
        return {};
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
        return QString(pot->name + u'\n' +
                       (pot->family.isStored() ? tr("this family's") : tr("the practice's")));
    if (role == Qt::ToolTipRole)
        return pot->name;
    return {};
}

} // namespace ladlework::ui
