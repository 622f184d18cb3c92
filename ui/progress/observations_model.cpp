#include "ui/progress/observations_model.h"

#include "ui/progress/observation_values.h"
#include "ui/shared/day_text.h"

#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

using people::Observation;

void ObservationsModel::show(const QList<Observation>& series, quantity::MeasureSystem measures) {
    QList<Observation> latestFirst = series;
    std::ranges::stable_sort(latestFirst, [](const Observation& a, const Observation& b) {
        return std::pair(b.day, b.id) < std::pair(a.day, a.id);
    });
    const bool same =
        std::ranges::equal(latestFirst, m_series, {}, &Observation::id, &Observation::id);
    if (!same)
        beginResetModel();
    m_series = std::move(latestFirst);
    m_measures = measures;
    if (!same)
        endResetModel();
    else if (!m_series.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

const Observation* ObservationsModel::observationAt(int row) const {
    return row >= 0 && row < m_series.size() ? &m_series.at(row) : nullptr;
}

int ObservationsModel::rowOf(QDate day) const {
    const auto found = std::ranges::find(m_series, day, &Observation::day);
    return found == m_series.end() ? -1 : static_cast<int>(found - m_series.begin());
}

int ObservationsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_series.size());
}

int ObservationsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant ObservationsModel::data(const QModelIndex& index, int role) const {
    const Observation* observation = index.isValid() ? observationAt(index.row()) : nullptr;
    if (!observation ||
        (role != Qt::DisplayRole && role != Qt::EditRole && role != Qt::ToolTipRole))
        return {};
    switch (index.column()) {
    case DayColumn:
        return printDay(observation->day, QLocale());
    case ValueColumn:
        return observationWords(*observation, m_measures);
    default:
        return observation->note;
    }
}

QVariant ObservationsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case DayColumn:
        return tr("Day");
    case ValueColumn:
        return tr("Value");
    default:
        return tr("Note");
    }
}

Qt::ItemFlags ObservationsModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (index.isValid() && index.column() != DayColumn)
        flags |= Qt::ItemIsEditable;
    return flags;
}

bool ObservationsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const Observation* before = index.isValid() ? observationAt(index.row()) : nullptr;
    QString text = value.toString().trimmed();
    if (!before || role != Qt::EditRole || text == data(index, role).toString())
        return false;
    Observation observation = *before;
    if (index.column() == ValueColumn) {
        if (!observation.unit.isEmpty() && observation.kind != people::weightKind() &&
            text.endsWith(observation.unit))
            text.chop(observation.unit.size());
        const Result<double> read = readObservation(text, observation.kind, m_measures);
        if (!read) {
            Q_EMIT refused(read.error().sentence);
            return false;
        }
        observation.value = *read;
    } else if (index.column() == NoteColumn) {
        observation.note = text;
    } else {
        return false;
    }
    Q_EMIT observationChanged(observation);
    return true;
}

} // namespace ladlework::ui
