#pragma once

#include <QList>
#include <QWidget>

class QBoxLayout;

namespace ladlework::ui {

/// Parts that stand beside each other while the width allows it and below each other when it does
/// not, such as with large text in a narrow window.
class SideBySide final : public QWidget {
    Q_OBJECT
public:
    explicit SideBySide(QWidget* parent = nullptr);
    void add(QWidget* part, int stretch = 1);
    void setSpacing(int spacing);
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// The parts stand another way now.
    void arranged(bool beside);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void arrange();
    QList<QWidget*> m_parts;
    QBoxLayout* m_layout;
};

} // namespace ladlework::ui
