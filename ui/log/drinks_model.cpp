#include "ui/log/drinks_model.h"

#include "ui/log/drink_source.h"

#include <algorithm>

namespace ladlework::ui {

using intake::IntakeEntry;

void DrinksModel::show(std::shared_ptr<const casebook::Casebook> casebook, MemberId member,
                       QDate day) {
    QList<IntakeEntry> entries;
    for (const IntakeEntry& entry : casebook->records().entries)
        if (entry.member == member && entry.day == day)
            entries.append(entry);
    // The same drinks are changed in place: an open editor and the selection stay.
    const bool same =
        std::ranges::equal(entries, m_entries, {}, &IntakeEntry::id, &IntakeEntry::id);
    if (!same)
        beginResetModel();
    m_casebook = std::move(casebook);
    m_entries = std::move(entries);
    if (!same)
        endResetModel();
    else if (!m_entries.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

const IntakeEntry* DrinksModel::entryAt(int row) const {
    return row >= 0 && row < m_entries.size() ? &m_entries.at(row) : nullptr;
}

int DrinksModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

int DrinksModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant DrinksModel::data(const QModelIndex& index, int role) const {
    const IntakeEntry* entry = index.isValid() ? entryAt(index.row()) : nullptr;
    if (!entry || (role != Qt::DisplayRole && role != Qt::EditRole))
        return {};
    switch (index.column()) {
    case AmountColumn:
        if (role == Qt::EditRole)
            return entry->drunk.toMillilitres();
        return entry->drunk == quantity::Volume{}
                   ? tr("missed")
                   : quantity::printVolume(entry->drunk, m_casebook->records().family.measures);
    case SourceColumn:
        return sourceWords(*m_casebook, *entry);
    default:
        return entry->note;
    }
}

QVariant DrinksModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case AmountColumn:
        return tr("Drunk");
    case SourceColumn:
        return tr("Out of");
    default:
        return tr("Note");
    }
}

Qt::ItemFlags DrinksModel::flags(const QModelIndex& index) const {
    return index.isValid() ? QAbstractTableModel::flags(index) | Qt::ItemIsEditable
                           : QAbstractTableModel::flags(index);
}

bool DrinksModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const IntakeEntry* before = index.isValid() ? entryAt(index.row()) : nullptr;
    if (!before || role != Qt::EditRole)
        return false;
    IntakeEntry entry = *before;
    if (index.column() == AmountColumn) {
        entry.drunk = quantity::Volume::fromMillilitres(value.toDouble());
    } else if (index.column() == SourceColumn) {
        const DrinkSource source = drinkSources(*m_casebook).value(value.toInt());
        entry.pot = source.pot;
        entry.lot = source.lot;
    } else {
        entry.note = value.toString().trimmed();
    }
    if (entry.drunk == before->drunk && entry.pot == before->pot && entry.lot == before->lot &&
        entry.note == before->note)
        return false;
    Q_EMIT entryChanged(entry);
    return true;
}

} // namespace ladlework::ui
