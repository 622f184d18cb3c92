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
    QList<DrinkSource> sources{{DrinkSourceWords::tr("not said"), {}, {}, false}};
    const auto measures = book.records().family.measures;
    for (const casebook::StockItem& item : book.stockOnHand()) {
        if (item.left <= quantity::Volume{})
            continue;
        QString name =
            DrinkSourceWords::tr("%1 of %2, %3 left")
                .arg(item.lot.container, item.potName, quantity::printVolume(item.left, measures));
        if (item.pastUse)
            name += DrinkSourceWords::tr(", past its use-by day");
        sources.append({name, item.pot, item.lot.id, item.pastUse});
    }
    for (const kitchen::Pot& pot : book.records().pots)
        sources.append({pot.name, pot.id, {}, false});
    return sources;
}

Result<DrinkSource> findSource(const casebook::Casebook& book, const QString& typed) {
    QList<DrinkSource> lots;
    QList<DrinkSource> pots;
    for (const DrinkSource& source : drinkSources(book).sliced(1))
        if (source.name.contains(typed, Qt::CaseInsensitive))
            (source.lot.isStored() ? lots : pots).append(source);
    std::ranges::stable_sort(lots, {}, &DrinkSource::pastUse);
    if (!lots.isEmpty())
        return lots.first();
    for (const DrinkSource& pot : std::as_const(pots))
        if (pot.name.compare(typed, Qt::CaseInsensitive) == 0)
            return pot;
    if (pots.size() == 1)
        return pots.first();
    if (pots.isEmpty())
        return problem(
            Problem::Kind::BadInput,
            DrinkSourceWords::tr("No container and no pot of this family is called \"%1\".")
                .arg(typed));
    return problem(Problem::Kind::BadInput,
                   DrinkSourceWords::tr("\"%1\" could be %2 or %3; type more of the name.")
                       .arg(typed, pots.at(0).name, pots.at(1).name));
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
