#include "ui/progress/climb_days_model.h"

#include "ui/shared/asked_amount.h"
#include "ui/shared/day_text.h"

#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

using intake::LadderDay;
using intake::LadderDecision;

void ClimbDaysModel::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    QList<Line> days;
    for (const LadderDay& day : standing.replay.days)
        days.prepend({day.day,
                      amountWords(askedOn(book, standing, day), book.records().family.measures),
                      decisionWords(day), whyWords(book, standing, day)});
    const bool same = standing.member.id == m_member &&
                      std::ranges::equal(days, m_days, {}, &Line::day, &Line::day);
    if (!same)
        beginResetModel();
    m_member = standing.member.id;
    m_days = std::move(days);
    if (!same)
        endResetModel();
    else if (!m_days.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void ClimbDaysModel::clear() {
    beginResetModel();
    m_days.clear();
    m_member = {};
    endResetModel();
}

int ClimbDaysModel::rowOf(QDate day) const {
    const auto found = std::ranges::find(m_days, day, &Line::day);
    return found == m_days.end() ? -1 : static_cast<int>(found - m_days.begin());
}

QDate ClimbDaysModel::dayAt(int row) const {
    return row >= 0 && row < m_days.size() ? m_days.at(row).day : QDate{};
}

int ClimbDaysModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_days.size());
}

int ClimbDaysModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString decisionWords(const LadderDay& day) {
    switch (day.decision) {
    case LadderDecision::Advance:
        return ClimbDaysModel::tr("one rung up");
    case LadderDecision::Stay:
        return ClimbDaysModel::tr("stay");
    case LadderDecision::Hold:
        return ClimbDaysModel::tr("hold");
    case LadderDecision::Back:
        return ClimbDaysModel::tr("step back");
    case LadderDecision::Stop:
        return beganStopped(day) ? ClimbDaysModel::tr("stopped") : ClimbDaysModel::tr("stop");
    case LadderDecision::Gap:
        return ClimbDaysModel::tr("no entry");
    case LadderDecision::Stale:
        return ClimbDaysModel::tr("no entry: back");
    }
    return {};
}

QVariant ClimbDaysModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_days.size() ||
        (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    const Line& line = m_days.at(index.row());
    switch (index.column()) {
    case DayColumn:
        return printDay(line.day, QLocale());
    case AskedColumn:
        return line.asked;
    case DecisionColumn:
        return line.decision;
    default:
        return line.why;
    }
}

QVariant ClimbDaysModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case DayColumn:
        return tr("Day");
    case AskedColumn:
        return tr("Asked");
    case DecisionColumn:
        return tr("Decided");
    default:
        return tr("Why");
    }
}

} // namespace ladlework::ui
