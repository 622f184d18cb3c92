#include "kitchen/pot_findings.h"

#include "foundation/language_scope.h"
#include "kitchen/additions.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ladlework::kitchen {

namespace {
using Severity = Finding::Severity;

/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(PotFindings)
};

QString litres(quantity::Volume volume) {
    return Say::tr("%1 L (%2 quarts)")
        .arg(wordsLocale().toString(volume.toLitres(), 'f', 1),
             wordsLocale().toString(volume.toQuarts(), 'f', 1));
}

QString hours(quantity::Duration duration) {
    return wordsLocale().toString(duration.toHours(), 'g', 3);
}

class Finder {
public:
    Finder(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue)
        : m_input(input), m_brewed(brewed), m_catalogue(catalogue) {}

    Findings find() {
        bones();
        phase();
        times();
        water();
        salt();
        vessel();
        onions();
        boiling();
        fish();
        prices();
        return m_findings;
    }

private:
    [[nodiscard]] const Pot& pot() const { return m_input.pot; }
    [[nodiscard]] const Cut& cutAt(qsizetype index) const {
        return *m_catalogue.cut(pot().cuts.at(index).cut);
    }
    [[nodiscard]] bool isUnderPressure() const {
        return m_input.vessel.place == Vessel::Place::PressureCooker;
    }
    [[nodiscard]] const Figure& figure(const QString& id) const { return m_catalogue.figure(id); }
    template <class Holds>
    [[nodiscard]] bool allCuts(const Holds& holds) const {
        return std::ranges::all_of(
            pot().cuts, [&](const CutInPot& inPot) { return holds(*m_catalogue.cut(inPot.cut)); });
    }

    Finding& add(Severity severity, const QString& code, const QString& text,
                 const QString& field) {
        m_findings.append(makeFinding(severity, code, text, field));
        return m_findings.last();
    }

    static void measure(Finding& finding, double value, double limit, const QString& unit,
                        const Provenance& provenance) {
        finding.value = value;
        finding.limit = limit;
        finding.unit = unit;
        finding.source = cited(provenance);
    }

    void bones() {
        for (qsizetype index = 0; index < pot().cuts.size(); ++index)
            if (!pot().cuts.at(index).raw) {
                Finding& finding =
                    add(Severity::Stop, QStringLiteral("bones-already-cooked"),
                        Say::tr("The %1 are cooked already: this is not meat stock. Use raw ones.")
                            .arg(cutAt(index).name),
                        QStringLiteral("cuts[%1]").arg(index));
                finding.source = Say::tr("meat stock is made of raw bones (common practice)");
            }
        if (allCuts([](const Cut& cut) { return cut.marrow; })) {
            Finding& finding =
                add(Severity::Caution, QStringLiteral("marrow-alone"),
                    Say::tr("Marrow bones alone have too little connective tissue. Add knuckles "
                            "or another jointed cut."),
                    QStringLiteral("cuts"));
            finding.source = Say::tr("marrow only beside jointed cuts (common practice)");
            return;
        }
        const Figure& enough = figure(QStringLiteral("connective-enough"));
        if (allCuts([&enough](const Cut& cut) {
                return !cut.joint && cut.connective < enough.value;
            })) {
            Finding& finding = add(Severity::Caution, QStringLiteral("no-jointed-cut"),
                                   Say::tr("No cut has a joint or much connective tissue: the "
                                           "stock will not set. Add a jointed cut."),
                                   QStringLiteral("cuts"));
            finding.source = Say::tr("meat stock needs joints (common practice)");
        }
    }

    void phase() {
        if (!m_input.phase.boneBroth)
            boneBrothInPhase();
        if (m_input.phase.groundPepper)
            return;
        for (qsizetype index = 0; index < pot().extras.size(); ++index)
            if (m_catalogue.extra(pot().extras.at(index).item)->kind == Extra::Kind::GroundPepper) {
                Finding& finding = add(Severity::Caution, QStringLiteral("ground-pepper-in-phase"),
                                       Say::tr("Ground pepper comes in a later phase. Use whole "
                                               "peppercorns and strain them out."),
                                       QStringLiteral("extras[%1]").arg(index));
                finding.source = Say::tr("phase rule (common practice)");
            }
    }

    void boneBrothInPhase() {
        const auto bare = std::ranges::find_if(pot().cuts, [this](const CutInPot& inPot) {
            return m_catalogue.cut(inPot.cut)->bareBone;
        });
        if (bare == pot().cuts.end() && pot().brew == Pot::Brew::MeatStock)
            return;
        const bool named = bare != pot().cuts.end();
        Finding& finding =
            add(Severity::Caution, QStringLiteral("bare-bones-in-phase"),
                Say::tr("Bare bones and bone broth are kept for a later phase. Use meaty, jointed "
                        "cuts."),
                named ? QStringLiteral("cuts[%1]").arg(bare - pot().cuts.begin())
                      : QStringLiteral("brew"));
        finding.source = Say::tr("phase rule (common practice)");
    }

