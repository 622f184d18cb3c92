#include "intake/exposure_days.h"

#include <QMap>
#include <QSet>

namespace ladlework::intake {

namespace {
constexpr int strongest = 10;
}

PotId potOf(const IntakeEntry& entry, const PotOfLot& potOfLot) {
    return entry.pot.isStored() ? entry.pot : potOfLot.value(entry.lot);
}

QStringList subjectsOf(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue) {
    QStringList subjects;
    for (const kitchen::CutInPot& piece : pot.cuts) {
        if (const kitchen::Cut* cut = catalogue.cut(piece.cut)) {
            subjects.append(cut->animal);
            subjects += catalogue.animal(cut->animal)->countsAs;
        }
        subjects.append(piece.cut);
    }
    for (const kitchen::ExtraInPot& inPot : pot.extras) {
        subjects.append(inPot.item);
        if (const kitchen::Extra* extra = catalogue.extra(inPot.item))
            subjects += extra->countsAs;
    }
    subjects.removeDuplicates();
    return subjects;
}

QList<PatternDay> exposureDays(const QList<IntakeEntry>& entries, const QList<Reaction>& reactions,
                               const QHash<PotId, QStringList>& subjects,
                               const PotOfLot& potOfLot) {
    QMap<QDate, PatternDay> days;
    QSet<QDate> unknown;
    for (const IntakeEntry& entry : entries) {
        if (!entry.day.isValid())
            continue;
        PatternDay& day = days[entry.day];
        if (!(entry.drunk > quantity::Volume()))
            continue;
        const QStringList taken = subjects.value(potOf(entry, potOfLot));
        if (taken.isEmpty())
            unknown.insert(entry.day);
        day.exposures += taken;
    }
    for (const Reaction& reaction : reactions) {
        if (!reaction.day.isValid())
            continue;
        PatternDay& day = days[reaction.day];
        day.worstReaction =
            std::max(day.worstReaction, reaction.redFlag ? strongest : reaction.strength);
    }
    QList<PatternDay> known;
    for (auto it = days.begin(); it != days.end(); ++it) {
        if (unknown.contains(it.key()))
            continue;
        it->day = it.key();
        it->exposures.removeDuplicates();
        known.append(*it);
    }
    return known;
}

} // namespace ladlework::intake
