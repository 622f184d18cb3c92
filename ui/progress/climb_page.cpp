#include "ui/progress/climb_page.h"

#include "ui/paint/theme.h"
#include "ui/progress/climb_chart.h"
#include "ui/progress/climb_days_model.h"
#include "ui/progress/climb_legend.h"
#include "ui/progress/resume_panel.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

ClimbPage::ClimbPage(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_resume(new ResumePanel(context, this)), m_summary(new QLabel(this)),
      m_chart(new ClimbChart(this)), m_legend(new ClimbLegend(this)),
      m_days(new ClimbDaysModel(this)),
      m_table(makeTable(m_days, tr("Days of the climb, latest first"), ClimbDaysModel::WhyColumn,
                        this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this));
    layout->addWidget(m_resume);
    auto* climb = new Section(tr("The climb"), this);
    m_summary->setWordWrap(true);
    climb->body()->addWidget(m_summary);
    climb->body()->addWidget(m_chart, 1);
    climb->body()->addWidget(m_legend);
    layout->addWidget(climb, 3);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    constexpr int fewestRows = 3;
    m_table->setMinimumHeight(m_table->horizontalHeader()->sizeHint().height() +
                              fewestRows * m_table->verticalHeader()->defaultSectionSize());
    m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    layout->addWidget(m_table, 2);
    connectParts();
}

void ClimbPage::connectParts() {
    connect(m_chart, &ClimbChart::dayChosen, this, [this](QDate day) {
        const QModelIndex row = m_days->index(m_days->rowOf(day), 0);
        if (row.isValid() && row.row() != m_table->currentIndex().row())
            m_table->setCurrentIndex(row);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid())
                    m_chart->setDay(m_days->dayAt(current.row()));
            });
}

void ClimbPage::show(std::shared_ptr<const casebook::Casebook> casebook,
                     const casebook::Standing& standing, int days) {
    const bool climbs = standing.ladder.has_value();
    m_chart->setVisible(climbs);
    m_legend->setVisible(climbs);
    m_table->setVisible(climbs);
    m_summary->setText(climbSummary(*casebook, standing));
    if (!climbs) {
        m_chart->show(std::move(casebook), {}, 0);
        m_days->clear();
        m_resume->hide();
        return;
    }
    m_resume->show(*casebook, standing);
    m_chart->show(casebook, standing.member.id, days);
    m_days->show(*casebook, standing);
    m_table->setCurrentIndex(m_days->index(m_days->rowOf(m_chart->day()), 0));
}

void ClimbPage::focusChart() {
    m_chart->setFocus();
}

bool ClimbPage::focusDecision() {
    if (!m_resume->isVisibleTo(this))
        return false;
    m_resume->takeFocus();
    return true;
}

} // namespace ladlework::ui