    void times() {
        if (isUnderPressure()) {
            Finding& finding = add(Severity::Note, QStringLiteral("time-under-pressure"),
                                   Say::tr("The usual times are those of a simmer. Under pressure "
                                           "take the times of the cooker's own book."),
                                   QStringLiteral("simmer"));
            finding.source = Say::tr("common practice, no source");
            return;
        }
        const CommonWindow common = commonWindow(pot(), m_catalogue);
        const quantity::Duration simmer = pot().simmer;
        if (simmer >= common.least && simmer <= common.most)
            return;
        const bool tooShort = simmer < common.least;
        const auto slowest =
            std::ranges::max_element(pot().cuts, {}, [this, tooShort](const CutInPot& inPot) {
                const CookWindow& window =
                    windowIn(pot(), *m_catalogue.cut(inPot.cut), m_catalogue);
                return tooShort ? window.least : window.most;
            });
        const Cut& cut = *m_catalogue.cut(slowest->cut);
        const CookWindow& window = windowIn(pot(), cut, m_catalogue);
        const bool noOrder = common.several && tooShort;
        const QString text =
            noOrder ? Say::tr("In %1 h no order of adding lets every cut end inside its own time. "
                              "A simmer of %2 to %3 h would do.")
                          .arg(hours(simmer), hours(common.least), hours(common.most))
                    : Say::tr("A simmer of %1 h is outside the time of %2. %3 to %4 h would do.")
                          .arg(hours(simmer), cut.name, hours(common.least), hours(common.most));
        Finding& finding = add(Severity::Caution,
                               noOrder ? QStringLiteral("no-common-order")
                                       : QStringLiteral("simmer-outside-window"),
                               text, QStringLiteral("simmer"));
        measure(finding, simmer.toHours(),
                tooShort ? common.least.toHours() : common.most.toHours(), QStringLiteral("h"),
                window.provenance);
    }

    void water() {
        const double ratio = m_brewed.waterRatioMlPerKg.best;
        const QString field = QStringLiteral("water");
        const QString unit = QStringLiteral("mL/kg");
        const Figure& most = figure(QStringLiteral("water-most"));
        const Figure& least = figure(QStringLiteral("water-least"));
        if (ratio > most.value * (1.0 + rounding)) {
            const double more = (ratio / most.value - 1.0) * 100.0;
            measure(add(Severity::Caution, QStringLiteral("water-above-most"),
                        Say::tr("More water than %1 dilutes the stock: about %2 % more has to be "
                                "drunk for the same protein.")
                            .arg(litres(m_brewed.wateredMost),
                                 wordsLocale().toString(std::ceil(more), 'f', 0)),
                        field),
                    ratio, most.value, unit, most.provenance);
        } else if (ratio < least.value * (1.0 - rounding)) {
            measure(add(Severity::Caution, QStringLiteral("water-below-least"),
                        Say::tr("Less water than %1 for these bones. Add some.")
                            .arg(litres(m_brewed.wateredLeast)),
                        field),
                    ratio, least.value, unit, least.provenance);
        }
        if (pot().water < m_brewed.covered)
            measure(add(Severity::Caution, QStringLiteral("bones-not-covered"),
                        Say::tr("The water does not cover the bones; about %1 would.")
                            .arg(litres(m_brewed.covered)),
                        field),
                    pot().water.toMillilitres(), m_brewed.covered.toMillilitres(),
                    QStringLiteral("mL"), figure(QStringLiteral("bone-packing")).provenance);
        if (m_brewed.boilsDry)
            boilsDry();
        else
            boilsAway();
    }

    void boilsDry() {
        const Figure& least = figure(QStringLiteral("dry-pot-liquid"));
        const double lasts = pot().water.toMillilitres() + m_brewed.cookOutMl.best -
                             pot().water.toMillilitres() * least.value;
        measure(
            add(Severity::Stop, QStringLiteral("boils-dry"),
                Say::tr("This pot boils dry: %1 h at this width and lid would boil away %2, and "
                        "it has %3 to lose. Put the lid on, simmer it for less time or start "
                        "with more water.")
                    .arg(hours(pot().simmer),
                         litres(quantity::Volume::fromMillilitres(m_brewed.wouldEvaporateMl)),
                         litres(quantity::Volume::fromMillilitres(lasts))),
                QStringLiteral("water")),
            m_brewed.wouldEvaporateMl, lasts, QStringLiteral("mL"), least.provenance);
    }

    void boilsAway() {
        const Figure& away = figure(QStringLiteral("boils-away"));
        const double lost = m_brewed.evaporatedMl.best / pot().water.toMillilitres();
        if (lost > away.value)
            measure(add(Severity::Caution, QStringLiteral("boils-away"),
                        Say::tr("About %1 % of the water boils away. Put the lid on or top up with "
                                "boiling water.")
                            .arg(wordsLocale().toString(std::round(std::min(lost, 1.0) * 100.0),
                                                        'f', 0)),
                        QStringLiteral("water")),
                    lost, away.value, away.unit, away.provenance);
    }

