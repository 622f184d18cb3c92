#include "ui/handout/pages_preview.h"

#include <QImage>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

handout::Document pagesOf(int count) {
    handout::Document document;
    for (int i = 0; i < count; ++i) {
        handout::Card card;
        card.title = QStringLiteral("Page card %1").arg(i + 1);
        card.startsPage = true;
        document.cards << card;
    }
    return document;
}

class PagesPreviewTest : public ::testing::Test {
protected:
    PagesPreviewTest() {
        m_preview.resize(600, 500);
        m_preview.setPages(layOut(pagesOf(5)), false);
        m_preview.show();
        QCoreApplication::processEvents();
    }
    PagesPreview m_preview;
};

} // namespace

TEST_F(PagesPreviewTest, KeysGoFromPageToPage) {
    ASSERT_EQ(m_preview.pages().pages.size(), 5);
    QSignalSpy told(&m_preview, &PagesPreview::currentPageChanged);
    QTest::keyClick(&m_preview, Qt::Key_PageDown);
    EXPECT_EQ(m_preview.currentPage(), 1);
    QTest::keyClick(&m_preview, Qt::Key_PageDown);
    QTest::keyClick(&m_preview, Qt::Key_PageUp);
    EXPECT_EQ(m_preview.currentPage(), 1);
    QTest::keyClick(&m_preview, Qt::Key_End);
    EXPECT_EQ(m_preview.currentPage(), 4);
    QTest::keyClick(&m_preview, Qt::Key_PageDown);
    EXPECT_EQ(m_preview.currentPage(), 4);
    QTest::keyClick(&m_preview, Qt::Key_Home);
    EXPECT_EQ(m_preview.currentPage(), 0);
    EXPECT_EQ(told.size(), 5);
    EXPECT_TRUE(m_preview.accessibleDescription().contains(QStringLiteral("Page card 1")));
}

TEST_F(PagesPreviewTest, ZoomKeepsThePage) {
    m_preview.showPage(2);
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(&m_preview, Qt::Key_Plus);
    EXPECT_GT(m_preview.zoom(), 1.5);
    EXPECT_EQ(m_preview.currentPage(), 2);
    EXPECT_GT(m_preview.horizontalScrollBar()->maximum(), 0);
    QTest::keyClick(&m_preview, Qt::Key_0);
    EXPECT_DOUBLE_EQ(m_preview.zoom(), 1.0);
    EXPECT_EQ(m_preview.horizontalScrollBar()->maximum(), 0) << "a page is as wide as the view";
    for (int i = 0; i < 50; ++i)
        QTest::keyClick(&m_preview, Qt::Key_Minus);
    EXPECT_GE(m_preview.zoom(), 0.3) << "never down to nothing";
}

TEST_F(PagesPreviewTest, NewPagesKeepThePlaceWhenAsked) {
    m_preview.showPage(3);
    m_preview.setPages(layOut(pagesOf(5)), true);
    EXPECT_EQ(m_preview.currentPage(), 3);
    m_preview.setPages(layOut(pagesOf(2)), true);
    EXPECT_EQ(m_preview.currentPage(), 1) << "as far as there are pages";
    m_preview.setPages(layOut(pagesOf(5)), false);
    EXPECT_EQ(m_preview.currentPage(), 0);
}

TEST_F(PagesPreviewTest, DrawsInkOnWhitePaper) {
    const QImage image = m_preview.viewport()->grab().toImage();
    int white = 0;
    int dark = 0;
    for (int y = 0; y < image.height(); y += 2)
        for (int x = 0; x < image.width(); x += 2) {
            white += image.pixelColor(x, y) == QColor(Qt::white) ? 1 : 0;
            dark += image.pixelColor(x, y).lightness() < 80 ? 1 : 0;
        }
    EXPECT_GT(white, image.width() * image.height() / 8);
    EXPECT_GT(dark, 20) << "the title";
}

} // namespace ladlework::ui
