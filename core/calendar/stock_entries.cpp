#include "calendar/entries.h"
#include "calendar/planned_cookings.h"

#include <QCoreApplication>
#include <QHash>
#include <QMap>
#include <algorithm>
#include <tuple>

namespace ladlework::calendar {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Calendar)
};
using casebook::StockItem;
using kitchen::Lot;

QList<Entry> thawEntries(const EntryMaker& maker) {
    QMap<std::pair<QDate, QString>, quantity::Volume> moves;
    for (const ThawMove& move : maker.options().thaws) {
        if (maker.isAsked(move.day))
            moves[{move.day, move.what.simplified()}] += move.volume;
    }
    QList<Entry> entries;
    for (const auto& [where, volume] : moves.asKeyValueRange()) {
        const auto& [day, what] = where;
        entries.append(maker.wholeDay(
            QStringLiteral("thaw/%1/%2").arg(day.toString(Qt::ISODate), what), day,
            Words::tr("Thaw %1 of %2").arg(maker.print(volume), what),
            {Words::tr("Move it from the freezer to the refrigerator today. It is for the days "
                       "after.")}));
    }
    return entries;
}

/// The containers of one batch that are in one place and have the same last day.
QList<QList<StockItem>> stockTogether(const EntryMaker& maker) {
    QMap<std::tuple<QDate, qint64, int>, QList<StockItem>> groups;
    for (const StockItem& item : maker.casebook().stockOnHand()) {
        if (maker.isAsked(item.lot.useBy))
            groups[{item.lot.useBy, item.lot.batch.value, static_cast<int>(item.lot.place)}].append(
                item);
    }
    return groups.values();
}

/// The last day of a planned cooking goes over to its containers in the refrigerator once they are
/// stored, so that it is told once; other containers go by the first of them.
QString keyOf(const StockItem& first, QHash<BatchId, QString>& planned) {
    if (first.lot.place == Lot::Place::Fridge && planned.contains(first.lot.batch))
        return planned.take(first.lot.batch) + QStringLiteral("/last-day");
    return QStringLiteral("lot/%1").arg(first.lot.id.value);
}

Entry lastDay(const EntryMaker& maker, const QList<StockItem>& together, const QString& key) {
    const StockItem& first = together.first();
    QStringList containers;
    quantity::Volume left;
    for (const StockItem& item : together) {
        if (const QString name = item.lot.container.trimmed(); !name.isEmpty())
            containers.append(name);
        left += item.left;
    }
    const bool frozen = first.lot.place == Lot::Place::Freezer;
    QStringList details{Words::tr("%1 left.").arg(maker.print(left))};
    if (!containers.isEmpty())
        details.prepend(containers.join(QStringLiteral(", ")));
    details.append(frozen ? Words::tr("It has been in the freezer as long as it should.")
                          : Words::tr("Drink it today, or freeze what is left."));
    return maker.wholeDay(key, first.lot.useBy,
                          frozen ? Words::tr("Use up %1 from the freezer").arg(first.potName)
                                 : Words::tr("Last day for %1").arg(first.potName),
                          details);
}
} // namespace

QList<Entry> stockEntries(const EntryMaker& maker) {
    QHash<BatchId, QString> planned;
    for (const PlannedCooking& cooking : plannedCookings(maker.casebook())) {
        if (cooking.cooking.batch != nullptr)
            planned.insert(cooking.cooking.batch->id, cooking.key);
    }
    QList<Entry> entries = thawEntries(maker);
    for (const QList<StockItem>& together : stockTogether(maker))
        entries.append(lastDay(maker, together, keyOf(together.first(), planned)));
    return entries;
}

} // namespace ladlework::calendar
