#pragma once

#include <QDate>
#include <QWidget>

class QAction;
class QLabel;

namespace ladlework::ui {

/// Steps from week to week: the Monday in words between two buttons, and a way back to the week of
/// today.
class WeekStepper final : public QWidget {
    Q_OBJECT
public:
    explicit WeekStepper(QWidget* parent = nullptr);

    /// Any day of the week to show; says nothing.
    void setWeek(QDate day);
    /// The Monday.
    [[nodiscard]] QDate week() const { return m_week; }
    void setToday(QDate today);

    /// The steps as actions with shortcuts (Alt+Left, Alt+Right, Alt+Home), for the screen to add.
    [[nodiscard]] QList<QAction*> steps() const { return m_steps; }

Q_SIGNALS:
    void weekChanged(QDate monday);

private:
    void go(QDate day);
    void showWeek();

    QDate m_week;
    QDate m_today;
    QLabel* m_label;
    QList<QAction*> m_steps;
};

/// "Week of 2 November 2026".
QString weekInWords(QDate monday);

} // namespace ladlework::ui
