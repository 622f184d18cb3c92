#pragma once

#include <QWidget>

class QPushButton;

namespace ladlework::ui {

/// What stands where content will be: what this place is for, and the next step as a button.
class EmptyState final : public QWidget {
    Q_OBJECT
public:
    EmptyState(const QString& title, const QString& text, const QString& action,
               QWidget* parent = nullptr);
    [[nodiscard]] QPushButton* button() const { return m_button; }

private:
    QPushButton* m_button;
};

} // namespace ladlework::ui
