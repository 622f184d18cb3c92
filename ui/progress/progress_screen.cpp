#include "ui/progress/progress_screen.h"

#include "ui/paint/theme.h"
#include "ui/progress/climb_chart.h"
#include "ui/progress/climb_days_model.h"
#include "ui/progress/climb_legend.h"
#include "ui/progress/resume_panel.h"
#include "ui/shared/day_text.h"
#include "ui/shared/empty_state.h"
#include "ui/shared/page_scroll.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTabBar>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int shortSpanDays = 42;
constexpr int middleSpanDays = 120;
} // namespace

ProgressScreen::ProgressScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_members(new QTabBar(this)), m_span(new QComboBox(this)),
      m_summary(new QLabel(this)), m_resume(new ResumePanel(context, this)),
      m_chart(new ClimbChart(this)), m_days(new ClimbDaysModel(this)),
      m_table(makeTable(m_days, tr("Days of the climb, latest first"), ClimbDaysModel::WhyColumn,
                        this)),
      m_empty(new EmptyState(tr("No ladder yet"),
                             tr("The climb shows here once a member has a target and a ladder: the "
                                "rungs as a staircase, each day as a mark on it, and when the "
                                "target may be reached."),
                             tr("Set a target under Members"), this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(step(*this));
    layout->addWidget(makeHead());
    layout->addWidget(makePage(), 1);
    layout->addWidget(m_empty, 1);
    makeActions();
    connectParts();
}

QWidget* ProgressScreen::makePage() {
    auto* page = new QWidget(this);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this));
    layout->addWidget(m_resume);
    m_climb = new Section(tr("The climb"), this);
    m_summary->setWordWrap(true);
    m_climb->body()->addWidget(m_summary);
    m_climb->body()->addWidget(m_chart, 1);
    m_legend = new ClimbLegend(m_climb);
    m_climb->body()->addWidget(m_legend);
    layout->addWidget(m_climb, 3);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    constexpr int fewestRows = 3;
    m_table->setMinimumHeight(m_table->horizontalHeader()->sizeHint().height() +
                              fewestRows * m_table->verticalHeader()->defaultSectionSize());
    m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    layout->addWidget(m_table, 2);
    m_page = new PageScroll(page, this);
    return m_page;
}

void ProgressScreen::connectParts() {
    connect(m_empty->button(), &QPushButton::clicked, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("members")); });
    connect(m_members, &QTabBar::currentChanged, this, &ProgressScreen::showMember);
    connect(m_span, &QComboBox::currentIndexChanged, this, &ProgressScreen::showMember);
    connect(m_chart, &ClimbChart::dayChosen, this, [this](QDate day) {
        const QModelIndex row = m_days->index(m_days->rowOf(day), 0);
        if (row.isValid() && row.row() != m_table->currentIndex().row())
            m_table->setCurrentIndex(row);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid())
                    m_chart->setDay(m_days->dayAt(current.row()));
            });
}

QWidget* ProgressScreen::makeHead() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    m_members->setAccessibleName(tr("Members"));
    m_members->setExpanding(false);
    m_members->setDrawBase(false);
    m_members->setUsesScrollButtons(true);
    m_span->addItem(tr("Last six weeks"), shortSpanDays);
    m_span->addItem(tr("Last four months"), middleSpanDays);
    m_span->addItem(tr("The whole ladder"), 0);
    m_span->setAccessibleName(tr("How far back the drawing goes"));
    row->addWidget(m_members, 1);
    row->addWidget(m_span);
    return head;
}

void ProgressScreen::makeActions() {
    auto* next = new QAction(tr("Next member"), this);
    next->setShortcut(QKeySequence(Qt::ALT | Qt::Key_PageDown));
    connect(next, &QAction::triggered, this, [this] { stepMember(1); });
    auto* previous = new QAction(tr("Previous member"), this);
    previous->setShortcut(QKeySequence(Qt::ALT | Qt::Key_PageUp));
    connect(previous, &QAction::triggered, this, [this] { stepMember(-1); });
    auto* chart = new QAction(tr("Go to the drawing of the climb"), this);
    chart->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G));
    chart->setStatusTip(tr("Left and Right move from day to day, Page Up and Page Down by weeks"));
    connect(chart, &QAction::triggered, this, [this] { m_chart->setFocus(); });
    for (QAction* step : {next, previous})
        step->setStatusTip(tr("Shows the climb of another member"));
    addActions({next, previous, chart});
}

void ProgressScreen::stepMember(int by) {
    const int count = m_members->count();
    if (count > 0)
        m_members->setCurrentIndex((m_members->currentIndex() + by + count) % count);
}

void ProgressScreen::refresh(bool sameFamily) {
    const MemberId before = sameFamily ? tabMember(m_members->currentIndex()) : MemberId{};
    {
        const QSignalBlocker blocker(m_members);
        showTabs();
        m_members->setCurrentIndex(tabOf(before));
    }
    showMember();
}

