#include "ui/members/rung_stairs.h"

#include "quantity/kitchen_marks.h"
#include "ui/paint/theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ladlework::ui {

using quantity::Volume;

namespace {
/// How far above the last rung and below the first an amount can be dragged.
constexpr double headroom = 1.5;
constexpr double least = 1.0 / 30; ///< mL: below a drop
} // namespace

RungStairs::RungStairs(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("The rungs as a staircase"));
    setToolTip(tr("Drag a rung, or choose it with Left and Right and change it with Up and Down. "
                  "Insert adds a rung before it, Delete takes it out."));
}

QSize RungStairs::sizeHint() const {
    return {fontMetrics().averageCharWidth() * 70, fontMetrics().lineSpacing() * 8};
}

QSize RungStairs::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 30, fontMetrics().lineSpacing() * 8};
}

void RungStairs::setRungs(const QList<Volume>& rungs, int now, quantity::MeasureSystem measures) {
    const bool changing = m_rungs != m_set && hasFocus();
    m_now = now;
    m_measures = measures;
    if (changing && rungs == m_set)
        return;
    m_rungs = rungs;
    m_set = rungs;
    m_chosen = std::clamp(m_chosen, 0, std::max(0, static_cast<int>(rungs.size()) - 1));
    describe();
    update();
}

QRectF RungStairs::plot() const {
    const int line = fontMetrics().lineSpacing();
    return QRectF(rect()).adjusted(2, 1.3 * line, -2, -2);
}

double RungStairs::stepWidth() const {
    return plot().width() / static_cast<double>(std::max<qsizetype>(1, m_rungs.size()));
}

double RungStairs::yOf(Volume amount) const {
    // By ratio, so that the drops stand out as well as the cups.
    const double low = std::log(m_set.first().toMillilitres() / headroom);
    const double high = std::log(m_set.last().toMillilitres() * headroom);
    const double up = (std::log(std::max(amount.toMillilitres(), least)) - low) / (high - low);
    return plot().bottom() - std::clamp(up, 0.0, 1.0) * plot().height();
}

Volume RungStairs::amountAt(double y) const {
    const double low = std::log(m_set.first().toMillilitres() / headroom);
    const double high = std::log(m_set.last().toMillilitres() * headroom);
    const double up = std::clamp((plot().bottom() - y) / plot().height(), 0.0, 1.0);
    return quantity::roundToKitchen(Volume::fromMillilitres(std::exp(low + up * (high - low))),
                                    m_measures);
}

QString RungStairs::words(int rung) const {
    return quantity::printVolume(m_rungs.at(rung), m_measures);
}

