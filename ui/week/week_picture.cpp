#include "ui/week/week_picture.h"

#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"

#include <QHelpEvent>
#include <QLocale>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

namespace ladlework::ui {

namespace {

using quantity::Volume;

/// A drop: less than this is rounding.
const Volume noticeable = Volume::fromDrops(1);
constexpr int barLines = 5;  ///< the height of the bars, in lines of text
constexpr int wordLines = 4; ///< two lines above the bars and two below

enum class Fill { Fridge, Freezer, Drunk, Short, Spoilt };

void fillBar(QPainter& painter, const QRectF& box, Fill fill, const Colours& colours) {
    if (box.height() <= 0)
        return;
    QColor colour = colours.bay;
    QBrush brush(colours.bay);
    switch (fill) {
    case Fill::Fridge:
        break;
    case Fill::Freezer:
        colour = colours.slate;
        brush = QBrush(colours.slate, Qt::BDiagPattern);
        break;
    case Fill::Drunk:
        colour = colours.quietInk;
        brush = QBrush(colours.rule);
        break;
    case Fill::Short:
        colour = colours.copper;
        brush = QBrush(colours.copper, Qt::DiagCrossPattern);
        break;
    case Fill::Spoilt:
        colour = colours.copper;
        brush = QBrush(colours.copper, Qt::Dense4Pattern);
        break;
    }
    painter.setPen(QPen(colour, 1));
    painter.setBrush(brush);
    painter.drawRect(box);
}

} // namespace

WeekPicture::WeekPicture(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Stock against what the family drinks"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void WeekPicture::setWeek(const WeekShown& week) {
    m_week = week;
    m_highest = Volume::fromCups(1);
    m_lowest = Volume();
    QStringList words;
    for (int day = 0; day < m_week.days.size(); ++day) {
        const ShownDay& shown = m_week.days.at(day);
        m_highest = std::max({m_highest, shown.inFridge + shown.inFreezer, shown.wanted});
        m_lowest = std::max(m_lowest, shown.spoilt);
        words << wordsOf(day);
    }
    setAccessibleDescription(words.join(QLatin1Char(' ')));
    update();
}

void WeekPicture::setGutter(int width) {
    m_gutter = width;
    update();
}

QSize WeekPicture::sizeHint() const {
    return {m_gutter + 7 * 12 * step(*this),
            (barLines + wordLines) * fontMetrics().lineSpacing() + step(*this)};
}

QSize WeekPicture::minimumSizeHint() const {
    return {m_gutter + 7 * 8 * step(*this), sizeHint().height()};
}

QString WeekPicture::printed(Volume volume) const {
    return quantity::printVolume(volume, m_week.measures);
}

QString WeekPicture::wordsOf(int day) const {
    if (day < 0 || day >= m_week.days.size())
        return {};
    const ShownDay& shown = m_week.days.at(day);
    const QString name = QLocale().dayName(shown.day.dayOfWeek());
    if (shown.past)
        return tr("%1 is over.").arg(name);
    QString words =
        tr("%1: drinks %2, leaves %3 in the refrigerator and %4 in the freezer")
            .arg(name, printed(shown.served), printed(shown.inFridge), printed(shown.inFreezer));
    if (shown.shortBy > noticeable)
        words += tr("; short by %1").arg(printed(shown.shortBy));
    if (shown.spoilt > noticeable)
        words += tr("; %1 spoils").arg(printed(shown.spoilt));
    return words + QLatin1Char('.');
}

QRectF WeekPicture::dayRect(int day) const {
    const double column = static_cast<double>(width() - m_gutter) / week::daysAWeek;
    return {m_gutter + day * column, 0.0, column, static_cast<double>(height())};
}

void WeekPicture::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& colours = coloursOf(*this);
    paintKey(painter, colours);
    for (int day = 0; day < m_week.days.size(); ++day)
        paintDay(painter, colours, day);
}

void WeekPicture::paintKey(QPainter& painter, const Colours& colours) const {
    const QList<std::pair<Fill, QString>> key{{Fill::Fridge, tr("refrigerator")},
                                              {Fill::Freezer, tr("freezer")},
                                              {Fill::Drunk, tr("drinks")},
                                              {Fill::Short, tr("short")},
                                              {Fill::Spoilt, tr("spoils")}};
    const double line = fontMetrics().lineSpacing();
    double top = line;
    for (const auto& [fill, word] : key) {
        fillBar(painter, QRectF(1, top + line * 0.2, line * 0.7, line * 0.6), fill, colours);
        painter.setPen(colours.quietInk);
        painter.drawText(
            QRectF(line, top, m_gutter - line, line), Qt::AlignLeft | Qt::AlignVCenter,
            fontMetrics().elidedText(word, Qt::ElideRight, static_cast<int>(m_gutter - line)));
        top += line;
    }
    if (m_week.spill > 0)
        painter.drawText(QRectF(0, top, m_gutter, line), Qt::AlignLeft | Qt::AlignVCenter,
                         tr("with %1 % spill").arg(qRound(m_week.spill * 100)));
}

