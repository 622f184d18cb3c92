#include "kitchen/batch.h"

#include "kitchen/keeping_figures.h"

#include <QCoreApplication>

namespace ladlework::kitchen {

namespace {
constexpr quantity::Volume mostVolume = quantity::Volume::fromLitres(100);
constexpr quantity::Duration longestSimmer = quantity::Duration::fromHours(7 * 24);

/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(Batch)
};

tl::unexpected<Problem> bad(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::BadInput, sentence, place);
}

/// Written so that a not-a-number is refused.
bool isKitchenVolume(quantity::Volume volume) {
    return volume > quantity::Volume() && volume <= mostVolume;
}

Outcome check(const AsCooked& cooked) {
    if (!isKitchenVolume(cooked.water))
        return bad(Say::tr("The water that went in must be more than zero and at most 100 L."),
                   QStringLiteral("cooked.water"));
    if (!(cooked.simmer > quantity::Duration() && cooked.simmer <= longestSimmer))
        return bad(Say::tr("The simmer must be more than zero and at most 7 days."),
                   QStringLiteral("cooked.simmer"));
    return {};
}
} // namespace

AsCooked asPlanned(const Pot& pot, const Vessel* vessel) {
    AsCooked cooked;
    if (vessel != nullptr) {
        cooked.vessel = vessel->id;
        cooked.lid = vessel->lid;
    }
    cooked.water = pot.water;
    cooked.simmer = pot.simmer;
    return cooked;
}

Outcome check(const Batch& batch, QDate today) {
    if (!batch.day.isValid())
        return bad(Say::tr("The day of the cooking is missing; enter it."), QStringLiteral("day"));
    if (batch.day > today)
        return bad(Say::tr("The day of the cooking lies in the future; enter a day up to today."),
                   QStringLiteral("day"));
    if (const Outcome cooked = check(batch.cooked); !cooked)
        return cooked;
    if (batch.yield && !isKitchenVolume(*batch.yield))
        return bad(Say::tr("The yield must be more than zero and at most 100 L."),
                   QStringLiteral("yield"));
    return {};
}

Outcome check(const Lot& lot) {
    if (!isKitchenVolume(lot.volume))
        return bad(Say::tr("The amount stored must be more than zero and at most 100 L."),
                   QStringLiteral("volume"));
    if (!lot.stored.isValid())
        return bad(Say::tr("The day of storing is missing; enter it."), QStringLiteral("stored"));
    if (!lot.useBy.isValid() || lot.useBy < lot.stored)
        return bad(Say::tr("The use-by day must not lie before the day of storing."),
                   QStringLiteral("useBy"));
    if (const int most = KeepingFigures::shipped().count(QStringLiteral("soup-fridge-most"));
        lot.place == Lot::Place::Fridge && lot.useBy > lot.stored.addDays(most))
        return bad(Say::tr("Stock in the refrigerator keeps for at most %1 days; enter an earlier "
                           "use-by day or put it into the freezer.")
                       .arg(most),
                   QStringLiteral("useBy"));
    return {};
}

QString lotPlaceId(Lot::Place place) {
    return place == Lot::Place::Fridge ? QStringLiteral("fridge") : QStringLiteral("freezer");
}

std::optional<Lot::Place> lotPlaceFromId(QStringView id) {
    if (id == QLatin1String("fridge"))
        return Lot::Place::Fridge;
    if (id == QLatin1String("freezer"))
        return Lot::Place::Freezer;
    return std::nullopt;
}

} // namespace ladlework::kitchen
