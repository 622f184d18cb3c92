#include "foundation/language_scope.h"
#include "handout/cards.h"

#include <QCoreApplication>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

/// The columns of the sheet as the import of a log names them, in the order of the sheet.
QString importedColumns() {
    return QStringLiteral("day, member, asked, amount, reaction, strength, note");
}

Table sheet(const PageContext& context) {
    Table table;
    table.header = {Words::tr("Day"),    Words::tr("Member"),   Words::tr("Asked"),
                    Words::tr("Amount"), Words::tr("Reaction"), Words::tr("Strength"),
                    Words::tr("Note")};
    table.weights = {1.0, 1.0, 1.0, 1.1, 2.2, 0.9, 1.8};
    for (int day = 0; day < week::daysAWeek; ++day) {
        const QString date =
            wordsLocale().toString(context.options().week.addDays(day), Words::tr("ddd d"));
        int members = 0;
        for (const casebook::Standing& standing : context.casebook().standings()) {
            if (!standing.ladder || isTooYoung(standing))
                continue;
            const quantity::Volume asked = context.amounts(standing.member.id).value(day);
            table.rows.append(QList<Cell>{
                {date, members == 0, false},
                {context.called(standing), true, false},
                {asked > quantity::Volume() ? context.print(asked) : QStringLiteral("-"), false,
                 false},
                {},
                {},
                {},
                {}});
            ++members;
        }
        table.rowsTogether = members;
    }
    return table;
}
} // namespace

Card logSheetCard(const PageContext& context) {
    Card card;
    card.kind = Card::Kind::LogSheet;
    card.title = Words::tr("Log of the week");
    card.startsPage = true;
    const Table table = sheet(context);
    if (table.rows.isEmpty()) {
        card.blocks.append(Paragraph{Words::tr("Nobody has an amount to drink yet.")});
        return card;
    }
    card.blocks.append(Paragraph{Words::tr(
        "Fill in a line for each person each night. Write how much was drunk, or 0. Write "
        "what was felt and how strong it was: 0 is nothing, 10 is the worst there is.")});
    card.blocks.append(table);
    card.blocks.append(Paragraph{
        Words::tr(
            "To type this sheet in as a table: its first line is \"%1\". Write each day as %2.")
            .arg(importedColumns(), context.options().week.toString(Qt::ISODate)),
        true});
    return card;
}

} // namespace ladlework::handout
