#include "ui/week/day_hours_bar.h"

#include "ui/paint/theme.h"
#include "ui/shared/time_edit.h"
#include "ui/week/free_hours_row.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace ladlework::ui {

DayHoursBar::DayHoursBar(QAction* lock, QWidget* parent)
    : QWidget(parent), m_day(new QLabel), m_words(new QLabel), m_column(new QVBoxLayout),
      m_add(new QPushButton(tr("Add hours"))), m_usual(new QPushButton(tr("As usual"))),
      m_none(new QPushButton(tr("No cooking"))),
      m_members(new QPushButton(tr("Set the usual hours"))) {
    setAccessibleName(tr("Free hours of the day"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*this));
    m_column->setSpacing(step(*this) / 2);
    m_words->setForegroundRole(QPalette::PlaceholderText);
    m_usual->setToolTip(tr("The usual free hours of this weekday"));
    m_none->setToolTip(tr("Nothing is planned on this day"));
    m_add->setToolTip(tr("More free time on this day"));
    m_members->setToolTip(tr("Opens Members, where the family's usual free hours are set"));
    auto* locking = new QPushButton(lock->text());
    locking->setCheckable(true);
    locking->setToolTip(QStringLiteral("%1 (%2)").arg(
        lock->statusTip(), lock->shortcut().toString(QKeySequence::NativeText)));
    const auto follow = [locking, lock] {
        locking->setEnabled(lock->isEnabled());
        locking->setChecked(lock->isChecked());
        locking->setText(lock->isChecked() ? tr("Locke&d") : lock->text());
    };
    connect(lock, &QAction::changed, locking, follow);
    connect(locking, &QPushButton::clicked, lock, &QAction::trigger);
    follow();
    row->addWidget(m_day);
    row->addWidget(m_words);
    row->addLayout(m_column);
    row->addWidget(m_add);
    row->addWidget(m_usual);
    row->addWidget(m_none);
    row->addWidget(m_members);
    row->addWidget(locking);
    row->addStretch();
    connect(m_add, &QPushButton::clicked, this, &DayHoursBar::addHours);
    connect(m_usual, &QPushButton::clicked, this, [this] { Q_EMIT usualWanted(m_shown.day); });
    connect(m_none, &QPushButton::clicked, this, [this] { Q_EMIT hoursWanted(m_shown.day, {}); });
    connect(m_members, &QPushButton::clicked, this, &DayHoursBar::membersWanted);
}

FreeHoursRow* DayHoursBar::makeRow() {
    auto* made = new FreeHoursRow;
    const qsizetype index = m_rows.size();
    connect(made, &FreeHoursRow::changed, this,
            [this, index](const week::FreeHours& hours) { changed(index, hours); });
    connect(made, &FreeHoursRow::removeWanted, this, [this, index] { removed(index); });
    m_column->addWidget(made);
    return made;
}

void DayHoursBar::showDay(const DayHoursShown& shown) {
    m_shown = shown;
    while (m_rows.size() < shown.hours.size())
        m_rows << makeRow();
    for (qsizetype index = 0; index < m_rows.size(); ++index) {
        const bool used = !shown.past && index < shown.hours.size();
        if (used)
            m_rows.at(index)->setHours(shown.hours.at(index));
        m_rows.at(index)->setVisible(used);
    }
    fillWords();
    m_add->setVisible(!shown.past);
    m_add->setText(shown.hours.isEmpty() ? tr("Add hours") : tr("+"));
    m_add->setAccessibleName(shown.hours.isEmpty() ? tr("Add hours") : tr("Add more hours"));
    m_usual->setVisible(!shown.past && shown.own);
    m_none->setVisible(!shown.past && (shown.toldAtAll || shown.own) && !shown.hours.isEmpty());
    m_members->setVisible(!shown.past && !shown.toldAtAll);
}

void DayHoursBar::fillWords() {
    m_day->setText(tr("%1:").arg(QLocale().toString(m_shown.day, QStringLiteral("dddd d MMMM"))));
    QString words;
    if (m_shown.past)
        words = tr("this day is over");
    else if (m_shown.hours.isEmpty())
        words =
            m_shown.own || m_shown.toldAtAll ? tr("no cooking") : tr("no free hours are told yet");
    m_words->setText(words);
    m_words->setVisible(!words.isEmpty());
}

void DayHoursBar::changed(qsizetype row, const week::FreeHours& hours) {
    QList<week::FreeHours> all = m_shown.hours;
    if (row >= all.size() || all.at(row) == hours)
        return;
    all[row] = hours;
    Q_EMIT hoursWanted(m_shown.day, all);
}

void DayHoursBar::removed(qsizetype row) {
    QList<week::FreeHours> all = m_shown.hours;
    if (row >= all.size())
        return;
    all.removeAt(row);
    Q_EMIT hoursWanted(m_shown.day, all);
}

void DayHoursBar::addHours() {
    QList<week::FreeHours> all = m_shown.hours;
    week::FreeHours more;
    more.length = m_shown.longest;
    all << more;
    const qsizetype index = all.size() - 1;
    Q_EMIT hoursWanted(m_shown.day, all);
    if (index < m_rows.size() && m_rows.at(index)->isVisibleTo(this))
        m_rows.at(index)->from()->setFocus();
}

void DayHoursBar::takeFocus() {
    if (!m_rows.isEmpty() && m_rows.first()->isVisibleTo(this))
        m_rows.first()->from()->setFocus(Qt::ShortcutFocusReason);
    else
        m_add->setFocus(Qt::ShortcutFocusReason);
}

} // namespace ladlework::ui
