#pragma once

#include "ui/print/page_layout.h"

#include <QAbstractScrollArea>

namespace ladlework::ui {

/// The pages below one another, as they will be printed. Page Up and Page Down go from page to
/// page, Home and End to the first and last, + and - zoom, 0 fits the width again.
class PagesPreview final : public QAbstractScrollArea {
    Q_OBJECT
public:
    explicit PagesPreview(QWidget* parent = nullptr);

    /// Shows other pages; the place and the zoom stay when `keepPlace`.
    void setPages(PageLayout layout, bool keepPlace);
    [[nodiscard]] const PageLayout& pages() const { return m_layout; }
    /// The page at the top of the view, from 0.
    [[nodiscard]] qsizetype currentPage() const;
    void showPage(qsizetype page);

    void zoomIn() { setZoom(m_zoom * zoomStep); }
    void zoomOut() { setZoom(m_zoom / zoomStep); }
    void zoomToWidth() { setZoom(1.0); }
    [[nodiscard]] double zoom() const { return m_zoom; }

Q_SIGNALS:
    /// From 0; also after other pages came in.
    void currentPageChanged(qsizetype page);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    static constexpr double zoomStep = 1.2;

    void setZoom(double zoom);
    void setBars();
    void tellPage();
    [[nodiscard]] double gap() const;
    /// Pixels a page unit.
    [[nodiscard]] double scale() const;
    /// Where a page begins, from the top of the first, in pixels; one past the last: their whole
    /// height.
    [[nodiscard]] double topOf(qsizetype page) const;
    [[nodiscard]] double widestPage() const;
    [[nodiscard]] QRectF pageRect(qsizetype page) const;

    PageLayout m_layout;
    double m_zoom = 1.0; ///< 1: the page is as wide as the view
    qsizetype m_told = -1;
};

} // namespace ladlework::ui
