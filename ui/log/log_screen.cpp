#include "ui/log/log_screen.h"

#include "ui/log/day_strip.h"
#include "ui/log/import_panel.h"
#include "ui/log/log_day_model.h"
#include "ui/log/log_delegates.h"
#include "ui/log/member_day_panel.h"
#include "ui/log/what_now_panel.h"
#include "ui/paint/theme.h"
#include "ui/shared/character_width.h"
#include "ui/shared/choices.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/page_scroll.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <utility>

namespace ladlework::ui {

namespace {
constexpr int dayWidth = 24;    ///< characters
constexpr int drunkWidth = 30;  ///< characters
constexpr int feltWidth = 34;   ///< characters
constexpr int sourceWidth = 34; ///< characters
constexpr int mostMembers = 9;
} // namespace

LogScreen::LogScreen(const ScreenContext& context, QWidget* parent)
    : FamilyScreen(context, parent),
      m_writer(context, [this](const QString& sentence) { m_problem->say(sentence); }),
      m_pages(new QStackedWidget(this)), m_import(new ImportPanel(context, this)),
      m_whatNow(new WhatNowPanel(this)), m_model(new LogDayModel(this)),
      m_problem(new ProblemLine(this)), m_details(new MemberDayPanel(m_writer, this)) {
    m_pages->addWidget(makeDayPage());
    m_pages->addWidget(m_import);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_pages);
    makeActions();
    connectModels();
    connectImport();
}

QWidget* LogScreen::makeDayPage() {
    auto* page = new QWidget(this);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(step(*this));
    layout->addWidget(makeHead());
    layout->addWidget(m_whatNow);
    layout->addWidget(makeDayTable());
    layout->addWidget(m_details);
    layout->addStretch(1);
    return new PageScroll(page, this);
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
    m_strip = new DayStrip(head);
    row->addWidget(label);
    row->addWidget(m_dayEdit);
    row->addWidget(before);
    row->addWidget(m_after);
    row->addWidget(m_weekday);
    row->addStretch();
    row->addWidget(m_strip);
    connect(m_dayEdit, &QuantityEdit::valueCommitted, this, [this] { setDay(m_dayEdit->day()); });
    connect(before, &QPushButton::clicked, this, [this] { setDay(m_day.addDays(-1)); });
    connect(m_after, &QPushButton::clicked, this, [this] { setDay(m_day.addDays(1)); });
    connect(m_strip, &DayStrip::dayChosen, this, &LogScreen::setDay);
    return head;
}

QWidget* LogScreen::makeDayTable() {
    auto* section = new Section(tr("The family's day"), this);
    section->setRemark(tr("Enter goes to the next member. \"same\" or = is what was asked; + adds "
                          "one more; \"missed\" is nothing."));
    auto* sourceLabel = new QLabel(tr("Out &of"), section);
    m_source = new QComboBox(section);
    m_source->setAccessibleName(tr("What the drinks entered from now on come out of"));
    m_source->setToolTip(tr("Counts for what is entered from now on; \"3/4 from jar 1\" says it "
                            "for one drink"));
    CharacterWidth::hold(*m_source, sourceWidth);
    sourceLabel->setBuddy(m_source);
    auto* all = new QPushButton(tr("Everyone as asked"), section);
    all->setToolTip(tr("Enters the amount asked for all who have no entry yet (Ctrl+E)"));
    section->addAction(sourceLabel);
    section->addAction(m_source);
    section->addAction(all);
    connect(all, &QPushButton::clicked, this, &LogScreen::enterAllAsAsked);
    connect(m_source, &QComboBox::activated, this, &LogScreen::takeSource);
    m_table = makeTable(m_model, tr("What each member drank and what was felt"),
                        LogDayModel::DecisionColumn, this);
    m_table->setWordWrap(true);
    m_symptoms = new SymptomDelegate(true, this);
    m_table->setItemDelegateForColumn(LogDayModel::DrunkColumn, new DrinkDelegate(this));
    m_table->setItemDelegateForColumn(LogDayModel::BorneColumn, m_symptoms);
    const int character = fontMetrics().averageCharWidth();
    QHeaderView* head = m_table->horizontalHeader();
    for (const auto& [column, width] : {std::pair(LogDayModel::DrunkColumn, drunkWidth),
                                        std::pair(LogDayModel::BorneColumn, feltWidth)}) {
        head->setSectionResizeMode(column, QHeaderView::Interactive);
        head->resizeSection(column, width * character);
    }
    connect(head, &QHeaderView::sectionResized, this, &LogScreen::fitTables);
    m_table->installEventFilter(this);
    m_said = new QLabel(section);
    m_said->setForegroundRole(QPalette::PlaceholderText);
    m_said->hide();
    section->body()->addWidget(m_table);
    section->body()->addWidget(m_problem);
    section->body()->addWidget(m_said);
    return section;
}

