#include "handout/family_handout.h"

#include "core/casebook/hand_made_family.h"
#include "core/handout/handout_reader.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

using namespace ladlework;
using namespace hand_made;
using namespace handout_reader;

namespace {
Document handoutOf(const casebook::FamilyRecords& records) {
    static const kitchen::Catalogue catalogue = *kitchen::Catalogue::load();
    HandoutOptions options;
    options.week = monday;
    for (casebook::HandoutSection& section : options.sections)
        section.shown = true; // the log sheet and the labels too
    return familyHandout(casebook::Casebook(records, catalogue, today), options);
}

/// The whole sentences, without the small print: sources name agencies and titles as they are.
QStringList sentencesOf(Card card) {
    card.blocks.removeIf([](const Block& block) {
        const auto* paragraph = std::get_if<Paragraph>(&block);
        return paragraph != nullptr && paragraph->quiet;
    });
    QStringList sentences = plainLines(card);
    // Amounts, days and headings would only make a page look easier than it reads.
    sentences.removeIf([](const QString& line) { return !line.endsWith(QLatin1Char('.')); });
    return sentences;
}
} // namespace

TEST(PlainLanguageTest, theMeasureGivesTheGradesOfKnownTexts) {
    // By hand from the published formula. "The cat sat on the mat.": 6 words, 6 syllables:
    // 0.39 x 6 + 11.8 x 1 - 15.59 = -1.45.
    EXPECT_NEAR(fleschKincaidGrade({QStringLiteral("The cat sat on the mat.")}), -1.45, 0.005);
    // 2 sentences, 8 words, 11 syllables (wa-ter, slow-ly, in-to): 0.39 x 4 + 11.8 x 11/8 - 15.59.
    EXPECT_NEAR(fleschKincaidGrade({QStringLiteral("Pour water slowly. Put it into the jug.")}),
                0.39 * 4 + 11.8 * 11 / 8 - 15.59, 0.005);
    EXPECT_GT(fleschKincaidGrade({QStringLiteral(
                  "Refrigeration considerations necessitate immediate transportation.")}),
              15);
}

TEST(PlainLanguageTest, everyPageReadsBelowTheEighthGrade) {
    for (const Card& card : handoutOf(hand_made::records()).cards) {
        EXPECT_LT(fleschKincaidGrade(sentencesOf(card)), 8.0)
            << qPrintable(sentencesOf(card).join(QLatin1Char('\n')));
    }
}

TEST(PlainLanguageTest, theWholeHandoutReadsBelowTheEighthGrade) {
    QStringList lines;
    for (const Card& card : handoutOf(hand_made::records()).cards)
        lines += sentencesOf(card);
    EXPECT_LT(fleschKincaidGrade(lines), 8.0);
}

TEST(PlainLanguageTest, noPageClaimsAnEffectOnHealth) {
    static const QRegularExpression claims(
        QStringLiteral("\\b(heal|heals|healing|cure|cures|treats? (your|the|a) (gut|disease)|"
                       "detox|boosts?|immune|anti-?inflammatory|leaky|prevents? (disease|illness)|"
                       "remedy|therapy|superfood)\\b"),
        QRegularExpression::CaseInsensitiveOption);
    for (const QString& line : plainLines(handoutOf(hand_made::records())))
        EXPECT_FALSE(line.contains(claims)) << qPrintable(line);
}

TEST(PlainLanguageTest, noPlaceholderIsLeftInAText) {
    static const QRegularExpression placeholder(QStringLiteral("%[0-9n]"));
    for (const QString& line : plainLines(handoutOf(hand_made::records())))
        EXPECT_FALSE(line.contains(placeholder)) << qPrintable(line);
}
