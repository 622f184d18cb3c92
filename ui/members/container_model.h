#pragma once

#include "kitchen/container.h"
#include "quantity/measure.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// What a kitchen cools and keeps stock in, one a row.
class ContainerModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { NameColumn, SizeColumn, HeightColumn, HoldsColumn, KindColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void setContainers(QList<kitchen::Container> containers, quantity::MeasureSystem measures);
    [[nodiscard]] const kitchen::Container* containerAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

    static QString shapeWords(kitchen::Container::Shape shape);
    static QString materialWords(kitchen::Container::Material material);
    static QString coverWords(bool covered);

private:
    QList<kitchen::Container> m_containers;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
