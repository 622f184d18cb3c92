#include "ui/shared/week_stepper.h"

#include "ui/paint/theme.h"
#include "week/week_plan.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QToolButton>

namespace ladlework::ui {

WeekStepper::WeekStepper(QWidget* parent) : QWidget(parent), m_label(new QLabel) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*this));
    const auto add = [this](const QString& text, const QString& tip, const QKeySequence& keys) {
        auto* action = new QAction(text, this);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        action->setStatusTip(tip);
        m_steps << action;
        return action;
    };
    const auto button = [](QAction* action, const QString& sign) {
        auto* tool = new QToolButton;
        action->setIconText(sign);
        action->setToolTip(QStringLiteral("%1 (%2)").arg(
            action->text(), action->shortcut().toString(QKeySequence::NativeText)));
        tool->setDefaultAction(action);
        tool->setAccessibleName(action->text());
        tool->setFocusPolicy(Qt::TabFocus);
        return tool;
    };
    QAction* back =
        add(tr("Previous week"), tr("Shows the week before"), QKeySequence(Qt::ALT | Qt::Key_Left));
    QAction* forward =
        add(tr("Next week"), tr("Shows the week after"), QKeySequence(Qt::ALT | Qt::Key_Right));
    QAction* now =
        add(tr("This week"), tr("Shows the week of today"), QKeySequence(Qt::ALT | Qt::Key_Home));
    connect(back, &QAction::triggered, this, [this] { go(m_week.addDays(-week::daysAWeek)); });
    connect(forward, &QAction::triggered, this, [this] { go(m_week.addDays(week::daysAWeek)); });
    connect(now, &QAction::triggered, this, [this] { go(m_today); });
    m_label->setFont(sectionFont(font()));
    m_label->setAlignment(Qt::AlignCenter);
    row->addWidget(button(back, QStringLiteral("\u25C0")));
    row->addWidget(m_label);
    row->addWidget(button(forward, QStringLiteral("\u25B6")));
    row->addWidget(button(now, now->text()));
    m_label->setMinimumWidth(m_label->fontMetrics().horizontalAdvance(
        weekInWords(QDate(2026, 9, 28)) + QStringLiteral("  ")));
}

void WeekStepper::setWeek(QDate day) {
    m_week = week::weekStart(day);
    showWeek();
}

void WeekStepper::setToday(QDate today) {
    m_today = today;
    showWeek();
}

void WeekStepper::go(QDate day) {
    const QDate monday = week::weekStart(day);
    if (!monday.isValid() || monday == m_week)
        return;
    m_week = monday;
    showWeek();
    Q_EMIT weekChanged(monday);
}

void WeekStepper::showWeek() {
    m_label->setText(weekInWords(m_week));
    m_label->setAccessibleName(m_label->text());
    m_steps.last()->setEnabled(m_today.isValid() && week::weekStart(m_today) != m_week);
}

QString weekInWords(QDate monday) {
    return WeekStepper::tr("Week of %1")
        .arg(QLocale().toString(monday, QStringLiteral("d MMMM yyyy")));
}

} // namespace ladlework::ui
