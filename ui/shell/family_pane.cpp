#include "ui/shell/family_pane.h"

#include "ui/handout/handout_screen.h"
#include "ui/log/log_screen.h"
#include "ui/members/members_screen.h"
#include "ui/notes/notes_screen.h"
#include "ui/paint/theme.h"
#include "ui/pot/pot_screen.h"
#include "ui/progress/progress_screen.h"
#include "ui/shared/findings_strip.h"
#include "ui/shell/family_controller.h"
#include "ui/shell/navigation.h"
#include "ui/today/today_screen.h"
#include "ui/week/week_screen.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ladlework::ui {

namespace {

constexpr int leastNameWidth = 16; ///< characters

/// The scroll area around a screen (the screen's parent is its viewport).
QWidget* areaOf(const FamilyScreen* screen) {
    return screen->parentWidget()->parentWidget();
}

} // namespace

FamilyPane::FamilyPane(const ScreenContext& context, FamilyController& family, QWidget* parent)
    : QWidget(parent), m_family(family), m_name(new QLabel), m_navigation(new Navigation(this)),
      m_stack(new QStackedWidget), m_strip(new FindingsStrip) {
    build();
    addScreen(QStringLiteral("today"), new TodayScreen(context, m_stack));
    addScreen(QStringLiteral("members"), new MembersScreen(context, m_stack));
    addScreen(QStringLiteral("pots"), new PotScreen(context, m_stack));
    addScreen(QStringLiteral("log"), new LogScreen(context, m_stack));
    addScreen(QStringLiteral("progress"), new ProgressScreen(context, m_stack));
    addScreen(QStringLiteral("week"), new WeekScreen(context, m_stack));
    addScreen(QStringLiteral("handout"), new HandoutScreen(context, m_stack));
    addScreen(QStringLiteral("notes"), new NotesScreen(context, m_stack));
    connect(m_navigation, &Navigation::screenChosen, this, &FamilyPane::showScreen);
    connect(m_strip, &FindingsStrip::fieldWanted, this,
            [this](const QString& field) { screen()->showField(field); });
    connect(&m_family, &FamilyController::casebookChanged, this, &FamilyPane::onCasebookChanged);
    onCasebookChanged();
}

void FamilyPane::build() {
    const int gap = step(*this);
    m_name->setFont(titleFont(font()));
    m_name->setTextFormat(Qt::PlainText);
    m_name->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(2 * gap, gap / 2, gap, 0);
    head->setSpacing(2 * gap);
    head->addWidget(m_name, 1);
    head->addWidget(m_navigation, 0, Qt::AlignBottom);
    auto* rule = new QFrame;
    rule->setFrameShape(QFrame::HLine);
    rule->setFrameShadow(QFrame::Plain);
    QPalette ruled = rule->palette();
    ruled.setColor(QPalette::WindowText, coloursOf(*this).rule);
    rule->setPalette(ruled);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(rule);
    column->addWidget(m_stack, 1);
    column->addWidget(m_strip);
}

void FamilyPane::addScreen(const QString& id, FamilyScreen* screen) {
    m_screens.insert(id, screen);
    // A window smaller than the screen needs scrolls it.
    auto* area = new QScrollArea;
    area->setWidget(screen);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    m_stack->addWidget(area);
    connect(screen, &FamilyScreen::findingsChanged, this, [this, screen] {
        if (screen == this->screen())
            showFindings();
    });
    connect(screen, &FamilyScreen::screenWanted, this,
            [this](const QString& wanted) { showScreen(wanted, true); });
}

void FamilyPane::showScreen(const QString& id, bool focus) {
    FamilyScreen* wanted = m_screens.value(id);
    if (wanted == nullptr)
        return;
    m_navigation->setCurrent(id);
    const bool other = screen() != wanted;
    m_stack->setCurrentWidget(areaOf(wanted));
    bringUpToDate();
    showFindings();
    if (focus)
        wanted->firstField()->setFocus(Qt::ShortcutFocusReason);
    if (other)
        Q_EMIT screenChanged();
}

FamilyScreen* FamilyPane::screen() const {
    const auto* area = qobject_cast<QScrollArea*>(m_stack->currentWidget());
    return qobject_cast<FamilyScreen*>(area->widget());
}

QString FamilyPane::screenId() const {
    return m_navigation->current();
}

void FamilyPane::onCasebookChanged() {
    const auto casebook = m_family.casebook();
    if (casebook == nullptr)
        return;
    m_strip->setMeasures(casebook->records().family.measures);
    m_name->setText(casebook->records().family.name);
    m_name->setToolTip(m_name->text());
    m_name->setMinimumWidth(
        std::min(m_name->sizeHint().width(), fontMetrics().averageCharWidth() * leastNameWidth));
    m_stale = QSet<FamilyScreen*>(m_screens.cbegin(), m_screens.cend());
    if (isVisible())
        bringUpToDate();
}

void FamilyPane::bringUpToDate() {
    FamilyScreen* shown = screen();
    const auto casebook = m_family.casebook();
    if (casebook == nullptr || !m_stale.remove(shown))
        return;
    shown->setCasebook(casebook);
}

void FamilyPane::showFindings() {
    m_strip->setFindings(screen()->findings());
}

void FamilyPane::showEvent(QShowEvent* event) {
    bringUpToDate();
    showFindings();
    QWidget::showEvent(event);
}

} // namespace ladlework::ui
