#pragma once

#include "foundation/age_band.h"
#include "foundation/finding.h"
#include "kitchen/catalogue.h"
#include "kitchen/phase_rules.h"
#include "kitchen/pot.h"
#include "kitchen/range.h"
#include "quantity/temperature.h"

#include <QStringList>
#include <optional>

namespace ladlework::kitchen {

/// Someone who may drink the pot.
struct Drinker {
    QString name;
    QStringList mayNot;                  ///< catalogue ids: animals, cuts, ingredients
    QStringList allergicTo;              ///< those of mayNot that are a recorded allergy
    std::optional<double> sodiumLimitMg; ///< a day
    std::optional<AgeBand> band;
    quantity::Volume perDay;
    bool boneBroth = true; ///< bone broth has its place in the drinker's phase
    QString phase;         ///< name of that phase; empty when none is set
};

/// Everything a pot is reckoned from.
struct BrewInput {
    Pot pot; ///< cuts, water, salt, extras, simmer
    Vessel vessel;
    /// What measured batches say of this vessel's evaporation, as a factor on the physical estimate
    /// in place of its own factor and of the spread of correlation and lid (see calibration.h).
    std::optional<Range> learntEvaporation;
    PhaseRules phase;
    quantity::Length altitude;
    quantity::Temperature room = quantity::Temperature::fromCelsius(21);
    std::vector<Drinker> drinkers;
    std::optional<quantity::Mass> meatPerDay; ///< cooked meat the table eats a day
    QHash<QString, double> prices;            ///< per kilogram, by cut or extra id
};

/// When something goes in, in minutes from the start; the pot ends at the simmer time.
struct Addition {
    enum class What { Cut, Water, Salt, Extra };
    What what = What::Cut;
    QString id; ///< catalogue id; empty for water and salt
    QString name;
    quantity::Duration at;
    bool strained = true; ///< strained out at the end (else left in)
    bool heatOff = false; ///< goes in at the end with the heat off
};

enum class Set { Pours, Soft, Firm };

struct WhoMay {
    QString name;
    bool may = true;
    QString why;          ///< the reason when not; otherwise a remark or empty
    bool allergy = false; ///< a recorded allergy is the reason, or one of them
};

/// What comes out of the pot. All of it is an estimate with its range, from resources/reference.
struct Brewed {
    Range waterRatioMlPerKg;
    quantity::Temperature boiling;
    quantity::Temperature simmering;
    Range evaporatedMl;
    Range heldBySolidsMl;
    Range cookOutMl;
    Range stockMl;
    Range meatLeftG;
    std::optional<Range> meatDays; ///< when meatPerDay is known
    Range fatG;
    Range proteinGPer100Ml;
    Range gelatinGPer100Ml;
    Set set = Set::Pours;
    Range sodiumMgPer100Ml;
    Range potassiumMgPer100Ml;
    QList<Addition> additions; ///< in order of time
    quantity::Volume fill;     ///< what stands in the vessel at the start, bones and all
    quantity::Volume capacity;
    quantity::Volume wateredLeast; ///< least and most water for these bones
    quantity::Volume wateredMost;
    quantity::Volume covered;     ///< water that just covers the bones as they pack
    quantity::Volume bonesVolume; ///< of the solids themselves
    std::optional<double> cost;
    std::optional<Range> coverDays; ///< when drinkers with an amount are known
    QList<WhoMay> who;
    QStringList animals; ///< ids of the animals in the pot
    bool lowMeat = false;
    /// The best estimate boils away all but the least liquid: what is said per 100 mL is then only
    /// what a liquid can hold at most.
    bool boilsDry = false;
    double wouldEvaporateMl = 0; ///< in the whole simmer, had the pot water enough
    Findings findings;
};

/// Reckons a pot that passes check(). Pure; the same input gives the same output. Never fails:
/// what is unwise or does not fit is a finding.
Brewed brew(const BrewInput& input, const Catalogue& catalogue);

/// The same pot with its meaty cuts replaced by low-meat cuts of the same animals (same mass);
/// nothing when it is low-meat already or an animal has none.
std::optional<Pot> lowMeatVariant(const Pot& pot, const Catalogue& catalogue);

/// May this drinker have this pot? Animals, cuts, ingredients, band and the phase's word on bone
/// broth are judged here and nowhere else.
WhoMay whoMay(const Drinker& drinker, const Pot& pot, const Catalogue& catalogue);

/// What a US cup holds of something given per 100 mL.
Range perCup(const Range& per100Ml);

QString setId(Set set); ///< "pours", "soft", "firm"

} // namespace ladlework::kitchen
