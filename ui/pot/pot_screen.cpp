#include "ui/pot/pot_screen.h"

#include "casebook/first_pot.h"
#include "ui/paint/theme.h"
#include "ui/pot/comparison_page.h"
#include "ui/pot/cooling_panel.h"
#include "ui/pot/pot_answer.h"
#include "ui/pot/pot_change.h"
#include "ui/pot/pot_drawing.h"
#include "ui/pot/pot_editor.h"
#include "ui/pot/pot_library.h"
#include "ui/shared/empty_state.h"
#include "ui/shared/page_scroll.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>
#include <utility>

namespace ladlework::ui {

using kitchen::Pot;
using quantity::Volume;

namespace {

constexpr int quietMs = 120; ///< until nothing has moved for so long

} // namespace

PotScreen::PotScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_quiet(new QTimer(this)) {
    makeLibrary();
    makeSizeActions();
    makePageActions();
    layOut();
    connectEditor();
    connectAnswer();
    m_quiet->setSingleShot(true);
    m_quiet->setInterval(quietMs);
    connect(m_quiet, &QTimer::timeout, this, &PotScreen::settle);
}

PotScreen::~PotScreen() {
    // A field that loses the focus as it goes would hand over to a screen that is half gone.
    m_editor->disconnect(this);
    m_answer->drawing()->disconnect(this);
    m_answer->cooling()->disconnect(this);
}

void PotScreen::makeLibrary() {
    QAction* add = addScreenAction(tr("Start a new pot"), tr("A small pot to be changed"),
                                   QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
    QAction* own =
        addScreenAction(tr("Copy the pot for this family"),
                        tr("Copies the chosen pot for this family, to be changed freely"), {});
    QAction* remove =
        addScreenAction(tr("Remove the chosen pot"),
                        tr("Undo brings it back; a pot that was cooked or is planned stays"), {});
    QAction* compare =
        addScreenAction(tr("Compare with another pot"),
                        tr("Two pots side by side, with what clearly differs; Escape comes back"),
                        QKeySequence(Qt::CTRL | Qt::Key_M));
    connect(add, &QAction::triggered, this, &PotScreen::startNew);
    connect(own, &QAction::triggered, this, &PotScreen::copyForFamily);
    connect(remove, &QAction::triggered, this, &PotScreen::removeChosen);
    connect(compare, &QAction::triggered, this, &PotScreen::compare);
    m_library = new PotLibrary({{add, tr("&New pot")}, {compare, tr("Compare…")}}, this);
    connect(m_library, &PotLibrary::potChosen, this, &PotScreen::showChosen);
    connect(m_library, &PotLibrary::removeWanted, this, &PotScreen::removeChosen);
}

void PotScreen::makeSizeActions() {
    const auto add = [this](const QString& text, const QString& tip, Qt::Key key,
                            void (PotScreen::*work)()) {
        QAction* action = addScreenAction(text, tip, QKeySequence(Qt::CTRL | Qt::SHIFT | key));
        connect(action, &QAction::triggered, this, work);
        return action;
    };
    m_sizeActions.fit =
        add(tr("Size the pot to what fits it"),
            tr("Bones, water and all else to what the vessel holds with its headspace"), Qt::Key_F,
            &PotScreen::fitToVessel);
    m_sizeActions.lowMeat =
        add(tr("Make the nearest low-meat pot with the same yield"),
            tr("A pot of its own, with cuts of the same animals that carry little meat"), Qt::Key_M,
            &PotScreen::makeLowMeat);
    m_sizeActions.cover = add(tr("Size the pot to cover the days"),
                              tr("As much stock as those who may drink it need in so many days"),
                              Qt::Key_D, &PotScreen::coverDays);
    m_sizeActions.bones = add(tr("Size the pot to all of the bones at hand"),
                              tr("Uses up all that there is of one cut, the rest in proportion"),
                              Qt::Key_B, &PotScreen::useBones);
}

void PotScreen::makePageActions() {
    for (int number = 0; number < PotAnswer::PageCount; ++number) {
        const auto page = static_cast<PotAnswer::Page>(number);
        QAction* action = addScreenAction(
            tr("Show: %1").arg(PotAnswer::pageName(page)), tr("Turns to this page of the answer"),
            QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + number)));
        connect(action, &QAction::triggered, this, [this, page] {
            leaveComparison();
            m_answer->turnTo(page);
            m_work->ensureWidgetVisible(focusWidget());
        });
    }
    QAction* drawing = addScreenAction(
        tr("Move the water line"), tr("Goes to the drawing; the up and down keys move the line"),
        QKeySequence(Qt::CTRL | Qt::Key_L));
    connect(drawing, &QAction::triggered, this, [this] {
        leaveComparison();
        m_answer->drawing()->setFocus();
        m_work->ensureWidgetVisible(m_answer->drawing());
    });
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

void PotScreen::layOut() {
    m_builder = makeBuilder();
    m_answer = new PotAnswer(m_sizeActions, this);
    m_comparison = new ComparisonPage(this);
    m_empty = new EmptyState(tr("No pots yet"),
                             tr("A pot is a recipe for one cooking: bones, water, salt, vegetables "
                                "and time. Build one here and see at once what comes out of it and "
                                "who may drink it."),
                             tr("Start the first pot"), this);
    auto* sides = new SideBySide(this); // the answer stands below when both do not fit
    sides->setSpacing(step(*this));
    sides->add(m_builder, 4);
    m_answerArea = new PageScroll(m_answer, this);
    sides->add(m_answerArea, 5);
    connect(sides, &SideBySide::arranged, this, &PotScreen::letScroll);
    m_work = new PageScroll(sides, this);
    m_work->setMinimumWidth(1);
    auto* layout = new QHBoxLayout(this);
    layout->setSpacing(step(*this));
    layout->addWidget(m_library);
    for (QWidget* part : std::initializer_list<QWidget*>{m_work, m_comparison, m_empty})
        layout->addWidget(part, 9);
    connect(m_empty->button(), &QPushButton::clicked, this, &PotScreen::startNew);
    connect(m_comparison, &ComparisonPage::leave, this, &PotScreen::leaveComparison);
}

void PotScreen::letScroll(bool beside) {
    // Beside each other each side scrolls alone and the drawing stays in sight; below each other
    // both are one page.
    const auto whole = [beside](const QScrollArea* area) {
        return beside ? 0 : area->widget()->sizeHint().height();
    };
    m_builder->setMinimumHeight(whole(m_builder));
    m_answerArea->setMinimumHeight(whole(m_answerArea));
}

void PotScreen::connectEditor() {
    connect(m_editor, &PotEditor::draftChanged, this, [this] { reckon(m_editor->draft()); });
    connect(m_editor, &PotEditor::committed, this, &PotScreen::save);
    connect(m_editor, &PotEditor::priced, this, &PotScreen::setPrice);
    connect(m_editor, &PotEditor::refused, this,
            [this](const QString& sentence) { context().desk.tell(this, sentence); });
}

void PotScreen::connectAnswer() {
    connect(m_answer->drawing(), &PotDrawing::waterDragged, this, [this](Volume water) {
        m_editor->setWater(water);
        reckon(m_editor->draft());
    });
    connect(m_answer->drawing(), &PotDrawing::waterChosen, this, [this](Volume water) {
        m_editor->setWater(water);
        save();
    });
    connect(m_answer->cooling(), &CoolingPanel::containerChosen, this, &PotScreen::coolIn);
    connect(m_answer->cooling(), &CoolingPanel::wayChosen, this, &PotScreen::coolBy);
    connect(m_answer->cooling(), &CoolingPanel::tried, this, &PotScreen::settle);
}

const Pot* PotScreen::chosen() const {
    return m_library->chosen();
}

void PotScreen::refresh(bool sameFamily) {
    if (!sameFamily)
        m_isComparing = false;
    m_library->show(book().records().pots);
    if (m_added.isStored())
        m_library->choose(std::exchange(m_added, PotId{}));
    else
        showChosen();
}

void PotScreen::showChosen() {
    const Pot* pot = chosen();
    m_isComparing = m_isComparing && pot != nullptr;
    m_work->setVisible(pot != nullptr && !m_isComparing);
    m_comparison->setVisible(m_isComparing);
    m_empty->setVisible(pot == nullptr);
    for (QAction* action :
         {m_sizeActions.fit, m_sizeActions.cover, m_sizeActions.bones, m_sizeActions.lowMeat})
        action->setEnabled(pot != nullptr);
    if (pot == nullptr) {
        m_quiet->stop();
        setFindings({});
        return;
    }
    m_shared->setVisible(!pot->family.isStored());
    m_pot->setRemark(pot->family.isStored() ? tr("this family's own") : QString());
    m_editor->show(*pot, book());
    if (m_answer->inHand().pot.id != pot->id)
        m_coolingFindings.clear();
    reckon(*pot);
    if (m_isComparing)
        m_comparison->show(*pot, sharedBook());
}

void PotScreen::reckon(const Pot& draft) {
    Pot named = draft;
    if (named.name.isEmpty())
        named.name = tr("pot");
    // A half-typed amount, such as the 0 of 0.5, is not reckoned; what was reckoned last stays.
    const Outcome good = kitchen::check(named, context().catalogue);
    m_answer->setStale(!good);
    if (!good)
        return;
    kitchen::BrewInput input = book().brewInput(named);
    kitchen::Brewed brewed = kitchen::brew(input, context().catalogue);
    m_potFindings = brewed.findings;
    m_sizeActions.lowMeat->setEnabled(!brewed.lowMeat);
    m_answer->take({std::move(named), std::move(input), std::move(brewed), sharedBook()});
    m_quiet->start();
    // While the line is dragged the strip below would only flicker.
    if (!m_answer->drawing()->isMoving())
        setFindings(m_potFindings + m_coolingFindings);
}

void PotScreen::settle() {
    m_quiet->stop();
    if (chosen() == nullptr)
        return;
    m_coolingFindings = m_answer->settle();
    setFindings(m_potFindings + m_coolingFindings);
}

void PotScreen::showField(const QString& field) {
    leaveComparison();
    if (QWidget* cooling = m_answer->cooling()->field(field)) {
        m_answer->turnTo(PotAnswer::Cooling);
        cooling->setFocus(Qt::OtherFocusReason);
        m_work->ensureWidgetVisible(cooling);
        return;
    }
    QWidget* widget = m_editor->field(field);
    if (widget == nullptr) {
        Q_EMIT screenWanted(QStringLiteral("members")); // who drinks it, and the altitude
        return;
    }
    m_builder->ensureWidgetVisible(widget);
    m_work->ensureWidgetVisible(widget);
    widget->setFocus(Qt::OtherFocusReason);
}

QWidget* PotScreen::firstField() {
    return m_library->isEmpty() ? m_empty->button() : m_library->list();
}

} // namespace ladlework::ui
