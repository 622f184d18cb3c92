#pragma once

#include "kitchen/pot.h"

#include <QAbstractListModel>

namespace ladlework::ui {

/// The pots at hand under two headings: the family's own first, then the practice's. A filter keeps
/// those whose name holds every word of it.
class PotLibraryModel final : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;
    void show(QList<kitchen::Pot> pots);
    void setFilter(const QString& words);
    /// nullptr for a heading, and beyond the rows.
    [[nodiscard]] const kitchen::Pot* potAt(int row) const;
    /// The row of a pot; -1 when it is not there or filtered out.
    [[nodiscard]] int rowOf(PotId pot) const;
    /// The first row that is a pot; -1 when there is none.
    [[nodiscard]] int firstPotRow() const;
    [[nodiscard]] const QList<kitchen::Pot>& pots() const { return m_pots; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row {
        QString heading;  ///< empty for a pot
        qsizetype at = 0; ///< in m_pots
    };
    [[nodiscard]] QList<Row> arranged() const;
    [[nodiscard]] bool isLetThrough(const kitchen::Pot& pot) const;

    QList<kitchen::Pot> m_pots; ///< the family's own first
    QList<Row> m_rows;
    QStringList m_filter;
};

} // namespace ladlework::ui
