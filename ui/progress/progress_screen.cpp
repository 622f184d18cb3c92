#include "ui/progress/progress_screen.h"

#include "ui/paint/theme.h"
#include "ui/progress/climb_page.h"
#include "ui/progress/family_climbs_page.h"
#include "ui/progress/observations_page.h"
#include "ui/progress/reactions_page.h"
#include "ui/progress/totals_page.h"
#include "ui/shared/empty_state.h"
#include "ui/shared/page_scroll.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int shortSpanDays = 42;
constexpr int middleSpanDays = 120;

void look(QTabBar& tabs, const QString& name) {
    tabs.setAccessibleName(name);
    tabs.setExpanding(false);
    tabs.setDrawBase(false);
    tabs.setUsesScrollButtons(true);
}
} // namespace

ProgressScreen::ProgressScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_members(new QTabBar(this)), m_pageTabs(new QTabBar(this)),
      m_span(new QComboBox(this)), m_pages(new QStackedWidget(this)),
      m_empty(new EmptyState(tr("No ladder yet"),
                             tr("The climb shows here once a member has a target and a ladder: the "
                                "rungs as a staircase, each day as a mark on it, and when the "
                                "target may be reached."),
                             tr("Set a target under Members"), this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(step(*this));
    layout->addWidget(makeHead());
    makePages();
    layout->addWidget(m_pages, 1);
    makeActions();
    connectParts();
}

QWidget* ProgressScreen::makeHead() {
    auto* head = new QWidget(this);
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step(*this) / 2);
    look(*m_members, tr("Members"));
    look(*m_pageTabs, tr("What is shown of the member"));
    m_span->addItem(tr("Last six weeks"), shortSpanDays);
    m_span->addItem(tr("Last four months"), middleSpanDays);
    m_span->addItem(tr("The whole ladder"), 0);
    m_span->setAccessibleName(tr("How far back the drawing goes"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_pageTabs, 1);
    row->addWidget(m_span);
    column->addWidget(m_members);
    column->addLayout(row);
    return head;
}

void ProgressScreen::makePages() {
    m_climb = new ClimbPage(context(), this);
    m_reactions = new ReactionsPage(context().catalogue, this);
    m_totals = new TotalsPage(this);
    m_observations = new ObservationsPage(context(), this);
    m_family = new FamilyClimbsPage(this);
    const QSignalBlocker blocker(m_pageTabs);
    addPage(tr("The climb"), m_climb);
    addPage(tr("Reactions"), m_reactions);
    addPage(tr("A day of stock"), m_totals);
    addPage(tr("Weight and more"), m_observations);
    addPage(tr("Side by side"), m_family);
    m_pages->addWidget(m_empty);
}

void ProgressScreen::addPage(const QString& name, QWidget* page) {
    m_pageTabs->addTab(name);
    m_pages->addWidget(new PageScroll(page, this));
}

void ProgressScreen::connectParts() {
    connect(m_empty->button(), &QPushButton::clicked, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("members")); });
    connect(m_members, &QTabBar::currentChanged, this, &ProgressScreen::showPage);
    connect(m_pageTabs, &QTabBar::currentChanged, this, &ProgressScreen::showPage);
    connect(m_span, &QComboBox::currentIndexChanged, this, &ProgressScreen::showPage);
    connect(m_family, &FamilyClimbsPage::memberWanted, this, [this](MemberId member) {
        m_pageTabs->setCurrentIndex(ClimbTab);
        m_members->setCurrentIndex(tabOf(member));
    });
}

