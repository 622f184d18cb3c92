#pragma once

#include <QDate>
#include <QList>
#include <QString>
#include <QWidget>

namespace ladlework::ui {

/// One value of a series over time.
struct SeriesPoint {
    QDate day;
    double value = 0;
    QString words; ///< "159.6 lb"
};

/// A small drawing of a series: a dot for each value, joined by a line; the highest and the lowest
/// at its left. Left and Right move the value in hand.
class SeriesChart final : public QWidget {
    Q_OBJECT
public:
    explicit SeriesChart(QWidget* parent);
    /// The points in order of day.
    void setPoints(const QList<SeriesPoint>& points);
    void setDay(QDate day);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void dayChosen(QDate day);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] QRectF plot() const;
    [[nodiscard]] QPointF placeOf(const SeriesPoint& point) const;
    void drawScale(QPainter& painter) const;
    void choose(qsizetype at);
    void describe();

    QList<SeriesPoint> m_points;
    qsizetype m_at = 0;
    double m_least = 0;
    double m_most = 1;
};

} // namespace ladlework::ui
