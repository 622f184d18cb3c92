#include "kitchen/pot_notes.h"

#include "kitchen_samples.h"

namespace ladlework::kitchen {

using samples::catalogue;

namespace {
QStringList codesOf(const Pot& pot) {
    QStringList codes;
    for (const Finding& finding : standingNotes(pot, catalogue()))
        codes.append(finding.code);
    return codes;
}
} // namespace

TEST(PotNotesTest, EachKindOfRawCutIsNamedOnceWithItsDays) {
    Pot pot = samples::chickenPot().pot;
    pot.cuts.append(samples::cut(QStringLiteral("beef-shank"), 500));
    pot.cuts.append(samples::cut(QStringLiteral("fish-head"), 500));
    pot.cuts.append(samples::cut(QStringLiteral("pork-foot"), 500));
    const Findings notes = standingNotes(pot, catalogue());
    EXPECT_EQ(
        codesOf(pot),
        QStringList({QStringLiteral("raw-poultry"), QStringLiteral("raw-land-animal"),
                     QStringLiteral("raw-fish"), QStringLiteral("bones-strained-out"),
                     QStringLiteral("no-home-canning"), QStringLiteral("local-rules-first")}));
    // FoodSafety.gov cold storage chart: 1 to 2 days for poultry and fish, 3 to 5 for other meat.
    EXPECT_TRUE(notes[0].text.contains(QStringLiteral("1 to 2 days")));
    EXPECT_EQ(notes[0].field, QStringLiteral("cuts[0]"));
    EXPECT_TRUE(notes[1].text.contains(QStringLiteral("3 to 5 days")));
    EXPECT_EQ(notes[1].field, QStringLiteral("cuts[2]"));
    EXPECT_EQ(*notes[1].limit, 3);
    EXPECT_EQ(notes[1].unit, QStringLiteral("days"));
    for (const Finding& note : notes) {
        EXPECT_EQ(note.severity, Finding::Severity::Note);
        EXPECT_FALSE(note.source.isEmpty()) << note.code.toStdString();
        EXPECT_FALSE(note.text.contains(QLatin1Char('%'))) << note.text.toStdString();
    }
}

TEST(PotNotesTest, CookedBonesHaveNoRawDays) {
    Pot pot = samples::chickenPot().pot;
    for (CutInPot& cut : pot.cuts)
        cut.raw = false;
    EXPECT_EQ(codesOf(pot),
              QStringList({QStringLiteral("bones-strained-out"), QStringLiteral("no-home-canning"),
                           QStringLiteral("local-rules-first")}));
}

} // namespace ladlework::kitchen