    void salt() {
        const Figure& most = figure(QStringLiteral("sodium-adult"));
        const double aCup = perCup(m_brewed.sodiumMgPer100Ml).best;
        if (m_brewed.boilsDry || aCup <= most.value)
            return;
        measure(
            add(Severity::Caution, QStringLiteral("too-salty"),
                Say::tr("One cup of this stock holds about %1 mg of sodium, more than the %2 mg "
                        "of an adult's whole day. Use less salt.")
                    .arg(wordsLocale().toString(aCup, 'f', 0),
                         wordsLocale().toString(most.value, 'f', 0)),
                QStringLiteral("salt")),
            aCup, most.value, QStringLiteral("mg/cup"), most.provenance);
    }

    void vessel() {
        const quantity::Length needed = heightNeeded(m_brewed.fill, m_input.vessel, m_catalogue);
        if (needed <= m_input.vessel.height)
            return;
        Vessel larger = m_input.vessel;
        larger.height = needed;
        const bool overTheRim = m_brewed.fill > m_brewed.capacity;
        measure(add(overTheRim ? Severity::Stop : Severity::Caution,
                    QStringLiteral("vessel-too-small"),
                    Say::tr("This vessel is too small for the pot with room under the rim. One of "
                            "%1 would do: at this width %2 cm (%3 inches) high.")
                        .arg(litres(larger.capacity()),
                             wordsLocale().toString(std::ceil(needed.toCentimetres()), 'f', 0),
                             wordsLocale().toString(std::ceil(needed.toInches()), 'f', 0)),
                    QStringLiteral("vessel")),
                m_brewed.fill.toMillilitres(),
                fillAllowed(m_input.vessel, m_catalogue).toMillilitres(), QStringLiteral("mL"),
                figure(isUnderPressure() ? QStringLiteral("pressure-cooker-fill")
                                         : QStringLiteral("headspace-least"))
                    .provenance);
    }

    void onions() {
        double count = 0;
        for (const ExtraInPot& inPot : pot().extras)
            if (inPot.item == QStringLiteral("onion") ||
                inPot.item == QStringLiteral("sweet-onion"))
                count += inPot.mass / m_catalogue.extra(inPot.item)->piece;
        const Figure& least = figure(QStringLiteral("onions-least"));
        const bool barred = std::ranges::any_of(m_input.drinkers, [](const Drinker& drinker) {
            return drinker.mayNot.contains(QStringLiteral("onion"));
        });
        if (barred || std::round(count) >= least.value)
            return;
        measure(add(Severity::Note, QStringLiteral("few-onions"),
                    Say::tr("At least two onions make a tastier pot."), QStringLiteral("extras")),
                count, least.value, least.unit, least.provenance);
    }

    void boiling() {
        const Figure& simmer = figure(QStringLiteral("simmer-temperature"));
        if (m_brewed.boiling.toCelsius() >= simmer.value || isUnderPressure())
            return;
        measure(add(Severity::Note, QStringLiteral("boiling-capped"),
                    Say::tr("At this height water boils at %1 °C (%2 °F), below a usual simmer. "
                            "The estimate is made for that temperature.")
                        .arg(wordsLocale().toString(m_brewed.boiling.toCelsius(), 'f', 0),
                             wordsLocale().toString(m_brewed.boiling.toFahrenheit(), 'f', 0)),
                    QStringLiteral("altitude")),
                m_brewed.boiling.toCelsius(), simmer.value, simmer.unit, simmer.provenance);
    }

    void fish() {
        for (qsizetype index = 0; index < pot().cuts.size(); ++index) {
            if (cutAt(index).cookClass != CookClass::Fish)
                continue;
            const Figure& cold = figure(QStringLiteral("fish-cold"));
            Finding& finding = add(
                Severity::Note, QStringLiteral("fish-keep-cold"),
                Say::tr("Keep the fish at %1 °F (%2 °C) or below until it goes in: histamine "
                        "formed in warm fish is not destroyed by cooking.")
                    .arg(wordsLocale().toString(
                             quantity::Temperature::fromCelsius(cold.value).toFahrenheit(), 'f', 0),
                         wordsLocale().toString(std::floor(cold.value), 'f', 0)),
                QStringLiteral("cuts[%1]").arg(index));
            finding.limit = cold.value;
            finding.unit = cold.unit;
            finding.source = cited(cold.provenance);
            return;
        }
    }

    void prices() {
        if (!m_brewed.cost)
            return;
        QStringList missing;
        for (qsizetype index = 0; index < pot().cuts.size(); ++index)
            if (!m_input.prices.contains(pot().cuts.at(index).cut))
                missing.append(cutAt(index).name);
        if (!missing.isEmpty())
            add(Severity::Note, QStringLiteral("price-missing"),
                Say::tr("The cost leaves out %1: no price is set.")
                    .arg(missing.join(QStringLiteral(", "))),
                QStringLiteral("prices"));
    }

    /// Kitchen measures are rounded: a quart to the pound is not "more than a quart".
    static constexpr double rounding = 0.005;

    const BrewInput& m_input;
    const Brewed& m_brewed;
    const Catalogue& m_catalogue;
    Findings m_findings;
};
} // namespace

Findings potFindings(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue) {
    return Finder(input, brewed, catalogue).find();
}

} // namespace ladlework::kitchen
