#include "casebook/handout_template.h"

#include <gtest/gtest.h>

namespace ladlework::casebook {
namespace {

HandoutTemplate usual() {
    HandoutTemplate kept;
    kept.name = QStringLiteral("As always");
    kept.sections = usualSections();
    return kept;
}

std::string placeOf(const HandoutTemplate& kept) {
    const Outcome outcome = check(kept);
    return outcome ? std::string() : outcome.error().place.toStdString();
}

void setShown(HandoutTemplate& kept, HandoutPart part, bool shown) {
    for (HandoutSection& section : kept.sections)
        if (section.part == part)
            section.shown = shown;
}
} // namespace

TEST(HandoutTemplateTest, partsAreReadBackFromTheirIds) {
    // The ids are part of the file, so they are written out here.
    const QList<std::pair<HandoutPart, QString>> ids{
        {HandoutPart::Cover, QStringLiteral("cover")},
        {HandoutPart::Week, QStringLiteral("week")},
        {HandoutPart::Pots, QStringLiteral("pots")},
        {HandoutPart::Ladders, QStringLiteral("ladders")},
        {HandoutPart::Shopping, QStringLiteral("shopping")},
        {HandoutPart::Keeping, QStringLiteral("keeping")},
        {HandoutPart::Cautions, QStringLiteral("cautions")},
        {HandoutPart::OwnWords, QStringLiteral("own-words")},
        {HandoutPart::LogSheet, QStringLiteral("log-sheet")},
        {HandoutPart::JarLabels, QStringLiteral("jar-labels")}};
    for (const auto& [part, id] : ids) {
        EXPECT_EQ(handoutPartId(part), id);
        EXPECT_EQ(handoutPartFromId(id), part);
    }
    EXPECT_FALSE(handoutPartFromId(u"horoscope"));
}

TEST(HandoutTemplateTest, theUsualPagesPassTheirCheckAndHideLogAndLabels) {
    EXPECT_TRUE(check(usual()));
    for (const HandoutSection& section : usualSections())
        EXPECT_EQ(section.shown,
                  section.part != HandoutPart::LogSheet && section.part != HandoutPart::JarLabels);
}

TEST(HandoutTemplateTest, needsANameAndEachPartOnce) {
    HandoutTemplate blank = usual();
    blank.name = QStringLiteral(" ");
    EXPECT_EQ(placeOf(blank), "name");
    HandoutTemplate twice = usual();
    twice.sections.append({HandoutPart::Week, false, {}, {}});
    EXPECT_EQ(placeOf(twice), "sections[9]");
    HandoutTemplate ownWords = usual();
    for (int page = 0; page < 3; ++page)
        ownWords.sections.append(
            {HandoutPart::OwnWords, true, QStringLiteral("Good luck"), QStringLiteral("Rest.")});
    EXPECT_TRUE(check(ownWords));
}

TEST(HandoutTemplateTest, cautionsStayWithPotsAndWithLadders) {
    HandoutTemplate without = usual();
    setShown(without, HandoutPart::Cautions, false);
    EXPECT_EQ(placeOf(without), "sections");
    setShown(without, HandoutPart::Pots, false);
    EXPECT_EQ(placeOf(without), "sections");
    setShown(without, HandoutPart::Ladders, false);
    EXPECT_EQ(placeOf(without), "");

    HandoutTemplate gone = usual();
    gone.sections.removeIf(
        [](const HandoutSection& section) { return section.part == HandoutPart::Cautions; });
    EXPECT_EQ(placeOf(gone), "sections");
}

} // namespace ladlework::casebook
