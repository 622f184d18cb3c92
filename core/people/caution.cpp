#include "people/caution.h"

#include "foundation/language_scope.h"
#include "foundation/reference_table.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::people {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Caution)
};

constexpr double leastSodiumMg = 1;
constexpr double mostSodiumMg = 10'000;
const QLatin1String sodiumRestricted("sodium-restricted");

std::vector<CautionKind> loadKinds() {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("cautions")));
    std::vector<CautionKind> kinds;
    for (qsizetype i = 0; i < table.size(); ++i) {
        const ReferenceTable::Row row = table.row(i);
        kinds.push_back({row.text(QStringLiteral("id")), row.text(QStringLiteral("name")),
                         row.text(QStringLiteral("advice")), row.cited(),
                         row.text(QStringLiteral("keeps_out")).split(u' ', Qt::SkipEmptyParts)});
    }
    return kinds;
}

/// What the table says, in the language spoken now: the kinds are read once, in English.
QString inWords(const QString& text) {
    return QCoreApplication::translate("CautionKind", text.toUtf8().constData());
}

const CautionKind* kindOf(const QString& id) {
    const std::vector<CautionKind>& kinds = cautionKinds();
    const auto found = std::ranges::find(kinds, id, &CautionKind::id);
    return found == kinds.end() ? nullptr : &*found;
}
} // namespace

const std::vector<CautionKind>& cautionKinds() {
    static const std::vector<CautionKind> kinds = loadKinds();
    return kinds;
}

QStringList keptOut(const Caution& caution) {
    const CautionKind* kind = kindOf(caution.kind);
    return kind != nullptr ? kind->keepsOut : QStringList();
}

bool isUnnamedAllergy(const Caution& caution) {
    return caution.kind.startsWith(QLatin1String("allergy-")) && keptOut(caution).isEmpty();
}

Outcome check(const Caution& caution) {
    if (kindOf(caution.kind) == nullptr)
        return problem(
            Problem::Kind::BadInput,
            Words::tr("\"%1\" is no caution that Ladlework knows; choose one of the list.")
                .arg(caution.kind),
            QStringLiteral("kind"));
    if (!caution.sodiumLimitMg)
        return {};
    if (caution.kind != sodiumRestricted)
        return problem(
            Problem::Kind::BadInput,
            Words::tr("A sodium limit belongs to the caution \"Sodium restricted\"; enter "
                      "it there."),
            QStringLiteral("sodiumLimitMg"));
    const double limit = *caution.sodiumLimitMg;
    if (!(limit >= leastSodiumMg && limit <= mostSodiumMg))
        return problem(Problem::Kind::BadInput,
                       Words::tr("The sodium limit must be 1 to 10,000 mg a day."),
                       QStringLiteral("sodiumLimitMg"));
    return {};
}

Finding findingFor(const Caution& caution, const QString& memberName) {
    const CautionKind* kind = kindOf(caution.kind);
    Finding finding;
    finding.severity = Finding::Severity::Caution;
    finding.code = QStringLiteral("caution-%1").arg(caution.kind);
    // A kind that this version does not know (a workbook of another version) still defers.
    const QString name = kind != nullptr ? inWords(kind->name) : caution.kind;
    const QString advice =
        kind != nullptr
            ? inWords(kind->advice)
            : Words::tr("Ask the treating clinician before starting or raising the amount.");
    finding.text = Words::tr("%1, %2: %3").arg(memberName, name.toLower(), advice);
    if (caution.sodiumLimitMg) {
        finding.text += QLatin1Char(' ');
        finding.text += Words::tr("The limit recorded is %1 mg of sodium a day.")
                            .arg(wordsLocale().toString(*caution.sodiumLimitMg, 'f', 0));
        finding.limit = caution.sodiumLimitMg;
        finding.unit = QStringLiteral("mg");
    }
    finding.why = caution.detail;
    finding.source = kind != nullptr ? kind->source : QString();
    finding.field = QStringLiteral("cautions");
    return finding;
}

} // namespace ladlework::people
