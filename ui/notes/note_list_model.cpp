#include "ui/notes/note_list_model.h"

#include "ui/shared/day_text.h"

#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

namespace {

/// The first words, cut between two of them.
QString beginning(const QString& text) {
    constexpr int most = 70;
    if (text.size() <= most)
        return text;
    const qsizetype gap = text.lastIndexOf(u' ', most);
    QString start = text.left(gap > 0 ? gap : most);
    while (!start.isEmpty() && start.back().isPunct())
        start.chop(1);
    return QString(start + u'…');
}

} // namespace

void NoteListModel::setNotes(QList<casebook::VisitNote> notes) {
    const bool same =
        std::ranges::equal(notes, m_notes, {}, &casebook::VisitNote::id, &casebook::VisitNote::id);
    if (!same)
        beginResetModel();
    m_notes = std::move(notes);
    if (!same)
        endResetModel();
    else if (!m_notes.isEmpty())
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

const casebook::VisitNote* NoteListModel::noteAt(int row) const {
    return row >= 0 && row < m_notes.size() ? &m_notes.at(row) : nullptr;
}

int NoteListModel::rowOf(NoteId note) const {
    for (int row = 0; row < m_notes.size(); ++row)
        if (m_notes.at(row).id == note)
            return row;
    return -1;
}

int NoteListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_notes.size());
}

QVariant NoteListModel::data(const QModelIndex& index, int role) const {
    const casebook::VisitNote* note = index.isValid() ? noteAt(index.row()) : nullptr;
    if (!note || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole))
        return {};
    return QString(printDay(note->day, QLocale()) + u'\n' + beginning(note->text.simplified()));
}

} // namespace ladlework::ui
