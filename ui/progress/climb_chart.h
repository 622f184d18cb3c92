#pragma once

#include "casebook/casebook.h"
#include "ui/progress/climb_marks.h"
#include "ui/progress/climb_scale.h"

#include <QHash>
#include <QWidget>
#include <memory>

namespace ladlework::ui {

/// The climb of one member: rungs as a staircase, the days as marks on it, today, the projected
/// band up to the target, and the amounts of a plan to ease off. Left and Right move the day in
/// hand.
class ClimbChart final : public QWidget {
    Q_OBJECT
public:
    explicit ClimbChart(QWidget* parent);

    /// Shows the last `days` days and the projection; 0 shows everything.
    void show(std::shared_ptr<const casebook::Casebook> casebook, MemberId member, int days);
    using QWidget::show;
    void setDay(QDate day);
    [[nodiscard]] QDate day() const { return m_day; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void dayChosen(QDate day);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void moveTo(QDate day);
    void layOut();
    void drawRungs(QPainter& painter) const;
    void drawMonths(QPainter& painter) const;
    void drawStairs(QPainter& painter) const;
    void drawDays(QPainter& painter) const;
    void drawDay(QPainter& painter, const intake::LadderDay& day) const;
    void drawEasing(QPainter& painter) const;
    void drawProjection(QPainter& painter) const;
    void drawToday(QPainter& painter) const;
    void describe();
    [[nodiscard]] const casebook::Standing* standing() const;
    [[nodiscard]] QString rungWords(int rung) const;
    [[nodiscard]] double markSize() const;
    /// The height of what was asked on a day; at the foot of the drawing for nothing.
    [[nodiscard]] double heightOf(quantity::Volume asked) const;
    [[nodiscard]] double heightOf(const intake::LadderDay& day) const;

    std::shared_ptr<const casebook::Casebook> m_casebook;
    MemberId m_member;
    int m_days = 0;
    QDate m_day;
    ClimbScale m_scale;
    QHash<QDate, intake::LogDay> m_log;
};

} // namespace ladlework::ui
