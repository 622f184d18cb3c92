#include "ui/paint/theme.h"

#include <QApplication>
#include <QFontMetricsF>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>

#include <gtest/gtest.h>

namespace ladlework::ui {

class ThemeTest : public ::testing::Test {
protected:
    void SetUp() override { m_font = QApplication::font(); }
    void TearDown() override {
        QApplication::setFont(m_font);
        applyTheme(*qApp, Scheme::Light);
    }

    QFont m_font;
};

TEST_F(ThemeTest, widgetsKnowTheirScheme) {
    QWidget widget;
    widget.show();
    applyTheme(*qApp, Scheme::Dark);
    EXPECT_EQ(schemeOf(widget), Scheme::Dark);
    EXPECT_EQ(coloursOf(widget).page, colours(Scheme::Dark).page);
    applyTheme(*qApp, Scheme::Light);
    EXPECT_EQ(schemeOf(widget), Scheme::Light);
    EXPECT_EQ(coloursOf(widget).ink, colours(Scheme::Light).ink);
}

TEST_F(ThemeTest, theDesktopsSchemeIsRememberedWhenAnotherIsApplied) {
    // The offscreen desktop is a light one.
    applyTheme(*qApp, Scheme::Dark);
    EXPECT_EQ(desktopScheme(), Scheme::Light);
}

TEST_F(ThemeTest, everyWordOfTheStyleSheetIsFilledIn) {
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
        applyTheme(*qApp, scheme);
        const QString sheet = qApp->styleSheet();
        EXPECT_FALSE(sheet.isEmpty());
        const QRegularExpression left(QStringLiteral("@\\w+@"));
        EXPECT_FALSE(left.match(sheet).hasMatch()) << left.match(sheet).captured().toStdString();
        EXPECT_FALSE(sheet.contains(QStringLiteral("gradient")));
    }
}

TEST_F(ThemeTest, sizesFollowTheFont) {
    const QPushButton small(QStringLiteral("Save"));
    const int smallHeight = small.sizeHint().height();
    const int smallStep = step(small);
    QFont large = m_font;
    large.setPointSizeF(m_font.pointSizeF() * 2.0);
    QApplication::setFont(large);
    applyTheme(*qApp, Scheme::Light);
    const QPushButton big(QStringLiteral("Save"));
    EXPECT_NEAR(big.sizeHint().height(), 2.0 * smallHeight, 0.2 * smallHeight);
    EXPECT_NEAR(step(big), 2 * smallStep, 1.0);
}

TEST_F(ThemeTest, aFocusedControlKeepsItsSize) {
    QWidget window;
    QLineEdit edit(QStringLiteral("3 cups"), &window);
    window.show();
    edit.ensurePolished();
    const QSize calm = edit.sizeHint();
    edit.setFocus();
    EXPECT_EQ(edit.sizeHint(), calm);
}

TEST_F(ThemeTest, titlesAreLargerInOrder) {
    EXPECT_GT(titleFont(m_font).pointSizeF(), sectionFont(m_font).pointSizeF());
    EXPECT_GT(sectionFont(m_font).pointSizeF(), m_font.pointSizeF());
    QFont byPixels = m_font;
    byPixels.setPixelSize(20);
    EXPECT_EQ(titleFont(byPixels).pixelSize(), 30);
}

TEST_F(ThemeTest, figuresAreOfOneWidth) {
    const QFontMetricsF metrics(figuresFont(m_font));
    for (char16_t digit = u'1'; digit <= u'9'; ++digit)
        EXPECT_NEAR(metrics.horizontalAdvance(QChar(digit)), metrics.horizontalAdvance(u'0'), 0.01);
}

} // namespace ladlework::ui
