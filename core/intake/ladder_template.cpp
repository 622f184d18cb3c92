#include "intake/ladder_template.h"

#include "foundation/name.h"
#include "intake/ladder.h"

#include <QCoreApplication>

namespace ladlework::intake {

namespace {
using quantity::Volume;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(LadderTemplate)
};

/// A rung within rounding of the target is the target: a cup typed as millilitres is no extra rung.
constexpr double rounding = 1e-9;
} // namespace

Outcome check(const LadderTemplate& ladderTemplate) {
    const Result<Name> name = Name::from(ladderTemplate.name, Words::tr("ladder template"));
    if (!name)
        return problem(Problem::Kind::BadInput, name.error().sentence, QStringLiteral("name"));
    Ladder ladder;
    ladder.rungs = ladderTemplate.rungs;
    return check(ladder);
}

QList<Volume> rungsUpTo(const LadderTemplate& ladderTemplate, Volume targetLow,
                        quantity::MeasureSystem system) {
    QList<Volume> rungs;
    for (Volume rung : ladderTemplate.rungs)
        if (rung < targetLow * (1 - rounding))
            rungs.append(rung);
    if (!rungs.isEmpty() && isLeap(rungs.last(), targetLow, system)) {
        if (const Result<QList<Volume>> filled = designRungs(rungs.last(), targetLow, system))
            return rungs.first(rungs.size() - 1) + *filled;
    }
    rungs.append(targetLow);
    return rungs;
}

} // namespace ladlework::intake
