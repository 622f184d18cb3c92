#pragma once

#include "foundation/finding.h"
#include "foundation/id.h"

#include <QAbstractTableModel>
#include <QList>
#include <optional>

namespace ladlework::ui {

/// One thing that a family wants of the practitioner.
struct Need {
    FamilyId family;
    QString familyName;
    std::optional<Finding::Severity> severity; ///< nothing for a plain reminder
    QString when;                              ///< a day in words; empty when it is now
    QString what;
    QString screen; ///< where it is dealt with
    friend bool operator==(const Need&, const Need&) = default;
};

/// Needs as a table: how bad or when, whose, what.
class NeedModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { MarkColumn, FamilyColumn, WhatColumn, ColumnCount };
    enum Role { SeverityRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    /// Changes only the rows that differ.
    void setNeeds(const QList<Need>& needs);
    [[nodiscard]] const Need& need(int row) const { return m_needs[row]; }

private:
    QList<Need> m_needs;
};

} // namespace ladlework::ui
