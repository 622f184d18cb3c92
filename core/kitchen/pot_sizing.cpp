#include "kitchen/pot_sizing.h"

#include "kitchen/pot_measures.h"

#include <QCoreApplication>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>

// Water, bones and what they give grow in proportion; what evaporates does not, so that the stock
// is no multiple of the pot. It still grows with it, so that one root is bracketed and found
// (algorithm TOMS 748 of Alefeld, Potra and Shi 1995, as in Boost.Math).
namespace ladlework::kitchen {

namespace {
/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(PotSizing)
};

// No pot of a kitchen is further than this from the one asked about.
constexpr double smallestFactor = 1e-4;
constexpr double largestFactor = 1e4;

tl::unexpected<Problem> refused(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::Refused, sentence, place);
}

tl::unexpected<Problem> bad(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::BadInput, sentence, place);
}

/// Everything in the pot multiplied, unrounded.
Pot multiplied(const Pot& pot, double factor) {
    Pot made = pot;
    made.water = pot.water * factor;
    made.salt = pot.salt * factor;
    for (CutInPot& cut : made.cuts)
        cut.mass = cut.mass * factor;
    for (ExtraInPot& extra : made.extras)
        extra.mass = extra.mass * factor;
    return made;
}

/// Whether the pot passes check(); one on the table need not have its name yet.
Outcome possible(Pot pot, const Catalogue& catalogue) {
    if (pot.name.trimmed().isEmpty())
        pot.name = Say::tr("pot");
    return check(pot, catalogue);
}

/// One search for a factor: the pot, its vessel and the measures of the kitchen.
class Sizing {
public:
    Sizing(const BrewInput& input, quantity::MeasureSystem measures, const Catalogue& catalogue)
        : m_input(input), m_measures(measures), m_catalogue(catalogue),
          m_allowed(fillAllowed(input.vessel, catalogue)),
          m_fill(fillVolume(input.pot, catalogue)) {}

    [[nodiscard]] Result<Pot> toVessel() const {
        if (m_allowed <= quantity::Volume())
            return refused(Say::tr("This vessel is lower than the room a pot needs under the rim. "
                                   "Choose a higher one."),
                           QStringLiteral("vessel"));
        return checked(scaled(m_input.pot, mostRounded(), m_measures));
    }

    /// `atLeast`: rounding may give more, but not less than is wanted.
    [[nodiscard]] Result<Pot> toYield(quantity::Volume wanted, bool atLeast = false) const {
        const double millilitres = wanted.toMillilitres();
        const auto missing = [&](double factor) {
            return brewedAt(factor).stockMl.best - millilitres;
        };
        if (missing(largestFactor) < 0)
            return bad(Say::tr("No pot of a kitchen gives %1. Ask for less.").arg(print(wanted)),
                       QStringLiteral("yield"));
        if (missing(smallestFactor) >= 0)
            return bad(Say::tr("No pot of a kitchen gives as little as %1. Ask for more.")
                           .arg(print(wanted)),
                       QStringLiteral("yield"));
        double factor = root(missing);
        if (atLeast)
            factor = notBelow(factor, wanted);
        if (brewedAt(factor).boilsDry)
            return refused(
                Say::tr("A pot for %1 boils dry in this vessel. Put the lid on, simmer it for "
                        "less time, or use a narrower vessel.")
                    .arg(print(wanted)),
                QStringLiteral("vessel"));
        if (m_fill * factor > m_allowed)
            return tooSmall(wanted, factor);
        return checked(scaled(m_input.pot, std::min(factor, mostRounded()), m_measures));
    }

    [[nodiscard]] Result<Pot> toBones(const QString& cut, quantity::Mass inHand) const {
        quantity::Mass asked;
        for (const CutInPot& inPot : m_input.pot.cuts)
            if (inPot.cut == cut)
                asked += inPot.mass;
        const QString name = m_catalogue.nameOf(cut);
        if (asked <= quantity::Mass())
            return refused(
                Say::tr("There are no %1 in this pot. Choose a cut that it has.").arg(name),
                QStringLiteral("cuts"));
        const double factor = inHand / asked;
        if (m_fill * factor > m_allowed)
            return bonesTooMany(name, inHand, asked, factor);
        Pot made = scaled(m_input.pot, std::min(factor, mostRounded()), m_measures);
        // What lies on the table is used up, neither more nor less.
        for (qsizetype index = 0; index < made.cuts.size(); ++index)
            if (made.cuts.at(index).cut == cut)
                made.cuts[index].mass = m_input.pot.cuts.at(index).mass * factor;
        return checked(made);
    }

private:
    [[nodiscard]] QString print(quantity::Volume volume) const {
        return quantity::printVolume(volume, m_measures);
    }

