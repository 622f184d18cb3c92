#include "ui/log/drink_source.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::ui {

namespace {

struct DrinkSourceWords {
    Q_DECLARE_TR_FUNCTIONS(DrinkSource)
};

} // namespace

QList<DrinkSource> drinkSources(const casebook::Casebook& book) {
    QList<DrinkSource> sources{{DrinkSourceWords::tr("not said"), {}, {}}};
    const auto measures = book.records().family.measures;
    for (const casebook::StockItem& item : book.stockOnHand())
        if (item.left > quantity::Volume{})
            sources.append({DrinkSourceWords::tr("%1 of %2, %3 left")
                                .arg(item.lot.container, item.potName,
                                     quantity::printVolume(item.left, measures)),
                            item.pot, item.lot.id});
    for (const kitchen::Pot& pot : book.records().pots)
        sources.append({pot.name, pot.id, {}});
    return sources;
}

QString sourceWords(const casebook::Casebook& book, const intake::IntakeEntry& entry) {
    const kitchen::Pot* pot = book.pot(entry.pot);
    if (entry.lot.isStored()) {
        const auto& lots = book.records().lots;
        const auto lot = std::ranges::find(lots, entry.lot, &kitchen::Lot::id);
        if (lot != lots.end() && pot)
            return DrinkSourceWords::tr("%1 of %2").arg(lot->container, pot->name);
        if (lot != lots.end())
            return lot->container;
    }
    return pot ? pot->name : QString();
}

} // namespace ladlework::ui
