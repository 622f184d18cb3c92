#include "kitchen/pot.h"

#include "foundation/name.h"
#include "kitchen/catalogue.h"
#include "kitchen/id_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <numbers>
#include <utility>

namespace ladlework::kitchen {

namespace {
constexpr std::array lidWords{std::pair{Vessel::Lid::Open, "open"},
                              std::pair{Vessel::Lid::Ajar, "ajar"},
                              std::pair{Vessel::Lid::On, "on"}};
constexpr std::array placeWords{std::pair{Vessel::Place::Stovetop, "stovetop"},
                                std::pair{Vessel::Place::Oven, "oven"},
                                std::pair{Vessel::Place::SlowCooker, "slow-cooker"},
                                std::pair{Vessel::Place::PressureCooker, "pressure-cooker"}};

// Bounds against slips of the pen, not against large kitchens.
constexpr quantity::Length narrowest = quantity::Length::fromCentimetres(5);
constexpr quantity::Length lowest = quantity::Length::fromCentimetres(4);
constexpr quantity::Length largest = quantity::Length::fromCentimetres(80);
constexpr double leastFactor = 0.1;
constexpr double mostFactor = 5.0;
constexpr quantity::Mass mostOfACut = quantity::Mass::fromKilograms(50);
constexpr quantity::Mass mostOfAnExtra = quantity::Mass::fromKilograms(20);
constexpr quantity::Mass mostSalt = quantity::Mass::fromKilograms(2);
constexpr quantity::Volume mostWater = quantity::Volume::fromLitres(100);
constexpr quantity::Duration longestSimmer = quantity::Duration::fromHours(7 * 24);

/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(Pot)
};

tl::unexpected<Problem> bad(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::BadInput, sentence, place);
}

/// Written so that a not-a-number is outside.
template <class Quantity>
bool within(Quantity value, Quantity least, Quantity most) {
    return value >= least && value <= most;
}

template <class Quantity>
bool positiveUpTo(Quantity value, Quantity most) {
    return value > Quantity() && value <= most;
}

QString placeInList(const char* list, qsizetype index, const char* field) {
    return QStringLiteral("%1[%2].%3")
        .arg(QLatin1String(list))
        .arg(index)
        .arg(QLatin1String(field));
}

Outcome checkCuts(const Pot& pot, const Catalogue& catalogue) {
    if (pot.cuts.isEmpty())
        return bad(Say::tr("The pot has no bones; add at least one cut."), QStringLiteral("cuts"));
    for (qsizetype index = 0; index < pot.cuts.size(); ++index) {
        const CutInPot& cut = pot.cuts.at(index);
        if (catalogue.cut(cut.cut) == nullptr)
            return bad(
                Say::tr("The catalogue has no cut \"%1\"; choose one that it has.").arg(cut.cut),
                placeInList("cuts", index, "cut"));
        if (!positiveUpTo(cut.mass, mostOfACut))
            return bad(Say::tr("The mass of a cut must be more than zero and at most 50 kg."),
                       placeInList("cuts", index, "mass"));
    }
    return {};
}

Outcome checkExtras(const Pot& pot, const Catalogue& catalogue) {
    for (qsizetype index = 0; index < pot.extras.size(); ++index) {
        const ExtraInPot& extra = pot.extras.at(index);
        if (catalogue.extra(extra.item) == nullptr)
            return bad(Say::tr("The catalogue has no ingredient \"%1\"; choose one that it has.")
                           .arg(extra.item),
                       placeInList("extras", index, "item"));
        if (!positiveUpTo(extra.mass, mostOfAnExtra))
            return bad(
                Say::tr("The mass of an ingredient must be more than zero and at most 20 kg."),
                placeInList("extras", index, "mass"));
    }
    return {};
}
} // namespace

quantity::Volume Vessel::capacity() const {
    const double radius = diameter.toCentimetres() / 2.0;
    return quantity::Volume::fromMillilitres(std::numbers::pi * radius * radius *
                                             height.toCentimetres());
}

Outcome check(const Vessel& vessel) {
    const Result<Name> name = Name::from(vessel.name, Say::tr("vessel"));
    if (!name)
        return problem(Problem::Kind::BadInput, name.error().sentence, QStringLiteral("name"));
    if (!within(vessel.diameter, narrowest, largest))
        return bad(Say::tr("The inside width of a vessel must be 5 to 80 cm."),
                   QStringLiteral("diameter"));
    if (!within(vessel.height, lowest, largest))
        return bad(Say::tr("The inside height of a vessel must be 4 to 80 cm."),
                   QStringLiteral("height"));
    if (!within(vessel.evaporationFactor, leastFactor, mostFactor))
        return bad(Say::tr("The evaporation factor of a vessel must be 0.1 to 5."),
                   QStringLiteral("evaporationFactor"));
    return {};
}

Outcome check(const Pot& pot, const Catalogue& catalogue) {
    const Result<Name> name = Name::from(pot.name, Say::tr("pot"));
    if (!name)
        return problem(Problem::Kind::BadInput, name.error().sentence, QStringLiteral("name"));
    if (const Outcome cuts = checkCuts(pot, catalogue); !cuts)
        return cuts;
    const double leastWater = catalogue.figure(QStringLiteral("pot-water-least")).value;
    if (!within(pot.water, quantity::Volume::fromMillilitres(leastWater), mostWater))
        return bad(Say::tr("The water must be at least %1 mL and at most 100 L.").arg(leastWater),
                   QStringLiteral("water"));
    if (!within(pot.salt, quantity::Mass(), mostSalt))
        return bad(Say::tr("The salt must be from zero to 2 kg."), QStringLiteral("salt"));
    if (!positiveUpTo(pot.simmer, longestSimmer))
        return bad(Say::tr("The simmer must be more than zero and at most 7 days."),
                   QStringLiteral("simmer"));
    if (const Outcome extras = checkExtras(pot, catalogue); !extras)
        return extras;
    return checkSalt(pot, catalogue);
}

Outcome checkSalt(const Pot& pot, const Catalogue& catalogue) {
    quantity::Mass salt = pot.salt;
    for (const ExtraInPot& inPot : pot.extras)
        if (const Extra* extra = catalogue.extra(inPot.item);
            extra != nullptr && extra->kind == Extra::Kind::Salt)
            salt += inPot.mass;
    const double waterGrams =
        pot.water.toMillilitres() * catalogue.figure(QStringLiteral("water-density")).value;
    const double most =
        waterGrams / 100.0 * catalogue.figure(QStringLiteral("salt-saturation")).value;
    if (salt.toGrams() <= most)
        return {};
    return bad(Say::tr("That much salt does not even dissolve in the water, which takes up %1 g at "
                       "most; check the amount.")
                   .arg(QLocale().toString(most, 'f', 0)),
               QStringLiteral("salt"));
}

bool isSalted(const Pot& pot, const Catalogue& catalogue) {
    return pot.salt > quantity::Mass() ||
           std::ranges::any_of(pot.extras, [&catalogue](const ExtraInPot& inPot) {
               const Extra* extra = catalogue.extra(inPot.item);
               return extra != nullptr && extra->kind == Extra::Kind::Salt;
           });
}

QString lidId(Vessel::Lid lid) {
    return wordOf(lidWords, lid);
}

std::optional<Vessel::Lid> lidFromId(QStringView id) {
    return valueOf<Vessel::Lid>(lidWords, id);
}

QString placeId(Vessel::Place place) {
    return wordOf(placeWords, place);
}

std::optional<Vessel::Place> placeFromId(QStringView id) {
    return valueOf<Vessel::Place>(placeWords, id);
}

} // namespace ladlework::kitchen
