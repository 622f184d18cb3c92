#include "ui/members/retry_form.h"

#include "ui/members/retry_model.h"
#include "ui/members/subject_picker.h"
#include "ui/paint/theme.h"
#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/day_text.h"
#include "ui/shared/problem_line.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace ladlework::ui {

using people::RetryPlan;
using quantity::Volume;

namespace {
constexpr int longestWatch = 30;
constexpr int dayWidth = 24; ///< characters
} // namespace

RetryForm::RetryForm(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_title(new QLabel(this)), m_start(new DayEdit(this)),
      m_watch(new QSpinBox(this)), m_steps(new QLineEdit(this)), m_note(new QLineEdit(this)),
      m_days(new QLabel(this)), m_problem(new ProblemLine(this)), m_keep(new QPushButton(this)) {
    lay();
    connect(m_start, &QuantityEdit::valueEdited, this, &RetryForm::showDays);
    connect(m_watch, &QSpinBox::valueChanged, this, &RetryForm::showDays);
    connect(m_steps, &QLineEdit::textChanged, this, &RetryForm::showDays);
    connect(m_keep, &QPushButton::clicked, this, &RetryForm::keep);
    for (QLineEdit* edit : std::initializer_list<QLineEdit*>{m_start, m_steps, m_note})
        connect(edit, &QLineEdit::returnPressed, this, &RetryForm::keep);
}

void RetryForm::lay() {
    m_title->setFont(sectionFont(font()));
    m_title->setWordWrap(true);
    m_start->setAccessibleName(tr("First day of the retry"));
    CharacterWidth::hold(*m_start, dayWidth);
    m_watch->setRange(0, longestWatch);
    m_watch->setSuffix(tr(" days"));
    m_watch->setAccessibleName(tr("Days to watch after each step"));
    m_steps->setAccessibleName(tr("Amounts of the steps, separated by commas"));
    m_note->setAccessibleName(tr("Note on the retry"));
    m_note->setPlaceholderText(tr("what was agreed"));
    m_days->setWordWrap(true);
    m_days->setForegroundRole(QPalette::PlaceholderText);
    m_keep->setProperty("primary", true);
    auto* form = new QFormLayout;
    auto* first = new QHBoxLayout;
    first->addWidget(m_start);
    first->addWidget(new QLabel(tr("watching after each step for"), this));
    first->addWidget(m_watch);
    first->addStretch();
    form->addRow(tr("First day"), first);
    form->addRow(tr("Steps"), m_steps);
    form->addRow(QString(), m_days);
    form->addRow(tr("Note"), m_note);
    auto* leave = new QPushButton(tr("Leave it"), this);
    connect(leave, &QPushButton::clicked, this, &RetryForm::finished);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_keep);
    buttons->addWidget(leave);
    buttons->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_title);
    column->addLayout(form);
    column->addWidget(m_problem);
    column->addLayout(buttons);
}

void RetryForm::open(const RetryPlan& plan, const QString& name, QDate today,
                     quantity::MeasureSystem measures) {
    m_plan = plan;
    m_name = name;
    m_today = today;
    m_measures = measures;
    const QString what = subjectName(plan.subject, m_context.catalogue);
    m_title->setText(tr("Try %1 again with %2").arg(what, name));
    m_keep->setText(plan.id.isStored() ? tr("Keep the changes") : tr("Plan the retr&y"));
    m_start->setToday(today);
    m_start->setDay(plan.start);
    m_watch->setValue(plan.watchDays);
    QStringList steps;
    for (Volume step : plan.steps)
        steps.append(quantity::printVolume(step, measures));
    m_steps->setText(steps.join(QStringLiteral(", ")));
    m_note->setText(plan.note);
    m_problem->clear();
    showDays();
}

Result<RetryPlan> RetryForm::typed() const {
    RetryPlan plan = m_plan;
    plan.start = m_start->day();
    plan.watchDays = m_watch->value();
    plan.note = m_note->text().trimmed();
    plan.steps.clear();
    const QStringList parts = m_steps->text().split(u',', Qt::SkipEmptyParts);
    for (qsizetype i = 0; i < parts.size(); ++i) {
        const QString part = parts.at(i).trimmed();
        // Words that stand as they were shown keep the stored amount: the words are rounded.
        if (i < m_plan.steps.size() &&
            part == quantity::printVolume(m_plan.steps.at(i), m_measures)) {
            plan.steps.append(m_plan.steps.at(i));
            continue;
        }
        const Result<Volume> amount = quantity::parseVolume(part, m_measures);
        if (!amount)
            return passOn(amount);
        plan.steps.append(*amount);
    }
    return plan;
}

void RetryForm::showDays() {
    const Result<RetryPlan> plan = typed();
    if (!plan) {
        m_days->setText(plan.error().sentence);
        return;
    }
    if (!plan->start.isValid() || plan->steps.isEmpty()) {
        m_days->setText(tr("Type the first day and at least one amount."));
        return;
    }
    m_days->setText(
        tr("%1; watched until %2.")
            .arg(retryStepWords(*plan, m_measures), printDay(plan->lastDay(), QLocale())));
}

void RetryForm::keep() {
    const Result<RetryPlan> plan = typed();
    if (!plan) {
        m_problem->say(plan.error().sentence);
        m_steps->setFocus();
        return;
    }
    const QString what = subjectName(plan->subject, m_context.catalogue);
    const QString sentence = plan->id.isStored()
                                 ? tr("Changed the retry of %1 for %2").arg(what, m_name)
                                 : tr("Planned a retry of %1 for %2").arg(what, m_name);
    const Outcome outcome = m_context.workbook.act(sentence, [&](store::Action& action) -> Outcome {
        if (plan->id.isStored())
            return m_context.workbook.families().changeRetryPlan(action, *plan);
        const auto added = m_context.workbook.families().addRetryPlan(action, *plan);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    if (m_problem->take(outcome))
        Q_EMIT finished();
}

QWidget* RetryForm::firstField() const {
    return m_start;
}

void RetryForm::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT finished();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace ladlework::ui
