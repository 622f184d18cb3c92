#include "kitchen/cooling_findings.h"

#include "kitchen/keeping_figures.h"
#include "quantity/mass.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
using Severity = Finding::Severity;
using Place = CoolingStage::Place;

/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(Cooling)
};

QString degrees(quantity::Temperature temperature) {
    return Say::tr("%1 °C (%2 °F)")
        .arg(QLocale().toString(temperature.toCelsius(), 'f', 0),
             QLocale().toString(temperature.toFahrenheit(), 'f', 0));
}

QString degrees(double celsius) {
    return degrees(quantity::Temperature::fromCelsius(celsius));
}

QString depthText(quantity::Length depth) {
    return Say::tr("%1 cm (%2 in)")
        .arg(QLocale().toString(depth.toCentimetres(), 'f', 1),
             QLocale().toString(depth.toInches(), 'f', 1));
}

QString hours(quantity::Duration duration) {
    return QLocale().toString(duration.toHours(), 'f', 1);
}

QString wholeHours(double count) {
    return QLocale().toString(count, 'g', 3);
}

class Finder {
public:
    Finder(const CoolingInput& input, const CoolingRun& run, const TwoStageRule& rule,
           const CoolingFigures& figures)
        : m_input(input), m_run(run), m_rule(rule), m_figures(figures) {}

    Findings find() {
        size();
        stages();
        depth();
        counter();
        refrigerator();
        lid();
        glass();
        freezing();
        ice();
        closeCall();
        add(Severity::Note, "cooling-estimate",
            Say::tr("These times are estimates. Check with a thermometer; your local rules go "
                    "first."),
            "");
        return m_findings;
    }

private:
    Finding& add(Severity severity, const char* code, const QString& text, const char* field) {
        m_findings.append(
            makeFinding(severity, QString::fromLatin1(code), text, QString::fromLatin1(field)));
        return m_findings.last();
    }

    static void measure(Finding& finding, double value, double limit, const QString& unit) {
        finding.value = value;
        finding.limit = limit;
        finding.unit = unit;
    }

    static const Provenance& keeping(const char* id) {
        return KeepingFigures::shipped().provenance(QString::fromLatin1(id));
    }

    [[nodiscard]] bool startsHot() const { return m_input.start.toCelsius() > m_rule.fromC; }

    /// Where the clock of the rule starts.
    [[nodiscard]] double countedFrom() const {
        return std::min(m_rule.fromC, m_input.start.toCelsius());
    }

    void size() {
        const quantity::Volume capacity = m_input.container.capacity();
        // A millilitre over is rounding.
        if (m_input.volume <= capacity + quantity::Volume::fromMillilitres(1))
            return;
        Finding& finding =
            add(Severity::Stop, "container-too-small",
                Say::tr("The container holds %1 L, but %2 L are to go in; take a larger one or "
                        "more of them.")
                    .arg(QLocale().toString(capacity.toLitres(), 'f', 1),
                         QLocale().toString(m_input.volume.toLitres(), 'f', 1)),
                "volume");
        measure(finding, m_input.volume.toLitres(), capacity.toLitres(), QStringLiteral("L"));
    }

    void stages() {
        if (!m_run.toEnd) {
            never();
            return;
        }
        if (m_run.toMiddle && *m_run.toMiddle > m_rule.middleWithin) {
            Finding& finding =
                add(Severity::Caution, "cooling-first-stage-late",
                    Say::tr("From %1 to %2 takes about %3 hours; the limit is %4. Use an ice bath "
                            "and stir, fill less deep, or share the stock out among more "
                            "containers.")
                        .arg(degrees(countedFrom()), degrees(m_rule.middleC),
                             hours(*m_run.toMiddle), wholeHours(m_rule.middleWithin.toHours())),
                    "stages");
            measure(finding, m_run.toMiddle->toHours(), m_rule.middleWithin.toHours(),
                    QStringLiteral("h"));
            finding.source = cited(keeping("cool-middle-within"));
        }
        if (*m_run.toEnd > m_rule.endWithin) {
            const int dayLong = KeepingFigures::shipped().count(QStringLiteral("deep-pot-hours"));
            Finding& finding =
                add(m_run.toEnd->toHours() >= dayLong ? Severity::Stop : Severity::Caution,
                    "cooling-second-stage-late",
                    Say::tr("From %1 to %2 takes about %3 hours; the limit is %4 in all. Fill less "
                            "deep, share the stock out among more containers, or start with an "
                            "ice bath.")
                        .arg(degrees(countedFrom()), degrees(m_rule.endC), hours(*m_run.toEnd),
                             wholeHours(m_rule.endWithin.toHours())),
                    "stages");
            measure(finding, m_run.toEnd->toHours(), m_rule.endWithin.toHours(),
                    QStringLiteral("h"));
            finding.source = cited(keeping("cool-end-within"));
        }
    }

