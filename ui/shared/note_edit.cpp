#include "ui/shared/note_edit.h"

#include <QFontMetrics>
#include <QKeyEvent>

namespace ladlework::ui {

NoteEdit::NoteEdit(QWidget* parent) : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
    setLines(3);
}

void NoteEdit::setText(const QString& text) {
    const bool typing = hasFocus() && toPlainText().trimmed() != m_set.trimmed();
    m_set = text;
    if (!typing && toPlainText() != text)
        setPlainText(text);
}

void NoteEdit::setLines(int lines) {
    const int margins = 2 * frameWidth() + qRound(2 * document()->documentMargin());
    setFixedHeight(lines * fontMetrics().lineSpacing() + margins);
}

void NoteEdit::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason)
        commit();
}

void NoteEdit::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers().testFlag(Qt::ControlModifier)) {
        commit();
        return;
    }
    QPlainTextEdit::keyPressEvent(event);
}

void NoteEdit::commit() {
    if (text() == m_set.trimmed())
        return;
    m_set = text();
    Q_EMIT committed();
}

} // namespace ladlework::ui
