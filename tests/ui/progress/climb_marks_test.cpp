#include "ui/progress/climb_marks.h"

#include "ui/paint/theme.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

struct BearingCase {
    std::optional<int> worst;
    bool redFlag;
    Bearing bearing;
};

// The bounds of the ladder's rules by default: mild to 2, moderate to 5, strong to 8.
const BearingCase cases[] = {
    {std::nullopt, false, Bearing::Fine},
    {0, false, Bearing::Fine},
    {1, false, Bearing::Mild},
    {2, false, Bearing::Mild},
    {3, false, Bearing::Moderate},
    {5, false, Bearing::Moderate},
    {6, false, Bearing::Strong},
    {8, false, Bearing::Strong},
    {9, false, Bearing::Stop},
    {10, false, Bearing::Stop},
    {1, true, Bearing::Stop},
};

QImage drawn(const ClimbMark& mark) {
    QImage image(40, 60, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    drawClimbMark(painter, QPointF(20, 45), 12, mark, {}, colours(Scheme::Light));
    return image;
}

} // namespace

TEST(ClimbMarksTest, StrengthFollowsTheRules) {
    for (const BearingCase& expected : cases) {
        SCOPED_TRACE(expected.worst.value_or(-1));
        ClimbMark mark;
        mark.worstReaction = expected.worst;
        mark.redFlag = expected.redFlag;
        EXPECT_EQ(bearingOf(mark, {}), expected.bearing);
    }
}

// Colour never speaks alone: taken to grey, no two marks are the same drawing.
TEST(ClimbMarksTest, EveryMarkHasAShapeOfItsOwn) {
    QList<ClimbMark> marks(4);
    marks[0].enoughDrunk = true;
    marks[2].decision = intake::LadderDecision::Gap;
    marks[3].decision = intake::LadderDecision::Stop;
    marks[3].stopped = true;
    for (const int strength : {1, 4, 7, 9}) {
        ClimbMark mark;
        mark.enoughDrunk = true;
        mark.worstReaction = strength;
        marks.append(mark);
    }
    for (qsizetype a = 0; a < marks.size(); ++a)
        for (qsizetype b = a + 1; b < marks.size(); ++b)
            EXPECT_NE(drawn(marks.at(a)).convertToFormat(QImage::Format_Mono),
                      drawn(marks.at(b)).convertToFormat(QImage::Format_Mono))
                << a << " and " << b;
}

} // namespace ladlework::ui
