#include "ui/members/tolerance_section.h"

#include "ui/members/subject_picker.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"
#include "ui/shared/text_field.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using Verdict = people::ToleranceNote::Verdict;

namespace {
constexpr int mostRowsShown = 8;
}

ToleranceSection::ToleranceSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new ToleranceModel(context.catalogue, this)),
      m_table(makeTable(m_model, tr("Tolerance notes"), ToleranceModel::ReasonColumn, this)),
      m_subject(new SubjectPicker(context.catalogue, this)), m_verdict(new QComboBox(this)),
      m_allergy(new QCheckBox(tr("Allergy or severe reaction"), this)),
      m_reason(new TextField(this)), m_tryAgain(new DayEdit(this)),
      m_remove(new QPushButton(tr("Remove note"), this)),
      m_change(new QPushButton(tr("Change the verdict"), this)),
      m_retry(new QPushButton(tr("Plan a retry"), this)), m_problem(new ProblemLine(this)) {
    auto* section = new Section(tr("Tolerance notes"), this);
    section->setRemark(
        tr("What is avoided stays out of pots, week and pages. Right and Left unfold "
           "and fold the history."));
    for (QPushButton* button : {m_change, m_retry, m_remove})
        section->addAction(button);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->installEventFilter(this);
    section->body()->addWidget(m_table);
    section->body()->addWidget(makeEntryLine());
    section->body()->addWidget(m_problem);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(m_remove, &QPushButton::clicked, this, &ToleranceSection::removeSelected);
    m_remove->setToolTip(tr("Takes out a note that was written by mistake; Delete in the table "
                            "does the same"));
    m_change->setToolTip(tr("Writes a new note on the same subject; this one stays as history"));
    m_retry->setToolTip(tr("Small amounts with days to watch, by a plan"));
    connect(m_change, &QPushButton::clicked, this, &ToleranceSection::changeSelected);
    connect(m_retry, &QPushButton::clicked, this, [this] {
        if (const people::ToleranceNote* note = m_model->noteAt(m_table->currentIndex().row()))
            Q_EMIT retryWanted(note->subject);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &ToleranceSection::suitButtons);
    connect(m_table, &QTableView::clicked, this, [this](const QModelIndex& index) {
        if (index.column() == ToleranceModel::EarlierColumn)
            unfold(!m_model->isUnfolded(index.row()));
    });
    auto* deletes = new QShortcut(QKeySequence::Delete, m_table);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &ToleranceSection::removeSelected);
    connect(m_verdict, &QComboBox::currentIndexChanged, this, &ToleranceSection::suitVerdict);
    connect(m_allergy, &QCheckBox::toggled, this, &ToleranceSection::suitVerdict);
    suitVerdict();
}

QWidget* ToleranceSection::makeEntryLine() {
    for (Verdict verdict :
         {Verdict::Avoid, Verdict::SmallAmounts, Verdict::Fine, Verdict::TryAgainOn})
        m_verdict->addItem(people::verdictName(verdict), people::verdictId(verdict));
    m_subject->setAccessibleName(tr("What the note is about"));
    m_verdict->setAccessibleName(tr("How it is taken"));
    m_reason->setAccessibleName(tr("Why"));
    m_reason->setPlaceholderText(tr("Why: what was seen, and when"));
    m_tryAgain->setAccessibleName(tr("Try again on"));
    m_tryAgain->setPlaceholderText(tr("Day of the retry"));
    m_tryAgain->setMayBeEmpty(true);
    auto* addButton = new QPushButton(tr("Add n&ote"), this);
    auto* line = new QWidget(this);
    auto* rows = new QVBoxLayout(line);
    rows->setContentsMargins(0, 0, 0, 0);
    auto* first = new QHBoxLayout;
    first->addWidget(m_subject, 3);
    first->addWidget(m_verdict, 1);
    first->addWidget(m_tryAgain, 1);
    auto* second = new QHBoxLayout;
    second->addWidget(m_allergy);
    second->addWidget(m_reason, 1);
    second->addWidget(addButton);
    rows->addLayout(first);
    rows->addLayout(second);
    setTabOrder(m_subject, m_verdict);
    setTabOrder(m_verdict, m_tryAgain);
    setTabOrder(m_tryAgain, m_allergy);
    setTabOrder(m_allergy, m_reason);
    setTabOrder(m_reason, addButton);
    connect(addButton, &QPushButton::clicked, this, &ToleranceSection::add);
    connect(m_reason, &QLineEdit::returnPressed, this, &ToleranceSection::add);
    return line;
}

void ToleranceSection::suitVerdict() {
    if (m_allergy->isChecked())
        m_verdict->setCurrentIndex(m_verdict->findData(people::verdictId(Verdict::Avoid)));
    m_verdict->setEnabled(!m_allergy->isChecked());
    const bool retry =
        m_verdict->currentData().toString() == people::verdictId(Verdict::TryAgainOn);
    m_tryAgain->setEnabled(retry);
}