void ProgressScreen::showTabs() {
    const auto& standings = book().standings();
    const int count = static_cast<int>(standings.size());
    while (m_members->count() > count)
        m_members->removeTab(m_members->count() - 1);
    for (int tab = 0; tab < count; ++tab) {
        const people::Member& member = standings[static_cast<std::size_t>(tab)].member;
        if (tab == m_members->count())
            m_members->addTab(member.name);
        m_members->setTabText(tab, QString(member.name).replace(u'&', QStringLiteral("&&")));
        m_members->setTabData(tab, member.id.value);
    }
}

MemberId ProgressScreen::tabMember(int tab) const {
    return tab < 0 ? MemberId{} : MemberId{m_members->tabData(tab).toLongLong()};
}

int ProgressScreen::tabOf(MemberId member) const {
    int firstWithLadder = 0;
    for (int tab = m_members->count() - 1; tab >= 0; --tab) {
        const MemberId id = tabMember(tab);
        if (id == member)
            return tab;
        if (const casebook::Standing* standing = book().standing(id); standing && standing->ladder)
            firstWithLadder = tab;
    }
    return firstWithLadder;
}

const casebook::Standing* ProgressScreen::chosen() const {
    return book().standing(tabMember(m_members->currentIndex()));
}

void ProgressScreen::showMember() {
    const casebook::Standing* standing = chosen();
    const bool climbs = standing && standing->ladder;
    const bool infant = standing && standing->band == AgeBand::InfantUnderSixMonths;
    m_members->setVisible(m_members->count() > 0);
    m_span->setVisible(climbs);
    m_page->setVisible(climbs || infant);
    m_chart->setVisible(climbs);
    m_legend->setVisible(climbs);
    m_table->setVisible(climbs);
    m_empty->setVisible(!climbs && !infant);
    m_summary->setText(standing ? summary(*standing) : QString());
    setFindings(standing ? standing->findings : Findings{});
    if (!climbs) {
        m_chart->show(sharedBook(), {}, 0);
        m_days->clear();
        m_resume->hide();
        return;
    }
    m_resume->show(book(), *standing);
    m_chart->show(sharedBook(), standing->member.id, m_span->currentData().toInt());
    m_days->show(*standing, measures());
    m_table->setCurrentIndex(m_days->index(m_days->rowOf(m_chart->day()), 0));
}

QString ProgressScreen::summary(const casebook::Standing& standing) const {
    if (!standing.ladder)
        return tr("Under 6 months there is no ladder. Refer to the child's own clinician.");
    const intake::LadderReplay& replay = standing.replay;
    if (replay.state == intake::LadderState::Stopped)
        return (standing.goesOn
                    ? tr("%1's ladder is stopped on rung %2 of %3 (%4). Nothing is asked today; it "
                         "goes on tomorrow by your decision.")
                    : tr("%1's ladder is stopped on rung %2 of %3 (%4). Nothing is asked until you "
                         "let it go on."))
            .arg(standing.member.name)
            .arg(replay.rung + 1)
            .arg(standing.ladder->rungs.size())
            .arg(quantity::printVolume(standing.ladder->rungs.at(replay.rung), measures()));
    QString words =
        tr("%1 is %2, on rung %3 of %4: %5 a day.")
            .arg(standing.member.name, intake::stateName(replay.state))
            .arg(replay.rung + 1)
            .arg(standing.ladder->rungs.size())
            .arg(quantity::printVolume(standing.ladder->rungs.at(replay.rung), measures()));
    const QLocale locale;
    const bool top = replay.rung + 1 == standing.ladder->rungs.size();
    if (top)
        words += u' ' + (replay.daysAtTarget == 1
                             ? tr("One good day at target so far.")
                             : tr("%1 good days at target so far.").arg(replay.daysAtTarget));
    else
        words += u' ' + tr("Good days towards the next rung: %1 of %2.")
                            .arg(replay.goodDays)
                            .arg(standing.ladder->rules.daysToAdvance);
    if (standing.targetDate && !top)
        words += u' ' + tr("The target may be reached about %1 (the fan: between %2 and %3, four "
                           "times in five).")
                            .arg(printDay(standing.targetDate->median, locale),
                                 printShortDay(standing.targetDate->p10, locale),
                                 printShortDay(standing.targetDate->p90, locale));
    return words;
}

QWidget* ProgressScreen::firstField() {
    return m_members->count() > 0 ? static_cast<QWidget*>(m_members) : m_empty->button();
}

void ProgressScreen::showField(const QString& field) {
    if (field == u"decision" && m_resume->isVisible())
        m_resume->takeFocus();
    else
        Q_EMIT screenWanted(QStringLiteral("members"));
}

} // namespace ladlework::ui
