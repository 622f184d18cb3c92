#pragma once

#include "kitchen/pot.h"
#include "quantity/measure.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The vessels of a kitchen, one a row.
class VesselModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { NameColumn, DiameterColumn, HeightColumn, HoldsColumn, UseColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void setVessels(QList<kitchen::Vessel> vessels, quantity::MeasureSystem measures);
    [[nodiscard]] const kitchen::Vessel* vesselAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

    static QString placeWords(kitchen::Vessel::Place place);
    static QString lidWords(kitchen::Vessel::Lid lid);

private:
    QList<kitchen::Vessel> m_vessels;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
