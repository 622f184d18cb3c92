#include "people/retry_plan.h"

#include "foundation/reference_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <stdexcept>

namespace ladlework::people {

namespace {
using Ending = RetryPlan::Ending;
using quantity::Volume;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(RetryPlan)
};

constexpr std::array endings{Ending::Open, Ending::Borne, Ending::NotBorne, Ending::GivenUp};
constexpr int mostWatchDays = 30;
constexpr int mostSteps = 12;
constexpr double mostStepL = 1;

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Outcome checkSteps(const QList<Volume>& steps) {
    if (steps.isEmpty() || steps.size() > mostSteps)
        return bad(Words::tr("A retry has 1 to 12 steps."), QStringLiteral("steps"));
    Volume before;
    for (qsizetype i = 0; i < steps.size(); ++i) {
        const QString field = QStringLiteral("steps[%1]").arg(i);
        if (!(steps[i] > Volume()))
            return bad(Words::tr("Every step must be more than nothing."), field);
        if (!(steps[i].toLitres() <= mostStepL))
            return bad(Words::tr("A step of a retry must be at most 1 litre (4 cups)."), field);
        if (steps[i] < before)
            return bad(Words::tr("No step may be less than the one before it."), field);
        before = steps[i];
    }
    return {};
}

Outcome checkEnding(const RetryPlan& plan, QDate today) {
    const QString field = QStringLiteral("closed");
    if (plan.outcome == Ending::Open)
        return plan.closed.isValid()
                   ? Outcome(bad(Words::tr("An open retry has no day of its outcome; enter the "
                                           "outcome or remove the day."),
                                 field))
                   : Outcome();
    if (!plan.closed.isValid())
        return bad(Words::tr("Enter the day of the outcome."), field);
    if (plan.closed < plan.start)
        return bad(Words::tr("The outcome cannot come before the retry begins."), field);
    if (plan.closed > today)
        return bad(Words::tr("The outcome lies in the future; enter today or an earlier day."),
                   field);
    return {};
}

/// The usual steps and the days to watch.
RetryPlan loadUsual() {
    static const QHash<QString, double> units{
        {QStringLiteral("tsp"), quantity::units::millilitresPerTeaspoon},
        {QStringLiteral("tbsp"), quantity::units::millilitresPerTablespoon},
        {QStringLiteral("cup"), quantity::units::millilitresPerCup},
    };
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("retry-steps")));
    RetryPlan plan;
    for (qsizetype i = 0; i < table.size(); ++i) {
        const ReferenceTable::Row row = table.row(i);
        const double value = row.number(QStringLiteral("value"));
        const QString unit = row.text(QStringLiteral("unit"));
        if (row.text(QStringLiteral("id")) == QLatin1String("watch-days"))
            plan.watchDays = static_cast<int>(value);
        else if (units.contains(unit))
            plan.steps.append(Volume::fromMillilitres(value * units[unit]));
        else
            throw std::runtime_error("retry-steps.csv: unknown unit " + unit.toStdString());
    }
    return plan;
}

/// An allergy to a cut is one to its animal: the protein is the same.
QString widened(const QString& subjectId, const kitchen::Catalogue& catalogue) {
    const kitchen::Cut* cut = catalogue.cut(subjectId);
    return cut != nullptr ? cut->animal : subjectId;
}

/// Two subjects touch when they are the same or some cut is covered by both.
bool touch(const QString& one, const QString& other, const kitchen::Catalogue& catalogue) {
    return one == other || std::ranges::any_of(catalogue.cuts(), [&](const kitchen::Cut& cut) {
               return catalogue.covers(one, cut.id) && catalogue.covers(other, cut.id);
           });
}

/// Is this the latest note of its subject?
bool isInForce(const ToleranceNote& note, const QList<ToleranceNote>& notes) {
    return std::ranges::none_of(notes, [&note](const ToleranceNote& other) {
        return other.subject == note.subject &&
               std::pair(other.noted, other.id.value) > std::pair(note.noted, note.id.value);
    });
}
} // namespace

QDate RetryPlan::dayOfStep(int step) const {
    if (step < 0 || step >= steps.size())
        return {};
    return start.addDays(static_cast<qint64>(step) * (watchDays + 1));
}

QDate RetryPlan::lastDay() const {
    return dayOfStep(static_cast<int>(steps.size()) - 1).addDays(watchDays);
}

