#include "ui/log/log_screen.h"

#include "intake/red_flags.h"
#include "ui/log/drinks_model.h"
#include "ui/log/log_day_model.h"
#include "ui/log/log_delegates.h"
#include "ui/log/reactions_model.h"
#include "ui/paint/theme.h"
#include "ui/shared/amount_delegate.h"
#include "ui/shared/character_width.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/table_look.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <utility>

namespace ladlework::ui {

namespace {
constexpr int dayWidth = 24;   ///< characters
constexpr int drunkWidth = 21; ///< characters
constexpr int feltWidth = 34;  ///< characters
constexpr int mostMembers = 9;
constexpr int mostDetails = 6;
} // namespace

LogScreen::LogScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent), m_writer(context, this), m_model(new LogDayModel(this)),
      m_drinks(new DrinksModel(this)), m_reactions(new ReactionsModel(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(step(*this));
    layout->addWidget(makeHead());
    layout->addWidget(makeDayTable());
    layout->addWidget(makeDetails());
    layout->addStretch(1);
    makeActions();
    connectModels();
}

QWidget* LogScreen::makeHead() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(tr("&Day"), head);
    m_dayEdit = new DayEdit(head);
    m_dayEdit->setAccessibleName(tr("Day of the log"));
    label->setBuddy(m_dayEdit);
    m_weekday = new QLabel(head);
    m_weekday->setFont(sectionFont(font()));
    auto* before = new QPushButton(tr("Day before"), head);
    m_after = new QPushButton(tr("Day after"), head);
    before->setToolTip(tr("Alt+Left"));
    m_after->setToolTip(tr("Alt+Right"));
    CharacterWidth::hold(*m_dayEdit, dayWidth);
    auto* all = new QPushButton(tr("Everyone as asked"), head);
    all->setToolTip(tr("Enters the amount asked for all who have no entry yet"));
    row->addWidget(label);
    row->addWidget(m_dayEdit);
    row->addWidget(before);
    row->addWidget(m_after);
    row->addWidget(m_weekday);
    row->addStretch();
    row->addWidget(all);
    connect(m_dayEdit, &QuantityEdit::valueCommitted, this, [this] { setDay(m_dayEdit->day()); });
    connect(before, &QPushButton::clicked, this, [this] { setDay(m_day.addDays(-1)); });
    connect(m_after, &QPushButton::clicked, this, [this] { setDay(m_day.addDays(1)); });
    connect(all, &QPushButton::clicked, this, &LogScreen::enterAllAsAsked);
    return head;
}

QWidget* LogScreen::makeDayTable() {
    auto* section = new Section(tr("The family's day"), this);
    section->setRemark(tr("Type an amount, \"same\" or \"missed\", and Enter for the next member; "
                          "what was felt as \"bloating 3\"; + for one more."));
    m_table = makeTable(m_model, tr("What each member drank and what was felt"),
                        LogDayModel::DecisionColumn, this);
    m_table->setWordWrap(true);
    m_table->setItemDelegateForColumn(LogDayModel::BorneColumn, new SymptomDelegate(this));
    const int character = fontMetrics().averageCharWidth();
    QHeaderView* head = m_table->horizontalHeader();
    for (const auto& [column, width] : {std::pair(LogDayModel::DrunkColumn, drunkWidth),
                                        std::pair(LogDayModel::BorneColumn, feltWidth)}) {
        head->setSectionResizeMode(column, QHeaderView::Interactive);
        head->resizeSection(column, width * character);
    }
    connect(head, &QHeaderView::sectionResized, this, &LogScreen::fitTables);
    m_table->installEventFilter(this);
    section->body()->addWidget(m_table);
    return section;
}

QWidget* LogScreen::makeDetails() {
    m_details = new Section(tr("Drinks and reactions"), this);
    m_drinksTable = makeTable(m_drinks, tr("Drinks of the member"), DrinksModel::NoteColumn, this);
    m_sources = new SourceDelegate(this);
    m_drinksTable->setItemDelegateForColumn(DrinksModel::SourceColumn, m_sources);
    m_drinksTable->setItemDelegateForColumn(
        DrinksModel::AmountColumn, new AmountDelegate(AmountDelegate::Kind::Volume,
                                                      quantity::MeasureSystem::UsCustomary, this));
    m_reactionsTable =
        makeTable(m_reactions, tr("Reactions of the member"), ReactionsModel::NoteColumn, this);
    m_drinksTable->installEventFilter(this);
    m_reactionsTable->installEventFilter(this);
    m_noDrinks = new QLabel(tr("No drink entered. What it came out of and a note go here."), this);
    m_noReactions = new QLabel(tr("Nothing felt was entered. When it began and how long it lasted "
                                  "go here."),
                               this);
    for (QLabel* words : {m_noDrinks, m_noReactions}) {
        words->setForegroundRole(QPalette::PlaceholderText);
        words->setWordWrap(true);
    }
    auto* sides = new SideBySide(this);
    sides->setSpacing(2 * step(*this));
    for (const auto& [table, words] :
         {std::pair(m_drinksTable, m_noDrinks), std::pair(m_reactionsTable, m_noReactions)}) {
        auto* side = new QWidget(sides);
        auto* column = new QVBoxLayout(side);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(table);
        column->addWidget(words);
        column->addStretch();
        sides->add(side);
    }
    m_details->body()->addWidget(sides);
    return m_details;
}

