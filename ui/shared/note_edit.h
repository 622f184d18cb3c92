#pragma once

#include <QPlainTextEdit>

namespace ladlework::ui {

/// Several lines of the practitioner's own words. Tab moves on; the text is handed over when the
/// focus leaves or with Ctrl+Enter, and only when it changed.
class NoteEdit final : public QPlainTextEdit {
    Q_OBJECT
public:
    explicit NoteEdit(QWidget* parent = nullptr);

    /// Shows a stored text; left alone while the person is typing in it.
    void setText(const QString& text);
    [[nodiscard]] QString text() const { return toPlainText().trimmed(); }
    /// About this many lines high.
    void setLines(int lines);

Q_SIGNALS:
    void committed();

protected:
    void focusOutEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void commit();
    QString m_set;
};

} // namespace ladlework::ui
