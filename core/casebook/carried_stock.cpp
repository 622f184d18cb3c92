#include "casebook/carried_stock.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(CarriedStock)
};

int dayIndex(QDate start, QDate day) {
    return static_cast<int>(start.daysTo(day));
}

QString nameOf(const StockItem& item) {
    return item.lot.container.isEmpty() ? item.potName
                                        : Words::tr("%1, %2").arg(item.potName, item.lot.container);
}

QString nameOf(const kitchen::Pot& pot, QDate day) {
    return Words::tr("%1, %2").arg(pot.name, wordsLocale().dayName(day.dayOfWeek()));
}
} // namespace

QList<MemberId> CarriedStock::whoMay(const kitchen::Pot& pot) {
    if (const auto known = m_may.constFind(pot.id); known != m_may.constEnd())
        return *known;
    QList<MemberId> may;
    for (const Standing& standing : m_casebook.standings()) {
        if (m_casebook.whoMay(standing, pot).may)
            may.append(standing.member.id);
    }
    m_may.insert(pot.id, may);
    return may;
}

quantity::Volume CarriedStock::expectedStock(const kitchen::Pot& pot) {
    if (const auto known = m_expected.constFind(pot.id); known != m_expected.constEnd())
        return *known;
    quantity::Volume volume;
    // A pot with cuts that this catalogue does not know cannot be reckoned: it promises nothing.
    if (kitchen::check(pot, m_casebook.catalogue())) {
        const kitchen::Brewed brewed =
            kitchen::brew(m_casebook.brewInput(pot), m_casebook.catalogue());
        volume = quantity::Volume::fromMillilitres(std::max(0.0, brewed.stockMl.best));
    }
    m_expected.insert(pot.id, volume);
    return volume;
}

QList<week::Source> CarriedStock::lots(QDate start) {
    const int today = dayIndex(start, m_casebook.today());
    const int fridgeDays = m_casebook.records().practice.fridgeDays;
    QList<week::Source> sources;
    for (const StockItem& item : m_casebook.stockOnHand()) {
        const bool frozen = item.lot.place == kitchen::Lot::Place::Freezer;
        const QDate useBy =
            item.lot.useBy.isValid() ? item.lot.useBy : item.lot.stored.addDays(fridgeDays);
        if (!frozen && useBy < m_casebook.today())
            continue;
        week::Source source;
        source.name = nameOf(item);
        source.lot = item.lot.id;
        source.volume = item.left;
        source.place = item.lot.place;
        source.readyDay = std::max(0, frozen ? today + 1 : today);
        source.lastDay = frozen ? week::daysAWeek - 1 : dayIndex(start, useBy);
        // Nobody is served from a jar whose pot is unknown: what is in it cannot be checked.
        if (const kitchen::Pot* pot = m_casebook.pot(item.pot))
            source.may = whoMay(*pot);
        sources.append(source);
    }
    return sources;
}

bool CarriedStock::lotsStoredOf(const kitchen::Batch& batch) const {
    return std::ranges::any_of(m_casebook.records().lots,
                               [&batch](const kitchen::Lot& lot) { return lot.batch == batch.id; });
}

quantity::Volume CarriedStock::drunkFrom(const week::Placement& placement) const {
    const FamilyRecords& records = m_casebook.records();
    // Until the same pot is cooked again, what is drunk of it comes from this cooking.
    QDate end = m_casebook.today();
    for (const week::WeekPlan& plan : records.weeks) {
        for (const week::Placement& other : plan.placements) {
            if (other.pot == placement.pot && other.day > placement.day)
                end = std::min(end, other.day.addDays(-1));
        }
    }
    quantity::Volume drunk;
    for (const intake::IntakeEntry& entry : records.entries) {
        if (entry.pot == placement.pot && !entry.lot.isStored() && entry.day >= placement.day &&
            entry.day <= end)
            drunk += entry.drunk;
    }
    return drunk;
}

std::optional<week::Source> CarriedStock::sourceOf(const Cooking& cooking, QDate start) {
    const week::Placement& placement = cooking.placement;
    const kitchen::Pot* pot = m_casebook.pot(placement.pot);
    if (pot == nullptr)
        return std::nullopt;
    week::Source source;
    source.name = nameOf(*pot, placement.day);
    source.pot = pot->id;
    source.volume = cooking.batch != nullptr && cooking.batch->yield ? *cooking.batch->yield
                                                                     : expectedStock(*pot);
    source.readyDay = std::max(0, dayIndex(start, placement.day));
    source.lastDay = dayIndex(start, placement.day) + m_casebook.records().practice.fridgeDays;
    source.may = whoMay(*pot);
    return source;
}

QList<week::Source> CarriedStock::planned(const QList<week::Placement>& placements, QDate start) {
    QList<week::Source> sources;
    for (const Cooking& cooking : matchBatches(placements, m_casebook.records().batches)) {
        if (const std::optional<week::Source> source = sourceOf(cooking, start))
            sources.append(*source);
    }
    return sources;
}

QList<week::Source> CarriedStock::cookings(const QList<week::Placement>& placements, QDate start) {
    QList<week::Source> sources;
    QHash<std::pair<PotId, QDate>, quantity::Volume> drunk; // not yet taken from a cooking
    for (const Cooking& cooking : matchBatches(placements, m_casebook.records().batches)) {
        std::optional<week::Source> source = sourceOf(cooking, start);
        if (!source || source->lastDay < source->readyDay)
            continue;
        const week::Placement& placement = cooking.placement;
        if (placement.day <= m_casebook.today()) {
            if (cooking.batch != nullptr && lotsStoredOf(*cooking.batch))
                continue;
            const std::pair key(placement.pot, placement.day);
            if (!drunk.contains(key))
                drunk.insert(key, drunkFrom(placement));
            const quantity::Volume taken = std::min(drunk[key], source->volume);
            drunk[key] -= taken;
            source->volume -= taken;
        }
        sources.append(*source);
    }
    return sources;
}

QList<week::Source> CarriedStock::leftOver(const week::OutlookInput& before) {
    const week::Outlook outlook = week::outlook(before);
    QList<quantity::Volume> left;
    for (const week::Source& source : before.sources)
        left.append(source.volume);
    for (const week::Serving& serving : outlook.servings)
        left[serving.source] -= serving.volume;
    QList<week::Source> carried;
    for (qsizetype index = 0; index < left.size(); ++index) {
        week::Source source = before.sources[index];
        const bool frozen = source.place == kitchen::Lot::Place::Freezer;
        source.volume = left[index];
        source.readyDay = std::max(0, source.readyDay - before.days);
        source.lastDay = frozen ? before.days - 1 : source.lastDay - before.days;
        // Less than a drop is what the arithmetic leaves of an empty jar.
        if (source.lastDay >= 0 && source.volume > quantity::Volume::fromDrops(1))
            carried.append(source);
    }
    return carried;
}

} // namespace ladlework::casebook