void RungStairs::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_rungs.isEmpty())
        return;
    for (int rung = 0; rung < m_rungs.size(); ++rung)
        drawRung(painter, rung);
    if (hasFocus()) {
        painter.setPen(QPen(coloursOf(*this).bay, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void RungStairs::drawRung(QPainter& painter, int rung) const {
    const Colours& c = coloursOf(*this);
    const bool chosen = rung == m_chosen && (hasFocus() || m_dragging);
    const double left = plot().left() + rung * stepWidth();
    const double top = yOf(m_rungs.at(rung));
    const QRectF block(left, top, stepWidth(), plot().bottom() - top);
    painter.setPen(Qt::NoPen);
    QColor fill = rung == m_now ? c.bay : c.rule;
    constexpr int nowAlpha = 90;
    if (rung == m_now)
        fill.setAlpha(nowAlpha);
    painter.setBrush(fill);
    painter.drawRect(block);
    painter.setPen(QPen(chosen ? c.bay : c.ink, chosen ? 3 : 1.5));
    painter.drawLine(block.topLeft(), block.topRight());
    if (rung == m_now) {
        painter.setPen(c.ink);
        painter.drawText(block.adjusted(0, 0, 0, -2), Qt::AlignHCenter | Qt::AlignBottom,
                         tr("now"));
    }
    const QString shown = words(rung);
    const bool fits = fontMetrics().horizontalAdvance(shown) < stepWidth() + 2;
    const bool isEnd = rung == 0 || rung + 1 == m_rungs.size();
    if (!fits && !chosen && !isEnd && rung != m_now)
        return;
    painter.setPen(chosen ? c.bay : c.ink);
    const double wide = std::max<double>(stepWidth(), fontMetrics().horizontalAdvance(shown) + 2.0);
    const double x = std::clamp(block.center().x() - wide / 2, 0.0, std::max(0.0, width() - wide));
    painter.drawText(
        QRectF(x, top - fontMetrics().lineSpacing() - 2, wide, fontMetrics().lineSpacing()),
        Qt::AlignHCenter | Qt::AlignBottom, shown);
}

void RungStairs::choose(int rung) {
    m_chosen = std::clamp(rung, 0, std::max(0, static_cast<int>(m_rungs.size()) - 1));
    describe();
    update();
}

bool RungStairs::place(Volume amount) {
    const bool aboveTheOneBefore = m_chosen == 0 || amount > m_rungs.at(m_chosen - 1);
    const bool belowTheNext = m_chosen + 1 >= m_rungs.size() || amount < m_rungs.at(m_chosen + 1);
    if (amount <= Volume{} || !aboveTheOneBefore || !belowTheNext)
        return false;
    m_rungs[m_chosen] = amount;
    describe();
    update();
    return true;
}

void RungStairs::step(bool larger) {
    const auto next =
        quantity::neighbourMark(m_rungs.at(m_chosen).toMillilitres(),
                                quantity::volumeMarks(m_measures), m_measures, larger);
    if (next)
        place(Volume::fromMillilitres(next->size));
}

void RungStairs::dragTo(double y) {
    place(amountAt(y));
}

void RungStairs::insertRung() {
    const double below = m_chosen > 0 ? m_rungs.at(m_chosen - 1).toMillilitres()
                                      : m_rungs.at(0).toMillilitres() / (headroom * headroom);
    const double above = m_rungs.at(m_chosen).toMillilitres();
    const Volume middle =
        quantity::roundToKitchen(Volume::fromMillilitres(std::sqrt(below * above)), m_measures);
    if (middle.toMillilitres() <= below && m_chosen > 0)
        return; // no measure lies between the two
    if (middle >= m_rungs.at(m_chosen))
        return;
    m_rungs.insert(m_chosen, middle);
    commit();
}

void RungStairs::removeRung() {
    if (m_rungs.size() < 2)
        return;
    m_rungs.removeAt(m_chosen);
    choose(m_chosen);
    commit();
}

void RungStairs::commit() {
    if (m_rungs == m_set)
        return;
    m_set = m_rungs;
    describe();
    update();
    Q_EMIT committed();
}

void RungStairs::takeBack() {
    m_rungs = m_set;
    choose(m_chosen);
}

void RungStairs::describe() {
    setAccessibleDescription(
        m_rungs.isEmpty()
            ? QString()
            : tr("Rung %1 of %2: %3").arg(m_chosen + 1).arg(m_rungs.size()).arg(words(m_chosen)));
}

void RungStairs::keyPressEvent(QKeyEvent* event) {
    if (m_rungs.isEmpty()) {
        QWidget::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
        commit();
        choose(m_chosen + (event->key() == Qt::Key_Left ? -1 : 1));
        return;
    case Qt::Key_Up:
    case Qt::Key_Down:
        step(event->key() == Qt::Key_Up);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        commit();
        return;
    case Qt::Key_Insert:
        insertRung();
        return;
    case Qt::Key_Delete:
        removeRung();
        return;
    case Qt::Key_Escape:
        if (m_rungs != m_set) {
            takeBack();
            return;
        }
        break;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

void RungStairs::mousePressEvent(QMouseEvent* event) {
    if (m_rungs.isEmpty() || event->button() != Qt::LeftButton)
        return;
    choose(static_cast<int>((event->position().x() - plot().left()) / stepWidth()));
    m_dragging = true;
}

void RungStairs::mouseMoveEvent(QMouseEvent* event) {
    if (m_dragging)
        dragTo(event->position().y());
}

void RungStairs::mouseReleaseEvent(QMouseEvent* /*event*/) {
    m_dragging = false;
    commit();
}

void RungStairs::focusInEvent(QFocusEvent* event) {
    update();
    QWidget::focusInEvent(event);
}

void RungStairs::focusOutEvent(QFocusEvent* event) {
    if (event->reason() != Qt::PopupFocusReason && !m_dragging)
        commit();
    update();
    QWidget::focusOutEvent(event);
}

} // namespace ladlework::ui