    [[nodiscard]] Brewed brewedAt(double factor) const {
        BrewInput input = m_input;
        input.pot = multiplied(m_input.pot, factor);
        return brew(input, m_catalogue);
    }

    /// The factor at which a growing function is zero. It is below zero at the smallest factor
    /// (next to nothing in the pot) and not below it at the largest.
    template <class Function>
    [[nodiscard]] static double root(const Function& function) {
        std::uintmax_t steps = 200;
        constexpr int bits = 40;
        const auto of = [&function](double power) {
            return function(std::exp(power));
        };
        const auto [low, high] = boost::math::tools::toms748_solve(
            of, std::log(smallestFactor), std::log(largestFactor),
            boost::math::tools::eps_tolerance<double>(bits), steps);
        return std::exp((low + high) / 2.0);
    }

    /// The first factor from here on, in small steps, whose rounded amounts give what is wanted.
    [[nodiscard]] double notBelow(double factor, quantity::Volume wanted) const {
        constexpr int mostSteps = 100;
        constexpr double step = 1.005;
        for (int count = 0; count < mostSteps; ++count, factor *= step) {
            BrewInput input = m_input;
            input.pot = scaled(m_input.pot, factor, m_measures);
            if (brew(input, m_catalogue).stockMl.best >= wanted.toMillilitres())
                break;
        }
        return factor;
    }

    /// The largest factor whose rounded amounts still stand below the rim with their headspace. A
    /// larger amount never gets a smaller mark, so that halving finds it.
    [[nodiscard]] double mostRounded() const {
        constexpr int halvings = 40;
        double fits = 0;
        double tooMuch = 2.0 * (m_allowed / m_fill);
        for (int step = 0; step < halvings; ++step) {
            const double middle = (fits + tooMuch) / 2.0;
            const Pot pot = scaled(m_input.pot, middle, m_measures);
            if (fillVolume(pot, m_catalogue) <= m_allowed)
                fits = middle;
            else
                tooMuch = middle;
        }
        return fits;
    }

    [[nodiscard]] Result<Pot> checked(const Pot& pot) const {
        if (const Outcome outcome = possible(pot, m_catalogue); !outcome)
            return passOn(outcome);
        return pot;
    }

    /// The height that would do, to the next mark of a ruler.
    [[nodiscard]] QString heightFor(double factor) const {
        const quantity::Length needed = heightNeeded(m_fill * factor, m_input.vessel, m_catalogue);
        const quantity::Length mark = m_measures == quantity::MeasureSystem::Metric
                                          ? quantity::Length::fromCentimetres(1)
                                          : quantity::Length::fromInches(1);
        return quantity::printLength(mark * std::ceil(needed / mark), m_measures);
    }

    [[nodiscard]] tl::unexpected<Problem> tooSmall(quantity::Volume wanted, double factor) const {
        const quantity::Volume most = mostStock();
        if (most <= quantity::Volume())
            return refused(Say::tr("This vessel is too small for %1 of stock. One of this width "
                                   "and %2 high would do.")
                               .arg(print(wanted), heightFor(factor)),
                           QStringLiteral("vessel"));
        return refused(Say::tr("This vessel is too small for %1 of stock: full, it gives about "
                               "%2. Cook it %3 times, or use one of this width and %4 high.")
                           .arg(print(wanted), print(most),
                                QString::number(static_cast<int>(std::ceil(wanted / most))),
                                heightFor(factor)),
                       QStringLiteral("vessel"));
    }

    [[nodiscard]] quantity::Volume mostStock() const {
        const double factor = m_allowed / m_fill;
        if (factor <= smallestFactor)
            return {};
        const Brewed full = brewedAt(factor);
        return full.boilsDry ? quantity::Volume()
                             : quantity::Volume::fromMillilitres(full.stockMl.best);
    }

    [[nodiscard]] tl::unexpected<Problem> bonesTooMany(const QString& name, quantity::Mass inHand,
                                                       quantity::Mass asked, double factor) const {
        const quantity::Mass fits = asked * (m_allowed / m_fill);
        return refused(Say::tr("This vessel is too small for %1 of %2: it takes about %3. Cook "
                               "them in %4 pots, or use one of this width and %5 high.")
                           .arg(quantity::printMass(inHand, m_measures), name,
                                quantity::printMass(fits, m_measures),
                                QString::number(std::ceil(inHand / fits)), heightFor(factor)),
                       QStringLiteral("vessel"));
    }

    const BrewInput& m_input;
    quantity::MeasureSystem m_measures;
    const Catalogue& m_catalogue;
    quantity::Volume m_allowed; ///< what the vessel may hold
    quantity::Volume m_fill;    ///< of the pot as it is
};

