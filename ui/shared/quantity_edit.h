#pragma once

#include "foundation/result.h"

#include <QLineEdit>

class QAction;

namespace ladlework::ui {

/// The common part of the edits that read a quantity as a kitchen writes it. While the text cannot
/// be read it is marked and the sentence of the problem stands in the tool tip and the accessible
/// description; leaving the field puts the value that was set back, in kitchen words. Escape does
/// the same at once. A bare number keeps the unit that was shown.
class QuantityEdit : public QLineEdit {
    Q_OBJECT
public:
    explicit QuantityEdit(QWidget* parent = nullptr);

    [[nodiscard]] bool isGood() const { return m_problem.isEmpty(); }
    [[nodiscard]] const QString& problemSentence() const { return m_problem; }

Q_SIGNALS:
    /// On each keystroke that leaves a readable value.
    void valueEdited();
    /// When the person is done with it (Enter or leaving) and the value differs from the one set.
    void valueCommitted();

protected:
    /// Reads the text; an empty string when it is good, else the sentence.
    virtual QString read(const QString& text) = 0;
    /// The value in kitchen words.
    [[nodiscard]] virtual QString words() const = 0;
    /// True when the value read differs from the value that was set from outside.
    [[nodiscard]] virtual bool differs() const = 0;
    /// The value read becomes the one that counts as set.
    virtual void settle() = 0;
    /// Back to the value that was set.
    virtual void takeBack() = 0;
    /// The words that stood in the field before it was typed in.
    [[nodiscard]] const QString& shown() const { return m_shown; }
    /// Shows words() unless the person is typing in it.
    void showValue();
    /// A new value by another way than typing, such as stepping: shows it and tells.
    void showEdited();
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void onTextEdited(const QString& text);
    /// Says beside the field why what was typed is not kept.
    void sayNotKept();
    void markProblem(const QString& sentence);
    void commit();
    void abandon();

    QString m_shown;
    QString m_problem;
    QString m_description;
    QString m_toolTip;
    QAction* m_mark = nullptr;
};

} // namespace ladlework::ui
