#include "ui/pot/pot_library.h"

#include "ui/pot/pot_screen_fixture.h"

namespace ladlework::ui {

namespace {

class PotLibraryTest : public PotScreenFixture {
protected:
    [[nodiscard]] QString shownName() const { return edit(QStringLiteral("Name"))->text(); }
    [[nodiscard]] QLineEdit* filter() const { return edit(QStringLiteral("Find a pot")); }
    void find(const QString& words) {
        filter()->setFocus();
        QTest::keyClicks(filter(), words);
    }
};

} // namespace

TEST_F(PotLibraryTest, ArrowKeysStepOverHeadings) {
    addPracticePot();
    choose(m_family.chicken);
    list()->setFocus();
    QTest::keyClick(list(), Qt::Key_Down);
    EXPECT_EQ(shownName(), QStringLiteral("Shared legs")) << "over the practice's heading";
    QTest::keyClick(list(), Qt::Key_Up);
    EXPECT_EQ(shownName(), QStringLiteral("Chicken legs"));
    QTest::keyClick(list(), Qt::Key_Home);
    EXPECT_EQ(shownName(), QStringLiteral("Beef shank"));
}

TEST_F(PotLibraryTest, FilterNarrowsAndEnterTakesTheFirst) {
    find(QStringLiteral("shank"));
    EXPECT_EQ(list()->model()->rowCount(), 2) << "the heading and one pot";
    EXPECT_EQ(shownName(), QStringLiteral("Chicken legs")) << "hidden in the list, still in hand";
    QTest::keyClick(filter(), Qt::Key_Return);
    EXPECT_EQ(shownName(), QStringLiteral("Beef shank"));
    EXPECT_TRUE(list()->hasFocus());
    filter()->setFocus();
    QTest::keyClick(filter(), Qt::Key_Escape);
    EXPECT_TRUE(filter()->text().isEmpty());
    EXPECT_EQ(list()->model()->rowCount(), 3);
    EXPECT_EQ(list()->currentIndex().data().toString(), QStringLiteral("Beef shank"));
}

TEST_F(PotLibraryTest, DownGoesFromTheFilterIntoTheList) {
    find(QStringLiteral("b"));
    QTest::keyClick(filter(), Qt::Key_Down);
    EXPECT_TRUE(list()->hasFocus());
    EXPECT_EQ(shownName(), QStringLiteral("Beef shank"));
}

TEST_F(PotLibraryTest, AChangeKeepsTheFilterAndTheChoice) {
    find(QStringLiteral("legs"));
    start(QStringLiteral("Water"), QStringLiteral("2"));
    QTest::keyClick(edit(QStringLiteral("Water")), Qt::Key_Return);
    EXPECT_NEAR(chicken().water.toQuarts(), 2, 1e-9);
    EXPECT_EQ(filter()->text(), QStringLiteral("legs"));
    EXPECT_EQ(list()->model()->rowCount(), 2);
    EXPECT_EQ(shownName(), QStringLiteral("Chicken legs"));
}

TEST_F(PotLibraryTest, ANewPotIsSeenThroughTheFilter) {
    find(QStringLiteral("shank"));
    trigger(QStringLiteral("Start a new pot"));
    EXPECT_TRUE(filter()->text().isEmpty());
    EXPECT_EQ(list()->currentIndex().data().toString(), QStringLiteral("New pot"));
}

} // namespace ladlework::ui
