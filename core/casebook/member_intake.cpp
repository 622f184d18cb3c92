#include "casebook/member_intake.h"

#include <QSet>

namespace ladlework::casebook {

namespace {

template <class Record>
QList<Record> ofMember(const QList<Record>& all, MemberId member) {
    QList<Record> own = all;
    own.removeIf([member](const Record& record) { return record.member != member; });
    return own;
}

intake::PotOfLot potsOfLots(const FamilyRecords& records) {
    QHash<BatchId, PotId> cooked;
    for (const kitchen::Batch& batch : records.batches)
        cooked.insert(batch.id, batch.pot);
    intake::PotOfLot pots;
    for (const kitchen::Lot& lot : records.lots)
        pots.insert(lot.id, cooked.value(lot.batch));
    return pots;
}

} // namespace

QList<intake::Pattern> memberPatterns(const Casebook& casebook, MemberId member,
                                      const intake::PatternRules& rules) {
    const FamilyRecords& records = casebook.records();
    QHash<PotId, QStringList> subjects;
    for (const kitchen::Pot& pot : records.pots)
        subjects.insert(pot.id, intake::subjectsOf(pot, casebook.catalogue()));
    return intake::patterns(intake::exposureDays(ofMember(records.entries, member),
                                                 ofMember(records.reactions, member), subjects,
                                                 potsOfLots(records)),
                            rules);
}

std::optional<intake::DailyTotals> memberTotals(const Casebook& casebook, MemberId member,
                                                QDate from, QDate to) {
    const FamilyRecords& records = casebook.records();
    const intake::PotOfLot potOfLot = potsOfLots(records);
    QList<intake::IntakeEntry> entries = ofMember(records.entries, member);
    entries.removeIf([from, to](const intake::IntakeEntry& entry) {
        return entry.day < from || entry.day > to;
    });
    QHash<PotId, intake::StockFigures> figures;
    for (const intake::IntakeEntry& entry : std::as_const(entries)) {
        const PotId id = intake::potOf(entry, potOfLot);
        const kitchen::Pot* pot = figures.contains(id) ? nullptr : casebook.pot(id);
        if (pot == nullptr)
            continue;
        const kitchen::Brewed brewed =
            kitchen::brew(casebook.brewInput(*pot), casebook.catalogue());
        figures.insert(id, {brewed.sodiumMgPer100Ml, brewed.proteinGPer100Ml});
    }
    return intake::dailyTotals(entries, figures, potOfLot, from, to);
}

} // namespace ladlework::casebook
