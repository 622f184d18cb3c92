#include "kitchen/keeping.h"

#include "kitchen/keeping_figures.h"

#include <QCoreApplication>

namespace ladlework::kitchen {

QDate useBy(Lot::Place place, QDate stored, int fridgeDays) {
    if (place == Lot::Place::Fridge)
        return stored.addDays(fridgeDays);
    return stored.addMonths(KeepingFigures::shipped().count(QStringLiteral("stock-freezer-least")));
}

QList<Lot> shareOut(const Batch& batch, int inFridge, int inFreezer, int fridgeDays) {
    const int containers = inFridge + inFreezer;
    QList<Lot> lots;
    if (containers <= 0 || !batch.yield)
        return lots;
    for (int number = 1; number <= containers; ++number) {
        Lot lot;
        lot.batch = batch.id;
        lot.container = QCoreApplication::translate("Keeping", "jar %1").arg(number);
        lot.volume = *batch.yield / containers;
        lot.place = number <= inFridge ? Lot::Place::Fridge : Lot::Place::Freezer;
        lot.stored = batch.day;
        lot.useBy = useBy(lot.place, batch.day, fridgeDays);
        lots.append(lot);
    }
    return lots;
}

} // namespace ladlework::kitchen
