#include "intake/target.h"

#include "foundation/reference_table.h"

#include <QCoreApplication>
#include <QHash>

namespace ladlework::intake {

namespace {
using quantity::Volume;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Target)
};

constexpr double mostTargetL = 4;
constexpr int mostHoldDays = 730;
constexpr int mostEaseEveryDays = 90;

struct UsualTarget {
    Target target;
    QString source;
};

QHash<QString, UsualTarget> loadTargets() {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("targets")));
    QHash<QString, UsualTarget> targets;
    for (qsizetype i = 0; i < table.size(); ++i) {
        const ReferenceTable::Row row = table.row(i);
        UsualTarget usual;
        usual.target.low = Volume::fromCups(row.number(QStringLiteral("low_cups")));
        usual.target.high = Volume::fromCups(row.number(QStringLiteral("high_cups")));
        usual.target.holdDays = static_cast<int>(row.number(QStringLiteral("hold_days")));
        usual.source = row.cited();
        targets.insert(row.text(QStringLiteral("band")), usual);
    }
    return targets;
}

std::optional<UsualTarget> usualFor(AgeBand band) {
    static const QHash<QString, UsualTarget> targets = loadTargets();
    const auto found = targets.constFind(ageBandId(band));
    if (found == targets.cend() || band == AgeBand::InfantUnderSixMonths)
        return std::nullopt;
    return *found;
}

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Finding noLadderFinding() {
    Finding finding;
    finding.severity = Finding::Severity::Stop;
    finding.code = QStringLiteral("no-ladder-under-6-months");
    finding.text =
        Words::tr("There is no ladder and no amount for an infant under 6 months: refer the "
                  "family to the infant's doctor.");
    finding.why = Words::tr("Foods beside milk start at about 6 months.");
    finding.source = Words::tr("WHO guideline on complementary feeding, 2023 (published)");
    finding.field = QStringLiteral("band");
    return finding;
}

Finding aboveUsualFinding(const Target& target, AgeBand band, const UsualTarget& usual) {
    Finding finding;
    finding.severity = Finding::Severity::Caution;
    finding.code = QStringLiteral("target-above-usual");
    finding.text =
        Words::tr("The target lies above what is usual a day for this age band (%1): lower "
                  "it, or write down why it is higher.")
            .arg(ageBandName(band));
    finding.value = target.high.toMillilitres();
    finding.limit = usual.target.high.toMillilitres();
    finding.unit = QStringLiteral("mL");
    finding.source = usual.source;
    finding.field = QStringLiteral("target");
    return finding;
}
} // namespace

Outcome check(const Target& target) {
    if (!(target.low.toMillilitres() > 0))
        return bad(Words::tr("The low end of the target must be more than nothing."),
                   QStringLiteral("low"));
    if (!(target.high >= target.low))
        return bad(Words::tr("The high end of the target must not lie below the low end."),
                   QStringLiteral("high"));
    if (!(target.high.toLitres() <= mostTargetL))
        return bad(Words::tr("The target must be at most 4 litres (17 cups) a day."),
                   QStringLiteral("high"));
    if (target.holdDays < 1 || target.holdDays > mostHoldDays)
        return bad(Words::tr("The target must be held for 1 to 730 days."),
                   QStringLiteral("holdDays"));
    if (target.easeOffFrom.isValid() && target.easeOffFrom < target.from)
        return bad(Words::tr("Easing off cannot begin before the target itself does."),
                   QStringLiteral("easeOffFrom"));
    if (target.easeEveryDays < 1 || target.easeEveryDays > mostEaseEveryDays)
        return bad(Words::tr("Easing off must go down a rung every 1 to 90 days."),
                   QStringLiteral("easeEveryDays"));
    if (!(target.easeTo >= Volume() && target.easeTo <= target.low))
        return bad(Words::tr("What stays after easing off must be 0 up to the low end of the "
                             "target."),
                   QStringLiteral("easeTo"));
    return {};
}

std::optional<Target> usualTarget(AgeBand band) {
    const std::optional<UsualTarget> usual = usualFor(band);
    return usual ? std::optional(usual->target) : std::nullopt;
}

Findings reviewTarget(const Target& target, AgeBand band) {
    if (band == AgeBand::InfantUnderSixMonths)
        return {noLadderFinding()};
    const std::optional<UsualTarget> usual = usualFor(band);
    // The tolerance keeps a target typed in millilitres from standing above the same one in cups.
    if (usual && target.high > usual->target.high + Volume::fromMillilitres(0.5))
        return {aboveUsualFinding(target, band, *usual)};
    return {};
}

} // namespace ladlework::intake
