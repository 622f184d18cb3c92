#include "kitchen/keeping.h"

#include "kitchen/keeping_figures.h"

#include <QCoreApplication>

namespace ladlework::kitchen {

namespace {
/// The row of the chart that a cook class falls under, without its "-least" or "-most".
QString rawRow(CookClass cookClass) {
    switch (cookClass) {
    case CookClass::Poultry:
        return QStringLiteral("raw-poultry");
    case CookClass::LandAnimal:
        return QStringLiteral("raw-meat");
    case CookClass::Fish:
        break;
    }
    return QStringLiteral("raw-fish");
}
} // namespace

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

RawKeeping rawKeeping(CookClass cookClass) {
    const KeepingFigures& figures = KeepingFigures::shipped();
    const QString least = rawRow(cookClass) + QStringLiteral("-least");
    const QString most = rawRow(cookClass) + QStringLiteral("-most");
    return {figures.count(least), figures.count(most), figures.provenance(least)};
}

} // namespace ladlework::kitchen
