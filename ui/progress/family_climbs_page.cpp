#include "ui/progress/family_climbs_page.h"

#include "ui/paint/theme.h"
#include "ui/progress/comparison.h"
#include "ui/progress/comparison_chart.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int mostRows = 9;
}

FamilyClimbsPage::FamilyClimbsPage(QWidget* parent)
    : QWidget(parent), m_chart(new ClimbComparisonChart(this)),
      m_model(new ClimbComparisonModel(this)),
      m_table(makeTable(m_model, tr("Where each member stands"), ClimbComparisonModel::WhenColumn,
                        this)) {
    auto* section = new Section(tr("The climbs side by side"), this);
    section->setRemark(
        tr("what is asked, as a share of each member's own target; a line breaks off while the "
           "ladder is stopped"));
    section->body()->addWidget(m_chart, 1);
    section->body()->addWidget(m_table);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section, 1);
    connect(m_table, &QTableView::activated, this, [this](const QModelIndex& index) {
        Q_EMIT memberWanted(m_model->memberAt(index.row()));
    });
}

void FamilyClimbsPage::show(const casebook::Casebook& book, int days) {
    m_chart->show(climbShares(book), book.today(), days);
    m_model->show(book);
    fitRows(*m_table, 1, mostRows);
}

QWidget* FamilyClimbsPage::firstField() const {
    return m_table;
}

} // namespace ladlework::ui
