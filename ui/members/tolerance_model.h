#pragma once

#include "kitchen/catalogue.h"
#include "people/tolerance.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The tolerance notes of one member: the latest of each subject, newest first. The earlier notes
/// of a subject are its history; they unfold below it in quiet ink.
class ToleranceModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        SubjectColumn,
        VerdictColumn,
        ReasonColumn,
        NotedColumn,
        EarlierColumn,
        ColumnCount
    };

    ToleranceModel(const kitchen::Catalogue& catalogue, QObject* parent);
    void setNotes(const QList<people::ToleranceNote>& notes);
    [[nodiscard]] const people::ToleranceNote* noteAt(int row) const;
    [[nodiscard]] int rowOf(ToleranceId note) const;
    /// Shows or folds the earlier notes on the subject of a row; false when there are none.
    bool setUnfolded(int row, bool unfolded);
    [[nodiscard]] bool isUnfolded(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

    /// True for a note that a later one of the same subject has replaced.
    [[nodiscard]] bool isHistory(int row) const;

private:
    void layOut();
    [[nodiscard]] QString text(int row, int column) const;
    [[nodiscard]] int earlierOf(int row) const;

    const kitchen::Catalogue& m_catalogue;
    QList<people::ToleranceNote> m_all;   ///< newest first
    QList<people::ToleranceNote> m_notes; ///< the rows
    QList<people::Subject> m_unfolded;
};

} // namespace ladlework::ui
