#pragma once

#include "week/free_hours.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The free hours of every week, one stretch a row.
class HoursModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { DayColumn, FromColumn, LengthColumn, PotsColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void setHours(QList<week::UsualHours> hours);
    [[nodiscard]] const QList<week::UsualHours>& hours() const { return m_hours; }
    [[nodiscard]] const week::UsualHours* hoursAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    QList<week::UsualHours> m_hours;
};

} // namespace ladlework::ui
