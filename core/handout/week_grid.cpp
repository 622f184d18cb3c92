#include "handout/cards.h"
#include "quantity/measure_units.h"
#include "week/week_findings.h"
#include "week/week_solver.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>
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
            wordsLocale().toString(context.options().week.addDays(day), Words::tr("ddd d")));
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

/// What the short words for spoons stand for, where they are used: to take one for the other is to
/// drink three times too much.
void addSpoons(Card& card, const Table& table) {
    using quantity::Unit;
    for (const QList<Cell>& row : table.rows)
        for (const Cell& cell : row)
            for (const Unit spoon : {Unit::Teaspoon, Unit::Tablespoon})
                for (const int count : {1, 2})
                    if (cell.tickBox && cell.text.endsWith(quantity::unitWord(spoon, count))) {
                        card.blocks.append(Paragraph{
                            Words::tr("tsp is a teaspoon, the small spoon. tbsp is a tablespoon, "
                                      "the large one."),
                            true});
                        return;
                    }
}

/// "Tuesday: 2 cups of Chicken legs, jar 1, to drink on the two days after."
QStringList thawLines(const PageContext& context, const casebook::WeekAhead& ahead,
                      const week::WeekSolution& solution) {
    QStringList lines;
    for (const week::StockMove& move : solution.thawing) {
        const QDate day = ahead.start.addDays(move.day);
        lines.append(Words::tr("%1: %2 of %3, to drink on the two days after.")
                         .arg(PageContext::weekday(day), context.print(move.volume),
                              week::sourceName(ahead.problem, solution, move.from, ahead.start)));
    }
    return lines;
}

/// What the family should know of how the week goes, with the names of this handout.
void addOutlook(Card& card, const PageContext& context) {
    casebook::WeekAhead ahead = context.casebook().weekAhead(context.plan());
    if (ahead.problem.settled.empty() && ahead.problem.lots.empty())
        return;
    for (std::size_t drinker = 0; drinker < ahead.members.size(); ++drinker)
        ahead.problem.drinkers[drinker].name = context.called(ahead.members[drinker]);
    const week::WeekSolution solution = week::serveSettled(ahead.problem);
    for (const Finding& finding :
         week::weekFindings(ahead.problem, solution, ahead.start, context.measures()))
        card.blocks.append(Warning{Words::tr("Caution"), finding.text});
    const QStringList thaws = thawLines(context, ahead, solution);
    if (!thaws.isEmpty()) {
        card.blocks.append(Heading{Words::tr("Move from the freezer to the refrigerator")});
        card.blocks.append(Lines{Lines::Sign::TickBox, thaws});
    }
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
    addSpoons(card, table);
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
