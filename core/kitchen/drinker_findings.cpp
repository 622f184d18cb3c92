#include "kitchen/keeping_figures.h"
#include "kitchen/pot_findings.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
using Severity = Finding::Severity;

/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(PotFindings)
};

Finding measured(Finding finding, double value, double limit, const QString& unit,
                 const QString& source) {
    finding.value = value;
    finding.limit = limit;
    finding.unit = unit;
    finding.source = source;
    return finding;
}

QString fieldOf(qsizetype index) {
    return QStringLiteral("members[%1]").arg(index);
}

QString milligrams(double value) {
    return wordsLocale().toString(value, 'f', 0);
}

const Figure& sodiumFigure(AgeBand band, const Catalogue& catalogue) {
    switch (band) {
    case AgeBand::Adult:
        return catalogue.figure(QStringLiteral("sodium-adult"));
    case AgeBand::Child:
        return catalogue.figure(QStringLiteral("sodium-child"));
    case AgeBand::InfantStartingSolids:
    case AgeBand::InfantUnderSixMonths:
        break;
    }
    return catalogue.figure(QStringLiteral("sodium-infant"));
}

/// What this drinker takes up a day against the own limit, else against that of the age.
std::optional<Finding> sodium(const Drinker& drinker, qsizetype index, const Brewed& brewed,
                              const Catalogue& catalogue) {
    const double perDay = brewed.sodiumMgPer100Ml.best * drinker.perDay.toMillilitres() / 100.0;
    const QString text =
        Say::tr("%1 would take up about %2 mg of sodium a day from this pot alone; the limit is "
                "%3 mg. Use less salt or a smaller amount.");
    const QString unit = QStringLiteral("mg/day");
    if (drinker.sodiumLimitMg && perDay > *drinker.sodiumLimitMg)
        return measured(makeFinding(Severity::Caution, QStringLiteral("sodium-above-limit"),
                                    text.arg(drinker.name, milligrams(perDay),
                                             milligrams(*drinker.sodiumLimitMg)),
                                    fieldOf(index)),
                        perDay, *drinker.sodiumLimitMg, unit, Say::tr("the member's own limit"));
    if (!drinker.band)
        return std::nullopt;
    const Figure& limit = sodiumFigure(*drinker.band, catalogue);
    if (perDay <= limit.value)
        return std::nullopt;
    return measured(makeFinding(Severity::Caution, QStringLiteral("sodium-above-reference"),
                                text.arg(drinker.name, milligrams(perDay), milligrams(limit.value)),
                                fieldOf(index)),
                    perDay, limit.value, unit, cited(limit.provenance));
}

void addInfant(const Drinker& drinker, qsizetype index, const BrewInput& input,
               const Brewed& brewed, const Catalogue& catalogue, Findings& findings) {
    if (drinker.band == AgeBand::InfantUnderSixMonths) {
        const Figure& start = catalogue.figure(QStringLiteral("infant-start"));
        Finding finding = makeFinding(
            Severity::Stop, QStringLiteral("under-six-months"),
            Say::tr("%1 is under %2 months: no stock. Refer to the clinician who treats the "
                    "child.")
                .arg(drinker.name, wordsLocale().toString(start.value, 'f', 0)),
            fieldOf(index));
        finding.limit = start.value;
        finding.unit = start.unit;
        finding.source = cited(start.provenance);
        findings.append(finding);
    } else if (drinker.band == AgeBand::InfantStartingSolids && isSalted(input.pot, catalogue)) {
        const Figure& limit = catalogue.figure(QStringLiteral("sodium-infant"));
        findings.append(measured(
            makeFinding(
                Severity::Caution, QStringLiteral("salt-for-infant"),
                Say::tr("%1 is an infant: leave this pot unsalted and salt the others' cups.")
                    .arg(drinker.name),
                QStringLiteral("salt")),
            brewed.sodiumMgPer100Ml.best * drinker.perDay.toMillilitres() / 100.0, limit.value,
            QStringLiteral("mg/day"), cited(limit.provenance)));
    }
}