void LogScreen::makeActions() {
    const auto make = [this](const QString& text, const QString& tip, const QKeySequence& keys,
                             auto&& work) {
        connect(addScreenAction(text, tip, keys, Qt::WindowShortcut), &QAction::triggered, this,
                work);
    };
    const QString another = tr("Shows another day of the log");
    make(tr("Go to the day before"), another, QKeySequence(Qt::ALT | Qt::Key_Left),
         [this] { setDay(m_day.addDays(-1)); });
    make(tr("Go to the day after"), another, QKeySequence(Qt::ALT | Qt::Key_Right),
         [this] { setDay(m_day.addDays(1)); });
    make(tr("Go to today"), another, QKeySequence(Qt::ALT | Qt::Key_Home),
         [this] { setDay(book().today()); });
    make(tr("Go to the latest day with something missing"),
         tr("The latest day of the last two weeks on which somebody has no entry"),
         QKeySequence(Qt::ALT | Qt::Key_Up), [this] { goToOpenDay(); });
    make(tr("Everyone drank what was asked"),
         tr("Enters the amount asked for all who have no entry yet"),
         QKeySequence(Qt::CTRL | Qt::Key_E), [this] { enterAllAsAsked(); });
    make(tr("Paste a filled sheet"), tr("Shows first what each copied line would do"),
         QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V), [this] {
             showImport(true);
             m_import->paste();
         });
    make(tr("Open a filled sheet"), tr("A table saved as CSV; shows first what it would do"),
         QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O), [this] {
             showImport(true);
             m_import->openFile();
         });
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
    connect(m_details, &MemberDayPanel::refused, m_problem, &ProblemLine::say);
    connect(m_whatNow, &WhatNowPanel::decisionWanted, this,
            [this] { Q_EMIT screenWanted(QStringLiteral("progress")); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &LogScreen::showDetails);
    for (int column : {LogDayModel::DrunkColumn, LogDayModel::BorneColumn})
        connect(m_table->itemDelegateForColumn(column), &QAbstractItemDelegate::closeEditor, this,
                [this](QWidget*, QAbstractItemDelegate::EndEditHint hint) { afterEditor(hint); });
}

void LogScreen::connectImport() {
    connect(m_import, &ImportPanel::leave, this, [this] { showImport(false); });
    connect(m_import, &ImportPanel::added, this, [this](int lines, QDate latest) {
        showImport(false);
        setDay(latest);
        m_said->setText(
            lines == 1 ? tr("One line of the sheet was added. Undo takes it back.")
                       : tr("%1 lines of the sheet were added. Undo takes them back.").arg(lines));
        m_said->show();
    });
}

void LogScreen::showImport(bool shown) {
    m_pages->setCurrentIndex(shown ? 1 : 0);
    if (shown)
        m_import->firstField()->setFocus();
    else
        m_table->setFocus();
}

void LogScreen::setDay(QDate day) {
    if (!day.isValid() || day > book().today())
        day = book().today();
    m_day = day;
    m_problem->clear();
    m_said->hide();
    showDay();
}

void LogScreen::refresh(bool sameFamily) {
    if (!sameFamily || !m_day.isValid())
        m_day = book().today();
    if (!sameFamily) {
        m_problem->clear();
        m_said->hide();
        m_import->clear();
        m_pages->setCurrentIndex(0);
        m_writer.setSource({});
        m_source->setCurrentIndex(0);
    }
    m_import->setCasebook(sharedBook());
    m_symptoms->setWords(symptomWords(book().records()));
    showSources();
    showDay();
}

void LogScreen::showSources() {
    QList<Choice> choices;
    for (const DrinkSource& source : drinkSources(book()))
        choices.append(
            {source.name, QStringLiteral("%1/%2").arg(source.pot.value).arg(source.lot.value)});
    setChoices(*m_source, choices, m_source->currentData());
    takeSource(); // a container that was drunk to the end is no source any more
}

void LogScreen::takeSource() {
    m_writer.setSource(drinkSources(book()).value(m_source->currentIndex()));
}

void LogScreen::showDay() {
    showHead();
    m_model->show(sharedBook(), m_day);
    m_whatNow->show(book(), m_day);
    if (!m_table->currentIndex().isValid())
        m_table->setCurrentIndex(m_model->index(firstOpenRow(), LogDayModel::DrunkColumn));
    showDetails();
}

void LogScreen::showHead() {
    m_dayEdit->setToday(book().today());
    m_dayEdit->setRange({}, book().today());
    m_dayEdit->setDay(m_day);
    const qint64 ago = m_day.daysTo(book().today());
    const QString weekday = QLocale().dayName(m_day.dayOfWeek());
    m_weekday->setText(ago == 0   ? tr("%1, today").arg(weekday)
                       : ago == 1 ? tr("%1, yesterday").arg(weekday)
                                  : tr("%1, %2 days ago").arg(weekday).arg(ago));
    m_after->setEnabled(ago > 0);
    m_strip->show(book(), m_day);
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
}

void LogScreen::showDetails() {
    m_details->show(sharedBook(), current(), m_day);
    fitTables();
}

const casebook::Standing* LogScreen::current() const {
    return m_model->standingAt(m_table->currentIndex().row());
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

void LogScreen::enterAllAsAsked() {
    QList<std::pair<people::Member, quantity::Volume>> asked;
    for (int row = 0; row < m_model->rowCount(); ++row)
        asked.append({m_model->standingAt(row)->member, m_model->askedAt(row)});
    m_writer.allAsAsked(book(), m_day, asked);
}

void LogScreen::goToOpenDay() {
    const QDate open = m_strip->latestOpen();
    if (open.isValid())
        setDay(open);
    else
        m_problem->say(tr("Nothing is missing in the last two weeks."));
}

bool LogScreen::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress || watched != m_table)
        return FamilyScreen::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    // While a cell is open its editor has the focus and ends with Enter by itself.
    if (enter && m_table->hasFocus()) {
        moveDown();
        return true;
    }
    if (key->key() == Qt::Key_Delete) {
        clearCell();
        return true;
    }
    return FamilyScreen::eventFilter(watched, event);
}

QWidget* LogScreen::firstField() {
    return m_pages->currentIndex() == 0 ? m_table : m_import->firstField();
}

} // namespace ladlework::ui
