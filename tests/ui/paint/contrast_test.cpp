#include "ui/paint/theme.h"

#include <QApplication>
#include <QPalette>

#include <cmath>
#include <gtest/gtest.h>

namespace ladlework::ui {
namespace {

// W3C, Web Content Accessibility Guidelines 2.1, "relative luminance" and "contrast ratio"
// (https://www.w3.org/TR/WCAG21/#dfn-relative-luminance): the threshold 0.03928, the exponent 2.4
// and the weights 0.2126, 0.7152, 0.0722 are its own.
double linear(int channel) {
    const double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) +
           0.0722 * linear(colour.blue());
}

double contrast(const QColor& a, const QColor& b) {
    const double lighter = std::max(luminance(a), luminance(b));
    const double darker = std::min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
}

constexpr double textMinimum = 4.5;    // WCAG 2.1, success criterion 1.4.3
constexpr double controlMinimum = 3.0; // WCAG 2.1, success criterion 1.4.11

class ContrastTest : public ::testing::TestWithParam<Scheme> {
protected:
    void SetUp() override { applyTheme(*qApp, GetParam()); }
    void TearDown() override { applyTheme(*qApp, Scheme::Light); }
};

} // namespace

// The two ends of the scale as the guideline states them: 21:1 and 1:1.
TEST(ContrastFormulaTest, blackOnWhiteIsTwentyOneToOne) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(Qt::white, Qt::white), 1.0, 1e-9);
    // The grey that the W3C's understanding document calls just enough on white: #767676, 4.54:1.
    EXPECT_NEAR(contrast(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
}

TEST_P(ContrastTest, everyTextColourReadsOnPageAndRaisedSurface) {
    const Colours& c = colours(GetParam());
    for (const QColor& paper : {c.page, c.raised}) {
        for (const QColor& text : {c.ink, c.quietInk, c.bay, c.copper, c.beet, c.slate}) {
            EXPECT_GE(contrast(text, paper), textMinimum)
                << text.name().toStdString() << " on " << paper.name().toStdString();
        }
    }
}

TEST_P(ContrastTest, everyTextPairOfThePaletteReads) {
    const QPalette palette = QApplication::palette();
    const std::vector<std::pair<QPalette::ColorRole, QPalette::ColorRole>> pairs{
        {QPalette::WindowText, QPalette::Window},
        {QPalette::Text, QPalette::Base},
        {QPalette::Text, QPalette::AlternateBase},
        {QPalette::PlaceholderText, QPalette::Base},
        {QPalette::PlaceholderText, QPalette::Window},
        {QPalette::ButtonText, QPalette::Button},
        {QPalette::ToolTipText, QPalette::ToolTipBase},
        {QPalette::HighlightedText, QPalette::Highlight},
        {QPalette::Link, QPalette::Base},
        {QPalette::Link, QPalette::Window},
    };
    for (const auto& [text, paper] : pairs) {
        EXPECT_GE(contrast(palette.color(text), palette.color(paper)), textMinimum)
            << "role " << text << " on role " << paper;
    }
    EXPECT_GE(contrast(palette.color(QPalette::Disabled, QPalette::HighlightedText),
                       palette.color(QPalette::Disabled, QPalette::Highlight)),
              textMinimum);
}

TEST_P(ContrastTest, edgesOfControlsAndTheFocusAreSeen) {
    const QPalette palette = QApplication::palette();
    for (const QPalette::ColorRole paper : {QPalette::Window, QPalette::Base}) {
        EXPECT_GE(contrast(palette.color(QPalette::Dark), palette.color(paper)), controlMinimum);
        EXPECT_GE(contrast(palette.color(QPalette::Highlight), palette.color(paper)),
                  controlMinimum);
    }
}

INSTANTIATE_TEST_SUITE_P(Schemes, ContrastTest, ::testing::Values(Scheme::Light, Scheme::Dark),
                         [](const ::testing::TestParamInfo<Scheme>& scheme) {
                             return scheme.param == Scheme::Light ? "Light" : "Dark";
                         });

} // namespace ladlework::ui
