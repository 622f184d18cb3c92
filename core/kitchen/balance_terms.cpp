#include "kitchen/balance_terms.h"

#include <cmath>

namespace ladlework::kitchen {

namespace {
constexpr double perHundred = 100.0;
constexpr double milligramsPerGram = 1000.0;

class TermsMaker {
public:
    TermsMaker(const BrewInput& input, quantity::Temperature simmering, const Catalogue& catalogue)
        : m_input(input), m_catalogue(catalogue), m_figures(catalogue.brewFigures().balance),
          m_warmth(std::exp2((simmering.toCelsius() - m_figures.extractionReferenceTemperature) /
                             m_figures.extractionDoubling)) {}

    [[nodiscard]] Terms make(const Timeline& timeline) const {
        Terms terms;
        terms.waterMl = m_input.pot.water.toMillilitres();
        terms.leastLiquidMl = terms.waterMl * m_figures.dryPotLiquid;
        terms.saltSodiumMg = m_input.pot.salt.toGrams() * m_figures.saltSodium * milligramsPerGram;
        for (size_t index = 0; index < timeline.cuts.size(); ++index)
            addCut(m_input.pot.cuts.at(static_cast<qsizetype>(index)), timeline.cuts[index].inPot,
                   terms);
        for (size_t index = 0; index < timeline.extras.size(); ++index)
            addExtra(m_input.pot.extras.at(static_cast<qsizetype>(index)), timeline.extras[index],
                     terms);
        return terms;
    }

private:
    /// 0-1: how far a piece has given its juice after this time.
    [[nodiscard]] double soakedAfter(quantity::Duration time) const {
        return 1.0 - std::exp(-time.toHours() / m_figures.cookOutTime);
    }

    void addCut(const CutInPot& inPot, quantity::Duration time, Terms& terms) const {
        const Cut& cut = *m_catalogue.cut(inPot.cut);
        const auto cookClass = static_cast<size_t>(cut.cookClass);
        const double mass = inPot.mass.toGrams();
        const double meat = mass * (1.0 - cut.refuse);
        const double perHour = m_figures.extraction.at(cookClass) *
                               m_figures.collagenGrade.at(static_cast<size_t>(cut.connective)) *
                               m_warmth;
        Collagen collagen{mass * cut.collagenShare, perHour * time.toHours()};
        if (!inPot.raw) {
            // Cooked before: the juice is gone, the meat is what it is, some collagen is left.
            collagen.grams *= m_figures.collagenLeftInCooked;
            terms.collagen.push_back(collagen);
            terms.cookedMeatG += cut.bareBone ? 0.0 : meat;
            terms.cookedWholeG += mass;
            return;
        }
        terms.collagen.push_back(collagen);
        const double soaked = soakedAfter(time);
        const double drained = mass * (1.0 - cut.cookedWhole) * soaked;
        const double soakedPerHundred = meat / perHundred * soaked;
        terms.drainedG += drained;
        terms.fatG += soakedPerHundred * cut.raw.fatG * m_figures.fatReleased.at(cookClass);
        terms.soakedSodiumMg += soakedPerHundred * cut.raw.sodiumMg;
        terms.soakedPotassiumMg += soakedPerHundred * cut.raw.potassiumMg;
        terms.soakedProteinG += soakedPerHundred * cut.raw.proteinG;
        terms.cookedMeatG += mass * cut.cookedEdible;
        terms.cookedWholeG += mass - drained;
    }

    void addExtra(const ExtraInPot& inPot, const Stay& stay, Terms& terms) const {
        const Extra& extra = *m_catalogue.extra(inPot.item);
        const double mass = inPot.mass.toGrams();
        // What goes in with the heat off stays in and steeps as the pot stands.
        const double steeped = stay.inPot > quantity::Duration() ? soakedAfter(stay.inPot) : 1.0;
        const double perHundredGrams = mass / perHundred;
        terms.saltSodiumMg += mass * extra.sodiumShare * milligramsPerGram;
        terms.extraSodiumMg += perHundredGrams * extra.raw.sodiumMg * steeped;
        terms.extraPotassiumMg += perHundredGrams * extra.raw.potassiumMg * steeped;
        terms.extraProteinG += perHundredGrams * extra.raw.proteinG * steeped;
        if (extra.kind == Extra::Kind::Other) { // a liquid such as vinegar
            terms.juiceMl += perHundredGrams * extra.raw.waterG;
            return;
        }
        const double juice =
            perHundredGrams * extra.raw.waterG * m_figures.vegetableCookOut * steeped;
        terms.juiceMl += juice;
        terms.strainedG += stay.strained ? mass - juice : 0.0;
    }

    const BrewInput& m_input;
    const Catalogue& m_catalogue;
    const BalanceFigures& m_figures;
    double m_warmth; ///< how much faster collagen comes out than at the reference temperature
};
} // namespace

Terms termsOf(const BrewInput& input, const Timeline& timeline, quantity::Temperature simmering,
              const Catalogue& catalogue) {
    return TermsMaker(input, simmering, catalogue).make(timeline);
}

} // namespace ladlework::kitchen
