#pragma once

#include "store/history.h"

#include <QAbstractListModel>

namespace ladlework::store {
class Workbook;
}

namespace ladlework::ui {

/// The recorded actions, newest first; older ones are read when they are scrolled to.
class HistoryModel final : public QAbstractListModel {
    Q_OBJECT
public:
    explicit HistoryModel(const store::Workbook& workbook, QObject* parent);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

    /// Reads again after an action.
    void refresh();
    [[nodiscard]] const store::HistoryEntry& entry(int row) const { return m_entries[row]; }

private:
    const store::Workbook& m_workbook;
    QList<store::HistoryEntry> m_entries;
    bool m_mayHaveMore = true;
};

} // namespace ladlework::ui