void WeekPicture::paintDay(QPainter& painter, const Colours& colours, int day) const {
    const ShownDay& shown = m_week.days.at(day);
    const QRectF column = dayRect(day);
    painter.setPen(QPen(colours.rule, 1));
    painter.drawLine(column.topLeft(), column.bottomLeft());
    const double pad = step(*this) / 2.0;
    const QRectF inside = column.adjusted(pad, 0, -pad, 0);
    const double line = fontMetrics().lineSpacing();
    if (shown.past) {
        painter.setPen(colours.quietInk);
        painter.drawText(inside, Qt::AlignCenter, tr("over"));
        return;
    }
    paintBars(painter, colours, shown, inside.adjusted(0, 2 * line + pad, 0, -2 * line - pad));
    paintWords(painter, colours, shown, inside);
}

void WeekPicture::paintBars(QPainter& painter, const Colours& colours, const ShownDay& day,
                            const QRectF& box) const {
    // One scale for all days; the line of nothing lies so that the most that spoils fits below it.
    const double whole = std::max(1.0, (m_highest + m_lowest).toMillilitres());
    const double perMl = box.height() / whole;
    const double ground = box.top() + m_highest.toMillilitres() * perMl;
    const double barWidth = box.width() * 0.42;
    const auto high = [perMl](Volume volume) {
        return volume.toMillilitres() * perMl;
    };

    const double fridge = high(day.inFridge);
    fillBar(painter, QRectF(box.left(), ground - fridge, barWidth, fridge), Fill::Fridge, colours);
    const double freezer = high(day.inFreezer);
    fillBar(painter, QRectF(box.left(), ground - fridge - freezer, barWidth, freezer),
            Fill::Freezer, colours);
    const double right = box.right() - barWidth;
    const double drunk = high(day.served);
    fillBar(painter, QRectF(right, ground - drunk, barWidth, drunk), Fill::Drunk, colours);
    if (day.shortBy > noticeable) {
        const double missing = std::max(3.0, high(day.shortBy));
        fillBar(painter, QRectF(right, ground - drunk - missing, barWidth, missing), Fill::Short,
                colours);
    }
    if (day.spoilt > noticeable)
        fillBar(painter, QRectF(box.left(), ground, barWidth, std::max(3.0, high(day.spoilt))),
                Fill::Spoilt, colours);
    painter.setPen(QPen(colours.quietInk, 1));
    painter.drawLine(QPointF(box.left(), ground), QPointF(box.right(), ground));
}

void WeekPicture::paintWords(QPainter& painter, const Colours& colours, const ShownDay& day,
                             const QRectF& box) const {
    const double line = fontMetrics().lineSpacing();
    double top = box.top();
    // Cautions, like the findings that say the same.
    const auto warn = [&](const QString& words) {
        drawFindingMark(painter, QRectF(box.left(), top + line * 0.15, line * 0.7, line * 0.7),
                        Finding::Severity::Caution, colours);
        painter.setPen(colours.copper);
        painter.drawText(QRectF(box.left() + line * 0.9, top, box.width() - line * 0.9, line),
                         Qt::AlignLeft | Qt::AlignVCenter, words);
        top += line;
    };
    if (day.shortBy > noticeable)
        warn(tr("short %1").arg(printed(day.shortBy)));
    if (day.spoilt > noticeable)
        warn(tr("spoils %1").arg(printed(day.spoilt)));

    painter.setPen(colours.quietInk);
    const Volume left = day.inFridge + day.inFreezer;
    const QRectF below(box.left(), box.bottom() - 2 * line, box.width(), line);
    painter.drawText(below, Qt::AlignLeft | Qt::AlignVCenter,
                     left > noticeable ? tr("left %1").arg(printed(left)) : tr("left nothing"));
    painter.drawText(below.translated(0, line), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("drinks %1").arg(printed(day.served)));
}

bool WeekPicture::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    for (int day = 0; day < m_week.days.size(); ++day) {
        if (!dayRect(day).contains(help->pos()))
            continue;
        QToolTip::showText(help->globalPos(), wordsOf(day), this, dayRect(day).toRect());
        return true;
    }
    QToolTip::hideText();
    return true;
}

} // namespace ladlework::ui
