#include "ui/today/stock_section.h"

#include "ui/shared/family_workbook.h"

#include <QAction>
#include <QLabel>
#include <QTableView>
#include <QTest>
#include <algorithm>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using kitchen::Lot;
using quantity::Volume;

/// A batch of yesterday in two jars: one in the refrigerator, one in the freezer.
class StockSectionTest : public ::testing::Test {
protected:
    StockSectionTest() : m_section(m_family.context(), nullptr) {
        QObject::connect(&m_family.workbook(), &store::Workbook::changed, &m_section,
                         [this] { m_section.show(*m_family.casebook()); });
        m_family.context().act(&m_section, QStringLiteral("Cooked"),
                               [this](store::Action& action) { return cook(action); });
        m_section.resize(520, 400);
        m_section.QWidget::show();
        m_section.table()->setFocus();
        QCoreApplication::processEvents();
    }

    Outcome cook(store::Action& action) {
        store::PotRepository& pots = m_family.workbook().pots();
        kitchen::Batch batch;
        batch.family = m_family.family;
        batch.pot = m_family.chicken;
        batch.day = FamilyWorkbook::today().addDays(-1);
        batch.cooked = {{}, {}, Volume::fromQuarts(3), quantity::Duration::fromHours(2)};
        batch.yield = Volume::fromCups(8);
        const Result<BatchId> id = pots.addBatch(action, batch);
        if (!id)
            return passOn(id);
        for (const bool frozen : {false, true}) {
            Lot lot;
            lot.batch = *id;
            lot.container = frozen ? QStringLiteral("jar 2") : QStringLiteral("jar 1");
            lot.volume = Volume::fromCups(4);
            lot.place = frozen ? Lot::Place::Freezer : Lot::Place::Fridge;
            lot.stored = batch.day;
            lot.useBy = batch.day.addDays(frozen ? 61 : 3);
            if (const Result<LotId> stored = pots.addLot(action, lot); !stored)
                return passOn(stored);
        }
        return {};
    }

    [[nodiscard]] QList<Lot> lots() { return m_family.casebook()->records().lots; }
    void choose(int row) { m_section.table()->selectRow(row); }
    QAction* action(const QString& text) {
        for (QAction* one : m_section.actions())
            if (one->text() == text)
                return one;
        return nullptr;
    }
    void typeAmount(const QString& text) {
        m_section.amount()->setFocus();
        m_section.amount()->selectAll();
        QTest::keyClicks(m_section.amount(), text);
    }
    ~StockSectionTest() override {
        m_section.hide();
    } // before the field in focus loses its section

    [[nodiscard]] bool says(const QString& words) const {
        QCoreApplication::processEvents(); // new lines are shown by the event loop
        const QList<QLabel*> labels = m_section.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [this, &words](const QLabel* label) {
            return label->isVisibleTo(&m_section) && label->text().contains(words);
        });
    }
    [[nodiscard]] QString lastSentence() {
        const auto entry = m_family.workbook().history().nextUndo();
        return entry ? entry->sentence : QString();
    }
    [[nodiscard]] double cupsStored() {
        double cups = 0;
        for (const Lot& lot : lots())
            cups += lot.volume.toCups();
        return cups;
    }

    FamilyWorkbook m_family;
    StockSection m_section;
};

} // namespace

TEST_F(StockSectionTest, NothingCanBeDoneUntilAContainerIsChosen) {
    m_section.table()->clearSelection();
    m_section.table()->setCurrentIndex({});
    for (const QAction* one : m_section.actions())
        EXPECT_FALSE(one->isEnabled()) << one->text().toStdString();
    EXPECT_TRUE(says(QStringLiteral("Choose a container")));
}

TEST_F(StockSectionTest, AJarIsFrozenWithItsCautionAndUndone) {
    choose(0);
    EXPECT_TRUE(says(QStringLiteral("best frozen on the day it is cooked")));
    EXPECT_FALSE(action(QStringLiteral("&Thaw it"))->isEnabled());
    action(QStringLiteral("Free&ze it"))->trigger();
    EXPECT_EQ(lastSentence(), QStringLiteral("Put 4 cups of Chicken legs into the freezer"));
    ASSERT_EQ(lots().size(), 2);
    for (const Lot& lot : lots())
        EXPECT_EQ(lot.place, Lot::Place::Freezer);
    ASSERT_TRUE(m_family.workbook().undo());
    const QList<Lot> all = lots();
    EXPECT_EQ(std::ranges::count(all, Lot::Place::Fridge, &Lot::place), 1);
}

TEST_F(StockSectionTest, APartIsThawedAndTheRestStaysFrozen) {
    choose(1);
    EXPECT_TRUE(says(QStringLiteral("to be drunk by")));
    typeAmount(QStringLiteral("1 1/2 cups"));
    action(QStringLiteral("&Thaw it"))->trigger();
    ASSERT_EQ(lots().size(), 3);
    EXPECT_DOUBLE_EQ(cupsStored(), 8);
    const QList<Lot> all = lots();
    const auto found = std::ranges::find(all, FamilyWorkbook::today(), &Lot::stored);
    ASSERT_NE(found, all.cend());
    EXPECT_EQ(found->place, Lot::Place::Fridge);
    EXPECT_EQ(found->useBy, FamilyWorkbook::today().addDays(2));
    EXPECT_DOUBLE_EQ(found->volume.toCups(), 1.5);
}

TEST_F(StockSectionTest, MoreThanIsThereIsToldAndNothingIsDone) {
    choose(0);
    typeAmount(QStringLiteral("5 cups"));
    action(QStringLiteral("Throw it a&way"))->trigger();
    EXPECT_FALSE(m_family.desk().told.isEmpty());
    EXPECT_EQ(lots().size(), 2);
    typeAmount(QStringLiteral("a heap"));
    action(QStringLiteral("Throw it a&way"))->trigger();
    EXPECT_EQ(lots().size(), 2);
    EXPECT_EQ(lastSentence(), QStringLiteral("Cooked"));
}

TEST_F(StockSectionTest, DeleteThrowsTheChosenJarAway) {
    choose(0);
    QTest::keyClick(m_section.table(), Qt::Key_Delete);
    EXPECT_EQ(m_family.casebook()->stockOnHand().size(), 1);
    EXPECT_EQ(lastSentence(), QStringLiteral("Took 4 cups of Chicken legs off the stock"));
    EXPECT_EQ(m_section.table()->model()->rowCount(), 1);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(m_section.table()->model()->rowCount(), 2);
}

TEST_F(StockSectionTest, StockPastItsDayCannotBeFrozen) {
    m_family.context().act(&m_section, QStringLiteral("Aged"), [this](store::Action& action) {
        const QList<Lot> all = lots();
        Lot old = all.first();
        for (const Lot& lot : all)
            if (lot.place == Lot::Place::Fridge)
                old = lot;
        old.stored = FamilyWorkbook::today().addDays(-4);
        old.useBy = FamilyWorkbook::today().addDays(-1);
        return m_family.workbook().pots().changeLot(action, old);
    });
    choose(0);
    EXPECT_FALSE(action(QStringLiteral("Free&ze it"))->isEnabled());
    EXPECT_TRUE(action(QStringLiteral("Throw it a&way"))->isEnabled());
    EXPECT_TRUE(says(QStringLiteral("past its day")));
}

} // namespace ladlework::ui
