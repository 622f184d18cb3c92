#include "casebook/week_shopping.h"
#include "foundation/language_scope.h"
#include "handout/cards.h"

#include <QCoreApplication>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString sectionName(week::ShopSection section) {
    switch (section) {
    case week::ShopSection::Meat:
        return Words::tr("Meat");
    case week::ShopSection::Fish:
        return Words::tr("Fish");
    case week::ShopSection::Vegetables:
        return Words::tr("Vegetables");
    case week::ShopSection::Herbs:
        return Words::tr("Fresh herbs");
    case week::ShopSection::Dry:
        return Words::tr("Dry goods");
    case week::ShopSection::Household:
        return Words::tr("For the house");
    }
    return {};
}

QString number(double count) {
    return wordsLocale().toString(count, 'g', 3);
}

/// What a cook counts, where there is something to count; else the weight.
QString neededWords(const PageContext& context, const week::ShoppingItem& item) {
    if (item.neededPieces > 0)
        return Words::tr("%1 x %2").arg(number(item.neededPieces), item.pieceName);
    return context.print(item.needed);
}

QString lineOf(const PageContext& context, const week::ShoppingItem& item) {
    if (item.isHousehold())
        return item.name;
    const QString needed = neededWords(context, item);
    if (item.isAtHome())
        return Words::tr("%1: you have it at home (%2 needed)").arg(item.name, needed);
    const QString weight = context.print(item.toBuy);
    const bool byTheMark = item.count <= 0;
    QString line = byTheMark ? Words::tr("%1: %2").arg(item.name, weight)
                             : Words::tr("%1: %2 x %3 (%4)")
                                   .arg(item.name, number(item.count), item.countName, weight);
    const bool soldAsUsed = !byTheMark && item.countName == item.pieceName;
    if (item.atHome > quantity::Mass())
        line += Words::tr(" - %1 needed, %2 at home").arg(needed, context.print(item.atHome));
    else if (byTheMark ? needed != weight : !soldAsUsed)
        line += Words::tr(" - %1 needed").arg(needed);
    return line;
}

QString totalWords(const PageContext& context, const week::ShoppingList& list) {
    const QString total = context.practice().currency + wordsLocale().toString(list.total, 'f', 2);
    if (list.withoutPrice == 0)
        return Words::tr("About %1 in all.").arg(total);
    return Words::tr("About %1, and %n thing(s) without a price.", nullptr, list.withoutPrice)
        .arg(total);
}
} // namespace

Card shoppingCard(const PageContext& context) {
    Card card;
    card.kind = Card::Kind::Shopping;
    card.title = Words::tr("Shopping list");
    card.startsPage = true;
    Lines lines;
    lines.sign = Lines::Sign::TickBox;
    const week::ShoppingList list = casebook::shoppingFor(context.casebook(), context.plan());
    const QList<week::ShoppingItem>& items = list.items;
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
    if (list.total > 0)
        card.blocks.append(Paragraph{totalWords(context, list)});
    card.blocks.append(Paragraph{
        Words::tr("Cross out what you have at home. Buy raw meat and fish last and keep them "
                  "cold on the way.")});
    return card;
}

} // namespace ladlework::handout
