#include "ui/shell/history_model.h"

#include "store/workbook.h"

#include <QFont>
#include <QLocale>

#include <algorithm>

namespace ladlework::ui {

namespace {
constexpr int page = 100;
}

HistoryModel::HistoryModel(const store::Workbook& workbook, QObject* parent)
    : QAbstractListModel(parent), m_workbook(workbook) {}

int HistoryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const store::HistoryEntry& entry = m_entries[index.row()];
    const QString when =
        QLocale().toString(entry.atUtc.toLocalTime(), QStringLiteral("ddd d MMM, HH:mm"));
    switch (role) {
    case Qt::DisplayRole:
        return entry.undone ? tr("%1\n%2, taken back").arg(entry.sentence, when)
                            : tr("%1\n%2").arg(entry.sentence, when);
    case Qt::ToolTipRole:
        return entry.sentence;
    case Qt::FontRole: {
        QFont font;
        font.setStrikeOut(entry.undone);
        return font;
    }
    default:
        return {};
    }
}

bool HistoryModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_mayHaveMore;
}

void HistoryModel::fetchMore(const QModelIndex& parent) {
    if (parent.isValid())
        return;
    const qsizetype had = m_entries.size();
    const QList<store::HistoryEntry> entries =
        m_workbook.history().latest(static_cast<int>(had) + page);
    m_mayHaveMore = entries.size() == had + page;
    if (entries.size() <= had)
        return;
    beginInsertRows({}, static_cast<int>(had), static_cast<int>(entries.size()) - 1);
    m_entries = entries;
    endInsertRows();
}

void HistoryModel::refresh() {
    const int count = std::max(page, static_cast<int>(m_entries.size()));
    beginResetModel();
    m_entries = m_workbook.history().latest(count);
    m_mayHaveMore = m_entries.size() == count;
    endResetModel();
}

} // namespace ladlework::ui
