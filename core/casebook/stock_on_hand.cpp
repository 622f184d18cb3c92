#include "casebook/casebook.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(StockOnHand)
};

quantity::Volume leftOf(const kitchen::Lot& lot, const FamilyRecords& records, QDate today) {
    quantity::Volume left = lot.volume;
    for (const intake::IntakeEntry& entry : records.entries) {
        if (entry.lot == lot.id && entry.day <= today)
            left -= entry.drunk;
    }
    return std::max(left, quantity::Volume());
}
} // namespace

QList<StockItem> Casebook::stockOnHand() const {
    QList<StockItem> items;
    for (const kitchen::Lot& lot : m_records.lots) {
        if (lot.goneOn.isValid() && lot.goneOn <= m_today)
            continue;
        StockItem item;
        item.lot = lot;
        item.left = leftOf(lot, m_records, m_today);
        if (item.left <= quantity::Volume())
            continue;
        const auto batch = std::ranges::find(m_records.batches, lot.batch, &kitchen::Batch::id);
        if (batch != m_records.batches.end())
            item.pot = batch->pot;
        const kitchen::Pot* from = pot(item.pot);
        item.potName = from != nullptr ? from->name : Words::tr("stock of an unknown pot");
        item.pastUse = lot.useBy.isValid() && lot.useBy < m_today;
        items.append(item);
    }
    std::ranges::stable_sort(items, {}, [](const StockItem& item) {
        return std::pair(item.lot.useBy, item.lot.id.value);
    });
    return items;
}

} // namespace ladlework::casebook
