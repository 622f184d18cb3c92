#include "ui/pot/pot_screen.h"

#include "casebook/first_pot.h"
#include "ui/paint/theme.h"
#include "ui/pot/balance_panel.h"
#include "ui/pot/cooking_line.h"
#include "ui/pot/pot_change.h"
#include "ui/pot/pot_drawing.h"
#include "ui/pot/pot_editor.h"
#include "ui/pot/pot_library_model.h"
#include "ui/pot/who_panel.h"
#include "ui/shared/character_width.h"
#include "ui/shared/empty_state.h"
#include "ui/shared/page_scroll.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QTimeEdit>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace ladlework::ui {

using kitchen::Pot;
using quantity::Volume;

namespace {

const QTime usualStart(10, 0);

} // namespace

PotScreen::PotScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_model(new PotLibraryModel(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setSpacing(step(*this));
    layout->addWidget(makeLibrary());
    m_builder = makeBuilder();
    m_answer = makeAnswer();
    m_empty = new EmptyState(tr("No pots yet"),
                             tr("A pot is a recipe for one cooking: bones, water, salt, vegetables "
                                "and time. Build one here and see at once what comes out of it and "
                                "who may drink it."),
                             tr("Start the first pot"), this);
    m_work = new SideBySide(this); // the answer stands below when both do not fit
    m_work->setSpacing(step(*this));
    m_work->add(m_builder, 4);
    m_work->add(m_answer, 5);
    m_work->setMinimumWidth(1);
    layout->addWidget(m_work, 9);
    layout->addWidget(m_empty, 9);
    makeActions();
    connect(m_empty->button(), &QPushButton::clicked, this, &PotScreen::startNew);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &PotScreen::showChosen);
    connect(m_editor, &PotEditor::draftChanged, this, [this] { reckon(m_editor->draft()); });
    connect(m_editor, &PotEditor::committed, this, &PotScreen::save);
    connect(m_editor, &PotEditor::refused, this,
            [this](const QString& sentence) { this->context().desk.tell(this, sentence); });
    connect(m_drawing, &PotDrawing::waterDragged, this, [this](Volume water) {
        m_editor->setWater(water);
        reckon(m_editor->draft());
    });
    connect(m_drawing, &PotDrawing::waterChosen, this, [this](Volume water) {
        m_editor->setWater(water);
        save();
    });
}

QWidget* PotScreen::makeLibrary() {
    auto* library = new QWidget(this);
    m_list = new QListView(library);
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Pots at hand"));
    m_list->setSpacing(1);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* add = new QPushButton(tr("&New pot"), library);
    m_lowMeat = new QPushButton(tr("Low-meat va&riant"), library);
    m_lowMeat->setToolTip(tr("A copy with cuts of the same animals that carry little meat"));
    auto* layout = new QVBoxLayout(library);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_list, 1);
    for (QPushButton* button : {add, m_lowMeat})
        layout->addWidget(button);
    constexpr int charactersWide = 26;
    CharacterWidth::hold(*library, charactersWide);
    auto* deletes = new QShortcut(QKeySequence::Delete, m_list);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &PotScreen::removeChosen);
    m_list->setToolTip(tr("Delete removes the chosen pot; Undo brings it back"));
    connect(add, &QPushButton::clicked, this, &PotScreen::startNew);
    connect(m_lowMeat, &QPushButton::clicked, this, &PotScreen::makeLowMeat);
    return library;
}

QScrollArea* PotScreen::makeBuilder() {
    m_pot = new Section(tr("The pot"), this);
    m_shared = new QWidget(m_pot);
    auto* words = new QLabel(
        tr("This is the practice's pot: a change here counts for every family."), m_shared);
    words->setWordWrap(true);
    auto* own = new QPushButton(tr("Make it &their own"), m_shared);
    own->setToolTip(tr("Copies the practice's pot for this family, to be changed freely"));
    connect(own, &QPushButton::clicked, this, &PotScreen::copyForFamily);
    auto* row = new QHBoxLayout(m_shared);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(words, 1);
    row->addWidget(own);
    m_editor = new PotEditor(context().catalogue, m_pot);
    m_pot->body()->addWidget(m_shared);
    m_pot->body()->addWidget(m_editor, 1);
    return new PageScroll(m_pot, this);
}

