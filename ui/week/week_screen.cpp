#include "ui/week/week_screen.h"

#include "casebook/retry_steps.h"
#include "ui/paint/theme.h"
#include "ui/shared/action_button.h"
#include "ui/shared/start_time.h"
#include "ui/shared/week_stepper.h"
#include "ui/week/board_model.h"
#include "ui/week/board_view.h"
#include "ui/week/calendar_saving.h"
#include "ui/week/plan_edits.h"
#include "ui/week/pot_chooser.h"
#include "ui/week/shopping_panel.h"
#include "ui/week/week_board.h"
#include "week/week_findings.h"
#include "week/week_solver.h"

#include <QAction>
#include <QBoxLayout>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>

namespace ladlework::ui {

namespace {

constexpr int sideCharacters = 34;

QString weekdayInWords(QDate day) {
    return QLocale().toString(day, QStringLiteral("dddd d MMMM"));
}

} // namespace

WeekScreen::WeekScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_stepper(new WeekStepper), m_board(new WeekBoard),
      m_chooser(new PotChooser), m_shopping(new ShoppingPanel(context)) {
    makeActions();
    const int gap = step(*this);
    auto* whole = new QWidget;
    auto* row = new QHBoxLayout(whole);
    row->setContentsMargins(gap, gap, gap, gap);
    row->setSpacing(gap);
    row->addWidget(makeMain(), 1);
    row->addWidget(makeSide());
    // With very large type the screen is wider than its window: it scrolls, nothing is cut.
    auto* scroll = new QScrollArea;
    scroll->setWidget(whole);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);
    connectBoard();
    connect(m_stepper, &WeekStepper::weekChanged, this, [this] {
        showWeek();
        followDay();
    });
}

void WeekScreen::makeActions() {
    QAction* put =
        addScreenAction(tr("P&ut a pot on the day"), tr("Choose a pot for the day you are on"),
                        QKeySequence(Qt::Key_Insert));
    connect(put, &QAction::triggered, this, [this] {
        const QModelIndex current = m_board->view()->currentIndex();
        chooseFor(m_board->model()->dayOf(current.isValid() ? current.column() : 0));
    });
    QAction* off = addScreenAction(
        tr("&Take the pot off"), tr("Takes the chosen pot off its day (Delete, in the week)"), {});
    connect(off, &QAction::triggered, this,
            [this] { takeOff(m_board->model()->placementAt(m_board->view()->currentIndex())); });
    m_copyLast =
        addScreenAction(tr("&Copy last week"), tr("Puts last week's pots on the same days"),
                        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
    connect(m_copyLast, &QAction::triggered, this, &WeekScreen::copyLastWeek);
    const QAction* calendar =
        addScreenAction(tr("Save for a cale&ndar..."),
                        tr("Saves the cookings, reminders and last days of this week as a file "
                           "that a calendar reads"),
                        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D));
    connect(calendar, &QAction::triggered, this,
            [this] { saveForCalendar(this, context(), book(), m_stepper->week()); });
    for (QAction* shopping : m_shopping->actions())
        addAction(shopping);
    for (QAction* stepAction : m_stepper->steps())
        addAction(stepAction);
}

QWidget* WeekScreen::makeMain() {
    auto* main = new QWidget;
    auto* column = new QVBoxLayout(main);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this));
    auto* bar = new QHBoxLayout;
    bar->setSpacing(step(*this));
    bar->addWidget(m_stepper);
    bar->addStretch();
    bar->addWidget(buttonFor(m_copyLast));
    auto* handOut = new QPushButton(tr("Hand it &out"));
    handOut->setToolTip(tr("Shows the pages of the handout"));
    connect(handOut, &QPushButton::clicked, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("handout")); });
    bar->addWidget(handOut);
    column->addLayout(bar);
    auto* scroll = new QScrollArea;
    scroll->setWidget(m_board);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    column->addWidget(scroll, 1);
    return main;
}

