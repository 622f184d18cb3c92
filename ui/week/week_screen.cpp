#include "ui/week/week_screen.h"

#include "ui/paint/theme.h"
#include "ui/shared/action_button.h"
#include "ui/shared/start_time.h"
#include "ui/shared/week_stepper.h"
#include "ui/week/board_view.h"
#include "ui/week/calendar_saving.h"
#include "ui/week/day_hours_bar.h"
#include "ui/week/kept_weeks.h"
#include "ui/week/plan_edits.h"
#include "ui/week/plan_panel.h"
#include "ui/week/pot_chooser.h"
#include "ui/week/shopping_panel.h"
#include "ui/week/week_board.h"
#include "ui/week/week_notes.h"
#include "ui/week/week_planning.h"
#include "week/week_solver.h"

#include <QAction>
#include <QBoxLayout>
#include <QElapsedTimer>
#include <QHideEvent>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>

namespace ladlework::ui {

namespace {

constexpr int sideCharacters = 34;
constexpr int leastBoardSteps = 24;

QString changedMeanwhile() {
    return WeekScreen::tr("Something changed while the week was planned. Plan it again.");
}

} // namespace

WeekScreen::WeekScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_changes(context, this), m_stepper(new WeekStepper),
      m_board(new WeekBoard), m_chooser(new PotChooser), m_shopping(new ShoppingPanel(context)),
      m_planPanel(new PlanPanel), m_planning(new WeekPlanning(m_planPanel, this)) {
    makePlanActions();
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
    connectPlanning();
    connect(m_stepper, &WeekStepper::weekChanged, this, [this] {
        m_planning->drop({});
        m_changes.setWeek(sharedBook(), m_stepper->week());
        showWeek();
        followDay();
    });
}

void WeekScreen::makePlanActions() {
    m_plan = addScreenAction(tr("P&lan the week"),
                             tr("Finds the best week for the days that are left and not locked"),
                             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
    connect(m_plan, &QAction::triggered, this, &WeekScreen::planWeek);
    m_stop = addScreenAction(tr("Stop planning"), tr("Leaves the week as it is"),
                             QKeySequence(Qt::Key_Escape));
    m_stop->setEnabled(false);
    connect(m_stop, &QAction::triggered, m_planning, &WeekPlanning::cancel);
    m_lock = addScreenAction(tr("Lock the &day"),
                             tr("Planning leaves the pots of the day you are on as they are"),
                             QKeySequence(Qt::CTRL | Qt::Key_D));
    m_lock->setCheckable(true);
    connect(m_lock, &QAction::triggered, this, [this](bool locked) {
        leftProposal();
        m_changes.lock(currentDay(), locked);
    });
    m_hours = new DayHoursBar(m_lock);
    QAction* hours = addScreenAction(tr("Free &hours of the day"),
                                     tr("When there is time for cooking on the day you are on"),
                                     QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_H));
    connect(hours, &QAction::triggered, m_hours, &DayHoursBar::takeFocus);
    QAction* keep =
        addScreenAction(tr("Keep this &week under a name"), tr("To use it again in another week"),
                        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K));
    m_kept = new KeptWeeks(context(), keep);
}

void WeekScreen::makeActions() {
    QAction* put =
        addScreenAction(tr("P&ut a pot on the day"), tr("Choose a pot for the day you are on"),
                        QKeySequence(Qt::Key_Insert));
    connect(put, &QAction::triggered, this, [this] { chooseFor(currentDay()); });
    QAction* off = addScreenAction(
        tr("&Take the pot off"), tr("Takes the chosen pot off its day (Delete, in the week)"), {});
    connect(off, &QAction::triggered, this,
            [this] { takeOff(m_board->model()->placementAt(m_board->view()->currentIndex())); });
    m_copyLast =
        addScreenAction(tr("&Copy last week"), tr("Puts last week's pots on the same days"),
                        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
    connect(m_copyLast, &QAction::triggered, this, &WeekScreen::copyLastWeek);
    for (QAction* shopping : m_shopping->actions())
        addAction(shopping);
    const QAction* calendar =
        addScreenAction(tr("Save for a cale&ndar..."),
                        tr("Saves the cookings, reminders and last days of this week as a file "
                           "that a calendar reads"),
                        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D));
    connect(calendar, &QAction::triggered, this, [this] {
        const casebook::WeekAhead ahead = book().weekAhead(m_changes.plan());
        saveForCalendar(this, context(), book(), m_stepper->week(),
                        thawMoves(ahead, week::serveSettled(ahead.problem)));
    });
    for (QAction* stepAction : m_stepper->steps())
        addAction(stepAction);
}

