#pragma once

#include "kitchen/pot.h"

#include <QAbstractListModel>

namespace ladlework::ui {

/// The pots at hand: the family's own first, then the practice's.
class PotLibraryModel final : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;
    void show(QList<kitchen::Pot> pots);
    [[nodiscard]] const kitchen::Pot* potAt(int row) const;
    /// The row of a pot; -1 when it is not there.
    [[nodiscard]] int rowOf(PotId pot) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    QList<kitchen::Pot> m_pots;
};

} // namespace ladlework::ui
