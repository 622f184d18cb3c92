#include "ui/pot/calibration_drawing.h"
#include "ui/pot/calibration_panel.h"
#include "ui/pot/keeping_panel.h"
#include "ui/pot/pot_drawing.h"
#include "ui/pot/pot_screen_fixture.h"

#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>

namespace ladlework::ui {

using quantity::Volume;

namespace {

class PotPagesTest : public PotScreenFixture {
protected:
    [[nodiscard]] static QString wordsOf(const QWidget* page) {
        QString all;
        for (const QLabel* label : page->findChildren<QLabel*>())
            if (label->isVisibleTo(page))
                all += label->text() + u'\n';
        return all;
    }
    /// Cookings of the chicken pot in the big pot, as it asks, with these yields.
    void cook(const QList<Volume>& yields) {
        const Outcome done = m_family.workbook().act(
            QStringLiteral("Recorded cookings"), [&](store::Action& action) -> Outcome {
                QDate day(2026, 10, 5);
                for (const Volume yield : yields) {
                    kitchen::Batch batch;
                    batch.family = m_family.family;
                    batch.pot = m_family.chicken;
                    batch.day = day;
                    batch.yield = yield;
                    const auto vessels = m_family.casebook()->records().vessels;
                    batch.cooked = kitchen::asPlanned(chicken(), &vessels.first());
                    const auto added = m_family.workbook().pots().addBatch(action, batch);
                    if (!added)
                        return passOn(added);
                    day = day.addDays(3);
                }
                return {};
            });
        ASSERT_TRUE(done) << toLine(done.error()).toStdString();
    }
};

} // namespace

TEST_F(PotPagesTest, EachPageHasItsAction) {
    const auto* pages = m_screen.findChild<QTabWidget*>();
    ASSERT_EQ(pages->count(), 5);
    for (const char* name : {"When what goes in", "How it cools", "How it keeps",
                             "What the vessel has taught", "What comes out"}) {
        trigger(QStringLiteral("Show: ") + QString::fromUtf8(name));
        EXPECT_EQ(pages->tabToolTip(pages->currentIndex()), QString::fromUtf8(name));
        EXPECT_TRUE(pages->isAncestorOf(QApplication::focusWidget())) << name;
    }
}

TEST_F(PotPagesTest, KeepingCountsFromToday) {
    trigger(QStringLiteral("Show: How it keeps"));
    const QString words = wordsOf(m_screen.findChild<KeepingPanel*>());
    // FoodSafety.gov cold storage chart: 3 days (the practice's choice) from Wed 4 Nov 2026, two
    // months in the freezer; USDA: 165 °F; raw poultry 1 to 2 days.
    EXPECT_TRUE(words.contains(QStringLiteral("Sat, Nov 7, 2026"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("Mon, Jan 4, 2027"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("165 °F")));
    EXPECT_TRUE(words.contains(QStringLiteral("1 to 2 days")));
    EXPECT_TRUE(words.contains(QStringLiteral("home canning")));
    for (const QLabel* label : m_screen.findChild<KeepingPanel*>()->findChildren<QLabel*>())
        if (label->wordWrap()) {
            EXPECT_TRUE(label->toolTip().contains(QStringLiteral("Source:")))
                << label->text().toStdString();
        }
}

TEST_F(PotPagesTest, VesselWithoutBatchesTeachesHowToGetThem) {
    trigger(QStringLiteral("Show: What the vessel has taught"));
    const auto* panel = m_screen.findChild<CalibrationPanel*>();
    EXPECT_TRUE(wordsOf(panel).contains(QStringLiteral("Nothing measured yet")));
    EXPECT_TRUE(wordsOf(panel).contains(QStringLiteral("the big pot")));
    EXPECT_FALSE(m_screen.findChild<CalibrationDrawing*>()->isVisible());
}

TEST_F(PotPagesTest, MeasuredBatchesAreShownAndTheOddOneIsNamed) {
    const double expected =
        kitchen::brew(m_family.casebook()->brewInput(chicken()), m_family.context().catalogue)
            .stockMl.best;
    const auto ml = [expected](double share) {
        return Volume::fromMillilitres(expected * share);
    };
    cook({ml(0.9), ml(0.91), ml(0.89), ml(0.9), ml(0.2)});
    trigger(QStringLiteral("Show: What the vessel has taught"));
    const auto* panel = m_screen.findChild<CalibrationPanel*>();
    const QString words = wordsOf(panel);
    EXPECT_TRUE(words.contains(QStringLiteral("5 measured batches: this vessel loses about")))
        << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("One of them is odd and counts little.")))
        << words.toStdString();
    const auto* drawing = m_screen.findChild<CalibrationDrawing*>();
    EXPECT_TRUE(drawing->isVisible());
    EXPECT_TRUE(drawing->accessibleDescription().contains(QStringLiteral("odd")));
    EXPECT_TRUE(drawing->accessibleDescription().contains(QStringLiteral("Expected now")));
}

TEST_F(PotPagesTest, PriceIsTypedBesideTheCutAndGivesTheCost) {
    cuts()->setFocus();
    cuts()->setCurrentIndex(cuts()->model()->index(0, 3));
    QTest::keyClicks(cuts(), QStringLiteral("2"));
    auto* editor = cuts()->viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents();
    EXPECT_EQ(lastSentence(), QStringLiteral("Set the price of chicken legs to 2.00/lb"));
    // Three pounds at two a pound.
    EXPECT_TRUE(wordsOf(m_screen.findChild<BalancePanel*>()).contains(QStringLiteral("6.00")));
    EXPECT_TRUE(wordsOf(m_screen.findChild<BalancePanel*>())
                    .contains(QStringLiteral("a cup, without onion")));
    EXPECT_TRUE(cuts()->hasFocus());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_TRUE(m_family.casebook()->records().prices.isEmpty());
}

TEST_F(PotPagesTest, RangeIsInTheUnitOfItsValue) {
    const auto labels = m_screen.findChild<BalancePanel*>()->findChildren<QLabel*>();
    EXPECT_TRUE(labels.at(1)->text().endsWith(QStringLiteral("quarts")));
    static const QRegularExpression bare(QStringLiteral("^[0-9¼½¾⅓⅔]+ to [0-9¼½¾⅓⅔]+$"));
    EXPECT_TRUE(bare.match(labels.at(2)->text()).hasMatch()) << labels.at(2)->text().toStdString();
}

TEST_F(PotPagesTest, TabGoesInReadingOrder) {
    QWidget* first = byName<QLineEdit>(m_screen, QStringLiteral("Find a pot"));
    first->setFocus();
    QStringList order;
    for (int step = 0; step < 40; ++step) {
        const QWidget* focus = QApplication::focusWidget();
        QString name = focus->accessibleName();
        if (name.isEmpty())
            if (const auto* button = qobject_cast<const QAbstractButton*>(focus))
                name = QString(button->text()).remove(u'&');
        order.append(name);
        if (qobject_cast<const QTabBar*>(focus) != nullptr)
            break;
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    const QStringList expected{QStringLiteral("Find a pot"),
                               QStringLiteral("Pots at hand"),
                               QStringLiteral("New pot"),
                               QStringLiteral("Compare…"),
                               QStringLiteral("Name"),
                               QStringLiteral("Water"),
                               QStringLiteral("Simmer"),
                               QStringLiteral("Salt"),
                               QStringLiteral("Brew"),
                               QStringLiteral("Vessel"),
                               QStringLiteral("Bones and cuts"),
                               QStringLiteral("Add bones or a cut"),
                               QStringLiteral("Mass as bought"),
                               QStringLiteral("Add cut"),
                               QStringLiteral("Vegetables and seasoning"),
                               QStringLiteral("Add a vegetable, herb or spice"),
                               QStringLiteral("Add one"),
                               QStringLiteral("Note on the pot"),
                               QStringLiteral("The pot, drawn to scale")};
    EXPECT_EQ(order.first(expected.size()).join(u'\n').toStdString(),
              expected.join(u'\n').toStdString());
    const QStringList sizes{QStringLiteral("Size the pot to what fits it"),
                            QStringLiteral("Make the nearest low-meat pot with the same yield"),
                            QStringLiteral("Days to cover"),
                            QStringLiteral("Size the pot to cover the days"),
                            QStringLiteral("Bones at hand"),
                            QStringLiteral("Mass at hand"),
                            QStringLiteral("Size the pot to all of the bones at hand")};
    EXPECT_EQ(order.sliced(expected.size(), sizes.size()).join(u'\n').toStdString(),
              sizes.join(u'\n').toStdString());
}

TEST_F(PotPagesTest, NothingIsCutAt1366By768) {
    for (const char* name : {"What comes out", "When what goes in", "How it cools", "How it keeps",
                             "What the vessel has taught"}) {
        trigger(QStringLiteral("Show: ") + QString::fromUtf8(name));
        QTest::qWait(200);
        EXPECT_LE(m_screen.minimumSizeHint().width(), 1136);
        for (const QLabel* label : m_screen.findChildren<QLabel*>())
            if (label->isVisible() && !label->wordWrap()) {
                EXPECT_GE(label->width(), label->sizeHint().width())
                    << name << ": " << label->text().toStdString();
            }
        for (const QAbstractButton* button : m_screen.findChildren<QAbstractButton*>())
            if (button->isVisible() && !button->text().isEmpty()) {
                EXPECT_GE(button->width(), button->minimumSizeHint().width())
                    << name << ": " << button->text().toStdString();
            }
    }
}

} // namespace ladlework::ui
