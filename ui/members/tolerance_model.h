#pragma once

#include "kitchen/catalogue.h"
#include "people/tolerance.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The tolerance notes of one member, newest first; a later note on the same subject takes the
/// place of an earlier one, which stays as history in quiet ink.
class ToleranceModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { SubjectColumn, VerdictColumn, ReasonColumn, NotedColumn, ColumnCount };

    ToleranceModel(const kitchen::Catalogue& catalogue, QObject* parent);
    void setNotes(QList<people::ToleranceNote> notes);
    [[nodiscard]] const people::ToleranceNote* noteAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

    /// True for a note that a later one of the same subject has replaced.
    [[nodiscard]] bool isHistory(int row) const;

private:
    [[nodiscard]] QString text(const people::ToleranceNote& note, int column) const;
    const kitchen::Catalogue& m_catalogue;
    QList<people::ToleranceNote> m_notes;
};

} // namespace ladlework::ui
