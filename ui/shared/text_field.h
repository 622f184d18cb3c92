#pragma once

#include <QLineEdit>

namespace ladlework::ui {

/// One line of text that is handed over when the person is done with it and it changed.
class TextField final : public QLineEdit {
    Q_OBJECT
public:
    explicit TextField(QWidget* parent = nullptr);

    /// Shows a stored text; left alone while the person is typing in it.
    void setStored(const QString& text);
    [[nodiscard]] QString trimmed() const { return text().trimmed(); }

Q_SIGNALS:
    void committed();

private:
    void commit();
    QString m_stored;
};

} // namespace ladlework::ui