QWidget* WeekScreen::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(fontMetrics().averageCharWidth() * sideCharacters);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this));
    column->addWidget(m_chooser, 1);
    column->addWidget(m_shopping, 1);
    return side;
}

void WeekScreen::connectBoard() {
    BoardView* view = m_board->view();
    BoardModel* model = m_board->model();
    connect(view, &BoardView::chooserWanted, this, &WeekScreen::chooseFor);
    connect(view, &BoardView::removeWanted, this, &WeekScreen::takeOff);
    connect(view, &BoardView::moveWanted, this, &WeekScreen::movePot);
    connect(view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &WeekScreen::followDay);
    // A drop or an editor still works on the model while it speaks: act when it is done.
    connect(model, &BoardModel::putWanted, this, &WeekScreen::putPot, Qt::QueuedConnection);
    connect(model, &BoardModel::moveWanted, this, &WeekScreen::movePot, Qt::QueuedConnection);
    connect(model, &BoardModel::startWanted, this, &WeekScreen::setStart, Qt::QueuedConnection);
    connect(
        model, &BoardModel::startNotUnderstood, this,
        [this](const QString& sentence) { context().desk.tell(this, sentence); },
        Qt::QueuedConnection);
    connect(m_chooser, &PotChooser::chosen, this, [this](PotId pot, QDate day) {
        putPot(pot, day);
        m_board->view()->setFocus();
    });
    connect(m_chooser, &PotChooser::givenUp, this, [this] { m_board->view()->setFocus(); });
    connect(m_chooser, &PotChooser::potsWanted, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("pots")); });
}

QWidget* WeekScreen::firstField() {
    return m_board->view();
}

void WeekScreen::showField(const QString& field) {
    if (field.startsWith(QStringLiteral("day:"))) {
        const int day = field.mid(4).toInt();
        m_board->view()->setCurrentIndex(m_board->model()->firstEmpty(day));
        m_board->view()->setFocus();
    } else if (field == QStringLiteral("tolerances")) {
        Q_EMIT screenWanted(QStringLiteral("members"));
    }
}

void WeekScreen::refresh(bool sameFamily) {
    m_stepper->setToday(book().today());
    if (!sameFamily)
        m_stepper->setWeek(book().today());
    showPots();
    showWeek();
    if (!sameFamily) {
        const int today = static_cast<int>(m_stepper->week().daysTo(book().today()));
        m_board->view()->setCurrentIndex(m_board->model()->firstEmpty(today));
    }
    followDay();
}

void WeekScreen::showPots() {
    QList<PotsModel::Row> rows;
    for (const kitchen::Pot& pot : book().records().pots)
        rows << PotsModel::Row{
            pot.id, pot.name,
            tr("%1 in %2").arg(yieldWords(book(), pot), quantity::printDuration(pot.simmer))};
    m_chooser->setPots(rows);
}

void WeekScreen::showWeek() {
    const week::WeekPlan shown = plan();
    const casebook::WeekAhead ahead = book().weekAhead(shown);
    const week::WeekSolution solution = week::serveSettled(ahead.problem);
    m_board->show(book(), shown, ahead, solution);
    setFindings(week::weekFindings(ahead.problem, solution, ahead.start, measures()) + retries());
    m_shopping->show(sharedBook(), shown);
    const week::WeekPlan last = book().plan(m_stepper->week().addDays(-week::daysAWeek));
    m_copyLast->setEnabled(!last.placements.isEmpty());
}

/// The new tries of the week, each as a note.
Findings WeekScreen::retries() const {
    const QDate monday = m_stepper->week();
    Findings findings;
    for (const casebook::RetryStep& step :
         casebook::retrySteps(book(), monday, monday.addDays(week::daysAWeek - 1))) {
        Finding finding;
        finding.code = QStringLiteral("retry-step");
        finding.text = tr("%1: %2 tries %3 of stock with %4 (step %5 of %6).")
                           .arg(weekdayInWords(step.day), step.standing->member.name,
                                quantity::printVolume(step.amount, measures()), step.what)
                           .arg(step.step + 1)
                           .arg(step.plan->steps.size());
        finding.field = QStringLiteral("tolerances");
        findings.append(finding);
    }
    return findings;
}

