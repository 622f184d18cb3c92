#include "kitchen/lot_moves.h"

#include "kitchen/keeping.h"

#include <QHash>
#include <algorithm>
#include <gtest/gtest.h>
#include <limits>
#include <random>

namespace ladlework::kitchen {
namespace {

using quantity::Volume;

const QDate cooked(2026, 11, 2);

Lot jar(double millilitres, Lot::Place place = Lot::Place::Fridge) {
    Lot lot;
    lot.id = LotId{5};
    lot.batch = BatchId{3};
    lot.container = QStringLiteral("jar 1");
    lot.volume = Volume::fromMillilitres(millilitres);
    lot.place = place;
    lot.stored = cooked;
    lot.useBy = useBy(place, cooked, 3);
    return lot;
}

Volume ml(double millilitres) {
    return Volume::fromMillilitres(millilitres);
}
} // namespace

TEST(LotMovesTest, aWholeJarIsFrozenAsItself) {
    const Result<LotMove> move = freeze(jar(1000), ml(1000), ml(1000), cooked);
    ASSERT_TRUE(move);
    EXPECT_FALSE(move->splits());
    EXPECT_EQ(move->moved.id, LotId{5});
    EXPECT_EQ(move->moved.place, Lot::Place::Freezer);
    // FoodSafety.gov cold storage chart: soups and stews 2 to 3 months frozen; the shorter end.
    EXPECT_EQ(move->moved.useBy, QDate(2027, 1, 2));
    EXPECT_TRUE(check(move->moved));
}

TEST(LotMovesTest, aPartThatIsFrozenIsALotOfItsOwn) {
    const Result<LotMove> move = freeze(jar(1000), ml(700), ml(300), cooked.addDays(1));
    ASSERT_TRUE(move);
    ASSERT_TRUE(move->splits());
    EXPECT_EQ(move->stays->id, LotId{5});
    EXPECT_EQ(move->stays->volume, ml(700)); // 300 drunk, 400 left
    EXPECT_FALSE(move->stays->goneOn.isValid());
    EXPECT_FALSE(move->moved.id.isStored());
    EXPECT_EQ(move->moved.volume, ml(300));
    EXPECT_EQ(move->moved.batch, BatchId{3});
    EXPECT_EQ(move->moved.stored, cooked.addDays(1));
    EXPECT_EQ(move->moved.container, QStringLiteral("part of jar 1"));
}

TEST(LotMovesTest, whatIsLeftOfAJarThatWasDrunkFromLeavesItsRecordEmpty) {
    const Result<LotMove> move = freeze(jar(1000), ml(700), ml(700), cooked);
    ASSERT_TRUE(move);
    ASSERT_TRUE(move->splits());
    EXPECT_EQ(move->stays->volume, ml(300));
    EXPECT_EQ(move->stays->goneOn, cooked);
    EXPECT_EQ(move->moved.volume, ml(700));
    EXPECT_EQ(move->moved.container, QStringLiteral("jar 1"));
}

TEST(LotMovesTest, thawedStockIsDrunkByTwoDaysAfterTheDayOfThawing) {
    // The rule of the week's planner: thawed on a day, drunk on the day after or the second.
    const QDate day(2026, 11, 20);
    const Result<LotMove> move = thaw(jar(1000, Lot::Place::Freezer), ml(1000), ml(1000), day, 3);
    ASSERT_TRUE(move);
    EXPECT_EQ(move->moved.place, Lot::Place::Fridge);
    EXPECT_EQ(move->moved.useBy, QDate(2026, 11, 22));
    EXPECT_TRUE(check(move->moved));
    EXPECT_EQ(thawedUseBy(day, 1), QDate(2026, 11, 21));
    // A freezer day is a matter of taste: past it, stock may still be thawed.
    EXPECT_TRUE(thaw(jar(1000, Lot::Place::Freezer), ml(1000), ml(10), QDate(2027, 6, 1), 3));
}

TEST(LotMovesTest, whatIsThrownAwayIsGoneFromToday) {
    const Result<LotMove> all = throwAway(jar(1000), ml(400), ml(400), cooked.addDays(2));
    ASSERT_TRUE(all);
    EXPECT_FALSE(all->splits());
    EXPECT_EQ(all->moved.id, LotId{5});
    EXPECT_EQ(all->moved.volume, ml(1000)) << "what was drunk of it stays in its record";
    EXPECT_EQ(all->moved.goneOn, cooked.addDays(2));
    EXPECT_EQ(all->moved.useBy, jar(1000).useBy);
    const Result<LotMove> part = throwAway(jar(1000), ml(400), ml(100), cooked);
    ASSERT_TRUE(part);
    EXPECT_EQ(part->stays->volume, ml(900));
    EXPECT_EQ(part->moved.goneOn, cooked);
}

TEST(LotMovesTest, refusesWhatCannotBeDone) {
    struct Case {
        Result<LotMove> move;
        Problem::Kind kind;
        const char* place;
    };
    Lot gone = jar(1000);
    gone.goneOn = cooked;
    const QDate late = cooked.addDays(4); // one day past its use-by
    const Lot frozen = jar(1000, Lot::Place::Freezer);
    const double inf = std::numeric_limits<double>::infinity();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const std::vector<Case> cases{
        {freeze(frozen, ml(1000), ml(1), cooked), Problem::Kind::Refused, "place"},
        {thaw(jar(1000), ml(1000), ml(1), cooked, 3), Problem::Kind::Refused, "place"},
        {freeze(jar(1000), ml(1000), ml(1), late), Problem::Kind::Refused, "useBy"},
        {freeze(gone, ml(1000), ml(1), cooked), Problem::Kind::Refused, "goneOn"},
        {throwAway(gone, ml(1000), ml(1000), cooked), Problem::Kind::Refused, "goneOn"},
        {freeze(jar(1000), ml(0), ml(1), cooked), Problem::Kind::Refused, "amount"},
        {freeze(jar(1000), ml(500), ml(0), cooked), Problem::Kind::BadInput, "amount"},
        {freeze(jar(1000), ml(500), ml(-1), cooked), Problem::Kind::BadInput, "amount"},
        {freeze(jar(1000), ml(500), ml(501), cooked), Problem::Kind::BadInput, "amount"},
        {freeze(jar(1000), ml(500), ml(inf), cooked), Problem::Kind::BadInput, "amount"},
        {throwAway(jar(1000), ml(500), ml(nan), cooked), Problem::Kind::BadInput, "amount"}};
    for (std::size_t index = 0; index < cases.size(); ++index) {
        ASSERT_FALSE(cases[index].move) << index;
        EXPECT_EQ(cases[index].move.error().kind, cases[index].kind) << index;
        EXPECT_EQ(cases[index].move.error().place.toStdString(), cases[index].place) << index;
    }
}

TEST(LotMovesTest, speaksUpWhenStockIsFrozenLateOrAgain) {
    EXPECT_TRUE(freezeFindings(jar(1000), cooked, cooked).isEmpty());
    EXPECT_TRUE(hasCode(freezeFindings(jar(1000), cooked, cooked.addDays(1)), u"frozen-late"));
    Lot thawed = jar(1000);
    thawed.stored = cooked.addDays(20);
    const Findings again = freezeFindings(thawed, cooked, cooked.addDays(20));
    EXPECT_TRUE(hasCode(again, u"frozen-again"));
    EXPECT_EQ(worstOf(again), Finding::Severity::Caution);
    EXPECT_FALSE(again.first().source.isEmpty());
    EXPECT_TRUE(freezeFindings(jar(1000, Lot::Place::Freezer), cooked, cooked).isEmpty());
}

// Random days of drinking, freezing, thawing and throwing away: what was stored of a batch is at
// all times what stands, what was drunk and what is gone, and every lot passes its check.
TEST(LotMovesTest, logAndStockAgreeWhateverIsDone) {
    int parted = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        std::mt19937 random(seed);
        const auto share = [&random] {
            return std::uniform_real_distribution<double>(0.0, 1.0)(random);
        };
        const double yield = 3000 + 1000 * share();
        QList<Lot> lots{jar(yield / 2), jar(yield / 2, Lot::Place::Freezer)};
        lots[1].id = LotId{6};
        qint64 nextId = 7;
        QHash<LotId, double> drunk;
        const auto left = [&](const Lot& lot) {
            return lot.goneOn.isValid() ? 0.0 : lot.volume.toMillilitres() - drunk.value(lot.id);
        };
        for (int step = 0; step < 60; ++step) {
            const QDate today = cooked.addDays(step / 20);
            const auto index = static_cast<qsizetype>(share() * static_cast<double>(lots.size()));
            const Lot lot = lots.at(std::min(index, lots.size() - 1));
            const double amount = share() < 0.4 ? left(lot) : left(lot) * share();
            const Volume rest = ml(left(lot));
            if (share() < 0.3) {
                drunk[lot.id] += amount;
                continue;
            }
            const Result<LotMove> move = share() < 0.2 ? throwAway(lot, rest, ml(amount), today)
                                         : lot.place == Lot::Place::Fridge
                                             ? freeze(lot, rest, ml(amount), today)
                                             : thaw(lot, rest, ml(amount), today, 3);
            if (!move)
                continue;
            ASSERT_TRUE(check(move->moved));
            for (Lot& known : lots)
                if (known.id == lot.id)
                    known = move->stays.value_or(move->moved);
            if (move->splits()) {
                ASSERT_TRUE(check(*move->stays));
                ++parted;
                lots.append(move->moved);
                lots.last().id = LotId{nextId++};
            }
            double standing = 0;
            double gone = 0;
            double drunkInAll = 0;
            for (const Lot& known : lots) {
                standing += left(known);
                drunkInAll += drunk.value(known.id);
                if (known.goneOn.isValid())
                    gone += known.volume.toMillilitres() - drunk.value(known.id);
            }
            ASSERT_NEAR(standing + drunkInAll + gone, yield, 1e-6) << seed << " " << step;
        }
    }
    EXPECT_GT(parted, 100) << "something must have been parted, or the test shows nothing";
}

} // namespace ladlework::kitchen
