#include "ui/pot/pot_drawing.h"

#include "ui/paint/theme.h"
#include "ui/pot/bone_shapes.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <utility>

namespace ladlework::ui {

using quantity::Length;
using quantity::Volume;

namespace {

constexpr int waterAlpha = 56;
constexpr int boneAlpha = 200;
constexpr double boneSizeCm = 5.0; // as drawn
constexpr int fewestLines = 9;
constexpr int mostLines = 30;

Volume keyStep(quantity::MeasureSystem measures) {
    return measures == quantity::MeasureSystem::Metric ? Volume::fromMillilitres(50)
                                                       : Volume::fromCups(0.25);
}

/// The next amount that the kitchen measures differently, a step or more away.
Volume stepped(Volume water, bool up, quantity::MeasureSystem measures) {
    const Volume step = keyStep(measures);
    const Volume now = quantity::roundToKitchen(water, measures);
    Volume next = now;
    do
        next = up ? next + step : next - step;
    while (next > step && quantity::roundToKitchen(next, measures) == now);
    return quantity::roundToKitchen(std::max(next, step), measures);
}

} // namespace

PotDrawing::PotDrawing(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("The pot, drawn to scale"));
    setMouseTracking(true); // the cursor tells where the line can be taken
    setToolTip(tr("Drag the water line, or move it with the up and down keys"));
}

QSize PotDrawing::sizeHint() const {
    const int width = fontMetrics().averageCharWidth() * 64;
    return {width, heightForWidth(width)};
}

QSize PotDrawing::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 40, fontMetrics().lineSpacing() * fewestLines};
}

int PotDrawing::heightForWidth(int width) const {
    // As high as the vessel is when its width fills the room between the labels.
    const int line = fontMetrics().lineSpacing();
    const double room = width - leftRoom() - rightRoom();
    const double aspect = m_pot ? m_levels.height() / m_levels.diameter() : 1.0;
    return std::clamp(static_cast<int>(room * aspect) + 2 * line, fewestLines * line,
                      mostLines * line);
}

bool PotDrawing::isNarrow() const {
    constexpr int charactersForBand = 56;
    return width() < fontMetrics().averageCharWidth() * charactersForBand;
}

double PotDrawing::leftRoom() const {
    constexpr double bareBand = 6.5;
    if (isNarrow())
        return bareBand * fontMetrics().averageCharWidth();
    return fontMetrics().horizontalAdvance(QStringLiteral("00½ quarts")) +
           6.5 * fontMetrics().averageCharWidth();
}

double PotDrawing::rightRoom() const {
    QFont bold = font();
    bold.setBold(true);
    return QFontMetricsF(bold).horizontalAdvance(
               tr("stock left, %1").arg(QStringLiteral("00½ quarts"))) +
           4.5 * fontMetrics().averageCharWidth();
}

void PotDrawing::show(const kitchen::Pot& pot, const kitchen::Vessel& vessel,
                      const kitchen::Brewed& brewed, quantity::MeasureSystem measures) {
    m_pot = pot;
    m_brewed = brewed;
    const double aspect = m_levels.height() / m_levels.diameter();
    m_levels = PotLevels(vessel, brewed);
    m_measures = measures;
    if (aspect != m_levels.height() / m_levels.diameter())
        updateGeometry();
    layOut();
    describe();
    update();
}

void PotDrawing::setStale(bool stale) {
    if (std::exchange(m_isStale, stale) == stale || !m_pot)
        return;
    describe();
    update();
}

void PotDrawing::layOut() {
    if (!m_pot)
        return;
    const double margin = fontMetrics().lineSpacing();
    const QRectF room = QRectF(rect()).adjusted(leftRoom(), margin, -rightRoom(), -margin);
    const double scale = std::min(room.width() / std::max(1.0, m_levels.diameter().toCentimetres()),
                                  room.height() / std::max(1.0, m_levels.height().toCentimetres()));
    const QSizeF size(m_levels.diameter().toCentimetres() * scale,
                      m_levels.height().toCentimetres() * scale);
    m_inside =
        QRectF(QPointF(room.center().x() - size.width() / 2, room.bottom() - size.height()), size);
}

double PotDrawing::yOf(Length height) const {
    return m_inside.bottom() - m_inside.height() * (height / m_levels.height());
}

QString PotDrawing::words(Volume volume) const {
    return quantity::printVolume(volume, m_measures);
}

