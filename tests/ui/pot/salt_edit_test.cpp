#include "ui/pot/salt_edit.h"

#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Mass;
using quantity::MeasureSystem;

namespace {

/// USDA SR28 02047: a teaspoon of table salt weighs 6 g.
const Mass teaspoon = Mass::fromGrams(6);

struct SaltCase {
    const char* text;
    MeasureSystem measures;
    double grams;
    const char* words;
};

const SaltCase cases[] = {
    {"1 tsp", MeasureSystem::UsCustomary, 6, "1 tsp"},
    {"1 1/2", MeasureSystem::UsCustomary, 9, "1½ tsp"},
    {"1 tbsp", MeasureSystem::UsCustomary, 18, "1 tbsp"},
    {"12 g", MeasureSystem::UsCustomary, 12, "2 tsp"},
    {"none", MeasureSystem::UsCustomary, 0, "none"},
    {"0", MeasureSystem::UsCustomary, 0, "none"},
    {"6", MeasureSystem::Metric, 6, "6 g"},
    {"6 g", MeasureSystem::Metric, 6, "6 g"},
    {"None", MeasureSystem::Metric, 0, "none"},
};

class SaltEditTest : public ::testing::Test {
protected:
    static void type(SaltEdit& edit, const char* text) {
        edit.selectAll();
        QTest::keyClicks(&edit, QString::fromUtf8(text));
    }
};

} // namespace

TEST_F(SaltEditTest, ReadsAndPrints) {
    for (const SaltCase& expected : cases) {
        SCOPED_TRACE(expected.text);
        SaltEdit edit(teaspoon, nullptr);
        edit.setValue(Mass::fromGrams(1), expected.measures);
        type(edit, expected.text);
        ASSERT_TRUE(edit.isGood()) << edit.problemSentence().toStdString();
        EXPECT_NEAR(edit.value().toGrams(), expected.grams, 1e-9);
        QTest::keyClick(&edit, Qt::Key_Return);
        EXPECT_EQ(edit.text(), QString::fromUtf8(expected.words));
    }
}

// A metric teaspoon is 5 mL, the figure is for the US one of 4.929 mL.
TEST_F(SaltEditTest, MetricTeaspoonIsALittleMore) {
    SaltEdit edit(teaspoon, nullptr);
    edit.setValue({}, MeasureSystem::Metric);
    type(edit, "1 tsp");
    EXPECT_NEAR(edit.value().toGrams(), 6 * 5 / 4.92892, 1e-4);
}

TEST_F(SaltEditTest, RefusesInWords) {
    for (const char* text : {"", "a pinch", "-1 tsp", "1 mile"}) {
        SCOPED_TRACE(text);
        SaltEdit edit(teaspoon, nullptr);
        edit.setValue(teaspoon, MeasureSystem::UsCustomary);
        edit.selectAll();
        if (*text == '\0')
            QTest::keyClick(&edit, Qt::Key_Backspace);
        else
            type(edit, text);
        EXPECT_FALSE(edit.isGood());
        EXPECT_FALSE(edit.problemSentence().isEmpty());
        EXPECT_EQ(edit.value(), teaspoon) << "the value that was set stays";
    }
}

TEST_F(SaltEditTest, BareNumberIsOfTheSpoonsShown) {
    SaltEdit edit(teaspoon, nullptr);
    edit.setValue(teaspoon * 6, MeasureSystem::UsCustomary);
    ASSERT_EQ(edit.text(), QStringLiteral("2 tbsp"));
    type(edit, "1");
    EXPECT_NEAR(edit.value().toGrams(), 18, 1e-9);
    edit.setValue(Mass{}, MeasureSystem::UsCustomary);
    type(edit, "1");
    EXPECT_NEAR(edit.value().toGrams(), 6, 1e-9) << "over \"none\" it is teaspoons";
}

} // namespace ladlework::ui
