#include "core/casebook/hand_made_family.h"
#include "handout/family_handout.h"
#include "handout/plain_lines.h"
#include "languages/spanish_measure.h"

#include <gtest/gtest.h>

using namespace ladlework;
using namespace spanish_measure;

namespace {
/// From here to 65 is "normal" on the INFLESZ scale: within reach of most adults.
constexpr double normalFrom = 55;
constexpr double fairlyEasyFrom = 65;

QStringList sentencesOf(handout::Card card) {
    card.blocks.removeIf([](const handout::Block& block) {
        const auto* paragraph = std::get_if<handout::Paragraph>(&block);
        return paragraph != nullptr && paragraph->quiet;
    });
    QStringList sentences = handout::plainLines(card);
    sentences.removeIf([](const QString& line) { return !line.endsWith(QLatin1Char('.')); });
    return sentences;
}

QList<handout::Card> spanishCards() {
    const kitchen::Catalogue catalogue = *kitchen::Catalogue::load();
    handout::HandoutOptions options;
    options.week = hand_made::monday;
    options.language = QStringLiteral("es");
    return handout::familyHandout(
               casebook::Casebook(hand_made::records(), catalogue, hand_made::today), options)
        .cards;
}
} // namespace

TEST(SpanishReadabilityTest, countsSyllablesAsTheGrammarDoes) {
    // Divided by the rules of the Real Academia, Ortografía 2010.
    for (const auto& [word, syllables] :
         {std::pair{"día", 2}, std::pair{"agua", 2}, std::pair{"caldo", 2}, std::pair{"leer", 2},
          std::pair{"cucharadita", 5}, std::pair{"huesos", 2}, std::pair{"frío", 2},
          std::pair{"quien", 1}, std::pair{"enfriar", 2}, std::pair{"médico", 3},
          std::pair{"respiración", 4}, std::pair{"guisado", 3}, std::pair{"hoy", 1},
          std::pair{"ciudad", 2}, std::pair{"muy", 1}})
        EXPECT_EQ(syllablesOf(QString::fromUtf8(word)), syllables) << word;
}

TEST(SpanishReadabilityTest, theMeasureIsThePublishedFormula) {
    // 2 sentences, 7 words, 12 syllables (A-pa-gue el fue-go; Cue-le el cal-do hoy) by hand.
    EXPECT_NEAR(perspicuity({QStringLiteral("Apague el fuego. Cuele el caldo hoy.")}),
                206.835 - 62.3 * 12 / 7 - 7.0 / 2, 0.001);
    EXPECT_LT(perspicuity({QStringLiteral("La refrigeración inmediata constituye una consideración "
                                          "imprescindible.")}),
              20);
}

TEST(SpanishReadabilityTest, everyPageIsWithinReachOfMostAdults) {
    for (const handout::Card& card : spanishCards()) {
        const QStringList sentences = sentencesOf(card);
        EXPECT_GT(perspicuity(sentences), normalFrom)
            << qPrintable(sentences.join(QLatin1Char('\n')));
    }
}

TEST(SpanishReadabilityTest, theWholeIsFairlyEasy) {
    QStringList lines;
    for (const handout::Card& card : spanishCards())
        lines += sentencesOf(card);
    EXPECT_GT(perspicuity(lines), fairlyEasyFrom);
}
