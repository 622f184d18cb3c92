#include "ui/week/day_header.h"

#include "ui/paint/theme.h"
#include "ui/week/board_model.h"

#include <QPainter>
#include <QPainterPath>

namespace ladlework::ui {

namespace {

/// A closed lock: a body and its bow.
void drawLock(QPainter& painter, const QRectF& box, const QColor& colour) {
    constexpr double bodyPart = 0.55;
    const QRectF body(box.left(), box.bottom() - box.height() * bodyPart, box.width(),
                      box.height() * bodyPart);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRect(body);
    const double inset = box.width() * 0.18;
    const QRectF bow(box.left() + inset, box.top(), box.width() - 2 * inset, box.height());
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, box.width() * 0.14));
    constexpr int halfTurn = 180 * 16; // sixteenths of a degree
    painter.drawArc(bow.adjusted(0, box.height() * 0.07, 0, 0), 0, halfTurn);
}

} // namespace

DayHeader::DayHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setSectionResizeMode(QHeaderView::Stretch);
    setHighlightSections(false);
    setSectionsClickable(false);
    setAccessibleName(tr("Days of the week"));
}

QSize DayHeader::sizeHint() const {
    return {QHeaderView::sizeHint().width(), 2 * fontMetrics().lineSpacing() + step(*this)};
}

void DayHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
    const Colours& colours = coloursOf(*this);
    const QAbstractItemModel& days = *model();
    const auto told = [&](int role) {
        return days.headerData(section, Qt::Horizontal, role);
    };
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->fillRect(rect, colours.raised);
    painter->setPen(colours.rule);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    const int gap = step(*this) / 2;
    const int line = fontMetrics().lineSpacing();
    QRect words = rect.adjusted(gap, gap, -gap, 0);
    words.setHeight(line);
    const auto write = [&](const QString& text, const QColor& colour) {
        painter->setPen(colour);
        painter->drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                          painter->fontMetrics().elidedText(text, Qt::ElideRight, words.width()));
    };
    QFont strong = font();
    strong.setWeight(told(BoardModel::TodayRole).toBool() ? QFont::DemiBold : QFont::Normal);
    painter->setFont(strong);
    write(told(Qt::DisplayRole).toString(), colours.ink);
    painter->setFont(font());
    words.translate(0, line);
    if (told(BoardModel::LockedRole).toBool()) {
        drawLock(*painter, QRectF(words.left(), words.top() + line * 0.15, line * 0.5, line * 0.65),
                 colours.bay);
        words.setLeft(words.left() + qRound(line * 0.8));
        write(tr("locked"), colours.bay);
    } else {
        write(told(BoardModel::HoursRole).toString(), colours.quietInk);
    }
    painter->restore();
}

} // namespace ladlework::ui
