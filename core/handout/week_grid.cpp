#include "handout/cards.h"
#include "week/week_outlook.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

/// The column of the names is wider than that of a day.
constexpr double nameWeight = 1.6;

QList<Cell> stoveRow(const PageContext& context) {
    QList<Cell> row{{Words::tr("On the stove"), true, false}};
    for (int day = 0; day < week::daysAWeek; ++day) {
        const QDate date = context.options().week.addDays(day);
        QStringList pots;
        for (const kitchen::Pot* pot : context.pots()) {
            for (const week::Placement& cooking : context.cookingsOf(pot->id)) {
                if (cooking.day != date)
                    continue;
                pots.append(
                    cooking.start.isValid()
                        ? Words::tr("%1, %2").arg(isolated(pot->name), context.print(cooking.start))
                        : pot->name);
            }
        }
        row.append(Cell{pots.join(QLatin1Char('\n')), false, false});
    }
    return row;
}

QList<Cell> memberRow(const PageContext& context, const casebook::Standing& standing) {
    QList<Cell> row{{context.called(standing), true, false}};
    for (const quantity::Volume amount : context.amounts(standing.member.id)) {
        const bool some = amount > quantity::Volume();
        row.append(Cell{some ? context.print(amount) : QStringLiteral("-"), false, some});
    }
    return row;
}

Table grid(const PageContext& context) {
    Table table;
    table.header.append(QString());
    table.weights.append(nameWeight);
    for (int day = 0; day < week::daysAWeek; ++day) {
        table.header.append(
            QLocale().toString(context.options().week.addDays(day), QStringLiteral("ddd d")));
        table.weights.append(1.0);
    }
    if (!context.pots().isEmpty())
        table.rows.append(stoveRow(context));
    for (const casebook::Standing& standing : context.casebook().standings()) {
        if (standing.ladder && !isTooYoung(standing))
            table.rows.append(memberRow(context, standing));
    }
    return table;
}

/// What the family should know of how the week goes, with the names of this handout.
void addOutlook(Card& card, const PageContext& context) {
    week::OutlookInput input = context.casebook().outlookInput(context.plan());
    if (input.sources.isEmpty())
        return;
    for (week::Demand& demand : input.demands)
        demand.name = context.called(demand.member);
    for (const Finding& finding : week::outlook(input).findings)
        card.blocks.append(Warning{Words::tr("Caution"), finding.text});
}
} // namespace

Card weekCard(const PageContext& context) {
    Card card;
    card.kind = Card::Kind::Week;
    card.title = Words::tr("The week at a glance");
    if (context.pots().isEmpty())
        card.blocks.append(Paragraph{Words::tr("No pots are planned for this week.")});
    const Table table = grid(context);
    if (!table.rows.isEmpty())
        card.blocks.append(table);
    card.blocks.append(Paragraph{
        Words::tr("The amounts hold when each day is a good day. If not, the page of each person "
                  "says what to do. Drink the oldest stock first.")});
    const QStringList retries = retryLines(context);
    if (!retries.isEmpty()) {
        card.blocks.append(Heading{Words::tr("New tries this week")});
        card.blocks.append(Lines{Lines::Sign::TickBox, retries});
    }
    addOutlook(card, context);
    return card;
}

} // namespace ladlework::handout
