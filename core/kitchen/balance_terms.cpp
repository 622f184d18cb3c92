#include "kitchen/balance_terms.h"

#include <cmath>

namespace ladlework::kitchen {

namespace {
constexpr double perHundred = 100.0;
constexpr double milligramsPerGram = 1000.0;

class TermsMaker {
public:
    TermsMaker(const BrewInput& input, quantity::Temperature simmering, const Catalogue& catalogue)
        : m_input(input), m_simmering(simmering), m_catalogue(catalogue) {}

    [[nodiscard]] Terms make(const Timeline& timeline) const {
        Terms terms;
        for (size_t index = 0; index < timeline.cuts.size(); ++index)
            terms.cuts.push_back(ofCut(m_input.pot.cuts.at(static_cast<qsizetype>(index)),
                                       timeline.cuts[index].inPot));
        for (size_t index = 0; index < timeline.extras.size(); ++index)
            terms.extras.push_back(ofExtra(m_input.pot.extras.at(static_cast<qsizetype>(index)),
                                           timeline.extras[index]));
        terms.waterMl = m_input.pot.water.toMillilitres();
        terms.saltSodiumMg =
            m_input.pot.salt.toGrams() * figure(QStringLiteral("salt-sodium")) * milligramsPerGram;
        terms.leastLiquidMl = terms.waterMl * figure(QStringLiteral("dry-pot-liquid"));
        terms.meatWater = figure(QStringLiteral("cooked-meat-water"));
        terms.waterDensity = figure(QStringLiteral("water-density"));
        terms.fatDensity = figure(QStringLiteral("fat-density"));
        return terms;
    }

private:
    [[nodiscard]] double figure(const QString& id) const { return m_catalogue.figure(id).value; }

    /// 0-1: how far a piece has given its juice after this time.
    [[nodiscard]] double soakedAfter(quantity::Duration time) const {
        return 1.0 - std::exp(-time.toHours() / figure(QStringLiteral("cook-out-time")));
    }

    /// Release of collagen per hour, at best.
    [[nodiscard]] double extractionRate(const Cut& cut) const {
        const QString cookClass = cookClassId(m_catalogue.cookClass(cut));
        const double warmer =
            m_simmering.toCelsius() - figure(QStringLiteral("extraction-reference-temperature"));
        return figure(QStringLiteral("extraction-") + cookClass) *
               figure(QStringLiteral("collagen-grade-") + QString::number(cut.connective)) *
               std::exp2(warmer / figure(QStringLiteral("extraction-doubling")));
    }

    [[nodiscard]] CutTerms ofCut(const CutInPot& inPot, quantity::Duration time) const {
        const Cut& cut = *m_catalogue.cut(inPot.cut);
        const double meat = inPot.mass.toGrams() * (1.0 - cut.refuse);
        CutTerms terms;
        terms.mass = inPot.mass.toGrams();
        terms.collagen = terms.mass * cut.collagenShare;
        terms.extractionExponent = extractionRate(cut) * time.toHours();
        if (!inPot.raw) {
            // Cooked before: the juice is gone, the meat is what it is, some collagen is left.
            terms.collagen *= figure(QStringLiteral("collagen-left-in-cooked"));
            terms.cookedMeat = cut.bareBone ? 0.0 : meat;
            terms.cookedWhole = terms.mass;
            return terms;
        }
        const QString cookClass = cookClassId(m_catalogue.cookClass(cut));
        terms.soaked = soakedAfter(time);
        terms.drained = terms.mass * (1.0 - cut.cookedWhole) * terms.soaked;
        terms.fat = meat * cut.raw.fatG / perHundred *
                    figure(QStringLiteral("fat-released-") + cookClass) * terms.soaked;
        terms.sodium = meat * cut.raw.sodiumMg / perHundred;
        terms.potassium = meat * cut.raw.potassiumMg / perHundred;
        terms.muscleProtein = meat * cut.raw.proteinG / perHundred;
        terms.cookedMeat = terms.mass * cut.cookedEdible;
        terms.cookedWhole = terms.mass - terms.drained;
        return terms;
    }

    [[nodiscard]] ExtraTerms ofExtra(const ExtraInPot& inPot, const Stay& stay) const {
        const Extra& extra = *m_catalogue.extra(inPot.item);
        const double mass = inPot.mass.toGrams();
        // What goes in with the heat off stays in and steeps as the pot stands.
        const double steeped = stay.inPot > quantity::Duration() ? soakedAfter(stay.inPot) : 1.0;
        ExtraTerms terms;
        terms.salt = mass * extra.sodiumShare * milligramsPerGram;
        terms.sodium = mass * extra.raw.sodiumMg / perHundred * steeped;
        terms.potassium = mass * extra.raw.potassiumMg / perHundred * steeped;
        terms.protein = mass * extra.raw.proteinG / perHundred * steeped;
        if (extra.kind == Extra::Kind::Other) { // a liquid such as vinegar
            terms.juice = mass * extra.raw.waterG / perHundred;
            return terms;
        }
        terms.juice = mass * extra.raw.waterG / perHundred *
                      figure(QStringLiteral("vegetable-cook-out")) * steeped;
        terms.solids = stay.strained ? mass - terms.juice : 0.0;
        return terms;
    }

    const BrewInput& m_input;
    quantity::Temperature m_simmering;
    const Catalogue& m_catalogue;
};
} // namespace

Terms termsOf(const BrewInput& input, const Timeline& timeline, quantity::Temperature simmering,
              const Catalogue& catalogue) {
    return TermsMaker(input, simmering, catalogue).make(timeline);
}

} // namespace ladlework::kitchen
