#include "foundation/language_scope.h"
#include "handout/cards.h"
#include "kitchen/keeping.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};
using kitchen::Lot;

/// A pot never fills more jars than any stove holds: what goes wrong in an estimate must not print
/// a stack of labels.
constexpr double mostJarsACooking = 60;

/// "Mon 2 Nov 2026": short, and with the year, for what stands in a freezer.
QString shortDay(QDate day) {
    return wordsLocale().toString(day, Words::tr("ddd d MMM yyyy"));
}

QString fridgeLine(QDate last) {
    return Words::tr("Fridge: use by %1").arg(shortDay(last));
}

QString freezerLine(QDate last) {
    return Words::tr("Freezer: use by %1").arg(shortDay(last));
}

void addFamilyAndHeat(JarLabel& label, const PageContext& context) {
    label.lines.append(Cell{Words::tr("Heat until it boils."), false, false});
    if (!context.familyCalled().isEmpty())
        label.lines.append(Cell{context.familyCalled(), false, false});
}

/// How many jars a pot is expected to fill, at least one.
qsizetype jarsOf(const PageContext& context, const kitchen::Pot& pot) {
    quantity::Volume jar = context.options().labels.jar;
    if (jar <= quantity::Volume())
        jar = usualJar(context.measures());
    const kitchen::Brewed brewed =
        kitchen::brew(context.casebook().brewInput(pot), context.casebook().catalogue());
    // A spoon more than the jars hold fills no further jar.
    constexpr double leastShareOfAJar = 0.1;
    const double jars = brewed.stockMl.best / jar.toMillilitres();
    return static_cast<qsizetype>(
        std::clamp(std::ceil(jars - leastShareOfAJar), 1.0, mostJarsACooking));
}

/// Where it goes is ticked with a pen: the plan does not say which jars are frozen.
JarLabel plannedLabel(const PageContext& context, const kitchen::Pot& pot, QDate day) {
    const int days = context.practice().fridgeDays;
    JarLabel label;
    label.title = pot.name;
    label.lines = {{Words::tr("Cooked on %1").arg(shortDay(day)), false, false},
                   {fridgeLine(kitchen::useBy(Lot::Place::Fridge, day, days)), true, true},
                   {freezerLine(kitchen::useBy(Lot::Place::Freezer, day, days)), true, true}};
    addFamilyAndHeat(label, context);
    return label;
}

JarLabel lotLabel(const PageContext& context, const casebook::StockItem& item) {
    JarLabel label;
    label.title = item.potName.isEmpty() ? Words::tr("Stock") : item.potName;
    const auto& batches = context.casebook().records().batches;
    const auto batch = std::ranges::find(batches, item.lot.batch, &kitchen::Batch::id);
    if (batch != batches.end())
        label.lines.append(Cell{Words::tr("Cooked on %1").arg(shortDay(batch->day)), false, false});
    label.lines.append(Cell{item.lot.place == Lot::Place::Fridge ? fridgeLine(item.lot.useBy)
                                                                 : freezerLine(item.lot.useBy),
                            true, false});
    label.lines.append(
        Cell{item.lot.container.isEmpty()
                 ? context.print(item.left)
                 : Words::tr("%1, %2").arg(item.lot.container, context.print(item.left)),
             false, false});
    addFamilyAndHeat(label, context);
    return label;
}

QList<JarLabel> plannedLabels(const PageContext& context) {
    QList<week::Placement> placements = context.plan().placements;
    std::ranges::stable_sort(placements, {}, [](const week::Placement& placement) {
        return std::pair(placement.day, placement.start);
    });
    const QList<const kitchen::Pot*> pots = context.pots();
    QList<JarLabel> labels;
    for (const week::Placement& placement : placements) {
        const auto pot = std::ranges::find_if(
            pots, [&](const kitchen::Pot* known) { return known->id == placement.pot; });
        if (pot != pots.end())
            labels += QList<JarLabel>(jarsOf(context, **pot),
                                      plannedLabel(context, **pot, placement.day));
    }
    return labels;
}
} // namespace

quantity::Volume usualJar(quantity::MeasureSystem measures) {
    return measures == quantity::MeasureSystem::UsCustomary ? quantity::Volume::fromQuarts(1)
                                                            : quantity::Volume::fromLitres(1);
}

casebook::LabelStock usualLabelStock(people::Paper paper) {
    casebook::LabelStock stock;
    stock.name =
        paper == people::Paper::A4 ? Words::tr("A4, 14 labels") : Words::tr("Letter, 10 labels");
    if (paper == people::Paper::Letter)
        return stock;
    stock.pageWidthMm = 210;
    stock.pageHeightMm = 297;
    stock.columns = 2;
    stock.rows = 7;
    stock.leftMm = 4.7;
    stock.topMm = 15.15;
    stock.labelWidthMm = 99.1;
    stock.labelHeightMm = 38.1;
    stock.gapAcrossMm = 2.4;
    stock.gapDownMm = 0;
    return stock;
}

casebook::LabelStock labelStockFor(const casebook::FamilyRecords& records) {
    return records.labelStocks.isEmpty() ? usualLabelStock(records.family.paper)
                                         : records.labelStocks.first();
}

Card jarLabelsCard(const PageContext& context) {
    const JarLabelChoice& choice = context.options().labels;
    Card card;
    card.kind = Card::Kind::JarLabels;
    card.title = Words::tr("Jar labels");
    card.startsPage = true;
    LabelSheet sheet;
    sheet.stock = choice.stock.value_or(labelStockFor(context.casebook().records()));
    sheet.placesUsed = choice.placesUsed;
    if (choice.planned)
        sheet.labels += plannedLabels(context);
    if (choice.onHand)
        for (const casebook::StockItem& item : context.casebook().stockOnHand())
            if (!item.pastUse)
                sheet.labels.append(lotLabel(context, item));
    card.blocks.append(sheet);
    return card;
}

} // namespace ladlework::handout
