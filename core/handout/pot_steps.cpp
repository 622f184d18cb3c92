#include "handout/pot_steps.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

/// Columns of clock times that fit beside the words of a step.
constexpr qsizetype cookingsInATable = 3;
constexpr double stepWeight = 4.0;

/// "10:30 AM", "1:00 AM, next day", or "after 1 h 30 min" when no start is set.
QString timeOf(const PageContext& context, const week::Placement& cooking, quantity::Duration at) {
    if (!cooking.start.isValid())
        return at == quantity::Duration() ? Words::tr("start")
                                          : Words::tr("after %1").arg(quantity::printDuration(at));
    const QTimeZone& zone = context.casebook().records().family.zone;
    const QDateTime moment = casebook::momentOfStep(cooking, at, zone).toTimeZone(zone);
    const QTime time = moment.time();
    const qint64 daysLater = cooking.day.daysTo(moment.date());
    if (daysLater == 0)
        return context.print(time);
    return Words::tr("%1, %2").arg(
        context.print(time),
        daysLater == 1 ? Words::tr("next day")
                       : wordsLocale().dayName(cooking.day.addDays(daysLater).dayOfWeek()));
}

/// "2", "2½": pieces to the nearest half, and never none.
QString pieceCount(double pieces) {
    const double halves = std::max(1.0, std::round(pieces * 2));
    const int whole = static_cast<int>(std::floor(halves / 2));
    const QString half = std::fmod(halves, 2) > 0 ? QString(QChar(0x00bd)) : QString();
    return whole == 0 ? half : QString::number(whole) + half;
}

QString saltLine(const PageContext& context, quantity::Mass salt) {
    const kitchen::Extra* table =
        context.casebook().catalogue().extra(QStringLiteral("table-salt"));
    if (table == nullptr || table->piece <= quantity::Mass())
        return Words::tr("salt: %1").arg(context.print(salt));
    const auto spoons = quantity::Volume::fromTeaspoons(salt / table->piece);
    return Words::tr("salt: %1 (%2 of fine table salt; weigh coarse salt)")
        .arg(context.print(salt), context.print(spoons));
}
} // namespace

QList<Table> stepTables(const PageContext& context, const kitchen::Pot& pot,
                        const kitchen::Brewed& brewed) {
    const QList<casebook::CookingStep> steps =
        casebook::cookingSteps(pot, brewed, context.measures());
    const QList<week::Placement> cookings = context.cookingsOf(pot.id);
    QList<Table> tables;
    for (qsizetype first = 0; first < cookings.size(); first += cookingsInATable) {
        const QList<week::Placement> part = cookings.mid(first, cookingsInATable);
        Table table;
        table.header.append(Words::tr("Step"));
        table.weights.append(stepWeight);
        for (const week::Placement& cooking : part) {
            table.header.append(wordsLocale().dayName(cooking.day.dayOfWeek()));
            table.weights.append(1.0);
        }
        for (const casebook::CookingStep& step : steps) {
            QList<Cell> row{{step.text, false, true}};
            for (const week::Placement& cooking : part)
                row.append(Cell{timeOf(context, cooking, step.at), true, false});
            table.rows.append(row);
        }
        tables.append(table);
    }
    return tables;
}

QStringList ingredientLines(const PageContext& context, const kitchen::Pot& pot) {
    const kitchen::Catalogue& catalogue = context.casebook().catalogue();
    QStringList lines;
    for (const kitchen::CutInPot& inPot : pot.cuts) {
        const kitchen::Cut* cut = catalogue.cut(inPot.cut);
        lines.append(Words::tr("%1: %2").arg(cut != nullptr ? cut->name : inPot.cut,
                                             context.print(inPot.mass)));
    }
    lines.append(Words::tr("water: %1").arg(context.print(pot.water)));
    if (pot.salt > quantity::Mass())
        lines.append(saltLine(context, pot.salt));
    for (const kitchen::ExtraInPot& inPot : pot.extras) {
        const kitchen::Extra* extra = catalogue.extra(inPot.item);
        if (extra != nullptr && extra->piece > quantity::Mass() && !extra->pieceName.isEmpty())
            lines.append(Words::tr("%1: %2 x %3 (%4)")
                             .arg(extra->name, pieceCount(inPot.mass / extra->piece),
                                  extra->pieceName, context.print(inPot.mass)));
        else
            lines.append(Words::tr("%1: %2").arg(extra != nullptr ? extra->name : inPot.item,
                                                 context.print(inPot.mass)));
    }
    return lines;
}

} // namespace ladlework::handout
