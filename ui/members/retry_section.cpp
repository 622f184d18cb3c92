#include "ui/members/retry_section.h"

#include "ui/members/retry_form.h"
#include "ui/members/retry_model.h"
#include "ui/members/subject_picker.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using people::RetryPlan;
using Ending = people::RetryPlan::Ending;

namespace {
constexpr int mostRows = 5;
} // namespace

RetrySection::RetrySection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new RetryModel(context.catalogue, this)),
      m_table(makeTable(m_model, tr("Retries"), RetryModel::StepsColumn, this)),
      m_empty(
          new QLabel(tr("No retry is planned. Choose a tolerance note above and plan one."), this)),
      m_form(new RetryForm(context, this)), m_problem(new ProblemLine(this)),
      m_edit(new QPushButton(tr("Change the plan"), this)),
      m_remove(new QPushButton(tr("Remove the plan"), this)), m_outcome(new QComboBox(this)),
      m_seen(new QLineEdit(this)), m_record(new QPushButton(tr("Record how it &went"), this)),
      m_outcomeLine(nullptr) {
    auto* section = new Section(tr("Retries"), this);
    section->addAction(m_edit);
    section->addAction(m_remove);
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_empty->setWordWrap(true);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_outcomeLine = makeOutcomeLine();
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_empty, m_table, m_outcomeLine, m_problem, m_form})
        section->body()->addWidget(part);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    m_form->hide();
    connect(m_form, &RetryForm::finished, this, [this] {
        m_form->hide();
        showParts();
        firstField()->setFocus();
    });
    connect(m_edit, &QPushButton::clicked, this, &RetrySection::editChosen);
    connect(m_remove, &QPushButton::clicked, this, &RetrySection::removeChosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &RetrySection::showParts);
}

QWidget* RetrySection::makeOutcomeLine() {
    for (Ending ending : {Ending::Borne, Ending::NotBorne, Ending::GivenUp})
        m_outcome->addItem(people::retryOutcomeName(ending), people::retryOutcomeId(ending));
    m_outcome->setAccessibleName(tr("How the retry went"));
    m_seen->setAccessibleName(tr("What was seen in the retry"));
    m_seen->setPlaceholderText(tr("what was seen"));
    m_record->setToolTip(tr("Closes the retry and writes the tolerance note that follows"));
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new QLabel(tr("How it went"), line));
    row->addWidget(m_outcome);
    row->addWidget(m_seen, 1);
    row->addWidget(m_record);
    connect(m_record, &QPushButton::clicked, this, &RetrySection::recordOutcome);
    connect(m_seen, &QLineEdit::returnPressed, this, &RetrySection::recordOutcome);
    return line;
}

void RetrySection::show(std::shared_ptr<const casebook::Casebook> casebook,
                        const casebook::Standing& standing) {
    const bool sameMember = m_member.id == standing.member.id;
    m_casebook = std::move(casebook);
    m_member = standing.member;
    if (!sameMember) {
        m_form->hide();
        m_problem->clear();
        m_seen->clear();
    }
    QList<RetryPlan> plans = m_casebook->records().retryPlans;
    plans.removeIf([this](const RetryPlan& plan) { return plan.member != m_member.id; });
    m_model->setPlans(plans, m_casebook->today(), m_casebook->records().family.measures);
    if (!m_table->currentIndex().isValid() && m_model->rowCount() > 0)
        m_table->selectRow(0);
    fitRows(*m_table, 1, mostRows);
    showParts();
}

void RetrySection::showParts() {
    const bool any = m_model->rowCount() > 0;
    const RetryPlan* plan = chosen();
    const bool open = plan && plan->outcome == Ending::Open;
    const bool editing = !m_form->isHidden();
    m_table->setVisible(any);
    m_empty->setVisible(!any && !editing);
    m_outcomeLine->setVisible(open && !editing);
    m_edit->setVisible(open && !editing);
    m_remove->setVisible(plan && !editing);
}

const RetryPlan* RetrySection::chosen() const {
    return m_model->planAt(m_table->currentIndex().row());
}

QWidget* RetrySection::firstField() const {
    return m_model->rowCount() > 0 ? static_cast<QWidget*>(m_table) : m_empty;
}

RetryPlan RetrySection::newPlan(const people::Subject& subject) const {
    QDate start = m_casebook->today().addDays(1);
    const casebook::Standing* standing = m_casebook->standing(m_member.id);
    for (const people::ToleranceNote& note : standing->tolerances)
        if (note.subject == subject && note.tryAgainOn)
            start = std::max(start, *note.tryAgainOn);
    return people::usualRetry(m_member.id, subject, start);
}

void RetrySection::plan(const people::Subject& subject) {
    QList<people::ToleranceNote> notes = m_casebook->records().tolerances;
    notes.removeIf([this](const auto& note) { return note.member != m_member.id; });
    const casebook::Standing* standing = m_casebook->standing(m_member.id);
    const Outcome may =
        people::mayRetry(notes, standing->cautions, subject, m_member.name, m_context.catalogue);
    if (!m_problem->take(may))
        return;
    m_form->open(newPlan(subject), m_member.name, m_casebook->today(),
                 m_casebook->records().family.measures);
    m_form->show();
    showParts();
    m_form->firstField()->setFocus();
}

void RetrySection::editChosen() {
    const RetryPlan* plan = chosen();
    if (!plan)
        return;
    m_form->open(*plan, m_member.name, m_casebook->today(), m_casebook->records().family.measures);
    m_form->show();
    showParts();
    m_form->firstField()->setFocus();
}

void RetrySection::removeChosen() {
    const RetryPlan* plan = chosen();
    if (!plan)
        return;
    const RetryPlanId id = plan->id;
    const QString what = subjectName(plan->subject, m_context.catalogue);
    m_problem->take(m_context.workbook.act(
        tr("Removed the retry of %1 for %2").arg(what, m_member.name), [&](store::Action& action) {
            return m_context.workbook.families().removeRetryPlan(action, id);
        }));
}

/// The plan with its outcome, and the tolerance note that follows from it.
Outcome RetrySection::write(store::Action& action, const RetryPlan& plan) const {
    store::FamilyRepository& families = m_context.workbook.families();
    if (const Outcome changed = families.changeRetryPlan(action, plan); !changed)
        return changed;
    const std::optional<people::ToleranceNote> note = people::noteOf(plan);
    if (!note)
        return {};
    const auto added = families.addTolerance(action, *note);
    return added ? Outcome{} : Outcome(passOn(added));
}

void RetrySection::recordOutcome() {
    const RetryPlan* open = chosen();
    if (!open)
        return;
    RetryPlan plan = *open;
    plan.outcome =
        people::retryOutcomeFromId(m_outcome->currentData().toString()).value_or(Ending::GivenUp);
    plan.closed = m_casebook->today();
    if (const QString seen = m_seen->text().trimmed(); !seen.isEmpty())
        plan.note = seen;
    const QString what = subjectName(plan.subject, m_context.catalogue);
    const Outcome outcome = m_context.workbook.act(
        tr("Closed the retry of %1 for %2: %3")
            .arg(what, m_member.name, people::retryOutcomeName(plan.outcome)),
        [&](store::Action& action) { return write(action, plan); });
    if (m_problem->take(outcome))
        m_seen->clear();
}

} // namespace ladlework::ui
