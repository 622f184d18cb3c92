#include "ui/members/tolerance_model.h"

#include "ui/members/subject_picker.h"
#include "ui/shared/day_text.h"

#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <algorithm>
#include <iterator>

namespace ladlework::ui {

ToleranceModel::ToleranceModel(const kitchen::Catalogue& catalogue, QObject* parent)
    : QAbstractTableModel(parent), m_catalogue(catalogue) {}

void ToleranceModel::setNotes(const QList<people::ToleranceNote>& notes) {
    m_all = notes;
    std::ranges::stable_sort(m_all, [](const auto& a, const auto& b) {
        return std::pair(b.noted, b.id) < std::pair(a.noted, a.id);
    });
    layOut();
}

void ToleranceModel::layOut() {
    beginResetModel();
    m_notes.clear();
    for (const people::ToleranceNote& note : std::as_const(m_all)) {
        const auto sameSubject = [&note](const people::ToleranceNote& other) {
            return other.subject == note.subject;
        };
        if (std::ranges::any_of(m_notes, sameSubject))
            continue;
        if (m_unfolded.contains(note.subject))
            std::ranges::copy_if(m_all, std::back_inserter(m_notes), sameSubject);
        else
            m_notes.append(note);
    }
    endResetModel();
}

const people::ToleranceNote* ToleranceModel::noteAt(int row) const {
    return row >= 0 && row < m_notes.size() ? &m_notes.at(row) : nullptr;
}

int ToleranceModel::rowOf(ToleranceId note) const {
    const auto found = std::ranges::find(m_notes, note, &people::ToleranceNote::id);
    return found == m_notes.end() ? -1 : static_cast<int>(found - m_notes.begin());
}

int ToleranceModel::earlierOf(int row) const {
    return static_cast<int>(std::ranges::count(m_all, m_notes.at(row).subject,
                                               &people::ToleranceNote::subject)) -
           1;
}

bool ToleranceModel::isUnfolded(int row) const {
    const people::ToleranceNote* note = noteAt(row);
    return note && m_unfolded.contains(note->subject);
}

bool ToleranceModel::setUnfolded(int row, bool unfolded) {
    const people::ToleranceNote* note = noteAt(row);
    if (!note || earlierOf(row) == 0 || isUnfolded(row) == unfolded)
        return false;
    if (unfolded)
        m_unfolded.append(note->subject);
    else
        m_unfolded.removeAll(people::Subject(note->subject));
    layOut();
    return true;
}

int ToleranceModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_notes.size());
}

int ToleranceModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

bool ToleranceModel::isHistory(int row) const {
    const people::Subject& subject = m_notes.at(row).subject;
    return std::any_of(m_notes.cbegin(), m_notes.cbegin() + row,
                       [&](const auto& later) { return later.subject == subject; });
}

QVariant ToleranceModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !noteAt(index.row()))
        return {};
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole)
        return text(index.row(), index.column());
    if (role == Qt::ForegroundRole && isHistory(index.row()))
        return QGuiApplication::palette().brush(QPalette::PlaceholderText);
    return {};
}

QString ToleranceModel::text(int row, int column) const {
    const people::ToleranceNote& note = m_notes.at(row);
    const QLocale locale;
    switch (column) {
    case SubjectColumn: {
        const QString name = subjectName(note.subject, m_catalogue);
        return isHistory(row) ? tr("    earlier: %1").arg(name) : name;
    }
    case VerdictColumn:
        if (note.allergy || (!isHistory(row) && people::allergyStands(m_all, note.subject)))
            return tr("Avoid: allergy");
        if (note.tryAgainOn)
            return tr("Try again on %1").arg(printDay(*note.tryAgainOn, locale));
        return people::verdictName(note.verdict);
    case ReasonColumn:
        return note.reason;
    case NotedColumn:
        return printDay(note.noted, locale);
    default: {
        const int earlier = earlierOf(row);
        if (isHistory(row) || earlier == 0)
            return {};
        if (isUnfolded(row))
            return tr("fold");
        return earlier == 1 ? tr("1 earlier") : tr("%1 earlier").arg(earlier);
    }
    }
}

QVariant ToleranceModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case SubjectColumn:
        return tr("What");
    case VerdictColumn:
        return tr("How it is taken");
    case ReasonColumn:
        return tr("Why");
    case NotedColumn:
        return tr("Noted");
    default:
        return tr("History");
    }
}

} // namespace ladlework::ui
