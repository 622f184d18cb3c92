#include "ui/shell/workbook_view.h"

#include "ui/families/families_list.h"
#include "ui/families/new_family_panel.h"
#include "ui/families/practice_today.h"
#include "ui/paint/theme.h"
#include "ui/shared/empty_state.h"
#include "ui/shell/family_pane.h"
#include "ui/shell/history_panel.h"
#include "ui/shell/navigation.h"
#include "ui/shell/practice_page.h"
#include "ui/shell/read_only_banner.h"

#include <QApplication>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int listWidth = 30; ///< characters
constexpr int historyWidth = 38;
} // namespace

WorkbookView::WorkbookView(store::Workbook& workbook, const kitchen::Catalogue& catalogue,
                           const Clock& clock, Desk& desk, QWidget* parent)
    : QWidget(parent), m_context{workbook, catalogue, clock, desk}, m_family(m_context, nullptr),
      m_attention(m_context, nullptr), m_splitter(new QSplitter),
      m_list(new FamiliesList(m_attention, nullptr)), m_middle(new QStackedWidget),
      m_everyone(new PracticeToday(m_context, m_attention, nullptr)),
      m_newFamily(new NewFamilyPanel(m_context, nullptr)),
      m_practice(new PracticePage(m_context, nullptr)),
      m_pane(new FamilyPane(m_context, m_family, nullptr)),
      m_gone(new EmptyState(tr("This family is not in the workbook any more"),
                            tr("Leave the one-family view to go on."), {})),
      m_history(new HistoryPanel(m_context, nullptr)) {
    build();
    connectParts();
    m_pane->showScreen(QStringLiteral("today"), false);
    showEveryone();
}

void WorkbookView::build() {
    for (QWidget* place :
         std::initializer_list<QWidget*>{m_everyone, m_newFamily, m_practice, m_pane, m_gone})
        m_middle->addWidget(place);
    // What a place is too small for is scrolled inside it; it never holds the window open.
    m_middle->setMinimumSize(1, 1);
    m_splitter->addWidget(m_list);
    m_splitter->addWidget(m_middle);
    m_splitter->addWidget(m_history);
    m_splitter->setStretchFactor(1, 1);
    m_splitter->setCollapsible(0, false);
    m_splitter->setCollapsible(1, false);
    m_splitter->setCollapsible(2, false);
    m_splitter->setHandleWidth(step(*this) / 2);
    const int character = fontMetrics().averageCharWidth();
    m_splitter->setSizes(
        {character * listWidth, character * listWidth * 6, character * historyWidth});
    m_history->hide();

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    const QString reason = m_context.workbook.readOnlyReason();
    if (!reason.isEmpty())
        column->addWidget(new ReadOnlyBanner(reason, this));
    column->addWidget(m_splitter, 1);
}

void WorkbookView::connectParts() {
    connect(&m_context.workbook, &store::Workbook::changed, this, &WorkbookView::onWorkbookChanged);
    connect(&m_family, &FamilyController::currentChanged, this, &WorkbookView::onFamilyChanged);
    connect(&m_family, &FamilyController::casebookChanged, this, &WorkbookView::placeChanged);
    connect(&m_family, &FamilyController::dayChanged, this, &WorkbookView::refreshAll);
    connect(&m_family, &FamilyController::broke, this, &WorkbookView::broke);
    connect(m_list, &FamiliesList::familyChosen, this,
            [this](FamilyId family) { showFamily(family, {}); });
    connect(m_list, &FamiliesList::everyoneWanted, this, &WorkbookView::showEveryone);
    connect(m_list, &FamiliesList::newFamilyWanted, this, &WorkbookView::showNewFamily);
    connect(m_list, &FamiliesList::practiceWanted, this, &WorkbookView::showPractice);
    connect(m_everyone, &PracticeToday::wanted, this, &WorkbookView::showFamily);
    connect(m_everyone, &PracticeToday::newFamilyWanted, this, &WorkbookView::showNewFamily);
    connect(m_newFamily, &NewFamilyPanel::familyMade, this,
            [this](FamilyId family) { showFamily(family, QStringLiteral("members")); });
    connect(m_newFamily, &NewFamilyPanel::cancelled, this, &WorkbookView::showEveryone);
    connect(m_pane, &FamilyPane::screenChanged, this, &WorkbookView::placeChanged);
    connect(&m_pane->navigation(), &Navigation::screenChosen, this, [this] {
        if (hasFamily())
            showInMiddle(m_pane);
    });
    connect(m_history, &HistoryPanel::closed, this, [this] { setHistoryShown(false); });
    connect(m_history, &HistoryPanel::tookBack, this, &WorkbookView::refreshAll);
}

