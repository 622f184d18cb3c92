#include "ui/families/families_list.h"

#include "ui/shared/workbook_fixture.h"

#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace ladlework::ui {

class FamiliesListTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_ash = addFamily(QStringLiteral("Ash"));
        m_birch = addFamily(QStringLiteral("Birch"));
        m_cedar = addFamily(QStringLiteral("Cedar"), people::Family::Status::Resting);
        m_reader = std::make_unique<AttentionReader>(*m_context, nullptr);
        ASSERT_TRUE(waitFor([&] { return m_reader->isFinished(); }));
        m_list = std::make_unique<FamiliesList>(*m_reader, nullptr);
        m_list->show();
        QApplication::setActiveWindow(m_list.get());
        m_search = m_list->findChild<QLineEdit*>();
        m_view = m_list->findChild<QListView*>();
    }
    static FamilyId last(const QSignalSpy& spy) { return spy.last().first().value<FamilyId>(); }

    FamilyId m_ash;
    FamilyId m_birch;
    FamilyId m_cedar;
    std::unique_ptr<AttentionReader> m_reader;
    std::unique_ptr<FamiliesList> m_list;
    QLineEdit* m_search = nullptr;
    QListView* m_view = nullptr;
};

TEST_F(FamiliesListTest, aFamilyIsFoundAndChosenByKeyboard) {
    const QSignalSpy chosen(m_list.get(), &FamiliesList::familyChosen);
    m_list->focusSearch();
    QTest::keyClicks(m_search, QStringLiteral("bir"));
    QTest::keyClick(m_search, Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(last(chosen), m_birch);
    EXPECT_TRUE(m_view->hasFocus());
    m_list->focusSearch();
    QTest::keyClick(m_search, Qt::Key_Escape);
    EXPECT_TRUE(m_search->text().isEmpty());
}

TEST_F(FamiliesListTest, followingTheWindowChoosesNothing) {
    const QSignalSpy chosen(m_list.get(), &FamiliesList::familyChosen);
    m_list->setCurrent(m_birch);
    m_list->setPlace(FamiliesList::Place::Practice);
    EXPECT_EQ(chosen.count(), 0);
    EXPECT_FALSE(m_view->currentIndex().isValid());
    m_list->setCurrent(m_cedar);
    EXPECT_EQ(m_view->currentIndex().data().toString(), QStringLiteral("Cedar"))
        << "a resting family is unfolded to be shown";
}

TEST_F(FamiliesListTest, stepsThroughTheFamiliesAndPassesOverTheFold) {
    const QSignalSpy chosen(m_list.get(), &FamiliesList::familyChosen);
    m_list->step(1);
    EXPECT_EQ(last(chosen), m_ash);
    m_list->step(1);
    EXPECT_EQ(last(chosen), m_birch);
    m_list->step(1);
    EXPECT_EQ(chosen.count(), 2) << "nothing below but the fold";
    m_list->step(-1);
    EXPECT_EQ(last(chosen), m_ash);
}

TEST_F(FamiliesListTest, theFoldOpensByKeyboard) {
    m_list->setCurrent(m_birch);
    m_view->setFocus();
    QTest::keyClick(m_view, Qt::Key_Down);
    QTest::keyClick(m_view, Qt::Key_Return);
    EXPECT_EQ(m_view->model()->rowCount(), 4);
    QTest::keyClick(m_view, Qt::Key_Left);
    EXPECT_EQ(m_view->model()->rowCount(), 3);
}

TEST_F(FamiliesListTest, theButtonsLeadElsewhere) {
    const QSignalSpy everyone(m_list.get(), &FamiliesList::everyoneWanted);
    const QSignalSpy fresh(m_list.get(), &FamiliesList::newFamilyWanted);
    const QSignalSpy practice(m_list.get(), &FamiliesList::practiceWanted);
    for (auto* button : m_list->findChildren<QPushButton*>())
        button->click();
    EXPECT_EQ(everyone.count(), 1);
    EXPECT_EQ(fresh.count(), 1);
    EXPECT_EQ(practice.count(), 1);
}

} // namespace ladlework::ui