Outcome check(const RetryPlan& plan, QDate today) {
    if (plan.subject.id.trimmed().isEmpty())
        return bad(Words::tr("Choose the animal, cut or ingredient that is tried again."),
                   QStringLiteral("subject"));
    if (!plan.start.isValid())
        return bad(Words::tr("Enter the day on which the retry begins."), QStringLiteral("start"));
    if (plan.watchDays < 0 || plan.watchDays > mostWatchDays)
        return bad(Words::tr("The days to watch after each step must be 0 to 30."),
                   QStringLiteral("watchDays"));
    if (const Outcome steps = checkSteps(plan.steps); !steps)
        return steps;
    return checkEnding(plan, today);
}

Outcome mayRetry(const QList<ToleranceNote>& notesOfMember, const QList<Caution>& cautionsOfMember,
                 const Subject& subject, const QString& memberName,
                 const kitchen::Catalogue& catalogue) {
    const bool allergicByNote = std::ranges::any_of(notesOfMember, [&](const ToleranceNote& note) {
        return note.allergy && touch(widened(note.subject.id, catalogue), subject.id, catalogue);
    });
    const bool keptOutByCaution =
        std::ranges::any_of(cautionsOfMember, [&](const Caution& caution) {
            return std::ranges::any_of(keptOut(caution), [&](const QString& id) {
                return touch(id, subject.id, catalogue);
            });
        });
    const QString subjectName = catalogue.nameOf(subject.id);
    if (allergicByNote || keptOutByCaution)
        return problem(Problem::Kind::Refused,
                       Words::tr("%1 has a recorded allergy or severe reaction that concerns %2: "
                                 "no retry is planned here. Refer to the treating clinician.")
                           .arg(memberName, subjectName),
                       QStringLiteral("subject"));
    const bool avoided = std::ranges::any_of(notesOfMember, [&](const ToleranceNote& note) {
        return forbids(note) && isInForce(note, notesOfMember) &&
               touch(note.subject.id, subject.id, catalogue);
    });
    if (!avoided)
        return problem(Problem::Kind::Refused,
                       Words::tr("No tolerance note of %1 keeps %2 out, so there is nothing to "
                                 "try again; write the note first.")
                           .arg(memberName, subjectName),
                       QStringLiteral("subject"));
    return {};
}

RetryPlan usualRetry(MemberId member, const Subject& subject, QDate start) {
    static const RetryPlan usual = loadUsual();
    RetryPlan plan = usual;
    plan.member = member;
    plan.subject = subject;
    plan.start = start;
    return plan;
}

std::optional<Volume> retryAmount(const RetryPlan& plan, QDate day) {
    if (plan.outcome != Ending::Open)
        return std::nullopt;
    for (int step = 0; step < plan.steps.size(); ++step)
        if (plan.dayOfStep(step) == day)
            return plan.steps[step];
    return std::nullopt;
}

std::optional<ToleranceNote> noteOf(const RetryPlan& plan) {
    if (plan.outcome != Ending::Borne && plan.outcome != Ending::NotBorne)
        return std::nullopt;
    const bool borne = plan.outcome == Ending::Borne;
    ToleranceNote note;
    note.member = plan.member;
    note.subject = plan.subject;
    note.verdict = borne ? ToleranceNote::Verdict::SmallAmounts : ToleranceNote::Verdict::Avoid;
    note.reason = borne ? Words::tr("borne in the retry") : Words::tr("not borne in the retry");
    if (!plan.note.trimmed().isEmpty())
        note.reason = Words::tr("%1: %2").arg(note.reason, plan.note.trimmed());
    note.noted = plan.closed;
    return note;
}

QString retryOutcomeId(Ending outcome) {
    switch (outcome) {
    case Ending::Open:
        return QStringLiteral("open");
    case Ending::Borne:
        return QStringLiteral("borne");
    case Ending::NotBorne:
        return QStringLiteral("not-borne");
    case Ending::GivenUp:
        return QStringLiteral("given-up");
    }
    return {};
}

std::optional<Ending> retryOutcomeFromId(QStringView id) {
    for (Ending ending : endings)
        if (id == retryOutcomeId(ending))
            return ending;
    return std::nullopt;
}

QString retryOutcomeName(Ending outcome) {
    switch (outcome) {
    case Ending::Open:
        return Words::tr("under way");
    case Ending::Borne:
        return Words::tr("borne well");
    case Ending::NotBorne:
        return Words::tr("not borne");
    case Ending::GivenUp:
        return Words::tr("given up");
    }
    return {};
}

} // namespace ladlework::people
