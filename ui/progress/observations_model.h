#pragma once

#include "people/observation.h"
#include "quantity/measure.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// One series of a member, the latest first. A value or note that is changed is handed on as a
/// whole observation.
class ObservationsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { DayColumn, ValueColumn, NoteColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void show(const QList<people::Observation>& series, quantity::MeasureSystem measures);
    [[nodiscard]] const people::Observation* observationAt(int row) const;
    [[nodiscard]] int rowOf(QDate day) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void observationChanged(const ladlework::people::Observation& observation);
    /// What was typed could not be read.
    void refused(const QString& sentence);

private:
    QList<people::Observation> m_series;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