void WeekScreen::followDay() {
    const QModelIndex current = m_board->view()->currentIndex();
    m_chooser->setDay(m_board->model()->dayOf(current.isValid() ? current.column() : 0));
}

void WeekScreen::chooseFor(QDate day) {
    m_chooser->setDay(day);
    m_chooser->choose();
}

week::WeekPlan WeekScreen::plan() const {
    week::WeekPlan shown = book().plan(m_stepper->week());
    shown.family = book().records().family.id;
    shown.start = m_stepper->week();
    return shown;
}

QString WeekScreen::potName(PotId pot) const {
    const kitchen::Pot* found = book().pot(pot);
    return found != nullptr ? found->name : tr("a pot");
}

QString WeekScreen::potAt(qsizetype placement) const {
    return potName(plan().placements.at(placement).pot);
}

bool WeekScreen::save(const week::WeekPlan& changed, const QString& sentence) {
    return context().act(this, sentence, [&](store::Action& action) -> Outcome {
        const Result<WeekPlanId> stored = context().workbook.weeks().setPlan(action, changed);
        if (!stored)
            return passOn(stored);
        return {};
    });
}

void WeekScreen::select(const week::Placement& placement) {
    const qsizetype index = plan().placements.lastIndexOf(placement);
    const QModelIndex cell = m_board->model()->indexOf(index);
    if (cell.isValid())
        m_board->view()->setCurrentIndex(cell);
}

void WeekScreen::putPot(PotId pot, QDate day) {
    const week::WeekPlan changed = withPot(plan(), pot, day);
    if (save(changed, tr("Put %1 on %2").arg(potName(pot), weekdayInWords(day))))
        select(changed.placements.last());
}

void WeekScreen::takeOff(qsizetype placement) {
    const week::WeekPlan before = plan();
    if (placement < 0 || placement >= before.placements.size())
        return;
    const QModelIndex cell = m_board->view()->currentIndex();
    save(withoutPlacement(before, placement),
         tr("Took %1 off %2")
             .arg(potAt(placement), weekdayInWords(before.placements.at(placement).day)));
    m_board->view()->setCurrentIndex(m_board->model()->index(cell.row(), cell.column()));
}

void WeekScreen::movePot(qsizetype placement, QDate day) {
    const week::WeekPlan before = plan();
    if (placement < 0 || placement >= before.placements.size() ||
        before.placements.at(placement).day == day)
        return;
    const week::WeekPlan changed = withMove(before, placement, day);
    const QString sentence =
        tr("Moved %1 from %2 to %3")
            .arg(potAt(placement), weekdayInWords(before.placements.at(placement).day),
                 weekdayInWords(day));
    if (save(changed, sentence))
        select(changed.placements.at(placement));
}

void WeekScreen::setStart(qsizetype placement, QTime start) {
    const week::WeekPlan before = plan();
    if (placement < 0 || placement >= before.placements.size())
        return;
    const week::WeekPlan changed = withStart(before, placement, start);
    const QString day = weekdayInWords(before.placements.at(placement).day);
    const QString sentence = start.isValid()
                                 ? tr("Set the start of %1 on %2 to %3")
                                       .arg(potAt(placement), day, printStartTime(start))
                                 : tr("Cleared the start of %1 on %2").arg(potAt(placement), day);
    if (save(changed, sentence))
        select(changed.placements.at(placement));
}

void WeekScreen::copyLastWeek() {
    const week::WeekPlan last = book().plan(m_stepper->week().addDays(-week::daysAWeek));
    if (last.placements.isEmpty())
        return;
    save(withCopyOf(plan(), last),
         tr("Copied the pots of the week before to the week of %1")
             .arg(QLocale().toString(m_stepper->week(), QStringLiteral("d MMMM"))));
}

void WeekScreen::copyShoppingList() {
    m_shopping->copyToClipboard();
}

} // namespace ladlework::ui