QWidget* WeekScreen::makeMain() {
    auto* main = new QWidget;
    auto* column = new QVBoxLayout(main);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this) / 2);
    column->addWidget(makeBar());
    column->addWidget(m_kept);
    column->addWidget(m_hours);
    column->addWidget(m_planPanel);
    auto* scroll = new QScrollArea;
    scroll->setWidget(m_board);
    scroll->setWidgetResizable(true);
    // It takes what the lines above it leave: they must not push the screen into scrolling.
    scroll->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    scroll->setMinimumHeight(leastBoardSteps * step(*this));
    scroll->setFocusPolicy(Qt::NoFocus);
    column->addWidget(scroll, 1);
    return main;
}

QWidget* WeekScreen::makeBar() {
    auto* bar = new QWidget;
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*this));
    row->addWidget(m_stepper);
    row->addStretch();
    row->addWidget(buttonFor(m_plan, true));
    row->addWidget(m_kept->button());
    row->addWidget(buttonFor(m_copyLast));
    auto* handOut = new QPushButton(tr("Hand it &out"));
    handOut->setToolTip(tr("Shows the pages of the handout"));
    connect(handOut, &QPushButton::clicked, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("handout")); });
    row->addWidget(handOut);
    return bar;
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

void WeekScreen::connectPlanning() {
    connect(m_board->view(), &BoardView::dropHovered, this, &WeekScreen::showPreview);
    connect(m_planning, &WeekPlanning::proposalChanged, this, &WeekScreen::showWeek);
    connect(m_planning, &WeekPlanning::busyChanged, this,
            [this] { m_stop->setEnabled(m_planning->isBusy()); });
    connect(m_planning, &WeekPlanning::planned, this, [this](const week::WeekPlan& planned) {
        m_takingPlan = true;
        m_changes.takePlanned(planned);
        m_takingPlan = false;
    });
    connect(m_planPanel, &PlanPanel::screenWanted, this, &WeekScreen::wantScreen);
    // The workbook can change while another screen is in sight, and then nothing is shown here.
    connect(&context().workbook, &store::Workbook::changed, this, [this] {
        if (!m_takingPlan)
            m_planning->drop(changedMeanwhile());
    });
    connect(m_hours, &DayHoursBar::hoursWanted, this,
            [this](QDate day, const QList<week::FreeHours>& hours) {
                m_changes.setHours(day, hours);
                followDay(); // what was refused is shown as it was
            });
    connect(m_hours, &DayHoursBar::usualWanted, this,
            [this](QDate day) { m_changes.setUsualHours(day); });
    connect(m_hours, &DayHoursBar::membersWanted, this,
            [this] { wantScreen(QStringLiteral("members")); });
    connect(m_kept, &KeptWeeks::useWanted, this,
            [this](const week::WeekTemplate& kept) { m_changes.use(kept); });
    connect(m_kept, &KeptWeeks::left, this, [this] { m_board->view()->setFocus(); });
}

void WeekScreen::wantScreen(const QString& screen) {
    if (screen == QStringLiteral("hours"))
        m_hours->takeFocus();
    else
        Q_EMIT screenWanted(screen);
}