void LogScreen::makeActions() {
    auto* before = new QAction(tr("Go to the day before"), this);
    before->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Left));
    connect(before, &QAction::triggered, this, [this] { setDay(m_day.addDays(-1)); });
    auto* after = new QAction(tr("Go to the day after"), this);
    after->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Right));
    connect(after, &QAction::triggered, this, [this] { setDay(m_day.addDays(1)); });
    auto* all = new QAction(tr("Everyone drank what was asked"), this);
    all->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_E));
    all->setStatusTip(tr("Enters the amount asked for all who have no entry yet"));
    connect(all, &QAction::triggered, this, &LogScreen::enterAllAsAsked);
    auto* today = new QAction(tr("Go to today"), this);
    today->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Home));
    connect(today, &QAction::triggered, this, [this] { setDay(book().today()); });
    for (QAction* step : {before, after, today})
        step->setStatusTip(tr("Shows another day of the log"));
    addActions({before, after, today, all});
}

void LogScreen::connectModels() {
    connect(m_model, &LogDayModel::drinkTyped, this, [this](int row, const QString& text) {
        if (const casebook::Standing* standing = m_model->standingAt(row))
            m_writer.drink(book(), standing->member, m_day, m_model->askedAt(row), text);
    });
    connect(m_model, &LogDayModel::reactionTyped, this, [this](int row, const QString& text) {
        if (const casebook::Standing* standing = m_model->standingAt(row))
            m_writer.reaction(book(), standing->member, m_day, text);
    });
    connect(m_drinks, &DrinksModel::entryChanged, this, [this](const intake::IntakeEntry& entry) {
        m_writer.change(entry, nameOf(entry.member));
    });
    connect(m_reactions, &ReactionsModel::reactionChanged, this,
            [this](const intake::Reaction& reaction) {
                m_writer.change(reaction, nameOf(reaction.member));
            });
    connect(m_reactions, &ReactionsModel::refused, this,
            [this](const QString& sentence) { context().desk.tell(this, sentence); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &LogScreen::showDetails);
    for (QAbstractItemDelegate* delegate :
         {m_table->itemDelegate(), m_table->itemDelegateForColumn(LogDayModel::BorneColumn)})
        connect(delegate, &QAbstractItemDelegate::closeEditor, this,
                [this](QWidget*, QAbstractItemDelegate::EndEditHint hint) { afterEditor(hint); });
}

void LogScreen::setDay(QDate day) {
    if (!day.isValid() || day > book().today())
        day = book().today();
    m_day = day;
    showDay();
}

void LogScreen::refresh(bool sameFamily) {
    if (!sameFamily || !m_day.isValid())
        m_day = book().today();
    m_sources->setCasebook(sharedBook());
    qobject_cast<AmountDelegate*>(m_drinksTable->itemDelegateForColumn(DrinksModel::AmountColumn))
        ->setMeasures(measures());
    showDay();
}

void LogScreen::showDay() {
    m_dayEdit->setToday(book().today());
    m_dayEdit->setRange({}, book().today());
    m_dayEdit->setDay(m_day);
    const qint64 ago = m_day.daysTo(book().today());
    const QString weekday = QLocale().dayName(m_day.dayOfWeek());
    m_weekday->setText(ago == 0   ? tr("%1, today").arg(weekday)
                       : ago == 1 ? tr("%1, yesterday").arg(weekday)
                                  : tr("%1, %2 days ago").arg(weekday).arg(ago));
    m_after->setEnabled(ago > 0);
    m_model->show(sharedBook(), m_day);
    if (!m_table->currentIndex().isValid())
        m_table->setCurrentIndex(m_model->index(firstOpenRow(), LogDayModel::DrunkColumn));
    showDetails();
    setFindings(findingsOfDay());
}

int LogScreen::firstOpenRow() const {
    for (int row = 0; row < m_model->rowCount(); ++row)
        if (m_model->askedAt(row) > quantity::Volume{})
            return row;
    return 0;
}

void LogScreen::fitTables() {
    m_table->resizeRowsToContents();
    fitRows(*m_table, 1, mostMembers);
    fitRows(*m_drinksTable, 1, mostDetails);
    fitRows(*m_reactionsTable, 1, mostDetails);
}

void LogScreen::showDetails() {
    const casebook::Standing* standing = current();
    m_details->setVisible(standing);
    if (!standing)
        return;
    m_details->setTitle(tr("Drinks and reactions: %1").arg(standing->member.name));
    m_drinks->show(sharedBook(), standing->member.id, m_day);
    m_reactions->show(book().records().reactions, standing->member.id, m_day);
    const bool drinks = m_drinks->rowCount() > 0;
    const bool reactions = m_reactions->rowCount() > 0;
    m_drinksTable->setVisible(drinks);
    m_noDrinks->setVisible(!drinks);
    m_reactionsTable->setVisible(reactions);
    m_noReactions->setVisible(!reactions);
    m_details->setRemark(drinks || reactions ? tr("Delete takes the chosen one out.") : QString());
    fitTables();
}

const casebook::Standing* LogScreen::current() const {
    return m_model->standingAt(m_table->currentIndex().row());
}

QString LogScreen::nameOf(MemberId member) const {
    const casebook::Standing* standing = book().standing(member);
    return standing ? standing->member.name : QString();
}

void LogScreen::moveDown() {
    const QModelIndex current = m_table->currentIndex();
    for (int row = current.row() + 1; row < m_model->rowCount(); ++row)
        if (m_model->isOpen(row)) {
            m_table->setCurrentIndex(current.siblingAtRow(row));
            return;
        }
}

void LogScreen::afterEditor(QAbstractItemDelegate::EndEditHint hint) {
    if (hint == QAbstractItemDelegate::SubmitModelCache) // Enter
        moveDown();
    const int column = m_table->currentIndex().column();
    if (hint != QAbstractItemDelegate::EditNextItem || column != LogDayModel::DecisionColumn)
        return;
    // Tab past what was felt goes on with the next member.
    const int row = m_table->currentIndex().row();
    moveDown();
    const bool moved = m_table->currentIndex().row() != row;
    m_table->setCurrentIndex(m_table->currentIndex().siblingAtColumn(
        moved ? LogDayModel::DrunkColumn : LogDayModel::BorneColumn));
}

void LogScreen::clearCell() {
    const QModelIndex cell = m_table->currentIndex();
    if (cell.flags().testFlag(Qt::ItemIsEditable))
        m_model->setData(cell, QString(), Qt::EditRole);
}

void LogScreen::removeDrink() {
    if (const auto* entry = m_drinks->entryAt(m_drinksTable->currentIndex().row()))
        m_writer.remove(intake::IntakeEntry(*entry), nameOf(entry->member));
}

void LogScreen::removeReaction() {
    if (const auto* reaction = m_reactions->reactionAt(m_reactionsTable->currentIndex().row()))
        m_writer.remove(intake::Reaction(*reaction), nameOf(reaction->member));
}

void LogScreen::enterAllAsAsked() {
    QList<std::pair<people::Member, quantity::Volume>> asked;
    for (int row = 0; row < m_model->rowCount(); ++row)
        asked.append({m_model->standingAt(row)->member, m_model->askedAt(row)});
    m_writer.allAsAsked(book(), m_day, asked);
}

Findings LogScreen::findingsOfDay() const {
    Findings findings;
    for (const intake::Reaction& reaction : book().records().reactions) {
        const casebook::Standing* standing = book().standing(reaction.member);
        if (reaction.day == m_day && reaction.redFlag && standing)
            findings += intake::redFlagFindings(reaction.symptom, standing->band,
                                                book().records().practice.emergencyNumber);
    }
    return findings;
}

bool LogScreen::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return FamilyScreen::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    // While a cell is open its editor has the focus and ends with Enter by itself.
    if (watched == m_table && enter && m_table->hasFocus()) {
        moveDown();
        return true;
    }
    if (key->key() != Qt::Key_Delete)
        return FamilyScreen::eventFilter(watched, event);
    if (watched == m_table)
        clearCell();
    else if (watched == m_drinksTable)
        removeDrink();
    else
        removeReaction();
    return true;
}

QWidget* LogScreen::firstField() {
    return m_table;
}

} // namespace ladlework::ui
