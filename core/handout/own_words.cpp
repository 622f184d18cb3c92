#include "handout/cards.h"

namespace ladlework::handout {

QList<Block> ownWordsBlocks(const QString& words) {
    QList<Block> blocks;
    const QStringList lines = words.split(QLatin1Char('\n'));
    for (const QString& line : lines) {
        const QString text = line.trimmed();
        if (text.isEmpty())
            continue;
        const bool dot =
            text.startsWith(QStringLiteral("- ")) || text.startsWith(QStringLiteral("* "));
        if (!dot) {
            blocks.append(Paragraph{text});
            continue;
        }
        if (blocks.isEmpty() || !std::holds_alternative<Lines>(blocks.last()))
            blocks.append(Lines{Lines::Sign::Dot, {}});
        std::get<Lines>(blocks.last()).items.append(text.mid(2).trimmed());
    }
    return blocks;
}

Card ownWordsCard(const casebook::HandoutSection& section) {
    Card card;
    card.kind = Card::Kind::Text;
    card.title = section.title.trimmed();
    card.blocks = ownWordsBlocks(section.words);
    card.startsPage = true;
    return card;
}

Letterhead letterheadOf(const PageContext& context) {
    const people::Practice& practice = context.practice();
    Letterhead head;
    head.practice = practice.name.trimmed();
    head.practitioner = practice.practitioner.trimmed();
    for (const QString& line : practice.contact.split(QLatin1Char('\n')))
        if (!line.trimmed().isEmpty())
            head.contact.append(line.trimmed());
    head.logo = practice.logo;
    return head;
}

} // namespace ladlework::handout
