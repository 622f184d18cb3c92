#pragma once

#include "foundation/result.h"

#include <QWidget>

class QLabel;

namespace ladlework::ui {

/// Why something was not taken, in words beside the fields it is about; hidden while there is
/// nothing to say. Screen readers are told when it appears.
class ProblemLine final : public QWidget {
    Q_OBJECT
public:
    explicit ProblemLine(QWidget* parent);

    /// Shows the sentence, or hides the line for an empty one.
    void say(const QString& sentence);
    void clear() { say({}); }
    /// Says the Problem of an outcome, or clears the line. True when it was done.
    bool take(const Outcome& outcome);
    [[nodiscard]] QString sentence() const;

private:
    QLabel* m_words;
};

} // namespace ladlework::ui
