#include "people/phase.h"

#include <QCoreApplication>

namespace ladlework::people {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Phase)
};
} // namespace

Outcome check(const Phase& phase) {
    if (const Result<Name> name = Name::from(phase.name, Words::tr("phase")); !name)
        return problem(Problem::Kind::BadInput, name.error().sentence, QStringLiteral("name"));
    if (phase.position < 0)
        return problem(Problem::Kind::BadInput,
                       Words::tr("The position of a phase counts from the first one and cannot be "
                                 "negative."),
                       QStringLiteral("position"));
    return {};
}

} // namespace ladlework::people
