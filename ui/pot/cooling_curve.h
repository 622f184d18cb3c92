#pragma once

#include "kitchen/cooling.h"
#include "quantity/measure.h"

#include <QWidget>

namespace ladlework::ui {

/// The cooling curve with the two limits as gates: from its time on, everything above the
/// temperature of a gate is walled up, so that the curve goes below the wall or runs into it.
class CoolingCurve final : public QWidget {
    Q_OBJECT
public:
    explicit CoolingCurve(QWidget* parent);
    void show(const kitchen::Cooling& cooling, quantity::MeasureSystem measures);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    /// One limit of the two-stage rule, on the clock of the drawing.
    struct Gate {
        quantity::Temperature below;
        quantity::Duration within; ///< from the start of the rule
        quantity::Duration at;     ///< from the start of the curve
        bool passed = false;
    };
    void layGates();
    void drawGrid(QPainter& painter) const;
    void drawGate(QPainter& painter, const Gate& gate, double top) const;
    void drawCurve(QPainter& painter) const;
    void describe();
    [[nodiscard]] double xOf(quantity::Duration at) const;
    [[nodiscard]] double yOf(quantity::Temperature temperature) const;
    [[nodiscard]] QRectF plot() const;
    [[nodiscard]] QString words(quantity::Temperature temperature) const;

    kitchen::Cooling m_cooling;
    QList<Gate> m_gates;
    quantity::Duration m_end;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