void ToleranceSection::show(const casebook::Casebook& book, const casebook::Standing& standing) {
    if (standing.member.id != m_member.id) {
        clearEntryLine();
        m_problem->clear();
    }
    m_member = standing.member;
    m_today = book.today();
    QList<people::ToleranceNote> notes;
    for (const people::ToleranceNote& note : book.records().tolerances)
        if (note.member == m_member.id)
            notes.append(note);
    m_notes = notes;
    m_cautions = standing.cautions;
    const people::ToleranceNote* before = m_model->noteAt(m_table->currentIndex().row());
    const ToleranceId kept = before ? before->id : ToleranceId{};
    m_model->setNotes(notes);
    if (m_model->rowCount() > 0)
        m_table->selectRow(std::max(0, m_model->rowOf(kept)));
    suitButtons();
    fitRows(*m_table, 1, mostRowsShown);
    m_table->setVisible(!notes.isEmpty());
    for (QPushButton* button : {m_change, m_retry, m_remove})
        button->setVisible(!notes.isEmpty());
    m_tryAgain->setToday(m_today);
    m_tryAgain->setRange(m_today.addDays(1), {});
}

QWidget* ToleranceSection::firstField() const {
    return m_subject;
}

void ToleranceSection::add() {
    const std::optional<people::Subject> subject = m_subject->subject();
    if (!subject) {
        m_problem->say(tr("Choose an animal, a cut or an ingredient from the list."));
        m_subject->setFocus();
        return;
    }
    people::ToleranceNote note;
    note.member = m_member.id;
    note.subject = *subject;
    note.verdict =
        people::verdictFromId(m_verdict->currentData().toString()).value_or(Verdict::Avoid);
    note.allergy = m_allergy->isChecked();
    note.reason = m_reason->trimmed();
    note.noted = m_today;
    if (note.verdict == Verdict::TryAgainOn && m_tryAgain->day().isValid())
        note.tryAgainOn = m_tryAgain->day();
    const QString what = subjectName(*subject, m_context.catalogue);
    if (!m_problem->take(mayStand(note)))
        return;
    const Outcome outcome = m_context.workbook.act(
        tr("Noted %1 for %2: %3").arg(what, m_member.name, people::verdictName(note.verdict)),
        [&](store::Action& action) -> Outcome {
            const auto added = m_context.workbook.families().addTolerance(action, note);
            return added ? Outcome{} : Outcome(passOn(added));
        });
    if (!m_problem->take(outcome))
        return;
    clearEntryLine();
    m_subject->setFocus();
}

/// A retry is not written down where an allergy or severe reaction is recorded.
Outcome ToleranceSection::mayStand(const people::ToleranceNote& note) const {
    if (note.verdict != Verdict::TryAgainOn)
        return {};
    QList<people::ToleranceNote> notes = m_notes;
    // The note to be written keeps the subject out: all that can refuse is an allergy.
    notes.append(note);
    return people::mayRetry(notes, m_cautions, note.subject, m_member.name, m_context.catalogue);
}

/// The line below begins a new note on the same subject.
void ToleranceSection::changeSelected() {
    const people::ToleranceNote* note = m_model->noteAt(m_table->currentIndex().row());
    if (!note)
        return;
    clearEntryLine();
    m_subject->setSubject(note->subject);
    m_verdict->setCurrentIndex(m_verdict->findData(people::verdictId(note->verdict)));
    // A recorded allergy is carried over: she takes the tick away by her own hand, or it stays.
    m_allergy->setChecked(people::allergyStands(m_notes, note->subject));
    QWidget* first = m_allergy->isChecked() ? static_cast<QWidget*>(m_allergy) : m_verdict;
    first->setFocus();
}

void ToleranceSection::suitButtons() {
    const people::ToleranceNote* note = m_model->noteAt(m_table->currentIndex().row());
    m_change->setEnabled(note);
    m_remove->setEnabled(note);
    // What is taken well needs no retry; the rest is answered in words.
    m_retry->setEnabled(note && !note->allergy && people::forbids(*note) &&
                        !m_model->isHistory(m_table->currentIndex().row()));
}

void ToleranceSection::unfold(bool unfolded) {
    const int row = m_table->currentIndex().row();
    const people::ToleranceNote* note = m_model->noteAt(row);
    if (!note)
        return;
    const ToleranceId kept = note->id;
    if (!m_model->setUnfolded(row, unfolded))
        return;
    m_table->selectRow(std::max(0, m_model->rowOf(kept)));
    fitRows(*m_table, 1, mostRowsShown);
}

bool ToleranceSection::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_table || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Right:
        unfold(true);
        return true;
    case Qt::Key_Left:
        unfold(false);
        return true;
    case Qt::Key_Space:
        unfold(!m_model->isUnfolded(m_table->currentIndex().row()));
        return true;
    default:
        return QWidget::eventFilter(watched, event);
    }
}

void ToleranceSection::clearEntryLine() {
    m_subject->clearSubject();
    m_reason->clear();
    m_reason->setStored({});
    m_allergy->setChecked(false);
    m_verdict->setCurrentIndex(0);
    m_tryAgain->setDay({});
}

void ToleranceSection::removeSelected() {
    const people::ToleranceNote* note = m_model->noteAt(m_table->currentIndex().row());
    if (!note) {
        m_problem->say(tr("Choose the note to remove in the table first."));
        return;
    }
    const ToleranceId id = note->id;
    const QString what = subjectName(note->subject, m_context.catalogue);
    m_problem->take(m_context.workbook.act(
        tr("Removed the note on %1 for %2").arg(what, m_member.name), [&](store::Action& action) {
            return m_context.workbook.families().removeTolerance(action, id);
        }));
}

} // namespace ladlework::ui