QScrollArea* PotScreen::makeAnswer() {
    auto* page = new QWidget(this);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this));
    m_drawing = new PotDrawing(page);
    m_line = new CookingLine(page);
    m_balance = new BalancePanel(page);
    m_who = new WhoPanel(page);
    m_start = new QTimeEdit(usualStart, page);
    m_start->setAccessibleName(tr("Start of the cooking"));
    layout->addWidget(m_drawing);
    m_out = new Section(tr("What comes out"), page);
    auto* row = new SideBySide(page);
    row->setSpacing(2 * step(*this));
    for (QWidget* part : std::initializer_list<QWidget*>{m_balance, m_who})
        part->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    row->add(m_balance, 3);
    row->add(m_who, 2);
    m_out->body()->addWidget(row);
    layout->addWidget(m_out);
    auto* line = new Section(tr("When what goes in"), page);
    auto* startLabel = new QLabel(tr("start at"), page);
    startLabel->setBuddy(m_start);
    line->addAction(startLabel);
    line->addAction(m_start);
    line->body()->addWidget(m_line);
    layout->addWidget(line);
    layout->addStretch();
    m_line->setStart(m_start->time());
    connect(m_start, &QTimeEdit::timeChanged, m_line, &CookingLine::setStart);
    return new PageScroll(page, this);
}

void PotScreen::makeActions() {
    auto* add = new QAction(tr("Start a new pot"), this);
    add->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
    connect(add, &QAction::triggered, this, &PotScreen::startNew);
    add->setStatusTip(tr("A small pot to be changed"));
    auto* own = new QAction(tr("Copy the pot for this family"), this);
    own->setStatusTip(tr("Copies the chosen pot for this family, to be changed freely"));
    connect(own, &QAction::triggered, this, &PotScreen::copyForFamily);
    auto* lowMeat = new QAction(tr("Make a low-meat variant of the pot"), this);
    connect(lowMeat, &QAction::triggered, this, &PotScreen::makeLowMeat);
    auto* remove = new QAction(tr("Remove the chosen pot"), this);
    remove->setStatusTip(tr("Undo brings it back; a pot that was cooked or is planned stays"));
    lowMeat->setStatusTip(tr("A copy with cuts of the same animals that carry little meat"));
    connect(remove, &QAction::triggered, this, &PotScreen::removeChosen);
    auto* drawing = new QAction(tr("Move the water line"), this);
    drawing->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_L));
    drawing->setStatusTip(tr("Goes to the drawing; the up and down keys move the line"));
    connect(drawing, &QAction::triggered, m_drawing, [this] { m_drawing->setFocus(); });
    addActions({add, own, lowMeat, remove, drawing});
}

const Pot* PotScreen::chosen() const {
    return m_model->potAt(m_list->currentIndex().row());
}

void PotScreen::refresh(bool sameFamily) {
    PotId before;
    if (sameFamily && m_added.isStored())
        before = std::exchange(m_added, PotId{});
    else if (const Pot* pot = sameFamily ? chosen() : nullptr)
        before = pot->id;
    const int rowBefore = sameFamily ? m_list->currentIndex().row() : 0;
    m_model->show(book().records().pots);
    const int row = m_model->rowOf(before);
    m_list->setCurrentIndex(m_model->index(
        row >= 0 ? row : std::clamp(rowBefore, 0, std::max(0, m_model->rowCount() - 1))));
    showChosen();
}

