#include "ui/notes/notes_screen.h"

#include "ui/notes/note_list_model.h"
#include "ui/paint/theme.h"
#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/day_text.h"
#include "ui/shared/empty_state.h"
#include "ui/shared/note_edit.h"
#include "ui/shared/section.h"

#include <QAction>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QListView>
#include <QLocale>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

NotesScreen::NotesScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_model(new NoteListModel(this)), m_list(new QListView(this)),
      m_pages(new QStackedWidget(this)) {
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Visit notes, newest first"));
    m_list->setSpacing(2);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setWordWrap(true);
    m_list->setUniformItemSizes(false);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    constexpr int charactersWide = 32;
    CharacterWidth::hold(*m_list, charactersWide);
    auto* write = new QPushButton(tr("&Write a note"), this);
    auto* left = new QVBoxLayout;
    left->addWidget(m_list, 1);
    left->addWidget(write);
    auto* layout = new QHBoxLayout(this);
    layout->setSpacing(2 * step(*this));
    layout->addLayout(left);
    layout->addWidget(m_pages, 1);
    m_empty = new EmptyState(
        tr("No notes yet"),
        tr("Write what you saw and heard at a visit, what was agreed, and when to look again. "
           "A review day shows up under what wants attention."),
        tr("Write the first note"), this);
    m_pages->addWidget(makeEditor());
    m_pages->addWidget(m_empty);
    makeActions();
    connect(write, &QPushButton::clicked, this, &NotesScreen::startNew);
    connect(m_empty->button(), &QPushButton::clicked, this, &NotesScreen::startNew);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid()) {
                    m_new = false;
                    showChosen();
                }
            });
}

QWidget* NotesScreen::makeEditor() {
    auto* editor = new QWidget(this);
    m_section = new Section(tr("Note"), editor);
    m_day = new DayEdit(editor);
    m_review = new DayEdit(editor);
    m_text = new NoteEdit(editor);
    m_agreed = new NoteEdit(editor);
    m_remove = new QPushButton(tr("Remove note"), editor);
    m_section->addAction(m_remove);
    m_text->setMaximumHeight(QWIDGETSIZE_MAX); // takes the height there is
    m_text->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_agreed->setLines(3);
    constexpr int dayWidth = 24;
    for (DayEdit* edit : {m_day, m_review})
        CharacterWidth::hold(*edit, dayWidth);
    m_review->setMayBeEmpty(true);
    m_review->setPlaceholderText(tr("none planned"));
    auto* form = new QFormLayout;
    form->addRow(tr("&Day"), m_day);
    form->addRow(tr("Seen and said"), m_text);
    form->addRow(tr("Agreed"), m_agreed);
    form->addRow(tr("Next review"), m_review);
    m_section->body()->addLayout(form, 1);
    auto* layout = new QVBoxLayout(editor);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_section, 1);
    for (NoteEdit* edit : {m_text, m_agreed})
        connect(edit, &NoteEdit::committed, this, &NotesScreen::save);
    for (DayEdit* edit : {m_day, m_review})
        connect(edit, &QuantityEdit::valueCommitted, this, &NotesScreen::save);
    connect(m_remove, &QPushButton::clicked, this, &NotesScreen::removeChosen);
    return editor;
}

void NotesScreen::makeActions() {
    auto* write = new QAction(tr("Write a note"), this);
    write->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_T));
    write->setStatusTip(tr("Starts a visit note for today"));
    connect(write, &QAction::triggered, this, &NotesScreen::startNew);
    auto* remove = new QAction(tr("Remove the chosen note"), this);
    remove->setStatusTip(tr("Undo brings it back"));
    connect(remove, &QAction::triggered, this, &NotesScreen::removeChosen);
    addActions({write, remove});
    m_remove->setToolTip(tr("Removes this note; Delete in the list does the same"));
    auto* deletes = new QShortcut(QKeySequence::Delete, m_list);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &NotesScreen::removeChosen);
}

const casebook::VisitNote* NotesScreen::chosen() const {
    return m_new ? nullptr : m_model->noteAt(m_list->currentIndex().row());
}

void NotesScreen::refresh(bool sameFamily) {
    NoteId before;
    if (sameFamily && m_added.isStored())
        before = std::exchange(m_added, NoteId{});
    else if (const casebook::VisitNote* note = sameFamily ? chosen() : nullptr)
        before = note->id;
    const int rowBefore = sameFamily ? m_list->currentIndex().row() : 0;
    const bool writing = sameFamily && m_new;
    m_model->setNotes(book().records().notes);
    if (writing)
        return;
    m_new = false;
    if (m_model->rowCount() == 0) {
        m_pages->setCurrentWidget(m_empty);
        return;
    }
    const int row = m_model->rowOf(before);
    m_list->setCurrentIndex(
        m_model->index(row >= 0 ? row : std::clamp(rowBefore, 0, m_model->rowCount() - 1)));
    showChosen();
}

