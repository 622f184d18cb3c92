#pragma once

#include "kitchen/catalogue.h"
#include "people/retry_plan.h"
#include "quantity/measure.h"

#include <QAbstractTableModel>

namespace ladlework::ui {

/// The retries of one member, open ones first, then the latest: what, when, which amounts, and how
/// it stands.
class RetryModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { SubjectColumn, StepsColumn, StateColumn, ColumnCount };

    RetryModel(const kitchen::Catalogue& catalogue, QObject* parent);
    void setPlans(QList<people::RetryPlan> plans, QDate today, quantity::MeasureSystem measures);
    [[nodiscard]] const people::RetryPlan* planAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] QString stateWords(const people::RetryPlan& plan) const;

    const kitchen::Catalogue& m_catalogue;
    QList<people::RetryPlan> m_plans;
    QDate m_today;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

/// "Nov 5: 1 tsp, Nov 8: 1 tbsp, ...": the days of the steps with their amounts.
QString retryStepWords(const people::RetryPlan& plan, quantity::MeasureSystem measures);

} // namespace ladlework::ui
