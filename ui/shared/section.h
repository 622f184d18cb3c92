#pragma once

#include <QFrame>
#include <QString>

class QLabel;
class QVBoxLayout;
class QHBoxLayout;

namespace ladlework::ui {

/// A raised panel with a title, room for actions at its right, and a body: the one container that
/// screens are built of.
class Section final : public QFrame {
    Q_OBJECT
public:
    explicit Section(const QString& title, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    /// A quiet remark after the title.
    void setRemark(const QString& remark);
    /// Puts a button or another small widget at the right of the title.
    void addAction(QWidget* widget);
    using QFrame::addAction;
    [[nodiscard]] QVBoxLayout* body() const { return m_body; }

protected:
    void changeEvent(QEvent* event) override;

private:
    QLabel* m_title;
    QLabel* m_remark;
    QHBoxLayout* m_head;
    QVBoxLayout* m_body;
};

} // namespace ladlework::ui
