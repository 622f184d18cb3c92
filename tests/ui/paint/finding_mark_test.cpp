#include "ui/paint/finding_mark.h"

#include "ui/paint/theme.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace ladlework::ui {
namespace {

constexpr int side = 64;

/// Where ink fell, whatever its colour.
QImage shapeOf(Finding::Severity severity) {
    QImage image(side, side, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    drawFindingMark(painter, QRectF(0, 0, side, side), severity, colours(Scheme::Light));
    painter.end();
    QImage shape(side, side, QImage::Format_Mono);
    shape.fill(0);
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x)
            shape.setPixel(x, y, qAlpha(image.pixel(x, y)) > 127 ? 1U : 0U);
    }
    return shape;
}

int inkOf(const QImage& shape) {
    int ink = 0;
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x)
            ink += shape.pixelIndex(x, y);
    }
    return ink;
}

} // namespace

class FindingMarkTest : public ::testing::Test {};

TEST_F(FindingMarkTest, eachSeverityHasItsOwnShapeWithoutColour) {
    const int note = inkOf(shapeOf(Finding::Severity::Note));
    const int caution = inkOf(shapeOf(Finding::Severity::Caution));
    const int stop = inkOf(shapeOf(Finding::Severity::Stop));
    // A worse finding is a larger mark, by at least a fifth.
    EXPECT_GT(note, 0);
    EXPECT_GT(caution, note * 6 / 5);
    EXPECT_GT(stop, caution * 6 / 5);
}

TEST_F(FindingMarkTest, aCautionIsADiamondAndAStopAnOctagon) {
    const QImage caution = shapeOf(Finding::Severity::Caution);
    EXPECT_EQ(caution.pixelIndex(side / 2, side / 8), 1);
    EXPECT_EQ(caution.pixelIndex(side / 5, side / 5), 0);
    const QImage stop = shapeOf(Finding::Severity::Stop);
    EXPECT_EQ(stop.pixelIndex(side / 5, side / 5), 1);
    EXPECT_EQ(stop.pixelIndex(1, 1), 0);
}

TEST_F(FindingMarkTest, theMarkStaysInItsBox) {
    QImage image(side * 2, side * 2, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    drawFindingMark(painter, QRectF(32, 32, side, side), Finding::Severity::Stop,
                    colours(Scheme::Dark));
    painter.end();
    for (int x = 0; x < side * 2; ++x) {
        EXPECT_EQ(qAlpha(image.pixel(x, 30)), 0);
        EXPECT_EQ(qAlpha(image.pixel(x, 97)), 0);
    }
}

TEST_F(FindingMarkTest, wordsAndColoursDiffer) {
    EXPECT_EQ(severityWord(Finding::Severity::Note), QStringLiteral("Note"));
    EXPECT_EQ(severityWord(Finding::Severity::Caution), QStringLiteral("Caution"));
    EXPECT_EQ(severityWord(Finding::Severity::Stop), QStringLiteral("Stop"));
    const Colours& c = colours(Scheme::Light);
    EXPECT_EQ(severityColour(c, Finding::Severity::Note), c.slate);
    EXPECT_EQ(severityColour(c, Finding::Severity::Caution), c.copper);
    EXPECT_EQ(severityColour(c, Finding::Severity::Stop), c.beet);
}

} // namespace ladlework::ui
