#include "ui/handout/pages_preview.h"

#include "ui/paint/theme.h"
#include "ui/print/page_painter.h"
#include "ui/print/print_font.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <cmath>

namespace ladlework::ui {

namespace {
constexpr double leastZoom = 0.4;
constexpr double mostZoom = 4.0;

/// The labels of a sheet as they are cut: to be seen here, never printed.
void paintLabels(QPainter& painter, const Page& page, const QRectF& sheet) {
    const double scale = sheet.width() / page.size.width();
    const double round = 1.5 * scale * unitsPerPoint;
    painter.setPen(QPen(colours(Scheme::Light).quietInk, 1, Qt::DotLine));
    for (const QRectF& label : page.labels)
        painter.drawRoundedRect(
            QRectF(sheet.topLeft() + label.topLeft() * scale, label.size() * scale), round, round);
}
} // namespace

PagesPreview::PagesPreview(QWidget* parent) : QAbstractScrollArea(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Pages as they will be printed"));
    viewport()->setAutoFillBackground(false);
    // A bar that comes and goes would change the width, and with it the zoom, back and forth.
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
}

void PagesPreview::setPages(PageLayout layout, bool keepPlace) {
    m_layout = std::move(layout);
    setBars();
    if (!keepPlace)
        verticalScrollBar()->setValue(0);
    m_told = -1;
    tellPage();
    viewport()->update();
}

qsizetype PagesPreview::currentPage() const {
    const double middle = verticalScrollBar()->value() + viewport()->height() / 3.0;
    qsizetype page = 0;
    while (page + 1 < m_layout.pages.size() && topOf(page + 1) <= middle - gap())
        ++page;
    return page;
}

void PagesPreview::showPage(qsizetype page) {
    const qsizetype last = std::max<qsizetype>(0, m_layout.pages.size() - 1);
    const double top = topOf(std::clamp<qsizetype>(page, 0, last));
    verticalScrollBar()->setValue(static_cast<int>(std::lround(top)));
}

double PagesPreview::gap() const {
    return step(*this);
}

double PagesPreview::widestPage() const {
    double widest = m_layout.size.width();
    for (const Page& page : m_layout.pages)
        widest = std::max(widest, page.size.width());
    return widest;
}

double PagesPreview::scale() const {
    const double widest = widestPage();
    return widest > 0 ? std::max(1.0, viewport()->width() - 2 * gap()) / widest * m_zoom : 1;
}

double PagesPreview::topOf(qsizetype page) const {
    const double pixels = scale();
    double top = 0;
    for (qsizetype before = 0; before < std::min(page, m_layout.pages.size()); ++before)
        top += m_layout.pages.at(before).size.height() * pixels + gap();
    return top;
}

QRectF PagesPreview::pageRect(qsizetype page) const {
    const QSizeF size = m_layout.pages.at(page).size * scale();
    const double left = std::max(gap(), (viewport()->width() - size.width()) / 2);
    return {QPointF(left - horizontalScrollBar()->value(),
                    gap() + topOf(page) - verticalScrollBar()->value()),
            size};
}

void PagesPreview::setZoom(double zoom) {
    const double wanted = std::clamp(zoom, leastZoom, mostZoom);
    if (qFuzzyCompare(wanted, m_zoom))
        return;
    const double place = verticalScrollBar()->value() / std::max(1.0, topOf(m_layout.pages.size()));
    m_zoom = wanted;
    setBars();
    verticalScrollBar()->setValue(
        static_cast<int>(std::lround(place * topOf(m_layout.pages.size()))));
    viewport()->update();
}

void PagesPreview::setBars() {
    const double height = gap() + topOf(m_layout.pages.size());
    const double width = widestPage() * scale() + 2 * gap();
    const auto set = [](QScrollBar* bar, double whole, int shown, double single) {
        bar->setRange(0, std::max(0, static_cast<int>(std::ceil(whole)) - shown));
        bar->setPageStep(shown);
        bar->setSingleStep(std::max(1, static_cast<int>(single)));
    };
    set(verticalScrollBar(), height, viewport()->height(), 3 * gap());
    set(horizontalScrollBar(), width, viewport()->width(), 3 * gap());
}

void PagesPreview::tellPage() {
    const qsizetype page = currentPage();
    if (page == m_told)
        return;
    m_told = page;
    setAccessibleDescription(wordsOf(m_layout, page));
    Q_EMIT currentPageChanged(page);
}

void PagesPreview::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(viewport());
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    const Colours& colours = coloursOf(*this);
    painter.fillRect(viewport()->rect(), colours.rule);
    for (qsizetype page = 0; page < m_layout.pages.size(); ++page) {
        const QRectF sheet = pageRect(page);
        if (!sheet.intersects(viewport()->rect()))
            continue;
        // Paper is white and its ink black in the dark scheme too.
        painter.fillRect(sheet, Qt::white);
        painter.setPen(QPen(colours.quietInk, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(sheet);
        paintLabels(painter, m_layout.pages.at(page), sheet);
        paintPage(painter, m_layout, page, sheet);
    }
}

void PagesPreview::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    const qsizetype page = std::max<qsizetype>(0, m_told);
    setBars();
    showPage(page);
    tellPage();
}

void PagesPreview::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_PageDown:
    case Qt::Key_Space:
        showPage(currentPage() + 1);
        return;
    case Qt::Key_PageUp:
        showPage(currentPage() - 1);
        return;
    case Qt::Key_Home:
        showPage(0);
        return;
    case Qt::Key_End:
        showPage(m_layout.pages.size() - 1);
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomIn();
        return;
    case Qt::Key_Minus:
        zoomOut();
        return;
    case Qt::Key_0:
        zoomToWidth();
        return;
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void PagesPreview::wheelEvent(QWheelEvent* event) {
    if (!event->modifiers().testFlag(Qt::ControlModifier)) {
        QAbstractScrollArea::wheelEvent(event);
        return;
    }
    if (event->angleDelta().y() > 0)
        zoomIn();
    else
        zoomOut();
    event->accept();
}

void PagesPreview::scrollContentsBy(int /*dx*/, int /*dy*/) {
    viewport()->update();
    tellPage();
}

} // namespace ladlework::ui
