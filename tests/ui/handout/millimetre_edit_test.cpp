#include "ui/handout/millimetre_edit.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {
struct MeasureCase {
    const char* text;
    double millimetres;
};
class MillimetreEditTest : public ::testing::TestWithParam<MeasureCase> {};
} // namespace

TEST_P(MillimetreEditTest, ReadsWhatIsPrintedOnAPackOfLabels) {
    const MillimetreEdit edit(500);
    QString text = QString::fromUtf8(GetParam().text);
    int position = 0;
    EXPECT_EQ(edit.validate(text, position), QValidator::Acceptable);
    EXPECT_NEAR(edit.valueFromText(text), GetParam().millimetres, 1e-9);
}

// An inch is 25.4 mm by definition (NIST SP 811).
INSTANTIATE_TEST_SUITE_P(Texts, MillimetreEditTest,
                         ::testing::Values(MeasureCase{"99.1", 99.1}, MeasureCase{"99.1 mm", 99.1},
                                           MeasureCase{"4 in", 101.6}, MeasureCase{"4\"", 101.6},
                                           MeasureCase{"2 1/2 in", 63.5}, MeasureCase{"5 cm", 50}));

TEST_F(MillimetreEditTest, KeepsItsValueForWhatIsNoMeasure) {
    MillimetreEdit edit(500);
    edit.setValue(12.7);
    EXPECT_EQ(edit.text(), QStringLiteral("12.7 mm"));
    for (const char* wrong : {"", "wide", "3 pounds", "600", "-4"}) {
        QString text = QString::fromUtf8(wrong);
        int position = 0;
        EXPECT_NE(edit.validate(text, position), QValidator::Acceptable) << wrong;
    }
    EXPECT_DOUBLE_EQ(edit.valueFromText(QStringLiteral("wide")), 12.7);
}

} // namespace ladlework::ui
