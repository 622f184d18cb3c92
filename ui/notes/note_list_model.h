#pragma once

#include "casebook/visit_note.h"

#include <QAbstractListModel>

namespace ladlework::ui {

/// The visit notes of a family, newest first: the day and the first words.
class NoteListModel final : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;
    void setNotes(QList<casebook::VisitNote> notes);
    [[nodiscard]] const casebook::VisitNote* noteAt(int row) const;
    /// The row of a note; -1 when it is not there.
    [[nodiscard]] int rowOf(NoteId note) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    QList<casebook::VisitNote> m_notes;
};

} // namespace ladlework::ui
