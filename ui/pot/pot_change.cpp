#include "ui/pot/pot_change.h"

#include <QCoreApplication>

namespace ladlework::ui {

namespace {

using kitchen::Pot;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PotChange)
};

QString nameOf(const kitchen::CutInPot& cut, const kitchen::Catalogue& catalogue) {
    const kitchen::Cut* known = catalogue.cut(cut.cut);
    return known ? known->name : cut.cut;
}

QString nameOf(const kitchen::ExtraInPot& extra, const kitchen::Catalogue& catalogue) {
    const kitchen::Extra* known = catalogue.extra(extra.item);
    return known ? known->name : extra.item;
}

/// The sentence for a list of which one line came, went or changed; empty when it is the same.
template <class Line>
QString listChange(const QList<Line>& before, const QList<Line>& after, const QString& pot,
                   const kitchen::Catalogue& catalogue) {
    if (before == after)
        return {};
    qsizetype line = 0;
    while (line < before.size() && line < after.size() && before.at(line) == after.at(line))
        ++line;
    if (after.size() > before.size())
        return Words::tr("Added %1 to %2").arg(nameOf(after.at(line), catalogue), pot);
    if (after.size() < before.size())
        return Words::tr("Took %1 out of %2").arg(nameOf(before.at(line), catalogue), pot);
    return Words::tr("Changed %1 in %2").arg(nameOf(after.at(line), catalogue), pot);
}

} // namespace

QString potChange(const Pot& before, const Pot& after, const kitchen::Catalogue& catalogue,
                  quantity::MeasureSystem measures) {
    const QString& pot = before.name;
    if (before.name != after.name)
        return Words::tr("Renamed the pot %1 to %2").arg(before.name, after.name);
    if (before.water != after.water)
        return Words::tr("Set the water of %1 to %2")
            .arg(pot, quantity::printVolume(after.water, measures));
    if (before.simmer != after.simmer)
        return Words::tr("Set the simmer of %1 to %2")
            .arg(pot, quantity::printDuration(after.simmer));
    if (before.salt != after.salt)
        return Words::tr("Changed the salt of %1").arg(pot);
    if (before.brew != after.brew)
        return after.brew == Pot::Brew::BoneBroth ? Words::tr("Made %1 a bone broth").arg(pot)
                                                  : Words::tr("Made %1 a meat stock").arg(pot);
    if (before.vessel != after.vessel)
        return Words::tr("Chose another vessel for %1").arg(pot);
    if (before.coolIn != after.coolIn)
        return Words::tr("Chose what %1 cools in").arg(pot);
    if (before.coolingWay != after.coolingWay)
        return Words::tr("Chose to cool %1 %2").arg(pot, kitchen::coolingWayName(after.coolingWay));
    const QString cuts = listChange(before.cuts, after.cuts, pot, catalogue);
    const QString list =
        cuts.isEmpty() ? listChange(before.extras, after.extras, pot, catalogue) : cuts;
    if (!list.isEmpty())
        return list;
    if (before.note != after.note)
        return Words::tr("Changed the note on %1").arg(pot);
    return Words::tr("Changed the pot %1").arg(pot);
}

} // namespace ladlework::ui