    void never() {
        const CoolingPoint& last = m_run.curve.back();
        Finding& finding = add(
            Severity::Stop, "cooling-never-cold",
            Say::tr("This does not get the stock down to %1: after %2 hours it is still at %3. "
                    "Bring it into the refrigerator, fill less deep, or start with an ice bath.")
                .arg(degrees(m_rule.endC), hours(last.at), degrees(last.core)),
            "stages");
        measure(finding, last.core.toCelsius(), m_rule.endC, QStringLiteral("°C"));
        finding.source = cited(keeping("cool-end"));
    }

    /// Deep stock that goes into the refrigerator while it is warm.
    void depth() {
        const KeepingFigures& figures = KeepingFigures::shipped();
        const quantity::Length shallow = figures.length(QStringLiteral("shallow-depth"));
        const quantity::Length deep = depthOf(m_input.volume, m_input.container);
        if (deep <= shallow || passes(m_run, m_rule))
            return;
        for (std::size_t index = 0; index < m_run.stageStarts.size(); ++index) {
            if (m_input.stages[index].place != Place::Refrigerator ||
                m_run.stageStarts[index].core.toCelsius() <= m_rule.middleC)
                continue;
            Finding& finding = add(
                Severity::Caution, "deep-in-refrigerator",
                Say::tr("The stock stands %1 deep when it goes into the refrigerator; shallow "
                        "is up to %2. A deep pot can take %3 hours or more there, and warms what "
                        "stands beside it.")
                    .arg(depthText(deep), depthText(shallow),
                         QString::number(figures.count(QStringLiteral("deep-pot-hours")))),
                "container");
            measure(finding, deep.toCentimetres(), shallow.toCentimetres(), QStringLiteral("cm"));
            finding.source = cited(keeping("shallow-depth"));
            return;
        }
    }

    void counter() {
        quantity::Duration out;
        quantity::Temperature warmest = quantity::Temperature::fromKelvin(0);
        for (std::size_t index = 0; index < m_run.stageStarts.size(); ++index) {
            const CoolingStage& stage = m_input.stages[index];
            if (stage.place != Place::Counter)
                continue;
            const quantity::Duration end = index + 1 < m_run.stageStarts.size()
                                               ? m_run.stageStarts[index + 1].at
                                               : m_run.curve.back().at;
            out += end - m_run.stageStarts[index].at;
            warmest = std::max(warmest, stage.ambient);
        }
        const quantity::Duration allowed = counterAllowed(warmest);
        // A second over is rounding.
        if (out <= allowed + quantity::Duration::fromMinutes(1.0 / 60.0))
            return;
        const bool isHot = warmest > hotDay();
        Finding& finding =
            add(Severity::Caution, "counter-too-long",
                isHot ? Say::tr("The stock stands on the counter for %1 hours. Above %2 it belongs "
                                "in the refrigerator within %3.")
                            .arg(hours(out), degrees(hotDay()), withinText(allowed))
                      : Say::tr("The stock stands on the counter for %1 hours. It belongs in the "
                                "refrigerator within %2.")
                            .arg(hours(out), withinText(allowed)),
                "stages");
        measure(finding, out.toHours(), allowed.toHours(), QStringLiteral("h"));
        finding.source = cited(keeping(isHot ? "hot-day-within" : "fridge-within"));
    }

    static QString withinText(quantity::Duration allowed) {
        return allowed.toHours() == 1.0 ? Say::tr("1 hour")
                                        : Say::tr("%1 hours").arg(wholeHours(allowed.toHours()));
    }

    static quantity::Temperature hotDay() {
        return KeepingFigures::shipped().temperature(QStringLiteral("hot-day"));
    }

    void refrigerator() {
        const quantity::Temperature most =
            KeepingFigures::shipped().temperature(QStringLiteral("fridge-most"));
        for (const CoolingStage& stage : m_input.stages) {
            if (stage.place != Place::Refrigerator || stage.ambient <= most)
                continue;
            Finding& finding =
                add(Severity::Caution, "refrigerator-warm",
                    Say::tr("The refrigerator is at %1; it should be at %2 or below. Set it "
                            "colder and check it with a thermometer.")
                        .arg(degrees(stage.ambient), degrees(most)),
                    "stages");
            measure(finding, stage.ambient.toCelsius(), most.toCelsius(), QStringLiteral("°C"));
            finding.source = cited(keeping("fridge-most"));
            return;
        }
    }

