#pragma once

#include "ui/week/hours_of_day.h"

#include <QWidget>

class QAction;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ladlework::ui {

class FreeHoursRow;

/// The free hours of the day one is on, in one line: since when, how long, how many pots; back to
/// the usual ones, no cooking, lock. Changes nothing itself.
class DayHoursBar final : public QWidget {
    Q_OBJECT
public:
    /// `lock` is shown as a button of the line.
    explicit DayHoursBar(QAction* lock, QWidget* parent = nullptr);

    void showDay(const DayHoursShown& shown);
    [[nodiscard]] const DayHoursShown& shown() const { return m_shown; }
    [[nodiscard]] const QList<FreeHoursRow*>& rows() const { return m_rows; }
    [[nodiscard]] QPushButton* usualButton() const { return m_usual; }
    [[nodiscard]] QPushButton* noneButton() const { return m_none; }
    [[nodiscard]] QPushButton* addButton() const { return m_add; }
    /// Puts the keyboard on the first field.
    void takeFocus();

Q_SIGNALS:
    /// These in place of the usual ones; none: no cooking.
    void hoursWanted(QDate day, const QList<ladlework::week::FreeHours>& hours);
    void usualWanted(QDate day);
    void membersWanted();

private:
    FreeHoursRow* makeRow();
    void changed(qsizetype row, const week::FreeHours& hours);
    void removed(qsizetype row);
    void addHours();
    void fillWords();

    DayHoursShown m_shown;
    QLabel* m_day;
    QLabel* m_words;
    QVBoxLayout* m_column;
    QList<FreeHoursRow*> m_rows; ///< as many as were ever shown; the rest are hidden
    QPushButton* m_add;
    QPushButton* m_usual;
    QPushButton* m_none;
    QPushButton* m_members;
};

} // namespace ladlework::ui
