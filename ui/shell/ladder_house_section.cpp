#include "ui/shell/ladder_house_section.h"

#include "ui/members/ladder_rules_panel.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"
#include "ui/shell/templates_model.h"

#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int mostRows = 6;
}

LadderHouseSection::LadderHouseSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_rules(new LadderRulesPanel(this)),
      m_problem(new ProblemLine(this)), m_model(new TemplatesModel(context, this)),
      m_table(makeTable(m_model, tr("Ladder templates"), TemplatesModel::RungsColumn, this)),
      m_empty(new QLabel(tr("No template is kept yet. Under Members the rungs of a ladder can be "
                            "kept as one."),
                         this)) {
    auto* section = new Section(tr("Ladders"), this);
    section->setRemark(tr("the rules a new ladder starts with; those of members stay as they are"));
    auto* remove = new QPushButton(tr("Remove template"), this);
    section->addAction(remove);
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_empty->setWordWrap(true);
    for (QWidget* part : std::initializer_list<QWidget*>{m_rules, m_problem, m_table, m_empty})
        section->body()->addWidget(part);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(m_rules, &LadderRulesPanel::committed, this, &LadderHouseSection::saveRules);
    connect(m_model, &TemplatesModel::said, m_problem, &ProblemLine::say);
    connect(remove, &QPushButton::clicked, this,
            [this] { m_model->removeTemplate(m_table->currentIndex().row()); });
    connect(m_model, &QAbstractItemModel::modelReset, remove,
            [this, remove] { remove->setVisible(m_model->rowCount() > 0); });
    refresh();
}

void LadderHouseSection::refresh() {
    m_rules->setRules(m_context.workbook.practice().houseRules());
    m_model->refresh();
    const bool any = m_model->rowCount() > 0;
    m_table->setVisible(any);
    m_empty->setVisible(!any);
    fitRows(*m_table, 1, mostRows);
}

void LadderHouseSection::saveRules() {
    const intake::LadderRules rules = m_rules->rules();
    const Outcome outcome = m_context.workbook.act(
        tr("Changed the house rules of ladders"), [&](store::Action& action) {
            return m_context.workbook.practice().setHouseRules(action, rules);
        });
    if (!m_problem->take(outcome))
        m_rules->setRules(m_context.workbook.practice().houseRules());
}

} // namespace ladlework::ui
