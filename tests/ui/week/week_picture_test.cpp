#include "ui/week/week_picture.h"

#include "ui/paint/theme.h"

#include <QImage>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using quantity::Volume;

const QDate monday(2026, 11, 2);

/// Monday holds, Tuesday is short, Wednesday spoils; the first `over` days are past.
WeekShown aWeek(int over = 0) {
    WeekShown week;
    for (int index = 0; index < 7; ++index) {
        ShownDay day;
        day.day = monday.addDays(index);
        day.past = index < over;
        day.wanted = Volume::fromCups(4);
        day.served = Volume::fromCups(4);
        day.inFridge = Volume::fromCups(6);
        week.days << day;
    }
    week.days[1].served = Volume::fromCups(1);
    week.days[1].shortBy = Volume::fromCups(3);
    week.days[2].spoilt = Volume::fromCups(2);
    return week;
}

int pixelsOf(const QImage& image, const QColor& colour, const QRect& part) {
    int count = 0;
    for (int y = part.top(); y <= part.bottom(); ++y)
        for (int x = part.left(); x <= part.right(); ++x)
            count += image.pixelColor(x, y) == colour ? 1 : 0;
    return count;
}

class WeekPictureTest : public ::testing::Test {
protected:
    WeekPictureTest() {
        m_picture.setGutter(100);
        m_picture.resize(800, m_picture.sizeHint().height());
        m_picture.setWeek(aWeek());
    }
    [[nodiscard]] QRect column(int day) const { return {100 + day * 100, 0, 100, 200}; }
    WeekPicture m_picture;
};

} // namespace

TEST_F(WeekPictureTest, SaysEachDayInWords) {
    EXPECT_TRUE(m_picture.wordsOf(0).contains(QStringLiteral("Monday")));
    EXPECT_FALSE(m_picture.wordsOf(0).contains(QStringLiteral("short")));
    EXPECT_TRUE(m_picture.wordsOf(1).contains(QStringLiteral("short by 3 cups")));
    EXPECT_TRUE(m_picture.wordsOf(2).contains(QStringLiteral("2 cups spoils")));
    EXPECT_TRUE(m_picture.wordsOf(7).isEmpty());
    EXPECT_TRUE(m_picture.wordsOf(-1).isEmpty());
    EXPECT_TRUE(m_picture.accessibleDescription().contains(m_picture.wordsOf(1)));
}

TEST_F(WeekPictureTest, ShortAndSpoiltAreSeenOnTheirDaysOnly) {
    const QImage image = m_picture.grab().toImage();
    ASSERT_GT(image.width(), 700);
    const Colours& shades = coloursOf(m_picture);
    for (int day = 0; day < 7; ++day) {
        const QRect part = column(day).intersected(image.rect());
        EXPECT_EQ(pixelsOf(image, shades.copper, part) > 0, day == 1 || day == 2) << day;
        EXPECT_GT(pixelsOf(image, shades.bay, part), 0) << "the refrigerator on day " << day;
    }
}

TEST_F(WeekPictureTest, DaysThatAreOverAreNotJudged) {
    m_picture.setWeek(aWeek(2));
    EXPECT_TRUE(m_picture.wordsOf(1).contains(QStringLiteral("over")));
    EXPECT_TRUE(m_picture.wordsOf(2).contains(QStringLiteral("spoils")));
}

} // namespace ladlework::ui