    /// In time by the best estimate only; the rest is what the figures leave open.
    void closeCall() {
        if (!m_run.toMiddle || !m_run.toEnd || *m_run.toMiddle > m_rule.middleWithin ||
            *m_run.toEnd > m_rule.endWithin)
            return;
        const Figure& share = m_figures.figure(QStringLiteral("close-call"));
        const double middle = *m_run.toMiddle / m_rule.middleWithin;
        const double end = *m_run.toEnd / m_rule.endWithin;
        if (std::max(middle, end) <= share.value)
            return;
        const bool first = middle > end;
        Finding& finding =
            add(Severity::Caution, "cooling-close-call",
                Say::tr("This is in time by little, and the estimate may be off by as much. Fill "
                        "less deep, start in an ice bath, or check with a thermometer."),
                "volume");
        measure(finding, (first ? *m_run.toMiddle : *m_run.toEnd).toHours(),
                (first ? m_rule.middleWithin : m_rule.endWithin).toHours(), QStringLiteral("h"));
        finding.source = cited(share.provenance);
    }

    void lid() {
        if (!m_input.container.covered || !startsHot())
            return;
        Finding& finding = add(Severity::Note, "covered-while-hot",
                               Say::tr("A lid keeps the heat in. Leave it off or loose until the "
                                       "stock is cold, where nothing can drip or fall in."),
                               "container");
        finding.source = cited(m_figures.figure(QStringLiteral("loosely-covered")).provenance);
    }

    void glass() {
        if (m_input.container.material != Container::Material::Glass)
            return;
        for (std::size_t index = 0; index < m_run.stageStarts.size(); ++index) {
            if (m_input.stages[index].place != Place::IceBath ||
                m_run.stageStarts[index].core.toCelsius() <= m_rule.fromC)
                continue;
            Finding& finding = add(Severity::Caution, "glass-in-ice",
                                   Say::tr("Hot glass can crack in ice water. Cool the stock in a "
                                           "steel pot or bowl first and fill the glass then."),
                                   "container");
            finding.source = cited(m_figures.figure(QStringLiteral("glass-shock")).provenance);
            return;
        }
    }

    void freezing() {
        for (std::size_t index = 0; index < m_run.stageStarts.size(); ++index) {
            const quantity::Temperature ambient = m_input.stages[index].ambient;
            if (ambient.toCelsius() >= freezingC)
                continue;
            measure(add(Severity::Caution, "below-freezing",
                        Say::tr("At %1 the stock freezes from outside; that is not reckoned here, "
                                "and a full jar can burst. Cool it in the refrigerator or an ice "
                                "bath, and freeze it once it is cold.")
                            .arg(degrees(ambient)),
                        "stages"),
                    ambient.toCelsius(), freezingC, QStringLiteral("°C"));
            return;
        }
    }

    /// The bath stays cold only while there is ice in it.
    void ice() {
        double kilojoules = 0;
        const Figure& heat = m_figures.figure(QStringLiteral("stock-heat-capacity"));
        for (std::size_t index = 0; index < m_run.stageStarts.size(); ++index) {
            if (m_input.stages[index].place != Place::IceBath)
                continue;
            const CoolingPoint& end = index + 1 < m_run.stageStarts.size()
                                          ? m_run.stageStarts[index + 1]
                                          : m_run.curve.back();
            kilojoules += m_input.volume.toLitres() * heat.value / 1000.0 *
                          (m_run.stageStarts[index].core.toCelsius() - end.core.toCelsius());
        }
        const Figure& fusion = m_figures.figure(QStringLiteral("ice-fusion-heat"));
        const auto mass = quantity::Mass::fromKilograms(kilojoules / fusion.value);
        if (mass <= quantity::Mass::fromGrams(50))
            return;
        Finding& finding =
            add(Severity::Note, "ice-needed",
                Say::tr("The ice bath melts about %1 kg (%2 lb) of ice for each container. Have "
                        "that much at hand: once the ice is gone the stock cools slower than this.")
                    .arg(QLocale().toString(mass.toKilograms(), 'f', 1),
                         QLocale().toString(mass.toPounds(), 'f', 1)),
                "stages");
        finding.source = cited(fusion.provenance);
    }

    static constexpr double freezingC = 0; // of water

    const CoolingInput& m_input;
    const CoolingRun& m_run;
    const TwoStageRule& m_rule;
    const CoolingFigures& m_figures;
    Findings m_findings;
};
} // namespace

Findings coolingFindings(const CoolingInput& input, const CoolingRun& run, const TwoStageRule& rule,
                         const CoolingFigures& figures) {
    return Finder(input, run, rule, figures).find();
}

quantity::Duration counterAllowed(quantity::Temperature room) {
    const KeepingFigures& figures = KeepingFigures::shipped();
    const bool isHot = room > figures.temperature(QStringLiteral("hot-day"));
    return quantity::Duration::fromHours(
        figures.count(isHot ? QStringLiteral("hot-day-within") : QStringLiteral("fridge-within")));
}

} // namespace ladlework::kitchen
