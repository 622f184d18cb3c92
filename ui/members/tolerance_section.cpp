#include "ui/members/tolerance_section.h"

#include "ui/members/subject_picker.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"
#include "ui/shared/text_field.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using Verdict = people::ToleranceNote::Verdict;

ToleranceSection::ToleranceSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new ToleranceModel(context.catalogue, this)),
      m_table(makeTable(m_model, tr("Tolerance notes"), ToleranceModel::ReasonColumn, this)),
      m_subject(new SubjectPicker(context.catalogue, this)), m_verdict(new QComboBox(this)),
      m_allergy(new QCheckBox(tr("Allergy or severe reaction"), this)),
      m_reason(new TextField(this)), m_tryAgain(new DayEdit(this)),
      m_remove(new QPushButton(tr("Remove note"), this)) {
    auto* section = new Section(tr("Tolerance notes"), this);
    section->setRemark(tr("What is avoided is kept out of this member's pots, week and pages."));
    section->addAction(m_remove);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    section->body()->addWidget(m_table);
    section->body()->addWidget(makeEntryLine());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(m_remove, &QPushButton::clicked, this, &ToleranceSection::removeSelected);
    m_remove->setToolTip(tr("Removes the chosen note; Delete in the table does the same"));
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
    if (standing.member.id != m_member.id)
        clearEntryLine();
    m_member = standing.member;
    m_today = book.today();
    QList<people::ToleranceNote> notes;
    for (const people::ToleranceNote& note : book.records().tolerances)
        if (note.member == m_member.id)
            notes.append(note);
    const int row = m_table->currentIndex().row();
    m_model->setNotes(notes);
    if (row >= 0 && !notes.isEmpty())
        m_table->selectRow(std::min(row, m_model->rowCount() - 1));
    constexpr int mostRowsShown = 6;
    fitRows(*m_table, 1, mostRowsShown);
    m_table->setVisible(!notes.isEmpty());
    m_remove->setVisible(!notes.isEmpty());
    m_tryAgain->setToday(m_today);
    m_tryAgain->setRange(m_today.addDays(1), {});
}

QWidget* ToleranceSection::firstField() const {
    return m_subject;
}

void ToleranceSection::add() {
    const std::optional<people::Subject> subject = m_subject->subject();
    if (!subject) {
        m_context.desk.tell(this, tr("Choose an animal, a cut or an ingredient from the list."));
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
    const bool done = m_context.act(
        this, tr("Noted %1 for %2: %3").arg(what, m_member.name, people::verdictName(note.verdict)),
        [&](store::Action& action) -> Outcome {
            const auto added = m_context.workbook.families().addTolerance(action, note);
            return added ? Outcome{} : Outcome(passOn(added));
        });
    if (!done)
        return;
    clearEntryLine();
    m_subject->setFocus();
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
        m_context.desk.tell(this, tr("Choose the note to remove in the table first."));
        return;
    }
    const ToleranceId id = note->id;
    const QString what = subjectName(note->subject, m_context.catalogue);
    m_context.act(this, tr("Removed the note on %1 for %2").arg(what, m_member.name),
                  [&](store::Action& action) {
                      return m_context.workbook.families().removeTolerance(action, id);
                  });
}

} // namespace ladlework::ui
