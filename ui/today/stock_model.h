#pragma once

#include "casebook/casebook.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// Stock on hand as a table: how much, of what, where, until when. Oldest use-by first.
class StockModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { AmountColumn, PotColumn, PlaceColumn, UseByColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    void setStock(const QList<casebook::StockItem>& stock, QDate today,
                  quantity::MeasureSystem measures);
    [[nodiscard]] const casebook::StockItem& item(int row) const { return m_stock[row]; }

private:
    QList<casebook::StockItem> m_stock;
    QDate m_today;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