void PotDrawing::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursOf(*this);
    painter.fillRect(rect(), c.raised);
    if (!m_pot)
        return;
    drawBand(painter);
    drawBones(painter);
    drawWater(painter);
    drawVessel(painter);
    drawLabels(painter);
    if (m_isStale) {
        painter.setFont(font());
        painter.setPen(c.quietInk);
        painter.drawText(rect(), Qt::AlignLeft | Qt::AlignTop, tr("as before the last change"));
    }
    if (hasFocus()) {
        painter.setPen(QPen(c.bay, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void PotDrawing::drawVessel(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const double wall = fontMetrics().height() / 4.0;
    QPainterPath shell;
    shell.moveTo(m_inside.left() - wall / 2, m_inside.top());
    shell.lineTo(m_inside.left() - wall / 2, m_inside.bottom() + wall / 2);
    shell.lineTo(m_inside.right() + wall / 2, m_inside.bottom() + wall / 2);
    shell.lineTo(m_inside.right() + wall / 2, m_inside.top());
    painter.setPen(QPen(c.ink, wall, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(shell);
    painter.setPen(QPen(c.ink, wall, Qt::SolidLine, Qt::RoundCap));
    const double handleY = m_inside.top() + m_inside.height() * 0.18;
    painter.drawLine(QPointF(m_inside.left() - 3 * wall, handleY),
                     QPointF(m_inside.left() - wall, handleY));
    painter.drawLine(QPointF(m_inside.right() + wall, handleY),
                     QPointF(m_inside.right() + 3 * wall, handleY));
}

void PotDrawing::drawBones(QPainter& painter) {
    const double top = yOf(m_levels.bones());
    if (m_inside.bottom() - top < 2)
        return;
    const QList<double> key{m_inside.left(),
                            m_inside.right(),
                            m_inside.bottom(),
                            top,
                            m_levels.diameter().toCentimetres(),
                            devicePixelRatioF(),
                            static_cast<double>(palette().cacheKey())};
    if (key != m_bonesKey) {
        m_bones = bonesPicture(top);
        m_bonesKey = key;
    }
    painter.drawPixmap(QPointF(std::floor(m_inside.left()), std::floor(top)), m_bones);
}

QPixmap PotDrawing::bonesPicture(double top) const {
    const Colours& c = coloursOf(*this);
    const QPointF corner(std::floor(m_inside.left()), std::floor(top));
    const QSizeF size(m_inside.right() - corner.x() + 1, m_inside.bottom() - corner.y() + 1);
    const double ratio = devicePixelRatioF();
    QPixmap picture((size * ratio).toSize());
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(-corner);
    const double length =
        boneSizeCm * m_inside.width() / std::max(1.0, m_levels.diameter().toCentimetres());
    QColor fill = c.rule;
    fill.setAlpha(boneAlpha);
    painter.setPen(QPen(c.quietInk, 1));
    painter.setBrush(fill);
    painter.drawPath(
        bonesIn(QRectF(QPointF(m_inside.left(), top), m_inside.bottomRight()), length));
    return picture;
}

void PotDrawing::drawWater(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const double surface = yOf(m_levels.surface(m_pot->water));
    QColor water = c.slate;
    water.setAlpha(waterAlpha);
    painter.fillRect(QRectF(QPointF(m_inside.left(), surface), m_inside.bottomRight()), water);
    painter.setPen(QPen(c.slate, 2.5));
    painter.drawLine(QPointF(m_inside.left(), surface), QPointF(m_inside.right(), surface));
    const double r = fontMetrics().height() / 3.0;
    painter.setBrush(c.slate);
    painter.setPen(QPen(c.raised, 1.5));
    painter.drawEllipse(QPointF(m_inside.center().x(), surface), r, r);
    const double left =
        yOf(m_levels.surface(Volume::fromMillilitres(std::max(0.0, m_brewed.stockMl.best))));
    painter.setPen(QPen(c.bay, 1.5, Qt::DashLine));
    painter.drawLine(QPointF(m_inside.left(), left), QPointF(m_inside.right(), left));
}

void PotDrawing::drawBand(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    if (m_brewed.wateredMost <= Volume{})
        return;
    const double top = yOf(m_levels.surface(m_brewed.wateredMost));
    const double bottom = yOf(m_levels.surface(m_brewed.wateredLeast));
    const double wide = fontMetrics().averageCharWidth();
    const double x = m_inside.left() - 5 * wide;
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.bay);
    painter.drawRect(QRectF(x, top, wide, std::max(2.0, bottom - top)));
    if (isNarrow())
        return; // the pot itself needs the room of the words
    painter.setPen(c.quietInk);
    const double line = fontMetrics().height();
    const QRectF column(0, 0, x - wide, line);
    painter.drawText(column.translated(0, top - line / 2), Qt::AlignRight | Qt::AlignVCenter,
                     words(m_brewed.wateredMost));
    if (bottom - top > line)
        painter.drawText(
            column.translated(0, bottom - line / 2), Qt::AlignRight | Qt::AlignVCenter,
            quantity::printVolumeLike(m_brewed.wateredLeast, m_brewed.wateredMost, m_measures));
}

void PotDrawing::drawLabels(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    struct Label {
        double y;
        QString text;
        QColor colour;
        bool strong;
    };
    const Volume stock = Volume::fromMillilitres(std::max(0.0, m_brewed.stockMl.best));
    QList<Label> labels{
        {m_inside.top(), tr("brim, %1").arg(words(m_brewed.capacity)), c.quietInk, false},
        {yOf(m_levels.surface(m_pot->water)), tr("water, %1").arg(words(m_pot->water)), c.slate,
         true},
        {yOf(m_levels.surface(stock)), tr("stock left, %1").arg(words(stock)), c.bay, true},
        {yOf(m_levels.bones()), tr("top of the bones"), c.quietInk, false},
    };
    std::ranges::sort(labels, {}, &Label::y);
    const double x = m_inside.right() + 3.5 * fontMetrics().averageCharWidth();
    const double line = fontMetrics().lineSpacing();
    // Labels keep their order and never stand on each other; a hairline ties each to its height.
    double free = labels.first().y - line / 2;
    const double overflow = labels.first().y + line * static_cast<double>(labels.size()) - height();
    if (overflow > 0)
        free -= overflow;
    for (const Label& label : labels) {
        const double y = std::max(free, label.y - line / 2);
        free = y + line;
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(m_inside.right() + 2, label.y), QPointF(x - 3, y + line / 2));
        QFont font = this->font();
        font.setBold(label.strong);
        painter.setFont(font);
        painter.setPen(label.colour);
        painter.drawText(QRectF(x, y, width() - x, line), Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(label.text, Qt::ElideRight,
                                                          static_cast<int>(width() - x)));
    }
}

void PotDrawing::describe() {
    const QString said =
        tr("Water %1, stock left about %2, the pot holds %3.")
            .arg(words(m_pot->water),
                 words(Volume::fromMillilitres(std::max(0.0, m_brewed.stockMl.best))),
                 words(m_brewed.capacity));
    setAccessibleDescription(m_isStale ? tr("As before the last change: %1").arg(said) : said);
}

void PotDrawing::resizeEvent(QResizeEvent* /*event*/) {
    layOut();
}

void PotDrawing::dragTo(double y) {
    const double share = std::clamp((m_inside.bottom() - y) / m_inside.height(), 0.0, 1.0);
    const Volume water = std::max(keyStep(m_measures), m_levels.water(m_levels.height() * share));
    m_dragged = quantity::roundToKitchen(water, m_measures);
    Q_EMIT waterDragged(m_dragged);
}

void PotDrawing::mousePressEvent(QMouseEvent* event) {
    // Only the line itself: a click elsewhere in the picture must not change the pot.
    if (!isOnLine(event->position().y()) || event->button() != Qt::LeftButton) {
        event->ignore();
        return;
    }
    m_before = m_pot->water;
    m_moving = true;
    dragTo(event->position().y());
}

bool PotDrawing::isOnLine(double y) const {
    return m_pot && std::abs(y - waterLine()) <= fontMetrics().height() / 2.0;
}

double PotDrawing::waterLine() const {
    return yOf(m_levels.surface(m_pot->water));
}

void PotDrawing::mouseMoveEvent(QMouseEvent* event) {
    if (m_moving && event->buttons().testFlag(Qt::LeftButton))
        dragTo(event->position().y());
    else
        setCursor(isOnLine(event->position().y()) ? Qt::SizeVerCursor : Qt::ArrowCursor);
}

void PotDrawing::mouseReleaseEvent(QMouseEvent* /*event*/) {
    letGo();
}

void PotDrawing::keyPressEvent(QKeyEvent* event) {
    const bool up = event->key() == Qt::Key_Up;
    if (event->key() == Qt::Key_Escape && m_moving) {
        m_moving = false;
        Q_EMIT waterDragged(m_before);
        return;
    }
    if (!m_pot || (!up && event->key() != Qt::Key_Down)) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (!m_moving)
        m_before = m_pot->water;
    m_moving = true;
    m_dragged = std::min(stepped(m_pot->water, up, m_measures),
                         std::max(m_brewed.capacity, keyStep(m_measures)));
    Q_EMIT waterDragged(m_dragged);
}

void PotDrawing::keyReleaseEvent(QKeyEvent* event) {
    QWidget::keyReleaseEvent(event);
    // A key that is held repeats; the water is chosen when it is let go.
    if (!event->isAutoRepeat())
        letGo();
}

void PotDrawing::focusOutEvent(QFocusEvent* event) {
    letGo();
    QWidget::focusOutEvent(event);
}

void PotDrawing::letGo() {
    if (!m_moving)
        return;
    m_moving = false;
    if (m_dragged != m_before)
        Q_EMIT waterChosen(m_dragged);
    else
        Q_EMIT waterDragged(m_before);
}

} // namespace ladlework::ui
