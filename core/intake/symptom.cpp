#include "intake/symptom.h"

#include "foundation/name.h"
#include "intake/red_flags.h"

#include <QCoreApplication>

namespace ladlework::intake {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Symptom)
};
} // namespace

Outcome check(const Symptom& symptom) {
    const Result<Name> name = Name::from(symptom.name, Words::tr("reaction"));
    if (!name)
        return problem(Problem::Kind::BadInput, name.error().sentence, QStringLiteral("name"));
    if (symptom.position < 0)
        return problem(Problem::Kind::BadInput,
                       Words::tr("The place in the list must be 0 or more."),
                       QStringLiteral("position"));
    return {};
}

QList<Symptom> shippedSymptoms() {
    QList<Symptom> shipped;
    for (const SymptomKind& kind : symptomKinds()) {
        if (kind.redFlag)
            continue;
        Symptom symptom;
        symptom.name = kind.name;
        symptom.position = static_cast<int>(shipped.size());
        shipped.append(symptom);
    }
    return shipped;
}

} // namespace ladlework::intake
