#include "core/handout/handout_reader.h"

#include <QRegularExpression>
#include <algorithm>

namespace handout_reader {

namespace {
int syllablesOf(const QString& word) {
    static const QRegularExpression vowels(QStringLiteral("[aeiouy]+"));
    static const QRegularExpression silentEnd(QStringLiteral("[^aeiouyl]es?$|[^aeiouydt]ed$"));
    QString text = word.toLower();
    if (text.contains(silentEnd) && text.size() > 3)
        text.replace(QRegularExpression(QStringLiteral("e[sd]?$")), QString());
    // Not QString::count, which counts overlapping matches: "ou" would be two.
    int groups = 0;
    for (auto found = vowels.globalMatch(text); found.hasNext(); found.next())
        ++groups;
    return std::max(1, groups);
}
} // namespace

QList<Card> cardsOf(const Document& document, Card::Kind kind) {
    QList<Card> cards;
    std::ranges::copy_if(document.cards, std::back_inserter(cards),
                         [kind](const Card& card) { return card.kind == kind; });
    return cards;
}

Card cardTitled(const Document& document, Card::Kind kind, const QString& title) {
    for (const Card& card : cardsOf(document, kind)) {
        if (card.title == title)
            return card;
    }
    return {};
}

QString textOf(const Card& card) {
    return plainLines(card).join(QLatin1Char('\n'));
}

QString textOf(const Document& document) {
    return plainLines(document).join(QLatin1Char('\n'));
}

Table tableOf(const Card& card) {
    for (const Block& block : card.blocks) {
        if (const Table* table = std::get_if<Table>(&block))
            return *table;
    }
    return {};
}

QStringList rowOf(const Table& table, const QString& first) {
    QStringList texts;
    for (const QList<Cell>& row : table.rows) {
        if (row.isEmpty() || row.first().text != first)
            continue;
        for (const Cell& cell : row)
            texts.append(cell.text);
        break;
    }
    return texts;
}

double fleschKincaidGrade(const QStringList& lines) {
    static const QRegularExpression sentenceEnd(QStringLiteral("[.!?:;](\\s|$)"));
    static const QRegularExpression wordPattern(QStringLiteral("[A-Za-z']+|[0-9]+"));
    int sentences = 0;
    int words = 0;
    int syllables = 0;
    for (const QString& line : lines) {
        for (const QString& sentence : line.split(sentenceEnd, Qt::SkipEmptyParts)) {
            auto found = wordPattern.globalMatch(sentence);
            int inSentence = 0;
            while (found.hasNext()) {
                syllables += syllablesOf(found.next().captured());
                ++inSentence;
            }
            words += inSentence;
            sentences += inSentence > 0 ? 1 : 0;
        }
    }
    if (words == 0)
        return 0;
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
}

} // namespace handout_reader
