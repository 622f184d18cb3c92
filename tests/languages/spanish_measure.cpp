#include "languages/spanish_measure.h"

#include <QRegularExpression>
#include <algorithm>

namespace spanish_measure {

int syllablesOf(const QString& word) {
    static const QRegularExpression vowels(QStringLiteral("[aeiouáéíóúü]*y$|[aeiouáéíóúü]+"));
    static const QRegularExpression strong(QStringLiteral("[aeoáéíóú]"));
    QString text = word.toLower();
    // The u of que, qui, gue and gui is not spoken.
    text.replace(QRegularExpression(QStringLiteral("([qg])u([eiéí])")), QStringLiteral("\\1\\2"));
    int syllables = 0;
    for (auto group = vowels.globalMatch(text); group.hasNext();) {
        int hearts = 0;
        for (auto heart = strong.globalMatch(group.next().captured()); heart.hasNext();
             heart.next())
            ++hearts;
        syllables += std::max(1, hearts);
    }
    return std::max(1, syllables);
}

double perspicuity(const QStringList& lines) {
    static const QRegularExpression sentenceEnd(QStringLiteral("[.!?:;](\\s|$)"));
    static const QRegularExpression wordPattern(QStringLiteral("\\p{L}+|[0-9]+"));
    int sentences = 0;
    int words = 0;
    int syllables = 0;
    for (const QString& line : lines) {
        for (const QString& sentence : line.split(sentenceEnd, Qt::SkipEmptyParts)) {
            int inSentence = 0;
            for (auto found = wordPattern.globalMatch(sentence); found.hasNext();) {
                syllables += syllablesOf(found.next().captured());
                ++inSentence;
            }
            words += inSentence;
            sentences += inSentence > 0 ? 1 : 0;
        }
    }
    if (words == 0)
        return 100;
    return 206.835 - 62.3 * syllables / words - static_cast<double>(words) / sentences;
}

} // namespace spanish_measure
