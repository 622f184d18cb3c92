#include "ui/shared/text_field.h"

namespace ladlework::ui {

TextField::TextField(QWidget* parent) : QLineEdit(parent) {
    connect(this, &QLineEdit::editingFinished, this, &TextField::commit);
}

void TextField::setStored(const QString& stored) {
    const bool typing = hasFocus() && isModified();
    m_stored = stored;
    if (typing || text() == stored)
        return;
    setText(stored);
    if (!hasFocus())
        setCursorPosition(0); // a long text shows its beginning
}

void TextField::commit() {
    setModified(false);
    if (trimmed() == m_stored)
        return;
    m_stored = trimmed();
    Q_EMIT committed();
}

} // namespace ladlework::ui
