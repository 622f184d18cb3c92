#pragma once

#include "kitchen/brew.h"
#include "quantity/measure.h"
#include "ui/pot/pot_levels.h"

#include <QPixmap>
#include <QWidget>
#include <optional>

namespace ladlework::ui {

/// The pot to scale: bones as they pack, the water line, the headspace, the dashed line of the
/// stock that will be left, and at the side the band of good water amounts. Dragging the water line
/// is entering the water; the up and down keys move it by what the kitchen measures next. Escape
/// while it moves puts it back.
class PotDrawing final : public QWidget {
    Q_OBJECT
public:
    explicit PotDrawing(QWidget* parent);

    void show(const kitchen::Pot& pot, const kitchen::Vessel& vessel, const kitchen::Brewed& brewed,
              quantity::MeasureSystem measures);
    using QWidget::show;
    /// While what is typed cannot be reckoned, the drawing says that it is the one before.
    void setStale(bool stale);
    /// Is the line being dragged, or moved by keys?
    [[nodiscard]] bool isMoving() const { return m_moving; }
    /// Where the water line is drawn, from the top: what the mouse takes hold of. A pot is shown.
    [[nodiscard]] double waterLine() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

Q_SIGNALS:
    /// While the line is being dragged or moved by keys; with the amount of before when that is
    /// given up.
    void waterDragged(ladlework::quantity::Volume water);
    /// When it is let go.
    void waterChosen(ladlework::quantity::Volume water);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void layOut();
    void drawVessel(QPainter& painter) const;
    void drawBones(QPainter& painter);
    [[nodiscard]] QPixmap bonesPicture(double top) const;
    void drawWater(QPainter& painter) const;
    void drawBand(QPainter& painter) const;
    void drawLabels(QPainter& painter) const;
    void describe();
    void dragTo(double y);
    void letGo();
    /// Near enough to the water line for the mouse to take hold of it.
    [[nodiscard]] bool isOnLine(double y) const;
    [[nodiscard]] bool isNarrow() const;
    [[nodiscard]] double leftRoom() const;
    [[nodiscard]] double rightRoom() const;
    [[nodiscard]] double yOf(quantity::Length height) const;
    [[nodiscard]] QString words(quantity::Volume volume) const;

    std::optional<kitchen::Pot> m_pot;
    kitchen::Brewed m_brewed;
    PotLevels m_levels;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    QRectF m_inside;
    /// The bones stay where they are while the water moves: drawn once for each place and palette.
    QPixmap m_bones;
    QList<double> m_bonesKey;
    bool m_isStale = false;
    bool m_moving = false; ///< by mouse or by keys, not let go yet
    quantity::Volume m_before;
    quantity::Volume m_dragged;
};

} // namespace ladlework::ui