void PotScreen::showChosen() {
    const Pot* pot = chosen();
    m_work->setVisible(pot);
    m_empty->setVisible(!pot);
    m_lowMeat->setEnabled(pot);
    if (!pot) {
        setFindings({});
        return;
    }
    m_shared->setVisible(!pot->family.isStored());
    m_pot->setRemark(pot->family.isStored() ? tr("this family's own") : QString());
    m_editor->show(*pot, book());
    reckon(*pot);
}

void PotScreen::reckon(const Pot& draft) {
    Pot named = draft;
    if (named.name.isEmpty())
        named.name = tr("pot");
    // A half-typed amount, such as the 0 of 0.5, is not reckoned; what was reckoned last stays.
    const Outcome good = kitchen::check(named, context().catalogue);
    m_out->setRemark(good ? QString() : tr("as before the last change"));
    if (!good)
        return;
    const kitchen::BrewInput input = book().brewInput(named);
    const kitchen::Brewed brewed = kitchen::brew(input, context().catalogue);
    m_drawing->show(named, input.vessel, brewed, measures());
    m_line->show(named, brewed, context().catalogue);
    m_balance->show(brewed, measures());
    m_who->show(brewed.who);
    m_lowMeat->setEnabled(!brewed.lowMeat);
    setFindings(brewed.findings);
}

void PotScreen::save() {
    const Pot* stored = chosen();
    if (!stored)
        return;
    const Pot draft = m_editor->draft();
    const QString sentence = potChange(*stored, draft, context().catalogue, measures());
    const bool done = context().act(this, sentence, [&](store::Action& action) {
        return context().workbook.pots().changePot(action, draft);
    });
    if (!done)
        showChosen();
}

void PotScreen::addPot(Pot pot, const QString& sentence) {
    pot.id = {};
    const bool done = context().act(this, sentence, [&](store::Action& action) -> Outcome {
        const auto added = context().workbook.pots().addPot(action, pot);
        if (!added)
            return passOn(added);
        m_added = *added;
        return {};
    });
    if (done)
        m_editor->editName();
}

void PotScreen::startNew() {
    Pot pot = casebook::firstPot();
    pot.family = book().records().family.id;
    pot.name = tr("New pot");
    addPot(pot, tr("Started a new pot"));
}

void PotScreen::copyForFamily() {
    const Pot* stored = chosen();
    if (!stored)
        return;
    Pot pot = *stored;
    pot.family = book().records().family.id;
    pot.name = tr("%1, %2").arg(stored->name, book().records().family.name);
    addPot(
        pot,
        tr("Copied the pot %1 for the family %2").arg(stored->name, book().records().family.name));
}

void PotScreen::makeLowMeat() {
    const Pot* stored = chosen();
    const auto variant =
        stored ? kitchen::lowMeatVariant(*stored, context().catalogue) : std::nullopt;
    if (!variant) {
        context().desk.tell(this, tr("There is no low-meat cut for this pot: it is low in meat "
                                     "already, or its animal has none."));
        return;
    }
    Pot pot = *variant;
    pot.family = book().records().family.id;
    pot.name = tr("%1, low-meat").arg(stored->name);
    addPot(pot, tr("Made a low-meat variant of %1").arg(stored->name));
}

void PotScreen::removeChosen() {
    const Pot* pot = chosen();
    if (!pot)
        return;
    const PotId id = pot->id;
    context().act(this, tr("Removed the pot %1").arg(pot->name), [&](store::Action& action) {
        return context().workbook.pots().removePot(action, id);
    });
}

void PotScreen::showField(const QString& field) {
    QWidget* widget = m_editor->field(field);
    if (!widget) {
        Q_EMIT screenWanted(QStringLiteral("members")); // who drinks it, and the altitude
        return;
    }
    m_builder->ensureWidgetVisible(widget);
    widget->setFocus(Qt::OtherFocusReason);
}

QWidget* PotScreen::firstField() {
    return m_model->rowCount() > 0 ? static_cast<QWidget*>(m_list) : m_empty->button();
}

} // namespace ladlework::ui
