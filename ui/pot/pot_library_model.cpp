#include "ui/pot/pot_library_model.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>
#include <algorithm>

namespace ladlework::ui {

void PotLibraryModel::show(QList<kitchen::Pot> pots) {
    std::stable_partition(pots.begin(), pots.end(),
                          [](const kitchen::Pot& pot) { return pot.family.isStored(); });
    const auto ids = [](const QList<kitchen::Pot>& list, const QList<Row>& rows) {
        QList<qint64> all;
        for (const Row& row : rows)
            all.append(row.heading.isEmpty() ? list.at(row.at).id.value : -1);
        return all;
    };
    const QList<qint64> before = ids(m_pots, m_rows);
    QList<kitchen::Pot> old = std::exchange(m_pots, pots);
    const QList<Row> rows = arranged();
    const bool same = ids(m_pots, rows) == before;
    if (!same) {
        m_pots = std::move(old); // as it was while the views are told
        beginResetModel();
        m_pots = std::move(pots);
    }
    m_rows = rows;
    if (!same)
        endResetModel();
    else if (!m_rows.isEmpty())
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

void PotLibraryModel::setFilter(const QString& words) {
    const QStringList filter = words.simplified().toCaseFolded().split(u' ', Qt::SkipEmptyParts);
    if (filter == m_filter)
        return;
    beginResetModel();
    m_filter = filter;
    m_rows = arranged();
    endResetModel();
}

bool PotLibraryModel::isLetThrough(const kitchen::Pot& pot) const {
    const QString name = pot.name.toCaseFolded();
    return std::ranges::all_of(m_filter,
                               [&name](const QString& word) { return name.contains(word); });
}

QList<PotLibraryModel::Row> PotLibraryModel::arranged() const {
    QList<Row> rows;
    for (const bool own : {true, false}) {
        bool headed = false;
        for (qsizetype at = 0; at < m_pots.size(); ++at) {
            const kitchen::Pot& pot = m_pots.at(at);
            if (pot.family.isStored() != own || !isLetThrough(pot))
                continue;
            if (!std::exchange(headed, true))
                rows.append({own ? tr("This family's own") : tr("The practice's"), 0});
            rows.append({{}, at});
        }
    }
    if (rows.isEmpty() && !m_pots.isEmpty())
        rows.append({tr("No pot has this in its name"), 0});
    return rows;
}

const kitchen::Pot* PotLibraryModel::potAt(int row) const {
    if (row < 0 || row >= m_rows.size() || !m_rows.at(row).heading.isEmpty())
        return nullptr;
    return &m_pots.at(m_rows.at(row).at);
}

int PotLibraryModel::rowOf(PotId pot) const {
    for (int row = 0; row < rowCount(); ++row)
        if (const kitchen::Pot* at = potAt(row); at != nullptr && at->id == pot)
            return row;
    return -1;
}

int PotLibraryModel::firstPotRow() const {
    for (int row = 0; row < rowCount(); ++row)
        if (potAt(row) != nullptr)
            return row;
    return -1;
}

int PotLibraryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant PotLibraryModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const QString& heading = m_rows.at(index.row()).heading;
    if (const kitchen::Pot* pot = potAt(index.row())) {
        if (role == Qt::DisplayRole || role == Qt::ToolTipRole)
            return pot->name;
        if (role == Qt::AccessibleTextRole)
            return pot->family.isStored() ? pot->name : tr("%1, the practice's").arg(pot->name);
        return {};
    }
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
        return heading;
    if (role == Qt::ForegroundRole)
        return QGuiApplication::palette().brush(QPalette::PlaceholderText);
    if (role == Qt::FontRole) {
        QFont font = QGuiApplication::font();
        font.setBold(true);
        return font;
    }
    return {};
}

Qt::ItemFlags PotLibraryModel::flags(const QModelIndex& index) const {
    if (index.isValid() && potAt(index.row()) == nullptr)
        return Qt::NoItemFlags; // the keys step over a heading
    return QAbstractListModel::flags(index);
}

} // namespace ladlework::ui
