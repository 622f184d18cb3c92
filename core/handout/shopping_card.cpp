#include "handout/cards.h"
#include "week/shopping.h"

#include <QCoreApplication>
#include <cmath>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};
using Section = week::ShoppingItem::Section;

QString sectionName(Section section) {
    switch (section) {
    case Section::Meat:
        return Words::tr("Meat");
    case Section::Fish:
        return Words::tr("Fish");
    case Section::Vegetables:
        return Words::tr("Vegetables");
    case Section::Herbs:
        return Words::tr("Fresh herbs");
    case Section::Dry:
        return Words::tr("Dry goods");
    }
    return {};
}

QString lineOf(const PageContext& context, const week::ShoppingItem& item) {
    if (item.pieces <= 0)
        return Words::tr("%1: %2").arg(item.name, context.print(item.mass));
    return Words::tr("%1: %2 x %3 (%4)")
        .arg(item.name, QString::number(std::lround(item.pieces)), item.pieceName,
             context.print(item.mass));
}
} // namespace

Card shoppingCard(const PageContext& context) {
    QList<kitchen::Pot> pots;
    for (const kitchen::Pot* pot : context.pots()) {
        for (qsizetype times = context.cookingsOf(pot->id).size(); times > 0; --times)
            pots.append(*pot);
    }
    Card card;
    card.kind = Card::Kind::Shopping;
    card.title = Words::tr("Shopping list");
    card.startsPage = true;
    Lines lines;
    lines.sign = Lines::Sign::TickBox;
    const QList<week::ShoppingItem> items =
        week::shoppingList(pots, context.casebook().catalogue());
    for (qsizetype index = 0; index < items.size(); ++index) {
        const bool first = index == 0 || items[index - 1].section != items[index].section;
        if (first && !lines.items.isEmpty()) {
            card.blocks.append(lines);
            lines.items.clear();
        }
        if (first)
            card.blocks.append(Heading{sectionName(items[index].section)});
        lines.items.append(lineOf(context, items[index]));
    }
    if (!lines.items.isEmpty())
        card.blocks.append(lines);
    card.blocks.append(Paragraph{
        Words::tr("Cross out what you have at home. Buy raw meat and fish last and keep them "
                  "cold on the way.")});
    return card;
}

} // namespace ladlework::handout
