#include "people/observation.h"

#include "foundation/day_words.h"
#include "foundation/reference_table.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>
#include <stdexcept>

namespace ladlework::people {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Observation)
};

constexpr double leastWeightKg = 0.5;
constexpr double mostWeightKg = 400;
constexpr double mostValue = 1e6;
constexpr double percent = 100;

struct Limit {
    double value = 0;
    QString source;
};

QHash<QString, Limit> loadLimits() {
    const ReferenceTable table =
        valueOrThrow(ReferenceTable::load(QStringLiteral("observation-figures")));
    QHash<QString, Limit> limits;
    for (qsizetype i = 0; i < table.size(); ++i) {
        const ReferenceTable::Row row = table.row(i);
        limits.insert(row.text(QStringLiteral("id")),
                      {row.number(QStringLiteral("value")), row.cited()});
    }
    return limits;
}

Limit limitOf(const QString& id) {
    static const QHash<QString, Limit> limits = loadLimits();
    const auto found = limits.constFind(id);
    if (found == limits.cend())
        throw std::runtime_error("observation-figures.csv has no " + id.toStdString());
    return *found;
}

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

/// The newest weight up to a day; of several on one day the one stored last.
const Observation* newestWeight(const QList<Observation>& observations, QDate today) {
    const Observation* newest = nullptr;
    for (const Observation& each : observations) {
        if (each.kind != weightKind() || !each.day.isValid() || each.day > today)
            continue;
        if (newest == nullptr ||
            std::pair(each.day, each.id.value) >= std::pair(newest->day, newest->id.value))
            newest = &each;
    }
    return newest;
}

/// The highest weight from a day up to the newest one.
const Observation* highestWeight(const QList<Observation>& observations, QDate from,
                                 const Observation& newest) {
    const Observation* highest = &newest;
    for (const Observation& each : observations) {
        if (each.kind == weightKind() && each.day >= from && each.day <= newest.day &&
            each.value > highest->value)
            highest = &each;
    }
    return highest;
}

QString kilograms(double value) {
    return Words::tr("%1 kg").arg(QLocale().toString(value, 'f', 1));
}

Finding lossFinding(const Observation& highest, const Observation& newest, bool child, double loss,
                    const Limit& limit) {
    Finding finding;
    finding.severity = Finding::Severity::Caution;
    finding.code = child ? QStringLiteral("weight-loss-child") : QStringLiteral("weight-loss");
    finding.text =
        child ? Words::tr("A child should not lose weight: ask the treating clinician today, who "
                          "has the growth chart, before any amount is raised.")
              : Words::tr("The weight fell by more than %1 % within a year: ask the treating "
                          "clinician this week, before any amount is raised.")
                    .arg(QLocale().toString(limit.value, 'g', 3));
    finding.why = Words::tr("From %1 on %2 to %3 on %4.")
                      .arg(kilograms(highest.value), dayInWords(highest.day),
                           kilograms(newest.value), dayInWords(newest.day));
    finding.value = loss;
    finding.limit = limit.value;
    finding.unit = QStringLiteral("%");
    finding.source = limit.source;
    finding.field = QStringLiteral("value");
    return finding;
}
} // namespace

QString weightKind() {
    return QStringLiteral("weight");
}

Outcome check(const Observation& observation, QDate today) {
    if (!observation.day.isValid())
        return bad(Words::tr("Enter the day."), QStringLiteral("day"));
    if (observation.day > today)
        return bad(Words::tr("The day lies in the future; enter today or an earlier day."),
                   QStringLiteral("day"));
    if (observation.kind.trimmed().isEmpty())
        return bad(Words::tr("Enter what was observed."), QStringLiteral("kind"));
    const double value = observation.value;
    if (observation.kind == weightKind()) {
        if (observation.unit != QLatin1String("kg"))
            return bad(Words::tr("A weight is kept in kilograms."), QStringLiteral("unit"));
        if (!(value >= leastWeightKg && value <= mostWeightKg))
            return bad(Words::tr("The weight must be 0.5 to 400 kg (1 to 880 lb)."),
                       QStringLiteral("value"));
    }
    if (!(std::abs(value) <= mostValue))
        return bad(Words::tr("The value must be a number of at most a million."),
                   QStringLiteral("value"));
    return {};
}

QDate weightsCountFrom(QDate today) {
    const int window = static_cast<int>(limitOf(QStringLiteral("weight-loss-window")).value);
    // The newest weight is at most one window old, and looks back over another one. A month more,
    // because going back month by month can end on an earlier day than going back at once.
    return today.addMonths(-2 * window - 1);
}

Findings weightFindings(const QList<Observation>& ofMember, bool child, QDate today) {
    const Observation* newest = newestWeight(ofMember, today);
    const int window = static_cast<int>(limitOf(QStringLiteral("weight-loss-window")).value);
    // A weight that is a year old says nothing about now.
    if (newest == nullptr || newest->day < today.addMonths(-window))
        return {};
    const Observation* highest = highestWeight(ofMember, newest->day.addMonths(-window), *newest);
    const double loss = (highest->value - newest->value) / highest->value * percent;
    const Limit limit = limitOf(child ? QStringLiteral("child-weight-loss-most")
                                      : QStringLiteral("weight-loss-most"));
    // The last digit of a division must not turn 5 % exactly into more than 5 %.
    constexpr double rounding = 1e-9;
    if (!(loss > limit.value + rounding))
        return {};
    return {lossFinding(*highest, *newest, child, loss, limit)};
}

} // namespace ladlework::people
