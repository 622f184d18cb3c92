#pragma once

#include "ui/pot/pot_comparison.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// Two pots line by line; what differs by more than the ranges leave open stands bold and has the
/// word for it.
class ComparisonModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { WhatColumn, FirstColumn, SecondColumn, DifferenceColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void show(const QString& first, const QString& second, QList<ComparedLine> lines);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    QString m_first;
    QString m_second;
    QList<ComparedLine> m_lines;
};

} // namespace ladlework::ui
