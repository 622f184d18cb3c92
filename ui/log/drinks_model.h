#pragma once

#include "casebook/casebook.h"

#include <QAbstractTableModel>
#include <memory>

namespace ladlework::ui {

/// The drinks of one member on one day; a cell that is changed is handed on as a whole entry.
class DrinksModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { AmountColumn, SourceColumn, NoteColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;
    void show(std::shared_ptr<const casebook::Casebook> casebook, MemberId member, QDate day);
    [[nodiscard]] const intake::IntakeEntry* entryAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Amount: mL as a double. Source: the row of drinkSources(). Note: text.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void entryChanged(const ladlework::intake::IntakeEntry& entry);

private:
    std::shared_ptr<const casebook::Casebook> m_casebook;
    QList<intake::IntakeEntry> m_entries;
};

} // namespace ladlework::ui
