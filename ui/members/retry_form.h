#pragma once

#include "people/retry_plan.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace ladlework::ui {

class DayEdit;
class ProblemLine;

/// Plans how something that was avoided is tried again: the first day, the amounts, the days to
/// watch after each, with the day of every step in words while it is typed.
class RetryForm final : public QWidget {
    Q_OBJECT
public:
    RetryForm(const ScreenContext& context, QWidget* parent);
    /// A new plan, or one that is changed. `name` is the member's.
    void open(const people::RetryPlan& plan, const QString& name, QDate today,
              quantity::MeasureSystem measures);
    [[nodiscard]] MemberId member() const { return m_plan.member; }
    [[nodiscard]] QWidget* firstField() const;

Q_SIGNALS:
    void finished();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void lay();
    void keep();
    void showDays();
    [[nodiscard]] Result<people::RetryPlan> typed() const;

    const ScreenContext& m_context;
    people::RetryPlan m_plan;
    QString m_name;
    QDate m_today;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    QLabel* m_title;
    DayEdit* m_start;
    QSpinBox* m_watch;
    QLineEdit* m_steps;
    QLineEdit* m_note;
    QLabel* m_days;
    ProblemLine* m_problem;
    QPushButton* m_keep;
};

} // namespace ladlework::ui
