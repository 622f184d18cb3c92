#include "exchange/invented_practice.h"

#include "core/exchange/exchange_ground.h"
#include "store/workbook.h"

#include <QFile>

namespace ladlework::exchange {
namespace {

class InventedPracticeTest : public ExchangeGround {
protected:
    /// Every drink of every family in one text.
    QString drinksOf(const char* name, const InventedSize& size) {
        const auto made = createInventedPractice(path(name), size, catalogue, clock);
        EXPECT_TRUE(made) << (made ? "" : qPrintable(toLine(made.error())));
        QString text;
        for (const people::Family& family : (*made)->families().families()) {
            text += family.name;
            for (const intake::IntakeEntry& entry : (*made)->log().entries(family.id))
                text += QStringLiteral(" %1:%2")
                            .arg(entry.day.toString(Qt::ISODate))
                            .arg(entry.drunk.toMillilitres(), 0, 'g', 17);
        }
        return text;
    }
};

TEST_F(InventedPracticeTest, IsTheSameForTheSameSeed) {
    const QString first = drinksOf("a", {3, 1, 42});
    EXPECT_GT(first.size(), 1000);
    EXPECT_EQ(first, drinksOf("b", {3, 1, 42}));
    EXPECT_NE(first, drinksOf("c", {3, 1, 43}));
}

TEST_F(InventedPracticeTest, VerifiesCleanAndHasTheSizeAskedFor) {
    const auto made = createInventedPractice(path("a"), {12, 2, 7}, catalogue, clock);
    ASSERT_TRUE(made) << qPrintable(toLine(made.error()));
    const auto families = (*made)->families().families();
    EXPECT_EQ(families.size(), 12);
    EXPECT_TRUE((*made)->verify().isEmpty());
    QDate first(2026, 11, 25);
    QDate last;
    qsizetype batches = 0;
    qsizetype retries = 0;
    qsizetype weights = 0;
    for (const people::Family& family : families) {
        const auto records = (*made)->records(family.id).value();
        batches += records.batches.size();
        retries += records.retryPlans.size();
        weights += records.observations.size();
        EXPECT_FALSE(records.containers.isEmpty());
        EXPECT_FALSE(records.prices.isEmpty());
        EXPECT_GE(records.usualHours.size(), 2);
        for (const kitchen::Batch& batch : records.batches)
            EXPECT_EQ(batch.cooked.vessel, records.vessels.first().id);
        for (const intake::IntakeEntry& entry : records.entries) {
            first = std::min(first, entry.day);
            last = std::max(last, entry.day);
        }
    }
    EXPECT_GT(batches, 12 * 2 * 365 / 6);
    EXPECT_GT(retries, 0);
    EXPECT_GT(weights, 0);
    EXPECT_LT(first, QDate(2024, 12, 31));
    EXPECT_EQ(last, QDate(2026, 11, 24));
}

TEST_F(InventedPracticeTest, RefusesASizeOutOfRange) {
    for (const InventedSize size : {InventedSize{0, 1, 1}, InventedSize{2001, 1, 1},
                                    InventedSize{1, 0, 1}, InventedSize{1, 31, 1}}) {
        const auto made = createInventedPractice(path("a"), size, catalogue, clock);
        ASSERT_FALSE(made);
        EXPECT_EQ(made.error().kind, Problem::Kind::BadInput);
        EXPECT_FALSE(QFile::exists(path("a")));
    }
}

} // namespace
} // namespace ladlework::exchange
