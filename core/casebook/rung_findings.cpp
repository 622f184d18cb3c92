#include "casebook/rung_findings.h"

#include <QCoreApplication>

namespace ladlework::casebook {

namespace {
using quantity::Volume;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(RungFindings)
};

/// What rounding in the last place may add: a cup typed as millilitres is still a cup.
constexpr double rounding = 1e-9;

Finding made(Finding::Severity severity, const QString& code, const QString& text) {
    return makeFinding(severity, code, text, QStringLiteral("ladder"));
}

} // namespace

Findings rungFindings(const Standing& standing, quantity::MeasureSystem measures) {
    if (!standing.ladder || standing.ladder->rungs.isEmpty())
        return {};
    const QString& name = standing.member.name;
    const QList<Volume>& rungs = standing.ladder->rungs;
    const auto words = [measures](Volume volume) {
        return quantity::printVolume(volume, measures);
    };
    Findings findings;
    if (standing.target && rungs.last() > standing.target->high * (1 + rounding))
        findings.append(
            made(Finding::Severity::Stop, QStringLiteral("ladder-above-target"),
                 Words::tr("%1: the last rung asks more than the target: %2 a day, and the target "
                           "ends at %3. Lower the rungs, or set the target anew.")
                     .arg(name, words(rungs.last()), words(standing.target->high))));
    for (qsizetype i = 1; i < rungs.size(); ++i) {
        if (intake::isLeap(rungs[i - 1], rungs[i], measures))
            findings.append(made(Finding::Severity::Caution, QStringLiteral("ladder-leap"),
                                 Words::tr("%1: the step from %2 to %3 a day is a large one. Put a "
                                           "rung between the two.")
                                     .arg(name, words(rungs[i - 1]), words(rungs[i]))));
    }
    return findings;
}

} // namespace ladlework::casebook
