#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "kitchen/cooling_way.h"
#include "quantity/duration.h"
#include "quantity/length.h"
#include "quantity/mass.h"
#include "quantity/volume.h"

#include <QList>
#include <QString>
#include <optional>

namespace ladlework::kitchen {

class Catalogue;

/// A cooking vessel of a family.
struct Vessel {
    enum class Lid { Open, Ajar, On };
    enum class Place { Stovetop, Oven, SlowCooker, PressureCooker };

    VesselId id;
    FamilyId family;
    QString name;              ///< "the big enamel pot"
    quantity::Length diameter; ///< inside
    quantity::Length height;   ///< inside
    Lid lid = Lid::Ajar;       ///< how it is usually used
    Place place = Place::Stovetop;
    double evaporationFactor = 1.0; ///< learnt for this vessel; 0.1 to 5

    /// Brim-full volume of the cylinder.
    [[nodiscard]] quantity::Volume capacity() const;
};

/// Name non-blank; diameter 5-80 cm, height 4-80 cm; factor 0.1-5.
Outcome check(const Vessel& vessel);

struct CutInPot {
    QString cut;         ///< catalogue id
    quantity::Mass mass; ///< as bought
    bool raw = true;     ///< false: already cooked, which is not meat stock
    friend bool operator==(const CutInPot&, const CutInPot&) = default;
};

struct ExtraInPot {
    QString item;        ///< catalogue id
    quantity::Mass mass; ///< prepared, edible part
    friend bool operator==(const ExtraInPot&, const ExtraInPot&) = default;
};

/// A recipe for one cooking.
struct Pot {
    enum class Brew { MeatStock, BoneBroth };

    PotId id;
    FamilyId family; ///< not stored (0): one of the practice's own pots
    QString name;
    Brew brew = Brew::MeatStock;
    VesselId vessel; ///< 0: not chosen yet
    quantity::Volume water;
    quantity::Mass salt; ///< table or mineral salt, weighed
    quantity::Duration simmer;
    QList<CutInPot> cuts;
    QList<ExtraInPot> extras;
    ContainerId coolIn; ///< 0: not chosen, the usual one
    CoolingWay coolingWay = CoolingWay::Refrigerator;
    QString note;
};

/// What makes a pot impossible to keep (as opposed to unwise, which is a finding): a blank name, no
/// bones at all, an unknown cut or extra (named), a mass or volume that is not positive or absurd
/// (cut over 50 kg, water under 100 mL or over 100 L, salt over 2 kg or more than dissolves, an
/// extra over 20 kg), simmer over 7 days. `place` names the field: "cuts[1].mass".
Outcome check(const Pot& pot, const Catalogue& catalogue);

/// Only whether all salt, of `salt` and among the extras, dissolves in the water at room
/// temperature (resources/reference/figures.csv, salt-saturation). BadInput at "salt" when not.
Outcome checkSalt(const Pot& pot, const Catalogue& catalogue);

/// Whether salt goes in, by `salt` or among the extras.
bool isSalted(const Pot& pot, const Catalogue& catalogue);

QString lidId(Vessel::Lid lid); ///< "open", "ajar", "on"
std::optional<Vessel::Lid> lidFromId(QStringView id);
QString placeId(Vessel::Place place); ///< "stovetop", "oven", "slow-cooker", "pressure-cooker"
std::optional<Vessel::Place> placeFromId(QStringView id);

} // namespace ladlework::kitchen
