#include "people/retry_plan.h"

#include <gtest/gtest.h>

namespace ladlework::people {
namespace {

using Kind = Subject::Kind;
using Verdict = ToleranceNote::Verdict;

const kitchen::Catalogue& catalogue() {
    static const Result<kitchen::Catalogue> loaded = kitchen::Catalogue::load();
    return *loaded;
}

Subject subject(const char* id, Kind kind = Kind::Animal) {
    return {kind, QString::fromLatin1(id)};
}

ToleranceNote note(const char* id, Verdict verdict, int day, bool allergy = false) {
    ToleranceNote made;
    made.subject = subject(id);
    made.verdict = verdict;
    made.allergy = allergy;
    made.noted = QDate(2024, 1, day);
    return made;
}

/// Empty when the retry may be planned.
std::string refusal(const QList<ToleranceNote>& notes, const Subject& of,
                    const QList<Caution>& cautions = {}) {
    const Outcome outcome = mayRetry(notes, cautions, of, QStringLiteral("Ana"), catalogue());
    if (outcome)
        return {};
    EXPECT_EQ(outcome.error().kind, Problem::Kind::Refused);
    return outcome.error().sentence.toStdString();
}

const std::string allergy =
    "has a recorded allergy or severe reaction that concerns beef: no retry is planned here. Refer "
    "to the treating clinician.";

TEST(MayRetryTest, needsANoteInForceThatKeepsItOut) {
    EXPECT_EQ(refusal({note("beef", Verdict::Avoid, 1)}, subject("beef")), "");
    EXPECT_EQ(refusal({note("beef", Verdict::TryAgainOn, 1)}, subject("beef")), "");
    const std::string nothing = "No tolerance note of Ana keeps beef out, so there is nothing to "
                                "try again; write the note first.";
    EXPECT_EQ(refusal({}, subject("beef")), nothing);
    EXPECT_EQ(refusal({note("lamb", Verdict::Avoid, 1)}, subject("beef")), nothing);
    EXPECT_EQ(refusal({note("beef", Verdict::SmallAmounts, 1)}, subject("beef")), nothing);
    EXPECT_EQ(
        refusal({note("beef", Verdict::Fine, 9), note("beef", Verdict::Avoid, 1)}, subject("beef")),
        nothing);
    EXPECT_EQ(
        refusal({note("beef", Verdict::Avoid, 9), note("beef", Verdict::Fine, 1)}, subject("beef")),
        "");
}

TEST(MayRetryTest, aNoteReachesTheCutsOfItsAnimal) {
    const QList<ToleranceNote> notes{note("beef", Verdict::Avoid, 1)};
    EXPECT_EQ(refusal(notes, subject("beef-shank", Kind::Cut)), "");
    EXPECT_NE(refusal(notes, subject("celery", Kind::Ingredient)), "");
    EXPECT_EQ(refusal({note("poultry", Verdict::Avoid, 1)}, subject("turkey-neck", Kind::Cut)), "");
}

TEST(MayRetryTest, neverAfterAnAllergyAlsoAnOldOne) {
    EXPECT_EQ(refusal({note("beef", Verdict::Avoid, 1, true)}, subject("beef")), "Ana " + allergy);
    EXPECT_EQ(refusal({note("beef", Verdict::Avoid, 1, true), note("beef", Verdict::Avoid, 9)},
                      subject("beef")),
              "Ana " + allergy);
}

TEST(MayRetryTest, anAllergyReachesWhatHoldsTheSame) {
    const auto refuses = [](const char* allergen, const char* retried) {
        return refusal({note(allergen, Verdict::Avoid, 1, true), note(retried, Verdict::Avoid, 2)},
                       subject(retried)) != "";
    };
    EXPECT_TRUE(refuses("beef", "beef-shank"));
    EXPECT_TRUE(refuses("beef-shank", "beef"));
    EXPECT_TRUE(refuses("beef-shank", "beef-oxtail")) << "an allergy to a cut is one to its animal";
    EXPECT_TRUE(refuses("beef", "veal")) << "veal counts as beef";
    EXPECT_TRUE(refuses("fish", "salmon-head"));
    EXPECT_TRUE(refuses("fish", "cod"));
    EXPECT_TRUE(refuses("celery", "celery"));
    EXPECT_FALSE(refuses("beef", "lamb"));
    EXPECT_FALSE(refuses("celery", "onion"));
}

TEST(MayRetryTest, neverAgainstACautionThatKeepsItOut) {
    Caution caution;
    caution.kind = QStringLiteral("allergy-fish");
    const QList<ToleranceNote> notes{note("cod", Verdict::Avoid, 1)};
    EXPECT_EQ(refusal(notes, subject("cod")), "");
    EXPECT_NE(refusal(notes, subject("cod"), {caution}), "");
    EXPECT_EQ(refusal({note("beef", Verdict::Avoid, 1)}, subject("beef"), {caution}), "");
    caution.kind = QStringLiteral("allergy-celery");
    EXPECT_NE(refusal({note("celery", Verdict::Avoid, 1)}, subject("celery", Kind::Ingredient),
                      {caution}),
              "");
}

} // namespace
} // namespace ladlework::people
