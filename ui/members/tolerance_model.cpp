#include "ui/members/tolerance_model.h"

#include "ui/members/subject_picker.h"
#include "ui/shared/day_text.h"

#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <algorithm>

namespace ladlework::ui {

ToleranceModel::ToleranceModel(const kitchen::Catalogue& catalogue, QObject* parent)
    : QAbstractTableModel(parent), m_catalogue(catalogue) {}

void ToleranceModel::setNotes(QList<people::ToleranceNote> notes) {
    std::ranges::stable_sort(notes, [](const auto& a, const auto& b) {
        return std::pair(b.noted, b.id) < std::pair(a.noted, a.id);
    });
    beginResetModel();
    m_notes = std::move(notes);
    endResetModel();
}

const people::ToleranceNote* ToleranceModel::noteAt(int row) const {
    return row >= 0 && row < m_notes.size() ? &m_notes.at(row) : nullptr;
}

int ToleranceModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_notes.size());
}

int ToleranceModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

bool ToleranceModel::isHistory(int row) const {
    const people::Subject& subject = m_notes.at(row).subject;
    return std::any_of(m_notes.cbegin(), m_notes.cbegin() + row,
                       [&](const auto& later) { return later.subject == subject; });
}

QVariant ToleranceModel::data(const QModelIndex& index, int role) const {
    const people::ToleranceNote* note = index.isValid() ? noteAt(index.row()) : nullptr;
    if (!note)
        return {};
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole)
        return text(*note, index.column());
    if (role == Qt::ForegroundRole && isHistory(index.row()))
        return QGuiApplication::palette().brush(QPalette::Disabled, QPalette::Text);
    return {};
}

QString ToleranceModel::text(const people::ToleranceNote& note, int column) const {
    const QLocale locale;
    switch (column) {
    case SubjectColumn:
        return subjectName(note.subject, m_catalogue);
    case VerdictColumn:
        if (note.allergy)
            return tr("Avoid: allergy");
        if (note.tryAgainOn)
            return tr("Try again on %1").arg(printDay(*note.tryAgainOn, locale));
        return people::verdictName(note.verdict);
    case ReasonColumn:
        return note.reason;
    default:
        return printDay(note.noted, locale);
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
    default:
        return tr("Noted");
    }
}

} // namespace ladlework::ui
