#pragma once

#include "casebook/casebook.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace ladlework::ui {

/// What changes in the kitchen between the rules of two phases, a sentence each; empty when
/// nothing does.
QStringList kitchenChanges(const kitchen::PhaseRules& before, const kitchen::PhaseRules& after);

/// The pots that a member may drink in one phase and not in the other, a sentence each.
QStringList potChanges(const casebook::Casebook& book, const casebook::Standing& standing,
                       const std::optional<people::Phase>& after);

/// Asks before a member goes to another phase, with what changes in the kitchen because of it.
class PhaseChange final : public QFrame {
    Q_OBJECT
public:
    explicit PhaseChange(QWidget* parent);
    /// Shows what the move would change. `after` without a value: no phase any more.
    void ask(const casebook::Casebook& book, const casebook::Standing& standing,
             const std::optional<people::Phase>& after);

Q_SIGNALS:
    void moveWanted();
    void stayWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLabel* m_words;
    QPushButton* m_move;
    QPushButton* m_stay;
};

} // namespace ladlework::ui
