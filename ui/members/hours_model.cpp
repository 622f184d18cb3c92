#include "ui/members/hours_model.h"

#include "quantity/measure.h"
#include "ui/shared/start_time.h"

#include <QLocale>

namespace ladlework::ui {

using week::UsualHours;

void HoursModel::setHours(QList<UsualHours> hours) {
    beginResetModel();
    m_hours = std::move(hours);
    endResetModel();
}

const UsualHours* HoursModel::hoursAt(int row) const {
    return row >= 0 && row < m_hours.size() ? &m_hours.at(row) : nullptr;
}

int HoursModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_hours.size());
}

int HoursModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant HoursModel::data(const QModelIndex& index, int role) const {
    const UsualHours* usual = index.isValid() ? hoursAt(index.row()) : nullptr;
    if (usual == nullptr || role != Qt::DisplayRole)
        return {};
    const week::FreeHours& hours = usual->hours;
    switch (index.column()) {
    case DayColumn:
        return QLocale().standaloneDayName(usual->weekday);
    case FromColumn:
        return hours.from.isValid() ? printStartTime(hours.from) : tr("any time");
    case LengthColumn:
        return quantity::printDuration(hours.length);
    default:
        return hours.pots == 1 ? tr("one pot") : tr("%1 pots").arg(hours.pots);
    }
}

QVariant HoursModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case DayColumn:
        return tr("Day");
    case FromColumn:
        return tr("From");
    case LengthColumn:
        return tr("Free for");
    default:
        return tr("On at once");
    }
}

} // namespace ladlework::ui
