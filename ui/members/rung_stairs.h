#pragma once

#include "quantity/measure.h"

#include <QList>
#include <QWidget>

namespace ladlework::ui {

/// The rungs of a ladder as a staircase to change: a rung is dragged up or down, or chosen with
/// Left and Right and changed with Up and Down to the next amount that a kitchen measures. Insert
/// puts a rung before the chosen one, Delete takes it out. What was changed is handed over on
/// letting go, with Enter, or when the focus leaves; Escape takes it back.
class RungStairs final : public QWidget {
    Q_OBJECT
public:
    explicit RungStairs(QWidget* parent);

    /// `now` is the rung that is climbed; -1 for none. What is being changed is left alone.
    void setRungs(const QList<quantity::Volume>& rungs, int now, quantity::MeasureSystem measures);
    [[nodiscard]] const QList<quantity::Volume>& rungs() const { return m_rungs; }
    [[nodiscard]] int chosen() const { return m_chosen; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void committed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void choose(int rung);
    void step(bool larger);
    void dragTo(double y);
    void insertRung();
    void removeRung();
    void commit();
    void takeBack();
    void describe();
    void drawRung(QPainter& painter, int rung) const;
    /// Puts the chosen rung between its neighbours.
    bool place(quantity::Volume amount);
    [[nodiscard]] QRectF plot() const;
    [[nodiscard]] double stepWidth() const;
    [[nodiscard]] double yOf(quantity::Volume amount) const;
    [[nodiscard]] quantity::Volume amountAt(double y) const;
    [[nodiscard]] QString words(int rung) const;

    QList<quantity::Volume> m_rungs;
    QList<quantity::Volume> m_set;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    int m_now = -1;
    int m_chosen = 0;
    bool m_dragging = false;
};

} // namespace ladlework::ui
