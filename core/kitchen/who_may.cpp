#include "kitchen/brew.h"

#include <QCoreApplication>

namespace ladlework::kitchen {

namespace {
/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(WhoMay)
};

/// What of the pot a subject covers: names, in the pot's order.
QStringList coveredIn(const Pot& pot, const QString& subject, const Catalogue& catalogue) {
    QStringList names;
    for (const CutInPot& cut : pot.cuts)
        if (catalogue.covers(subject, cut.cut))
            names.append(catalogue.nameOf(cut.cut));
    for (const ExtraInPot& extra : pot.extras)
        if (catalogue.covers(subject, extra.item))
            names.append(catalogue.nameOf(extra.item));
    names.removeDuplicates();
    return names;
}
} // namespace

WhoMay whoMay(const Drinker& drinker, const Pot& pot, const Catalogue& catalogue) {
    if (drinker.band == AgeBand::InfantUnderSixMonths)
        return {drinker.name, false,
                Say::tr("under six months: nothing but milk; ask the clinician who treats the "
                        "child")};
    QStringList reasons;
    bool allergy = false;
    for (const QString& subject : drinker.mayNot) {
        const QStringList covered = coveredIn(pot, subject, catalogue);
        if (covered.isEmpty())
            continue;
        allergy = allergy || drinker.allergicTo.contains(subject);
        const QString name = catalogue.nameOf(subject);
        reasons.append(covered == QStringList{name}
                           ? Say::tr("no %1").arg(name)
                           : Say::tr("no %1: %2").arg(name, covered.join(QStringLiteral(", "))));
    }
    if (pot.brew == Pot::Brew::BoneBroth && !drinker.boneBroth)
        reasons.append(drinker.phase.isEmpty()
                           ? Say::tr("bone broth waits until a phase is set that allows it")
                           : Say::tr("bone broth waits for a later phase than %1")
                                 // One of the shipped phases, else the practice's own word for it.
                                 .arg(QCoreApplication::translate(
                                     "Phase", drinker.phase.toUtf8().constData())));
    if (!reasons.isEmpty())
        return {drinker.name, false, reasons.join(QStringLiteral("; ")), allergy};
    if (drinker.band == AgeBand::InfantStartingSolids && isSalted(pot, catalogue))
        return {drinker.name, true, Say::tr("from an unsalted pot")};
    return {drinker.name, true, {}};
}

} // namespace ladlework::kitchen
