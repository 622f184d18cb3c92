#include "ui/members/retry_model.h"

#include "ui/members/subject_picker.h"
#include "ui/shared/day_text.h"

#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

using people::RetryPlan;
using Ending = people::RetryPlan::Ending;

RetryModel::RetryModel(const kitchen::Catalogue& catalogue, QObject* parent)
    : QAbstractTableModel(parent), m_catalogue(catalogue) {}

void RetryModel::setPlans(QList<RetryPlan> plans, QDate today, quantity::MeasureSystem measures) {
    std::ranges::stable_sort(plans, [](const RetryPlan& a, const RetryPlan& b) {
        const bool aOpen = a.outcome == Ending::Open;
        const bool bOpen = b.outcome == Ending::Open;
        return aOpen != bOpen ? aOpen : b.start < a.start;
    });
    const bool same = std::ranges::equal(plans, m_plans, {}, &RetryPlan::id, &RetryPlan::id);
    if (!same)
        beginResetModel();
    m_plans = std::move(plans);
    m_today = today;
    m_measures = measures;
    if (!same)
        endResetModel();
    else if (!m_plans.isEmpty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

const RetryPlan* RetryModel::planAt(int row) const {
    return row >= 0 && row < m_plans.size() ? &m_plans.at(row) : nullptr;
}

int RetryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_plans.size());
}

int RetryModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QString retryStepWords(const RetryPlan& plan, quantity::MeasureSystem measures) {
    QStringList words;
    for (int step = 0; step < plan.steps.size(); ++step)
        words.append(
            RetryModel::tr("%1: %2").arg(printShortDay(plan.dayOfStep(step), QLocale()),
                                         quantity::printVolume(plan.steps.at(step), measures)));
    return words.join(QStringLiteral(", "));
}

QString RetryModel::stateWords(const RetryPlan& plan) const {
    const QLocale locale;
    if (plan.outcome != Ending::Open)
        return tr("%1 on %2")
            .arg(people::retryOutcomeName(plan.outcome), printDay(plan.closed, locale));
    if (m_today > plan.lastDay())
        return tr("watched to the end: write down how it went");
    if (m_today < plan.start)
        return tr("begins on %1").arg(printDay(plan.start, locale));
    for (int step = 0; step < plan.steps.size(); ++step)
        if (plan.dayOfStep(step) >= m_today)
            return plan.dayOfStep(step) == m_today
                       ? tr("step %1 of %2 is today").arg(step + 1).arg(plan.steps.size())
                       : tr("step %1 of %2 on %3")
                             .arg(step + 1)
                             .arg(plan.steps.size())
                             .arg(printDay(plan.dayOfStep(step), locale));
    return tr("watched until %1").arg(printDay(plan.lastDay(), locale));
}

QVariant RetryModel::data(const QModelIndex& index, int role) const {
    const RetryPlan* plan = index.isValid() ? planAt(index.row()) : nullptr;
    if (!plan || (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    switch (index.column()) {
    case SubjectColumn:
        return subjectName(plan->subject, m_catalogue);
    case StepsColumn:
        return retryStepWords(*plan, m_measures);
    default:
        return stateWords(*plan);
    }
}

QVariant RetryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case SubjectColumn:
        return tr("What");
    case StepsColumn:
        return tr("Steps");
    default:
        return tr("How it stands");
    }
}

} // namespace ladlework::ui
