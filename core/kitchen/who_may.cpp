#include "kitchen/brew.h"

#include <QCoreApplication>

namespace ladlework::kitchen {

namespace {
/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(WhoMay)
};

QString subjectName(const QString& id, const Catalogue& catalogue) {
    if (const Animal* animal = catalogue.animal(id))
        return animal->name;
    if (const Cut* cut = catalogue.cut(id))
        return cut->name;
    if (const Extra* extra = catalogue.extra(id))
        return extra->name;
    return id;
}

/// What of the pot a subject covers: names, in the pot's order.
QStringList coveredIn(const Pot& pot, const QString& subject, const Catalogue& catalogue) {
    QStringList names;
    for (const CutInPot& cut : pot.cuts)
        if (catalogue.covers(subject, cut.cut))
            names.append(subjectName(cut.cut, catalogue));
    for (const ExtraInPot& extra : pot.extras)
        if (catalogue.covers(subject, extra.item))
            names.append(subjectName(extra.item, catalogue));
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
    for (const QString& subject : drinker.mayNot) {
        const QStringList covered = coveredIn(pot, subject, catalogue);
        if (covered.isEmpty())
            continue;
        const QString name = subjectName(subject, catalogue);
        reasons.append(covered == QStringList{name}
                           ? Say::tr("no %1").arg(name)
                           : Say::tr("no %1: %2").arg(name, covered.join(QStringLiteral(", "))));
    }
    if (!reasons.isEmpty())
        return {drinker.name, false, reasons.join(QStringLiteral("; "))};
    if (drinker.band == AgeBand::InfantStartingSolids && pot.salt > quantity::Mass())
        return {drinker.name, true, Say::tr("from an unsalted pot")};
    return {drinker.name, true, {}};
}

} // namespace ladlework::kitchen
