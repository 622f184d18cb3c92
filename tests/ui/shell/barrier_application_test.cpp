#include "ui/shell/barrier_application.h"

#include "store/store_error.h"

#include <gtest/gtest.h>
#include <stdexcept>

namespace ladlework::ui {

class BarrierApplicationTest : public ::testing::Test {};

TEST_F(BarrierApplicationTest, whatGoesWellSaysNothing) {
    bool done = false;
    EXPECT_TRUE(sentenceIfBroken([&] { done = true; }).isEmpty());
    EXPECT_TRUE(done);
}

TEST_F(BarrierApplicationTest, aFailingDiskSpeaksInItsOwnSentence) {
    constexpr int full = 13; // SQLITE_FULL, sqlite.org/rescode.html
    const store::StoreError error(full, 0, QStringLiteral("database or disk is full"),
                                  QStringLiteral("INSERT INTO family"));
    const QString sentence = sentenceIfBroken([&] { throw error; });
    EXPECT_EQ(sentence, error.toProblem().sentence);
    EXPECT_FALSE(sentence.isEmpty());
    EXPECT_FALSE(sentence.contains(QStringLiteral("INSERT"))) << "no SQL for people";
}

TEST_F(BarrierApplicationTest, aBrokenInvariantIsNamedAndDoesNotEscape) {
    const QString sentence =
        sentenceIfBroken([] { throw std::logic_error("the lid does not fit"); });
    EXPECT_TRUE(sentence.contains(QStringLiteral("the lid does not fit")));
}

} // namespace ladlework::ui
