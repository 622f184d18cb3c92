#include "ui/progress/climb_scale.h"

#include <algorithm>
#include <cmath>

namespace ladlework::ui {

ClimbScale::ClimbScale(const QRectF& plot, QDate first, QDate last, int rungs)
    : m_plot(plot), m_first(first), m_last(std::max(first, last)), m_rungs(std::max(1, rungs)) {}

double ClimbScale::dayWidth() const {
    return m_plot.width() / static_cast<double>(m_first.daysTo(m_last) + 1);
}

double ClimbScale::xOf(QDate day) const {
    return m_plot.left() + static_cast<double>(m_first.daysTo(day)) * dayWidth();
}

double ClimbScale::rungHeight() const {
    return m_plot.height() / m_rungs;
}

double ClimbScale::yOf(int rung) const {
    return m_plot.bottom() - (rung + 0.5) * rungHeight();
}

QDate ClimbScale::dayAt(double x) const {
    const auto days = static_cast<qint64>(std::floor((x - m_plot.left()) / dayWidth()));
    return std::clamp(m_first.addDays(days), m_first, m_last);
}

} // namespace ladlework::ui
