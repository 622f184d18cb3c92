#include "foundation/day_words.h"
#include "handout/cards.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString dayName(const PageContext& context, qsizetype day) {
    return wordsLocale().dayName(context.options().week.addDays(day).dayOfWeek());
}

/// "1 cup each day", or "¼ cup on Monday, then up to ½ cup by Sunday".
QString amountsLine(const PageContext& context, const QList<quantity::Volume>& amounts) {
    const auto isSome = [](quantity::Volume volume) {
        return volume > quantity::Volume();
    };
    const auto first = std::ranges::find_if(amounts, isSome);
    if (first == amounts.end())
        return Words::tr("nothing this week.");
    const bool same =
        std::ranges::all_of(amounts, [&](quantity::Volume volume) { return volume == *first; });
    if (same)
        return Words::tr("%1 each day.").arg(context.print(*first));
    const QString from = dayName(context, first - amounts.begin());
    if (std::ranges::all_of(first, amounts.end(),
                            [&](quantity::Volume volume) { return volume == *first; }))
        return Words::tr("%1 each day from %2 on.").arg(context.print(*first), from);
    return Words::tr("%1 on %2. When all goes well, %3 by %4.")
        .arg(context.print(*first), from, context.print(amounts.last()),
             dayName(context, amounts.size() - 1));
}

/// The pots of this week that are not for this member.
QStringList potsNotFor(const PageContext& context, const casebook::Standing& standing) {
    QStringList names;
    for (const kitchen::Pot* pot : context.pots()) {
        const kitchen::WhoMay verdict = context.casebook().whoMay(standing, *pot);
        if (!verdict.may)
            names.append(verdict.why.isEmpty()
                             ? pot->name
                             : Words::tr("%1 (%2)").arg(isolated(pot->name), verdict.why));
    }
    return names;
}

QString lineFor(const PageContext& context, const casebook::Standing& standing) {
    const QString name = context.called(standing);
    if (isTooYoung(standing))
        return Words::tr("Not for %1, who is under 6 months. Ask the doctor or nurse who looks "
                         "after the baby.")
            .arg(name);
    if (isStopped(standing))
        return Words::tr("%1: no stock for now. Wait until we have talked.").arg(name);
    if (!standing.ladder)
        return Words::tr("%1: no amount is set yet.").arg(name);
    QString line =
        Words::tr("%1: %2").arg(name, amountsLine(context, context.amounts(standing.member.id)));
    const QStringList barred = potsNotFor(context, standing);
    if (!barred.isEmpty())
        line +=
            QLatin1Char(' ') + Words::tr("Not from: %1.").arg(barred.join(QStringLiteral("; ")));
    return line;
}
} // namespace

Card coverCard(const PageContext& context) {
    Card card;
    card.kind = Card::Kind::Cover;
    card.startsPage = true;
    const Letterhead head = letterheadOf(context);
    if (!head.practice.isEmpty() || !head.practitioner.isEmpty() || !head.logo.isEmpty())
        card.blocks.append(head);
    const QString family = context.familyCalled();
    card.title = family.isEmpty() ? Words::tr("Your week with stock") : family;
    card.blocks.append(
        Paragraph{Words::tr("Week of %1 to %2")
                      .arg(PageContext::weekday(context.options().week),
                           dayInWords(context.options().week.addDays(week::daysAWeek - 1)))});
    card.blocks.append(Heading{Words::tr("Who drinks what")});
    Lines lines;
    for (const casebook::Standing& standing : context.casebook().standings())
        lines.items.append(lineFor(context, standing));
    if (!lines.items.isEmpty())
        card.blocks.append(lines);
    card.blocks.append(Heading{Words::tr("Whom to call")});
    card.blocks.append(context.whomToCall());
    return card;
}

} // namespace ladlework::handout
