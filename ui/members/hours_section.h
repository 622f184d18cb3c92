#pragma once

#include "casebook/casebook.h"
#include "ui/members/hours_model.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QTableView;

namespace ladlework::ui {

class ProblemLine;
class SideBySide;
class TimeEdit;

/// When a family usually has time to cook: a table, and one line to change the chosen stretch or to
/// add another. They are kept by the day of the week and the hour.
class HoursSection final : public QWidget {
    Q_OBJECT
public:
    HoursSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

private:
    void makeLine();
    void connectEdits();
    void showChosen();
    void saveChosen();
    void add();
    void removeChosen();
    [[nodiscard]] week::UsualHours fromLine() const;
    /// Stores the stretches and chooses `chosen` again, wherever it stands then.
    bool save(QList<week::UsualHours> hours, const QString& sentence,
              const week::UsualHours& chosen);

    const ScreenContext& m_context;
    FamilyId m_family;
    HoursModel* m_model;
    QTableView* m_table;
    QComboBox* m_day;
    TimeEdit* m_from;
    DurationEdit* m_length;
    QSpinBox* m_pots;
    QPushButton* m_add;
    QPushButton* m_remove;
    QLabel* m_none;
    SideBySide* m_line;
    ProblemLine* m_problem;
};

} // namespace ladlework::ui