void WeekScreen::hideEvent(QHideEvent* event) {
    FamilyScreen::hideEvent(event);
    // Only what is seen may be put on the board: another family may be the next to be shown.
    if (!event->spontaneous() && m_planning->isBusy())
        m_planning->drop(tr("Planning was stopped when you left the week. It is as it was."));
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
    if (!m_takingPlan)
        m_planning->drop(sameFamily ? changedMeanwhile() : QString());
    m_stepper->setToday(book().today());
    if (!sameFamily)
        m_stepper->setWeek(book().today());
    m_changes.setWeek(sharedBook(), m_stepper->week());
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
    showBoard();
    const week::WeekPlan stored = m_changes.plan();
    m_shopping->show(sharedBook(), stored);
    m_kept->showWeeks(sharedBook(), stored);
    const week::WeekPlan last = book().plan(m_stepper->week().addDays(-week::daysAWeek));
    m_copyLast->setEnabled(!last.placements.isEmpty());
    const bool isOver = m_stepper->week().addDays(week::daysAWeek) <= book().today();
    m_plan->setEnabled(!isOver);
    m_plan->setStatusTip(isOver
                             ? tr("This week is over")
                             : tr("Finds the best week for the days that are left and not locked"));
}

void WeekScreen::showBoard() {
    const bool proposed = m_planning->proposal().has_value();
    const week::WeekPlan shown = proposed ? *m_planning->proposal() : m_changes.plan();
    QElapsedTimer took;
    took.start();
    const casebook::WeekAhead ahead = book().weekAhead(shown);
    const week::WeekSolution solution = week::serveSettled(ahead.problem);
    m_lookNs = took.nsecsElapsed();
    m_board->show(book(), shown, ahead, solution);
    m_board->model()->setProposed(proposed, m_changes.plan());
    setFindings(weekNotes(book(), shown.start, ahead, solution));
}

void WeekScreen::showPreview(const std::optional<BoardDrop>& drop) {
    if (m_planning->proposal() || m_lookNs > m_previewLimitNs)
        return;
    week::WeekPlan changed = m_changes.plan();
    if (drop)
        changed = drop->placement >= 0 ? withMove(changed, drop->placement, drop->day)
                                       : withPot(changed, drop->pot, drop->day);
    QElapsedTimer took;
    took.start();
    const casebook::WeekAhead ahead = book().weekAhead(changed);
    const week::WeekSolution solution = week::serveSettled(ahead.problem);
    m_board->preview(book(), changed, ahead, solution);
    m_lookNs = took.nsecsElapsed();
}

void WeekScreen::planWeek() {
    m_planning->start(sharedBook(), m_changes.plan());
}

QDate WeekScreen::currentDay() const {
    const QModelIndex current = m_board->view()->currentIndex();
    return m_board->model()->dayOf(current.isValid() ? current.column() : 0);
}

void WeekScreen::followDay() {
    const QDate day = currentDay();
    m_chooser->setDay(day);
    const week::WeekPlan plan = m_changes.plan();
    const DayHoursShown shown = hoursOfDay(book(), plan, day);
    m_hours->showDay(shown);
    m_lock->setEnabled(!shown.past);
    m_lock->setChecked(plan.lockedDays.contains(day));
}

void WeekScreen::chooseFor(QDate day) {
    m_chooser->setDay(day);
    m_chooser->choose();
}

bool WeekScreen::leftProposal() {
    const bool proposed = m_planning->proposal().has_value();
    if (m_planning->isBusy())
        m_planning->cancel();
    return proposed;
}

void WeekScreen::select(const std::optional<week::Placement>& placement) {
    if (!placement)
        return;
    const qsizetype index = m_changes.plan().placements.lastIndexOf(*placement);
    const QModelIndex cell = m_board->model()->indexOf(index);
    if (cell.isValid())
        m_board->view()->setCurrentIndex(cell);
}

void WeekScreen::putPot(PotId pot, QDate day) {
    leftProposal();
    select(m_changes.put(pot, day));
}

void WeekScreen::takeOff(qsizetype placement) {
    const QModelIndex cell = m_board->view()->currentIndex();
    if (!leftProposal() && m_changes.takeOff(placement))
        m_board->view()->setCurrentIndex(m_board->model()->index(cell.row(), cell.column()));
}

void WeekScreen::movePot(qsizetype placement, QDate day) {
    if (!leftProposal())
        select(m_changes.move(placement, day));
}

void WeekScreen::setStart(qsizetype placement, QTime start) {
    if (!leftProposal())
        select(m_changes.setStart(placement, start));
}

void WeekScreen::copyLastWeek() {
    leftProposal();
    m_changes.copyLast();
}

} // namespace ladlework::ui
