#pragma once

#include "ui/progress/comparison.h"

#include <QWidget>

namespace ladlework::ui {

/// All climbs of a family on one drawing: what is asked as a share of each member's own target, a
/// line of its own colour and dash for each, with the name at its end.
class ClimbComparisonChart final : public QWidget {
    Q_OBJECT
public:
    explicit ClimbComparisonChart(QWidget* parent);
    /// Shows the `days` days that end with today; 0 shows everything.
    void show(const QList<ClimbShares>& climbs, QDate today, int days);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Label {
        QString name;
        double y = 0;
        int at = 0; ///< which climb
    };
    [[nodiscard]] QRectF plot() const;
    [[nodiscard]] double xOf(QDate day) const;
    [[nodiscard]] double yOf(double share) const;
    [[nodiscard]] QPen penOf(int at) const;
    void drawScale(QPainter& painter) const;
    void drawClimb(QPainter& painter, int at) const;
    void drawNames(QPainter& painter) const;
    [[nodiscard]] QList<Label> placedLabels() const;

    QList<ClimbShares> m_climbs;
    QDate m_first;
    QDate m_today;
    double m_most = 1;
};

} // namespace ladlework::ui