void ProgressScreen::makeActions() {
    const auto make = [this](const QString& text, const QString& tip, const QKeySequence& keys,
                             auto&& work) {
        connect(addScreenAction(text, tip, keys, Qt::WindowShortcut), &QAction::triggered, this,
                work);
    };
    const QString member = tr("Shows the climb of another member");
    make(tr("Next member"), member, QKeySequence(Qt::ALT | Qt::Key_PageDown),
         [this] { stepMember(1); });
    make(tr("Previous member"), member, QKeySequence(Qt::ALT | Qt::Key_PageUp),
         [this] { stepMember(-1); });
    const QString page = tr("The climb, reactions, a day of stock, weight, side by side");
    make(tr("Next page of the member"), page, QKeySequence(Qt::ALT | Qt::Key_Right),
         [this] { stepPage(1); });
    make(tr("Previous page of the member"), page, QKeySequence(Qt::ALT | Qt::Key_Left),
         [this] { stepPage(-1); });
    make(tr("Go to the drawing of the climb"),
         tr("Left and Right move from day to day, Page Up and Page Down by weeks"),
         QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G), [this] {
             m_pageTabs->setCurrentIndex(ClimbTab);
             m_climb->focusChart();
         });
    make(tr("Enter a weight or observation"), tr("Goes to the line that takes a value"),
         QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), [this] {
             m_pageTabs->setCurrentIndex(ObservationsTab);
             m_observations->firstField()->setFocus();
         });
}

void ProgressScreen::stepMember(int by) {
    const int count = m_members->count();
    if (count > 0)
        m_members->setCurrentIndex((m_members->currentIndex() + by + count) % count);
}

void ProgressScreen::stepPage(int by) {
    const int count = m_pageTabs->count();
    m_pageTabs->setCurrentIndex((m_pageTabs->currentIndex() + by + count) % count);
}

void ProgressScreen::refresh(bool sameFamily) {
    const MemberId before = sameFamily ? tabMember(m_members->currentIndex()) : MemberId{};
    {
        const QSignalBlocker blocker(m_members);
        showTabs();
        m_members->setCurrentIndex(tabOf(before));
    }
    showPage();
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

/// Only the page in sight is filled: the others are when they are asked for.
void ProgressScreen::showPage() {
    const casebook::Standing* standing = chosen();
    const int page = m_pageTabs->currentIndex();
    m_members->setVisible(standing && page != FamilyTab);
    m_pageTabs->setVisible(standing != nullptr);
    m_span->setVisible(standing && (page == FamilyTab || (page == ClimbTab && standing->ladder)));
    setFindings(standing && page != FamilyTab ? standing->findings : Findings{});
    if (!standing) {
        m_pages->setCurrentWidget(m_empty);
        return;
    }
    m_pages->setCurrentIndex(page);
    switch (page) {
    case ClimbTab:
        showClimb(*standing);
        return;
    case ReactionsTab:
        m_reactions->show(sharedBook(), *standing);
        return;
    case TotalsTab:
        m_totals->show(sharedBook(), *standing);
        return;
    case ObservationsTab:
        m_observations->show(sharedBook(), *standing);
        return;
    default:
        m_family->show(book(), m_span->currentData().toInt());
    }
}

void ProgressScreen::showClimb(const casebook::Standing& standing) {
    const bool infant = standing.band == AgeBand::InfantUnderSixMonths;
    if (!standing.ladder && !infant)
        m_pages->setCurrentWidget(m_empty);
    m_climb->show(sharedBook(), standing, m_span->currentData().toInt());
}

QWidget* ProgressScreen::firstField() {
    if (m_members->isVisibleTo(this))
        return m_members;
    return m_pageTabs->isVisibleTo(this) ? static_cast<QWidget*>(m_pageTabs) : m_empty->button();
}

void ProgressScreen::showField(const QString& field) {
    if (field == u"value") {
        m_pageTabs->setCurrentIndex(ObservationsTab);
        m_observations->firstField()->setFocus();
        return;
    }
    if (field == u"decision") {
        m_pageTabs->setCurrentIndex(ClimbTab);
        if (m_climb->focusDecision())
            return;
    }
    Q_EMIT screenWanted(QStringLiteral("members"));
}

} // namespace ladlework::ui
