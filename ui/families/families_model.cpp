#include "ui/families/families_model.h"

#include "ui/paint/finding_mark.h"

#include <algorithm>

namespace ladlework::ui {

namespace {

using Status = people::Family::Status;

const FamilyId foldRow{0};

int urgency(const FamilySummary& summary) {
    const auto worst = summary.worst();
    return worst ? static_cast<int>(*worst) : -1;
}

/// A finding in the width of the list; the page of everyone's day has the whole sentence.
QString wordsFor(const Finding& finding) {
    if (finding.code == u"ladder-stopped")
        return FamiliesModel::tr("Ladder stopped");
    if (finding.code == u"red-flag")
        return FamiliesModel::tr("Red flag to answer");
    if (finding.code == u"no-entry")
        return FamiliesModel::tr("Nothing entered");
    if (finding.code == u"review-due")
        return FamiliesModel::tr("Review due");
    if (finding.code == u"ladder-stuck")
        return FamiliesModel::tr("Ladder stuck");
    if (finding.code == u"target-reached")
        return FamiliesModel::tr("Target reached");
    if (finding.code == u"target-held")
        return FamiliesModel::tr("Held long enough");
    if (finding.code.startsWith(u"weight-"))
        return FamiliesModel::tr("Weight lost");
    if (finding.code == u"retry-barred")
        return FamiliesModel::tr("New try must not go on");
    if (finding.code.startsWith(u"retry-"))
        return FamiliesModel::tr("New try due");
    if (finding.code == u"stock-past-use")
        return FamiliesModel::tr("Stock past its day");
    return finding.text;
}

bool comesBefore(const FamilySummary* a, const FamilySummary* b) {
    if (urgency(*a) != urgency(*b))
        return urgency(*a) > urgency(*b);
    return a->family.name.localeAwareCompare(b->family.name) < 0;
}

} // namespace

QString shortWords(const FamilySummary& summary) {
    if (!summary.attention.isEmpty()) {
        const QString worst = wordsFor(summary.attention.first());
        const qsizetype more = summary.attention.size() - 1;
        return more == 0 ? worst : FamiliesModel::tr("%1, %2 more").arg(worst).arg(more);
    }
    switch (summary.family.status) {
    case Status::Resting:
        return FamiliesModel::tr("Resting");
    case Status::Finished:
        return FamiliesModel::tr("Finished");
    case Status::Active:
        break;
    }
    return {};
}

FamiliesModel::FamiliesModel(const AttentionReader& reader, QObject* parent)
    : QAbstractListModel(parent), m_reader(reader) {
    connect(&reader, &AttentionReader::changed, this, &FamiliesModel::rearrange);
    m_rows = wantedRows();
}

int FamiliesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant FamiliesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const FamilyId id = m_rows[index.row()];
    if (id == foldRow)
        return foldData(role);
    const FamilySummary* summary = m_reader.summary(id);
    if (summary == nullptr)
        return {};
    const QString words = shortWords(*summary);
    const auto worst = summary->worst();
    switch (role) {
    case Qt::DisplayRole:
        return summary->family.name;
    case Qt::ToolTipRole:
        return summary->attention.isEmpty() ? words : summary->attention.first().text;
    case Qt::AccessibleTextRole:
        if (words.isEmpty())
            return summary->family.name;
        return worst ? tr("%1. %2: %3").arg(summary->family.name, severityWord(*worst), words)
                     : tr("%1. %2").arg(summary->family.name, words);
    case FamilyRole:
        return id.value;
    case WordsRole:
        return words;
    case SeverityRole:
        return worst ? QVariant(static_cast<int>(*worst)) : QVariant();
    case IsFoldRole:
        return false;
    case IsActiveRole:
        return summary->family.status == Status::Active;
    default:
        return {};
    }
}

QVariant FamiliesModel::foldData(int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return tr("Resting and finished (%1)").arg(asideCount());
    case Qt::AccessibleTextRole:
        return m_open ? tr("Resting and finished, shown") : tr("Resting and finished, folded");
    case FamilyRole:
        return 0;
    case IsFoldRole:
        return true;
    case IsOpenRole:
        return m_open;
    default:
        return {};
    }
}

Qt::ItemFlags FamiliesModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren
                           : Qt::NoItemFlags;
}

void FamiliesModel::setSearch(const QString& text) {
    m_search = text.split(u' ', Qt::SkipEmptyParts);
    rearrange();
}

void FamiliesModel::setOpen(bool open) {
    m_open = open;
    rearrange();
}

QModelIndex FamiliesModel::indexOf(FamilyId family) const {
    const qsizetype row = family.isStored() ? m_rows.indexOf(family) : -1;
    return row < 0 ? QModelIndex() : index(static_cast<int>(row));
}

FamilyId FamiliesModel::familyAt(const QModelIndex& index) const {
    return index.isValid() ? m_rows.value(index.row()) : FamilyId();
}

bool FamiliesModel::matches(const QString& name) const {
    return std::ranges::all_of(
        m_search, [&](const QString& word) { return name.contains(word, Qt::CaseInsensitive); });
}

qsizetype FamiliesModel::asideCount() const {
    return std::ranges::count_if(m_reader.summaries(), [](const FamilySummary& summary) {
        return summary.family.status != Status::Active;
    });
}

QList<FamilyId> FamiliesModel::wantedRows() const {
    QList<const FamilySummary*> active;
    QList<const FamilySummary*> aside;
    for (const FamilySummary& summary : m_reader.summaries()) {
        if (matches(summary.family.name))
            (summary.family.status == Status::Active ? active : aside).append(&summary);
    }
    std::ranges::stable_sort(active, comesBefore);
    std::ranges::stable_sort(aside, comesBefore);
    QList<FamilyId> rows;
    for (const FamilySummary* summary : active)
        rows.append(summary->family.id);
    const bool searching = !m_search.isEmpty();
    if (!searching && !aside.isEmpty())
        rows.append(foldRow);
    if (searching || m_open) {
        for (const FamilySummary* summary : aside)
            rows.append(summary->family.id);
    }
    return rows;
}

void FamiliesModel::rearrange() {
    moveTo(wantedRows());
    if (!m_rows.isEmpty())
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

/// Row by row, so that the view keeps its selection, its focus and its place.
void FamiliesModel::moveTo(const QList<FamilyId>& wanted) {
    for (qsizetype row = m_rows.size() - 1; row >= 0; --row) {
        if (wanted.contains(m_rows[row]))
            continue;
        beginRemoveRows({}, static_cast<int>(row), static_cast<int>(row));
        m_rows.removeAt(row);
        endRemoveRows();
    }
    for (qsizetype row = 0; row < wanted.size(); ++row) {
        if (row < m_rows.size() && m_rows[row] == wanted[row])
            continue;
        const int to = static_cast<int>(row);
        const qsizetype from = m_rows.indexOf(wanted[row], row);
        if (from < 0) {
            beginInsertRows({}, to, to);
            m_rows.insert(row, wanted[row]);
            endInsertRows();
        } else {
            beginMoveRows({}, static_cast<int>(from), static_cast<int>(from), {}, to);
            m_rows.move(from, row);
            endMoveRows();
        }
    }
}

} // namespace ladlework::ui
