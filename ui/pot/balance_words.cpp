#include "ui/pot/balance_words.h"

#include <QCoreApplication>

namespace ladlework::ui {

using quantity::Volume;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(BalanceWords)
};
} // namespace

QString setWords(const kitchen::Brewed& brewed) {
    if (brewed.boilsDry)
        return Words::tr("none");
    switch (brewed.set) {
    case kitchen::Set::Pours:
        return Words::tr("pours");
    case kitchen::Set::Soft:
        return Words::tr("soft set");
    case kitchen::Set::Firm:
        return Words::tr("firm set");
    }
    return {};
}

std::optional<double> costACup(const kitchen::Brewed& brewed) {
    const double cups = Volume::fromMillilitres(brewed.stockMl.best).toCups();
    if (!brewed.cost || brewed.boilsDry || !(cups > 0))
        return std::nullopt;
    return *brewed.cost / cups;
}

QStringList withoutPrice(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue,
                         const Prices& prices) {
    QStringList names;
    const auto add = [&](const QString& id) {
        if (!prices.perKilogram.contains(id))
            names.append(catalogue.nameOf(id));
    };
    for (const kitchen::CutInPot& cut : pot.cuts)
        add(cut.cut);
    for (const kitchen::ExtraInPot& extra : pot.extras)
        add(extra.item);
    names.removeDuplicates();
    return names;
}

} // namespace ladlework::ui
