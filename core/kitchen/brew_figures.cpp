#include "kitchen/brew_figures.h"

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"

namespace ladlework::kitchen {

namespace {
class LookUp {
public:
    explicit LookUp(const Catalogue& catalogue) : m_catalogue(catalogue) {}

    [[nodiscard]] double number(const QString& id) const { return m_catalogue.figure(id).value; }
    [[nodiscard]] Range range(const QString& id) const {
        const Figure& figure = m_catalogue.figure(id);
        return {figure.low, figure.value, figure.high};
    }
    [[nodiscard]] std::array<Range, 3> byLid() const {
        std::array<Range, 3> ranges;
        for (Vessel::Lid lid : {Vessel::Lid::Open, Vessel::Lid::Ajar, Vessel::Lid::On})
            ranges.at(static_cast<size_t>(lid)) = range(QStringLiteral("lid-") + lidId(lid));
        return ranges;
    }

    [[nodiscard]] std::array<double, 3> byCookClass(const QString& what) const {
        std::array<double, 3> numbers{};
        for (CookClass one : {CookClass::Poultry, CookClass::LandAnimal, CookClass::Fish})
            numbers.at(static_cast<size_t>(one)) = number(what + cookClassId(one));
        return numbers;
    }

    [[nodiscard]] std::array<double, 4> byGrade() const {
        std::array<double, 4> numbers{};
        for (size_t grade = 0; grade < numbers.size(); ++grade)
            numbers.at(grade) = number(QStringLiteral("collagen-grade-") + QString::number(grade));
        return numbers;
    }

private:
    const Catalogue& m_catalogue;
};

EvaporationFigures evaporationOf(const LookUp& look) {
    EvaporationFigures figures;
    figures.simmerTemperature = look.range(QStringLiteral("simmer-temperature"));
    figures.roomWarmth = look.range(QStringLiteral("room-warmth"));
    figures.airHumidity = look.range(QStringLiteral("air-humidity"));
    figures.openSpread = look.range(QStringLiteral("evaporation-open-spread"));
    figures.lids = look.byLid();
    figures.oven = look.range(QStringLiteral("place-oven"));
    figures.slowCooker = look.range(QStringLiteral("place-slow-cooker"));
    figures.pressureCooker = look.range(QStringLiteral("place-pressure-cooker"));
    figures.plateLaminar = look.number(QStringLiteral("plate-laminar"));
    figures.plateTurbulent = look.number(QStringLiteral("plate-turbulent"));
    figures.plateTurbulentFrom = look.number(QStringLiteral("plate-turbulent-from"));
    figures.vapourDiffusivity = look.number(QStringLiteral("vapour-diffusivity"));
    figures.vapourDiffusivityExponent = look.number(QStringLiteral("vapour-diffusivity-exponent"));
    figures.airSutherland = look.number(QStringLiteral("air-sutherland"));
    figures.airSutherlandTemperature = look.number(QStringLiteral("air-sutherland-temperature"));
    figures.burnerNetPower = look.number(QStringLiteral("burner-net-power"));
    figures.waterLatentHeat = look.number(QStringLiteral("water-latent-heat"));
    figures.waterDensity = look.number(QStringLiteral("water-density"));
    return figures;
}

BalanceFigures balanceOf(const LookUp& look) {
    BalanceFigures figures;
    figures.cookOutSpread = look.range(QStringLiteral("cook-out-spread"));
    figures.meatYieldSpread = look.range(QStringLiteral("meat-yield-spread"));
    figures.heldBySolids = look.range(QStringLiteral("held-by-solids"));
    figures.fatReleasedSpread = look.range(QStringLiteral("fat-released-spread"));
    figures.sodiumReleased = look.range(QStringLiteral("sodium-released"));
    figures.potassiumReleased = look.range(QStringLiteral("potassium-released"));
    figures.saltUptake = look.range(QStringLiteral("salt-uptake"));
    figures.collagenSpread = look.range(QStringLiteral("collagen-spread"));
    figures.extractionSpread = look.range(QStringLiteral("extraction-spread"));
    figures.pressureCookerExtraction = look.range(QStringLiteral("pressure-cooker-extraction"));
    figures.muscleProteinReleased = look.range(QStringLiteral("muscle-protein-released"));
    figures.vegetableReleased = look.range(QStringLiteral("vegetable-released"));
    figures.fatReleased = look.byCookClass(QStringLiteral("fat-released-"));
    figures.extraction = look.byCookClass(QStringLiteral("extraction-"));
    figures.collagenGrade = look.byGrade();
    figures.extractionReferenceTemperature =
        look.number(QStringLiteral("extraction-reference-temperature"));
    figures.extractionDoubling = look.number(QStringLiteral("extraction-doubling"));
    figures.collagenLeftInCooked = look.number(QStringLiteral("collagen-left-in-cooked"));
    figures.cookOutTime = look.number(QStringLiteral("cook-out-time"));
    figures.vegetableCookOut = look.number(QStringLiteral("vegetable-cook-out"));
    figures.cookedMeatWater = look.number(QStringLiteral("cooked-meat-water"));
    figures.saltSodium = look.number(QStringLiteral("salt-sodium"));
    figures.dryPotLiquid = look.number(QStringLiteral("dry-pot-liquid"));
    figures.waterDensity = look.number(QStringLiteral("water-density"));
    figures.fatDensity = look.number(QStringLiteral("fat-density"));
    figures.proteinMost = look.number(QStringLiteral("protein-most"));
    figures.sodiumMost = look.number(QStringLiteral("sodium-most"));
    figures.potassiumMost = look.number(QStringLiteral("potassium-most"));
    return figures;
}
} // namespace

BrewFigures BrewFigures::of(const Catalogue& catalogue) {
    const LookUp look(catalogue);
    return {evaporationOf(look), balanceOf(look)};
}

} // namespace ladlework::kitchen