void addWho(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue,
            Findings& findings) {
    for (qsizetype index = 0; index < brewed.who.size(); ++index) {
        const Drinker& drinker = input.drinkers.at(static_cast<size_t>(index));
        const WhoMay& who = brewed.who.at(index);
        addInfant(drinker, index, input, brewed, catalogue, findings);
        if (!who.may && drinker.band != AgeBand::InfantUnderSixMonths) {
            Finding finding =
                who.allergy
                    ? makeFinding(
                          Severity::Stop, QStringLiteral("allergy-in-pot"),
                          Say::tr("%1 has a recorded allergy or severe reaction and must not have "
                                  "this pot (%2).")
                              .arg(who.name, who.why),
                          fieldOf(index))
                    : makeFinding(Severity::Caution, QStringLiteral("may-not-drink"),
                                  Say::tr("%1 may not have this pot (%2).").arg(who.name, who.why),
                                  fieldOf(index));
            finding.source = Say::tr("the member's own notes");
            findings.append(finding);
        }
        const bool askedForUnsalted =
            drinker.band == AgeBand::InfantStartingSolids && isSalted(input.pot, catalogue);
        if (who.may && !askedForUnsalted)
            if (const auto finding = sodium(drinker, index, brewed, catalogue))
                findings.append(*finding);
        for (const QString& subject : drinker.mayNot)
            if (!catalogue.knowsSubject(subject))
                findings.append(makeFinding(
                    Severity::Caution, QStringLiteral("unknown-subject"),
                    Say::tr("The catalogue has nothing called \"%1\", so it kept %2 from nothing. "
                            "Mend its spelling, or look through the pot for it yourself.")
                        .arg(subject, drinker.name),
                    fieldOf(index)));
    }
}

void addSmallBones(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue,
                   Findings& findings) {
    for (qsizetype index = 0; index < brewed.who.size(); ++index) {
        const auto band = input.drinkers.at(static_cast<size_t>(index)).band;
        const bool young = band == AgeBand::Child || band == AgeBand::InfantStartingSolids;
        const bool small = std::ranges::any_of(input.pot.cuts, [&catalogue](const CutInPot& cut) {
            return catalogue.cut(cut.cut)->smallBones;
        });
        if (!young || !small || !brewed.who.at(index).may)
            continue;
        Finding finding =
            makeFinding(Severity::Caution, QStringLiteral("small-bones"),
                        Say::tr("Small bones: pick the meat over and strain the stock "
                                "through a fine sieve for children."),
                        QStringLiteral("cuts"));
        finding.source = cited(catalogue.figure(QStringLiteral("choking")).provenance);
        findings.append(finding);
        return;
    }
}

void addMeat(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue,
             Findings& findings) {
    const KeepingFigures& keeping = KeepingFigures::shipped();
    const QString meat = QStringLiteral("cooked-meat-least");
    const int keeps = keeping.count(meat);
    if (!brewed.meatDays || brewed.meatDays->best <= keeps)
        return;
    const bool canChange = lowMeatVariant(input.pot, catalogue).has_value();
    const QString text =
        canChange ? Say::tr("The meat lasts this table about %1 days but keeps %2. Freeze some, or "
                            "use the low-meat variant of the pot.")
                  : Say::tr("The meat lasts this table about %1 days but keeps %2. Freeze some.");
    findings.append(measured(
        makeFinding(Severity::Note, QStringLiteral("meat-left-too-long"),
                    text.arg(wordsLocale().toString(brewed.meatDays->best, 'f', 1),
                             wordsLocale().toString(keeps)),
                    QStringLiteral("cuts")),
        brewed.meatDays->best, keeps, QStringLiteral("days"), cited(keeping.provenance(meat))));
}
} // namespace

Findings drinkerFindings(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue) {
    Findings findings;
    addWho(input, brewed, catalogue, findings);
    addSmallBones(input, brewed, catalogue, findings);
    addMeat(input, brewed, catalogue, findings);
    return findings;
}

} // namespace ladlework::kitchen