void WorkbookView::showInMiddle(QWidget* place) {
    const bool other = m_middle->currentWidget() != place;
    m_middle->setCurrentWidget(place);
    if (place == m_pane)
        m_list->setCurrent(m_family.current());
    else
        m_list->setPlace(place == m_newFamily  ? FamiliesList::Place::NewFamily
                         : place == m_practice ? FamiliesList::Place::Practice
                                               : FamiliesList::Place::Everyone);
    if (other)
        Q_EMIT placeChanged();
}

void WorkbookView::settleEdits() {
    QWidget* focus = QApplication::focusWidget();
    if (focus != nullptr && m_pane->isAncestorOf(focus))
        focus->clearFocus();
}

void WorkbookView::showEveryone() {
    if (m_oneFamily)
        return;
    settleEdits();
    m_family.setCurrent({});
    showInMiddle(m_everyone);
}

void WorkbookView::showNewFamily() {
    if (m_oneFamily)
        return;
    settleEdits();
    showInMiddle(m_newFamily);
    m_newFamily->startAfresh();
}

void WorkbookView::showPractice() {
    if (!m_oneFamily)
        showInMiddle(m_practice);
}

void WorkbookView::showFamily(FamilyId family, const QString& screen) {
    if (m_oneFamily && family != m_family.current())
        return;
    if (family != m_family.current())
        settleEdits();
    m_family.setCurrent(family);
    if (!hasFamily())
        return;
    if (!screen.isEmpty())
        m_pane->showScreen(screen, true);
    showInMiddle(m_pane);
}

void WorkbookView::showScreen(const QString& screen) {
    if (hasFamily())
        showFamily(m_family.current(), screen);
}

void WorkbookView::findFamily() {
    if (m_oneFamily)
        return;
    setListShown(true);
    m_list->focusSearch();
}

void WorkbookView::nextFamily() {
    if (!m_oneFamily)
        m_list->step(1);
}

void WorkbookView::previousFamily() {
    if (!m_oneFamily)
        m_list->step(-1);
}

void WorkbookView::removeFamily() {
    const FamilyId family = m_family.current();
    if (m_oneFamily || !family.isStored())
        return;
    m_context.act(this, tr("Removed the family %1").arg(familyName()), [&](store::Action& action) {
        return m_context.workbook.families().removeFamily(action, family);
    });
}

void WorkbookView::onWorkbookChanged() {
    // The house rules and phases of the practice reach into every family.
    if (m_middle->currentWidget() == m_practice)
        refreshAll();
    else
        m_attention.refresh(m_family.current());
}

void WorkbookView::refreshAll() {
    m_attention.refreshAll();
}

void WorkbookView::onFamilyChanged() {
    if (hasFamily())
        Q_EMIT placeChanged();
    else if (m_oneFamily)
        showInMiddle(m_gone);
    else
        showInMiddle(m_everyone);
}

void WorkbookView::setOneFamily(bool only) {
    if (only && !hasFamily())
        return;
    m_oneFamily = only;
    if (only)
        showInMiddle(m_pane);
    m_list->setVisible(m_listShown && !only);
    m_history->setVisible(m_historyShown && !only);
    if (!only && !hasFamily())
        showEveryone();
    Q_EMIT placeChanged();
}

void WorkbookView::setListShown(bool shown) {
    m_listShown = shown;
    m_list->setVisible(shown && !m_oneFamily);
    Q_EMIT placeChanged();
}

void WorkbookView::setHistoryShown(bool shown) {
    m_historyShown = shown;
    m_history->setVisible(shown && !m_oneFamily);
    Q_EMIT placeChanged();
}

bool WorkbookView::isHistoryShown() const {
    return m_historyShown;
}

WorkbookView::Whereabouts WorkbookView::whereabouts() const {
    return {m_middle->currentWidget() == m_pane ? m_family.current() : FamilyId(),
            m_pane->screenId(), m_oneFamily, m_listShown, m_historyShown};
}

void WorkbookView::goTo(const Whereabouts& place) {
    if (place.family.isStored())
        showFamily(place.family, place.screen);
    setListShown(place.listShown);
    setHistoryShown(place.historyShown);
    setOneFamily(place.oneFamily);
}

QString WorkbookView::familyName() const {
    return m_family.casebook() != nullptr ? m_family.casebook()->records().family.name : QString();
}

QList<QAction*> WorkbookView::screenActions() const {
    return m_middle->currentWidget() == m_pane ? m_pane->screen()->actions() : QList<QAction*>();
}

QList<QAction*> WorkbookView::goActions() const {
    return m_pane->navigation().actionsInOrder();
}

} // namespace ladlework::ui
