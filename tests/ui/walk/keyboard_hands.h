#pragma once

#include <QString>
#include <Qt>

class QKeySequence;
class QWidget;

namespace ladlework::ui {

/// Someone at the keyboard of a window: every key goes to whatever has the focus, and what cannot
/// be reached by keys cannot be reached at all.
class KeyboardHands {
public:
    /// Shows the window and waits until it has the keyboard; throws when it does not get it.
    explicit KeyboardHands(QWidget& window);

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void press(const QKeySequence& keys);
    /// Types over whatever stands in the focused field.
    void type(const QString& text);
    /// Presses Tab until the part that a screen reader calls by this name, or the button with this
    /// text, has the focus. False after going all the way round.
    [[nodiscard]] bool tabTo(const QString& name);
    /// What has the focus, as a screen reader would call it.
    [[nodiscard]] QString focusName() const;

private:
    [[nodiscard]] QWidget* focused() const;
    QWidget& m_window;
};

} // namespace ladlework::ui
