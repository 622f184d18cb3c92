#pragma once

#include "casebook/casebook.h"

#include <QWidget>

class QTableView;

namespace ladlework::ui {

class ClimbComparisonChart;
class ClimbComparisonModel;

/// The climbs of all members beside each other.
class FamilyClimbsPage final : public QWidget {
    Q_OBJECT
public:
    explicit FamilyClimbsPage(QWidget* parent);
    /// The last `days` days; 0 shows everything.
    void show(const casebook::Casebook& book, int days);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

Q_SIGNALS:
    /// A member was chosen with Enter or a double click.
    void memberWanted(ladlework::MemberId member);

private:
    ClimbComparisonChart* m_chart;
    ClimbComparisonModel* m_model;
    QTableView* m_table;
};

} // namespace ladlework::ui
