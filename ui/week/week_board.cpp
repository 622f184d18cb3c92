#include "ui/week/week_board.h"

#include "kitchen/brew.h"
#include "ui/paint/theme.h"
#include "ui/week/board_model.h"
#include "ui/week/board_view.h"
#include "ui/week/hours_words.h"
#include "ui/week/plan_edits.h"
#include "ui/week/servings_delegate.h"
#include "ui/week/servings_model.h"
#include "ui/week/week_picture.h"

#include <QEvent>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>

namespace ladlework::ui {

namespace {
constexpr int gutterCharacters = 15;
/// How far the picture may grow where there is room, in its own least heights.
constexpr int mostPictureHeights = 3;
} // namespace

WeekBoard::WeekBoard(QWidget* parent)
    : QWidget(parent), m_model(new BoardModel(this)), m_view(new BoardView(m_model)),
      m_picture(new WeekPicture), m_servings(new ServingsModel(this)), m_table(makeTable()) {
    auto* stove = new QLabel(tr("On the stove"));
    stove->setBuddy(m_view);
    stove->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    stove->setForegroundRole(QPalette::PlaceholderText);
    stove->setContentsMargins(0, step(*this) / 2, 0, 0);
    m_stove = stove;
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(0);
    grid->setVerticalSpacing(step(*this));
    grid->addWidget(m_stove, 0, 0);
    grid->addWidget(m_view, 0, 1);
    grid->addWidget(m_picture, 1, 0, 1, 2);
    grid->addWidget(m_table, 2, 0, 1, 2);
    grid->setRowStretch(1, 4);
    grid->setRowStretch(3, 1);
    grid->setColumnStretch(1, 1);
    setGutter();
}

QTableView* WeekBoard::makeTable() {
    auto* table = new QTableView;
    table->setModel(m_servings);
    table->setItemDelegate(new ServingsDelegate(table));
    table->setAccessibleName(tr("Who gets how much on which day"));
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    table->setCornerButtonEnabled(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table->horizontalHeader()->hide();
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->verticalHeader()->setTextElideMode(Qt::ElideRight);
    table->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignTop);
    return table;
}

void WeekBoard::setGutter() {
    const int gutter = fontMetrics().averageCharWidth() * gutterCharacters;
    m_stove->setFixedWidth(gutter);
    m_picture->setGutter(gutter);
    m_picture->setMaximumHeight(mostPictureHeights * m_picture->sizeHint().height());
    m_table->verticalHeader()->setFixedWidth(gutter);
}

void WeekBoard::show(const casebook::Casebook& casebook, const week::WeekPlan& plan,
                     const casebook::WeekAhead& ahead, const week::WeekSolution& solution) {
    QHash<PotId, BoardPot> pots;
    for (const week::Placement& placement : plan.placements) {
        const kitchen::Pot* pot = casebook.pot(placement.pot);
        if (pot != nullptr && !pots.contains(placement.pot))
            pots.insert(placement.pot, BoardPot{pot->name, yieldWords(casebook, *pot)});
    }
    m_model->setPlan(plan, pots, casebook.today());
    setHours(casebook, plan);
    preview(casebook, plan, ahead, solution);
}

void WeekBoard::setHours(const casebook::Casebook& casebook, const week::WeekPlan& plan) {
    const QList<week::UsualHours>& usual = casebook.records().usualHours;
    QStringList inShort;
    QStringList inWords;
    for (int day = 0; day < week::daysAWeek; ++day) {
        const QDate date = plan.start.addDays(day);
        // Nothing is said of what is over, nor of what was never told.
        const bool told = date >= casebook.today() && (!usual.isEmpty() || hasOwnHours(plan, date));
        const QList<week::FreeHours> hours = week::hoursOn(plan, usual, date);
        inShort << (told ? hoursInShort(hours) : QString());
        inWords << (told ? hoursInWords(hours) : QString());
    }
    m_model->setHours(inShort, inWords);
}

void WeekBoard::preview(const casebook::Casebook& casebook, const week::WeekPlan& plan,
                        const casebook::WeekAhead& ahead, const week::WeekSolution& solution) {
    const WeekShown shown =
        shownWeek(plan.start, ahead, solution, casebook.records().family.measures);
    m_picture->setWeek(shown);
    m_servings->setWeek(shown);
    fitTable();
}

void WeekBoard::fitTable() {
    m_table->setVisible(m_servings->rowCount() > 0);
    m_table->resizeRowsToContents();
    m_table->setFixedHeight(m_table->verticalHeader()->length() + 2 * m_table->frameWidth());
}

void WeekBoard::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitTable();
}

void WeekBoard::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::FontChange)
        return;
    setGutter();
    m_view->fitRows();
    fitTable();
}

QString yieldWords(const casebook::Casebook& casebook, const kitchen::Pot& pot) {
    const kitchen::Brewed brewed = kitchen::brew(casebook.brewInput(pot), casebook.catalogue());
    return WeekBoard::tr("makes %1")
        .arg(quantity::printVolume(quantity::Volume::fromMillilitres(brewed.stockMl.best),
                                   casebook.records().family.measures));
}

} // namespace ladlework::ui
