#pragma once

#include "kitchen/calibration.h"

#include <QWidget>

namespace ladlework::ui {

/// What measured batches teach of a vessel: on a scale of times the physical estimate, what is
/// expected from physics alone, each measured batch with what is not known of it, and what is
/// expected after them. A batch counts as much as its mark is large; an odd one is hollow and has
/// the word.
class CalibrationDrawing final : public QWidget {
    Q_OBJECT
public:
    static constexpr std::size_t mostBatches = 8; ///< drawn, the latest

    explicit CalibrationDrawing(QWidget* parent);
    void show(const kitchen::Calibration& calibration);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Does it count for less than half?
    static bool isOdd(const kitchen::MeasuredLoss& loss);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void fitScale();
    void describe();
    void drawScale(QPainter& painter) const;
    void drawExpected(QPainter& painter, const QString& name, const kitchen::Range& range,
                      const QColor& colour, double y) const;
    void drawBatch(QPainter& painter, const kitchen::MeasuredLoss& loss, double y) const;
    [[nodiscard]] double xOf(double factor) const;
    [[nodiscard]] QRectF plot() const;
    [[nodiscard]] double rowHeight() const;
    [[nodiscard]] std::vector<kitchen::MeasuredLoss> latest() const;

    kitchen::Calibration m_calibration;
    double m_low = 0.25;
    double m_high = 4;
};

} // namespace ladlework::ui