/// What those who may drink the pot drink a day; refused when that is nothing.
Result<quantity::Volume> drunkADay(const BrewInput& input, const Catalogue& catalogue) {
    const QString place = QStringLiteral("members");
    if (input.drinkers.empty())
        return refused(Say::tr("Nobody is there to drink it. Add a member to the family first."),
                       place);
    quantity::Volume aDay;
    bool someoneMay = false;
    QStringList reasons;
    for (const Drinker& drinker : input.drinkers) {
        const WhoMay who = whoMay(drinker, input.pot, catalogue);
        someoneMay = someoneMay || who.may;
        if (who.may)
            aDay += drinker.perDay;
        else
            reasons.append(QStringLiteral("%1: %2").arg(who.name, who.why));
    }
    if (!someoneMay)
        return refused(Say::tr("Nobody at the table may drink this pot (%1). Change what is in it.")
                           .arg(reasons.join(QStringLiteral("; "))),
                       place);
    if (!(aDay > quantity::Volume()))
        return refused(Say::tr("Nobody who may drink this pot has a daily amount yet. Set a target "
                               "first."),
                       place);
    return aDay;
}
} // namespace

Pot scaled(const Pot& pot, double factor, quantity::MeasureSystem measures) {
    Pot made = multiplied(pot, factor);
    made.water = quantity::roundToKitchen(made.water, measures);
    // A quarter ounce is too coarse for what decides the sodium: salt is weighed in grams anywhere.
    made.salt = quantity::roundToKitchen(made.salt, quantity::MeasureSystem::Metric);
    for (CutInPot& cut : made.cuts)
        cut.mass = quantity::roundToKitchen(cut.mass, measures);
    for (ExtraInPot& extra : made.extras) // so are cloves and sprigs: no quarter ounce of them
        extra.mass = quantity::roundToKitchen(extra.mass, quantity::MeasureSystem::Metric);
    return made;
}

Result<Pot> sizedToVessel(const BrewInput& input, quantity::MeasureSystem measures,
                          const Catalogue& catalogue) {
    if (const Outcome outcome = possible(input.pot, catalogue); !outcome)
        return passOn(outcome);
    return Sizing(input, measures, catalogue).toVessel();
}

Result<Pot> sizedToCover(const BrewInput& input, double days, quantity::MeasureSystem measures,
                         const Catalogue& catalogue) {
    constexpr double mostDays = 365;
    if (!(days > 0 && days <= mostDays))
        return bad(Say::tr("The days to cover must be more than zero and at most 365."),
                   QStringLiteral("days"));
    if (const Outcome outcome = possible(input.pot, catalogue); !outcome)
        return passOn(outcome);
    const Result<quantity::Volume> aDay = drunkADay(input, catalogue);
    if (!aDay)
        return passOn(aDay);
    return Sizing(input, measures, catalogue).toYield(*aDay * days, true);
}

Result<Pot> sizedToYield(const BrewInput& input, quantity::Volume stock,
                         quantity::MeasureSystem measures, const Catalogue& catalogue) {
    if (!(stock > quantity::Volume()))
        return bad(Say::tr("The stock wanted must be more than zero."), QStringLiteral("yield"));
    if (const Outcome outcome = possible(input.pot, catalogue); !outcome)
        return passOn(outcome);
    return Sizing(input, measures, catalogue).toYield(stock);
}

Result<Pot> sizedToBones(const BrewInput& input, const QString& cut, quantity::Mass inHand,
                         quantity::MeasureSystem measures, const Catalogue& catalogue) {
    if (!(inHand > quantity::Mass()))
        return bad(Say::tr("The bones at hand must weigh more than nothing."),
                   QStringLiteral("cuts"));
    if (const Outcome outcome = possible(input.pot, catalogue); !outcome)
        return passOn(outcome);
    return Sizing(input, measures, catalogue).toBones(cut, inHand);
}

Result<Pot> lowMeatOfSameYield(const BrewInput& input, quantity::MeasureSystem measures,
                               const Catalogue& catalogue) {
    if (const Outcome outcome = possible(input.pot, catalogue); !outcome)
        return passOn(outcome);
    const std::optional<Pot> variant = lowMeatVariant(input.pot, catalogue);
    const Brewed asItIs = brew(input, catalogue);
    if (!variant)
        return asItIs.lowMeat
                   ? refused(Say::tr("This pot is made of cuts with little meat already."),
                             QStringLiteral("cuts"))
                   : refused(Say::tr("The catalogue has no cut with little meat for each animal in "
                                     "this pot. Choose another animal."),
                             QStringLiteral("cuts"));
    if (asItIs.boilsDry)
        return refused(Say::tr("This pot boils dry, so it has no yield to keep. Put the lid on or "
                               "simmer it for less time first."),
                       QStringLiteral("water"));
    BrewInput lean = input;
    lean.pot = *variant;
    return sizedToYield(lean, quantity::Volume::fromMillilitres(asItIs.stockMl.best), measures,
                        catalogue);
}

} // namespace ladlework::kitchen
