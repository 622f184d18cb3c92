#include "handout/family_handout.h"

#include "foundation/day_words.h"
#include "handout/cards.h"

#include <QCoreApplication>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString titleOf(const PageContext& context) {
    const QString family = context.familyCalled();
    const QString start = dayInWords(context.options().week);
    return family.isEmpty() ? Words::tr("Week of %1").arg(start)
                            : Words::tr("%1 - week of %2").arg(family, start);
}
} // namespace

Document familyHandout(const casebook::Casebook& casebook, const HandoutOptions& options) {
    const PageContext context(casebook, options);
    Document document;
    document.title = titleOf(context);
    document.author = context.practice().name;
    document.footer = document.title;
    document.printedOn = dayInWords(casebook.today());
    document.paper = options.paper.value_or(casebook.records().family.paper);
    document.largePrint = options.largePrint;
    document.cards.append(coverCard(context));
    document.cards.append(weekCard(context));
    const QList<const kitchen::Pot*> pots = context.pots();
    for (const kitchen::Pot* pot : pots)
        document.cards.append(potCard(context, *pot));
    for (const casebook::Standing& standing : casebook.standings()) {
        if (standing.ladder && !isTooYoung(standing))
            document.cards.append(ladderCard(context, standing));
    }
    if (!pots.isEmpty())
        document.cards.append(shoppingCard(context));
    document.cards.append(keepingCard(context));
    document.cards.append(cautionsCard(context));
    return document;
}

} // namespace ladlework::handout
