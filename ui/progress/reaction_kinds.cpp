#include "ui/progress/reaction_kinds.h"

#include "ui/shared/day_text.h"

#include <QHash>
#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

QList<ReactionKind> reactionKinds(const QList<intake::Reaction>& reactions) {
    QHash<QString, ReactionKind> byName;
    for (const intake::Reaction& reaction : reactions) {
        ReactionKind& kind = byName[reaction.symptom.toCaseFolded()];
        if (kind.times == 0) {
            kind.symptom = reaction.symptom;
            kind.first = kind.last = reaction.day;
        }
        ++kind.times;
        kind.strongest = std::max(kind.strongest, reaction.strength);
        kind.redFlag = kind.redFlag || reaction.redFlag;
        kind.first = std::min(kind.first, reaction.day);
        kind.last = std::max(kind.last, reaction.day);
    }
    QList<ReactionKind> kinds = byName.values();
    std::ranges::sort(kinds, [](const ReactionKind& a, const ReactionKind& b) {
        return std::tuple(-a.times, b.last, a.symptom) < std::tuple(-b.times, a.last, b.symptom);
    });
    return kinds;
}

void ReactionKindsModel::setKinds(QList<ReactionKind> kinds) {
    beginResetModel();
    m_kinds = std::move(kinds);
    endResetModel();
}

int ReactionKindsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_kinds.size());
}

int ReactionKindsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant ReactionKindsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_kinds.size() ||
        (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    const ReactionKind& kind = m_kinds.at(index.row());
    switch (index.column()) {
    case SymptomColumn:
        return kind.redFlag ? tr("%1 (red flag)").arg(kind.symptom) : kind.symptom;
    case TimesColumn:
        return kind.times;
    case StrongestColumn:
        return kind.strongest;
    case FirstColumn:
        return printDay(kind.first, QLocale());
    default:
        return printDay(kind.last, QLocale());
    }
}

QVariant ReactionKindsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case SymptomColumn:
        return tr("What was felt");
    case TimesColumn:
        return tr("Times");
    case StrongestColumn:
        return tr("Strongest, 0-10");
    case FirstColumn:
        return tr("First");
    default:
        return tr("Last");
    }
}

} // namespace ladlework::ui
