#include "ui/today/today_screen.h"

#include "casebook/next_review.h"
#include "ui/paint/theme.h"
#include "ui/shared/empty_state.h"
#include "ui/shared/section.h"
#include "ui/today/cooked_panel.h"
#include "ui/today/member_line.h"
#include "ui/today/stock_section.h"
#include "ui/today/stove_section.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {
constexpr int twoColumns = 120; ///< characters that two columns need
}

TodayScreen::TodayScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_pages(new QStackedWidget), m_day(new Section({})),
      m_memberLines(new QVBoxLayout), m_stove(new StoveSection(this)),
      m_cooked(new CookedPanel(context, this)), m_stock(new StockSection(context, this)),
      m_review(new Section(tr("Next review"))), m_reviewWords(new QLabel),
      m_log(new QPushButton(tr("Enter what was drunk"))), m_addMember(nullptr) {
    auto* empty = new EmptyState(
        tr("Who lives in this family?"),
        tr("Add its members with their dates of birth; the age decides what a person may drink. "
           "Then each one gets a phase, a target and a ladder, and this page tells every morning "
           "who drinks what."),
        tr("Add the first member"));
    m_addMember = empty->button();
    m_pages->addWidget(makePage());
    m_pages->addWidget(empty);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_pages);

    connect(m_addMember, &QPushButton::clicked, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("members")); });
    connect(m_log, &QPushButton::clicked, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("log")); });
    connect(m_stove, &StoveSection::weekWanted, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("week")); });
    connect(m_stove, &StoveSection::recordWanted, this, &TodayScreen::recordCooking);
    connect(m_cooked, &CookedPanel::recorded, m_cooked, &QWidget::hide);
    m_cooked->hide();
    addActions();
}

QWidget* TodayScreen::makePage() {
    const int gap = step(*this);
    m_log->setProperty("primary", true);
    m_day->addAction(m_log);
    m_memberLines->setSpacing(3 * gap / 2);
    m_day->body()->addLayout(m_memberLines);
    m_day->body()->addStretch();
    m_reviewWords->setWordWrap(true);
    m_review->body()->addWidget(m_reviewWords);
    auto* notes = new QPushButton(tr("Write a note"));
    connect(notes, &QPushButton::clicked, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("notes")); });
    m_review->addAction(notes);

    auto* right = new QVBoxLayout;
    right->setSpacing(2 * gap);
    right->addWidget(m_stove);
    right->addWidget(m_cooked);
    right->addWidget(m_stock, 1);
    right->addWidget(m_review);
    auto* page = new QWidget;
    m_columns = new QHBoxLayout(page);
    m_columns->setContentsMargins(2 * gap, 2 * gap, 2 * gap, 2 * gap);
    m_columns->setSpacing(2 * gap);
    m_columns->addWidget(m_day, 6);
    m_columns->addLayout(right, 5);
    auto* area = new QScrollArea;
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

/// Side by side where there is room for both, else below each other.
void TodayScreen::resizeEvent(QResizeEvent* event) {
    const bool wide = width() >= fontMetrics().averageCharWidth() * twoColumns;
    m_columns->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    FamilyScreen::resizeEvent(event);
}

void TodayScreen::addActions() {
    leadTo(tr("Enter what was drunk"), tr("Go to the log of today"), QStringLiteral("log"));
    auto* cooked = new QAction(tr("Record a cooking"), this);
    cooked->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_B));
    cooked->setStatusTip(tr("The stock that came out, and the jars it went into"));
    connect(cooked, &QAction::triggered, this, &TodayScreen::recordCooking);
    addAction(cooked);
    for (QAction* stock : m_stock->actions())
        addAction(stock);
    leadTo(tr("Plan the week"), tr("Go to the week"), QStringLiteral("week"));
    leadTo(tr("Write a note"), tr("Go to the notes"), QStringLiteral("notes"));
}

void TodayScreen::leadTo(const QString& text, const QString& tip, const QString& screen) {
    auto* action = new QAction(text, this);
    action->setStatusTip(tip);
    connect(action, &QAction::triggered, this, [this, screen] { Q_EMIT screenWanted(screen); });
    addAction(action);
}

void TodayScreen::refresh(bool /*sameFamily*/) {
    setFindings(book().attention());
    const bool empty = book().standings().empty();
    m_pages->setCurrentIndex(empty ? 1 : 0);
    if (empty)
        return;
    showMembers();
    m_stove->show(book());
    m_cooked->take(book());
    m_stock->show(book());
    showReview();
}

void TodayScreen::recordCooking() {
    m_cooked->show();
    m_cooked->firstField()->setFocus();
}

void TodayScreen::showMembers() {
    const auto& standings = book().standings();
    const auto wanted = static_cast<qsizetype>(standings.size());
    while (m_members.size() > wanted)
        delete m_members.takeLast();
    while (m_members.size() < wanted) {
        m_members.append(new MemberLine(nullptr));
        m_memberLines->addWidget(m_members.last());
    }
    int asked = 0;
    int entered = 0;
    for (qsizetype index = 0; index < wanted; ++index) {
        const casebook::Standing& standing = standings[static_cast<size_t>(index)];
        m_members[index]->show(standing, book());
        if (standing.askedToday <= quantity::Volume())
            continue;
        ++asked;
        if (drunkOn(book().records(), standing.member.id, book().today()))
            ++entered;
    }
    m_day->setTitle(QLocale().toString(book().today(), QStringLiteral("dddd d MMMM")));
    m_day->setRemark(asked == 0 ? QString() : tr("%1 of %2 entered").arg(entered).arg(asked));
}

void TodayScreen::showReview() {
    const QDate day = casebook::nextReview(book().records());
    if (!day.isValid()) {
        m_reviewWords->setText(tr("No day is set. Set one with a note or on Members."));
        return;
    }
    const qint64 days = book().today().daysTo(day);
    const QString words = QLocale().toString(day, QStringLiteral("dddd d MMMM yyyy"));
    if (days < 0)
        m_reviewWords->setText(tr("Was set for %1.").arg(words));
    else if (days == 0)
        m_reviewWords->setText(tr("Today."));
    else
        m_reviewWords->setText(days == 1 ? tr("%1, tomorrow.").arg(words)
                                         : tr("%1, in %2 days.").arg(words).arg(days));
}

void TodayScreen::showField(const QString& field) {
    if (field == u"lots")
        m_stock->table()->setFocus();
    else if (field == u"log" || field == u"reactions")
        Q_EMIT screenWanted(QStringLiteral("log"));
    else if (field == u"decision" || field == u"ladder" || field == u"value")
        Q_EMIT screenWanted(QStringLiteral("progress"));
    else if (field == u"reviewOn")
        Q_EMIT screenWanted(QStringLiteral("notes"));
    else
        Q_EMIT screenWanted(QStringLiteral("members"));
}

QWidget* TodayScreen::firstField() {
    return m_pages->currentIndex() == 0 ? m_log : m_addMember;
}

} // namespace ladlework::ui