void NotesScreen::showChosen() {
    const casebook::VisitNote* note = chosen();
    if (!note)
        return;
    m_pages->setCurrentIndex(0);
    m_section->setTitle(tr("Note of %1").arg(printDay(note->day, QLocale())));
    m_section->setRemark({});
    m_day->setToday(book().today());
    m_day->setRange({}, book().today());
    m_day->setDay(note->day);
    m_text->setText(note->text);
    m_agreed->setText(note->agreed);
    m_review->setToday(book().today());
    m_review->setDay(note->reviewOn);
    m_remove->setEnabled(true);
}

void NotesScreen::startNew() {
    m_list->setFocus(); // what is being typed is kept first
    m_new = true;
    m_list->clearSelection();
    m_list->setCurrentIndex({});
    m_pages->setCurrentIndex(0);
    m_section->setTitle(tr("New note"));
    m_section->setRemark(
        tr("Kept when you leave the text, or with Ctrl+Enter. Escape gives it up."));
    m_day->setToday(book().today());
    m_day->setRange({}, book().today());
    m_day->setDay(book().today());
    m_text->setText({});
    m_agreed->setText({});
    m_review->setToday(book().today());
    m_review->setDay({});
    m_remove->setEnabled(false);
    m_text->setFocus();
}

void NotesScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_new)
        giveUpNew();
    else
        FamilyScreen::keyPressEvent(event);
}

void NotesScreen::giveUpNew() {
    m_text->setText(m_text->text()); // nothing is left to keep when the focus goes
    m_agreed->setText(m_agreed->text());
    m_new = false;
    refresh(true);
    firstField()->setFocus();
}

Outcome NotesScreen::keepReview(store::Action& action, QDate reviewOn) const {
    people::Family family = book().records().family;
    if (family.reviewOn == reviewOn)
        return {};
    family.reviewOn = reviewOn;
    return context().workbook.families().changeFamily(action, family);
}

void NotesScreen::save() {
    if (m_new) {
        saveNew();
        return;
    }
    const casebook::VisitNote* stored = chosen();
    if (!stored)
        return;
    casebook::VisitNote note = *stored;
    const bool latest = m_list->currentIndex().row() == 0;
    const bool reviewMoved = note.reviewOn != m_review->day();
    note.day = m_day->day();
    note.text = m_text->text();
    note.agreed = m_agreed->text();
    note.reviewOn = m_review->day();
    const bool done = context().act(
        this, tr("Changed the note of %1").arg(printDay(note.day, QLocale())),
        [&](store::Action& action) {
            return context().workbook.notes().changeNote(action, note).and_then([&]() -> Outcome {
                return latest && reviewMoved ? keepReview(action, note.reviewOn) : Outcome{};
            });
        });
    if (!done)
        showChosen();
}

void NotesScreen::saveNew() {
    if (m_text->text().isEmpty())
        return;
    casebook::VisitNote note;
    note.family = book().records().family.id;
    note.day = m_day->day();
    note.text = m_text->text();
    note.agreed = m_agreed->text();
    note.reviewOn = m_review->day();
    m_new = false;
    const bool done = context().act(
        this, tr("Wrote a note of %1").arg(printDay(note.day, QLocale())),
        [&](store::Action& action) -> Outcome {
            const auto added = context().workbook.notes().addNote(action, note);
            if (!added)
                return passOn(added);
            m_added = *added;
            return note.reviewOn.isValid() ? keepReview(action, note.reviewOn) : Outcome{};
        });
    m_new = !done;
}

void NotesScreen::removeChosen() {
    const casebook::VisitNote* note = chosen();
    if (!note)
        return;
    const NoteId id = note->id;
    context().act(
        this, tr("Removed the note of %1").arg(printDay(note->day, QLocale())),
        [&](store::Action& action) { return context().workbook.notes().removeNote(action, id); });
}

QWidget* NotesScreen::firstField() {
    return m_model->rowCount() > 0 ? static_cast<QWidget*>(m_list) : m_empty->button();
}

void NotesScreen::showField(const QString& field) {
    if (field == u"review" && m_review->isVisible())
        m_review->setFocus();
}

} // namespace ladlework::ui
