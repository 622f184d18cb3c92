#pragma once

#include "ui/shared/amount_edit.h"
#include "week/free_hours.h"

#include <QWidget>

class QComboBox;
class QToolButton;

namespace ladlework::ui {

class TimeEdit;

/// One stretch of free time: "from [9:00] for [6 h] [2 pots at once] x".
class FreeHoursRow final : public QWidget {
    Q_OBJECT
public:
    explicit FreeHoursRow(QWidget* parent = nullptr);

    void setHours(const week::FreeHours& hours);
    [[nodiscard]] TimeEdit* from() const { return m_from; }
    [[nodiscard]] DurationEdit* length() const { return m_length; }
    [[nodiscard]] QComboBox* pots() const { return m_pots; }

Q_SIGNALS:
    void changed(const ladlework::week::FreeHours& hours);
    void removeWanted();

private:
    week::FreeHours m_hours;
    TimeEdit* m_from;
    DurationEdit* m_length;
    QComboBox* m_pots;
    QToolButton* m_remove;
};

} // namespace ladlework::ui
