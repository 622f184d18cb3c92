#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"

#include <QWidget>
#include <memory>

class QLabel;
class QTableView;

namespace ladlework::ui {

class ClimbChart;
class ClimbDaysModel;
class ClimbLegend;
class ResumePanel;

/// One member's climb: the drawing, where it stands in words, and every day with its reason.
class ClimbPage final : public QWidget {
    Q_OBJECT
public:
    ClimbPage(const ScreenContext& context, QWidget* parent);
    /// The last `days` days; 0 shows the whole ladder. A member under 6 months has none.
    void show(std::shared_ptr<const casebook::Casebook> casebook,
              const casebook::Standing& standing, int days);
    using QWidget::show;
    void focusChart();
    /// True when the decision to go on can be recorded now; then it has the focus.
    bool focusDecision();

private:
    void connectParts();

    ResumePanel* m_resume;
    QLabel* m_summary;
    ClimbChart* m_chart;
    ClimbLegend* m_legend;
    ClimbDaysModel* m_days;
    QTableView* m_table;
};

/// Where a member stands, in a few sentences.
QString climbSummary(const casebook::Casebook& book, const casebook::Standing& standing);

} // namespace ladlework::ui
