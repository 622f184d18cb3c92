#include "people/tolerance.h"

#include <functional>
#include <gtest/gtest.h>

namespace ladlework::people {
namespace {

using Verdict = ToleranceNote::Verdict;

const QDate today(2024, 3, 1);

ToleranceNote noteOf(Verdict verdict) {
    ToleranceNote note;
    note.subject = {Subject::Kind::Animal, QStringLiteral("beef")};
    note.verdict = verdict;
    note.reason = QStringLiteral("rash last week");
    note.noted = today;
    if (verdict == Verdict::TryAgainOn)
        note.tryAgainOn = today.addDays(14);
    return note;
}

struct ToleranceCase {
    const char* name;
    Verdict verdict;
    std::function<void(ToleranceNote&)> change;
    const char* field;
};

class ToleranceTest : public ::testing::TestWithParam<ToleranceCase> {};

TEST_P(ToleranceTest, namesTheFieldAtFault) {
    ToleranceNote note = noteOf(GetParam().verdict);
    GetParam().change(note);
    const Outcome outcome = check(note, today);
    const std::string field = GetParam().field;
    ASSERT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
    }
}

INSTANTIATE_TEST_SUITE_P(
    Fields, ToleranceTest,
    ::testing::Values(
        ToleranceCase{"fine", Verdict::Fine, [](ToleranceNote&) {}, ""},
        ToleranceCase{"fineNeedsNoReason", Verdict::Fine,
                      [](ToleranceNote& n) { n.reason.clear(); }, ""},
        ToleranceCase{"small", Verdict::SmallAmounts, [](ToleranceNote&) {}, ""},
        ToleranceCase{"smallWithoutReason", Verdict::SmallAmounts,
                      [](ToleranceNote& n) { n.reason = QStringLiteral(" "); }, "reason"},
        ToleranceCase{"avoid", Verdict::Avoid, [](ToleranceNote&) {}, ""},
        ToleranceCase{"avoidWithoutReason", Verdict::Avoid,
                      [](ToleranceNote& n) { n.reason.clear(); }, "reason"},
        ToleranceCase{"avoidWithARetryDay", Verdict::Avoid,
                      [](ToleranceNote& n) { n.tryAgainOn = today.addDays(5); }, "tryAgainOn"},
        ToleranceCase{"allergy", Verdict::Avoid, [](ToleranceNote& n) { n.allergy = true; }, ""},
        ToleranceCase{"allergyAsSmallAmounts", Verdict::SmallAmounts,
                      [](ToleranceNote& n) { n.allergy = true; }, "verdict"},
        ToleranceCase{"allergyAsRetry", Verdict::TryAgainOn,
                      [](ToleranceNote& n) { n.allergy = true; }, "verdict"},
        ToleranceCase{"allergyAsFine", Verdict::Fine, [](ToleranceNote& n) { n.allergy = true; },
                      "verdict"},
        ToleranceCase{"retry", Verdict::TryAgainOn, [](ToleranceNote&) {}, ""},
        ToleranceCase{"retryWithoutDay", Verdict::TryAgainOn,
                      [](ToleranceNote& n) { n.tryAgainOn.reset(); }, "tryAgainOn"},
        ToleranceCase{"retryOnTheDayOfTheNote", Verdict::TryAgainOn,
                      [](ToleranceNote& n) { n.tryAgainOn = today; }, "tryAgainOn"},
        ToleranceCase{"noSubject", Verdict::Avoid, [](ToleranceNote& n) { n.subject.id.clear(); },
                      "subject"},
        ToleranceCase{"notedTomorrow", Verdict::Avoid,
                      [](ToleranceNote& n) { n.noted = today.addDays(1); }, "noted"},
        ToleranceCase{"neverNoted", Verdict::Avoid, [](ToleranceNote& n) { n.noted = QDate(); },
                      "noted"}),
    [](const auto& named) { return std::string(named.param.name); });

TEST_F(ToleranceTest, aRetryIsAPlanAndNoPermission) {
    EXPECT_TRUE(forbids(noteOf(Verdict::Avoid)));
    EXPECT_TRUE(forbids(noteOf(Verdict::TryAgainOn)));
    EXPECT_FALSE(forbids(noteOf(Verdict::SmallAmounts)));
    EXPECT_FALSE(forbids(noteOf(Verdict::Fine)));
}

TEST_F(ToleranceTest, readsItsWordsBack) {
    for (Verdict verdict :
         {Verdict::Fine, Verdict::SmallAmounts, Verdict::Avoid, Verdict::TryAgainOn}) {
        EXPECT_EQ(verdictFromId(verdictId(verdict)), verdict);
        EXPECT_FALSE(verdictName(verdict).isEmpty());
    }
    for (Subject::Kind kind :
         {Subject::Kind::Animal, Subject::Kind::Cut, Subject::Kind::Ingredient})
        EXPECT_EQ(subjectKindFromId(subjectKindId(kind)), kind);
    EXPECT_EQ(verdictId(Verdict::TryAgainOn).toStdString(), "try-again-on");
    EXPECT_EQ(subjectKindId(Subject::Kind::Ingredient).toStdString(), "ingredient");
    EXPECT_FALSE(verdictFromId(u"maybe").has_value());
    EXPECT_FALSE(subjectKindFromId(u"mineral").has_value());
}

} // namespace
} // namespace ladlework::people
