#pragma once

#include <QWidget>

namespace ladlework::ui {

/// How much of the asked amount was drunk, as a thin bar. What it says is also in words beside it.
class DrunkBar final : public QWidget {
    Q_OBJECT
public:
    explicit DrunkBar(QWidget* parent);
    /// 0 to 1; more is shown as full.
    void setShare(double share);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double m_share = 0.0;
};

} // namespace ladlework::ui
