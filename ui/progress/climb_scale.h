#pragma once

#include <QDate>
#include <QRectF>

namespace ladlework::ui {

/// Where days and rungs lie on the drawing of the climb. Rungs stand at equal heights, as on a
/// ladder, so that the first sips are as visible as the last cups.
class ClimbScale {
public:
    ClimbScale() = default;
    /// Days `first` to `last` across `plot`; rungs 0 to `rungs` - 1 from its foot up.
    ClimbScale(const QRectF& plot, QDate first, QDate last, int rungs);

    [[nodiscard]] const QRectF& plot() const { return m_plot; }
    [[nodiscard]] QDate first() const { return m_first; }
    [[nodiscard]] QDate last() const { return m_last; }
    /// The left edge of a day; the day's width is dayWidth().
    [[nodiscard]] double xOf(QDate day) const;
    [[nodiscard]] double middleOf(QDate day) const { return xOf(day) + dayWidth() / 2; }
    [[nodiscard]] double dayWidth() const;
    [[nodiscard]] double yOf(int rung) const;
    [[nodiscard]] double rungHeight() const;
    /// The day under a point, within the range.
    [[nodiscard]] QDate dayAt(double x) const;

private:
    QRectF m_plot;
    QDate m_first;
    QDate m_last;
    int m_rungs = 1;
};

} // namespace ladlework::ui
