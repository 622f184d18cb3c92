#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "quantity/measure.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The cuts of the pot in hand: name, mass, raw or not. Changes are made to the model's own list
/// and told through edited().
class CutsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { CutColumn, MassColumn, RawColumn, ColumnCount };

    CutsModel(const kitchen::Catalogue& catalogue, QObject* parent);
    void show(const QList<kitchen::CutInPot>& cuts, quantity::MeasureSystem measures);
    [[nodiscard]] const QList<kitchen::CutInPot>& cuts() const { return m_cuts; }
    void add(const kitchen::CutInPot& cut);
    void remove(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void edited();

private:
    const kitchen::Catalogue& m_catalogue;
    QList<kitchen::CutInPot> m_cuts;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
