#include "exchange/follow_up_text.h"

#include "kitchen/catalogue.h"

#include <QCoreApplication>

namespace ladlework::exchange {

namespace {

using people::RetryPlan;

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

void readOutcome(TextReader& reader, RetryPlan& plan) {
    if (reader.has(QStringLiteral("outcome")))
        plan.outcome = reader.word(QStringLiteral("outcome"), people::retryOutcomeFromId,
                                   QStringLiteral("open, borne, not-borne, given-up"));
    plan.closed = reader.shiftedDayOrNone(QStringLiteral("closed_on"));
    if (reader.reading().leavesOut(plan.closed)) {
        plan.outcome = RetryPlan::Ending::Open;
        plan.closed = QDate();
    }
}

} // namespace

people::Subject readSubject(TextReader& reader) {
    const QString key = QStringLiteral("subject");
    people::Subject subject;
    subject.kind = reader.word(QStringLiteral("kind"), people::subjectKindFromId,
                               QStringLiteral("animal, cut, ingredient"));
    subject.id = reader.text(key);
    const kitchen::Catalogue& catalogue = reader.reading().catalogue;
    using Kind = people::Subject::Kind;
    // "poultry" and "fish" are no animals of the catalogue but speak of all of their class.
    const bool wide =
        subject.id == QStringLiteral("poultry") || subject.id == QStringLiteral("fish");
    const bool known = (subject.kind == Kind::Animal && (wide || catalogue.animal(subject.id))) ||
                       (subject.kind == Kind::Cut && catalogue.cut(subject.id)) ||
                       (subject.kind == Kind::Ingredient && catalogue.extra(subject.id));
    if (!reader.failed() && !known)
        reader.fail(
            key,
            say("\"%1\" is not in the catalogue; mend its spelling or its kind.").arg(subject.id));
    return subject;
}

void readRetries(TextReader& reader, MemberId member, casebook::FamilyRecords& records) {
    reader.each(QStringLiteral("retries"), [&](TextReader& entry) {
        const people::Subject subject = readSubject(entry);
        RetryPlan plan =
            people::usualRetry(member, subject, entry.shiftedDay(QStringLiteral("start")));
        plan.watchDays =
            entry.optionalInteger(QStringLiteral("watch_days"), 0, 30).value_or(plan.watchDays);
        const QString steps = QStringLiteral("steps");
        if (entry.has(steps))
            plan.steps = entry.volumes(steps);
        readOutcome(entry, plan);
        plan.note = entry.textOr(QStringLiteral("note"), {});
        entry.accept(people::check(plan, entry.reading().today));
        records.retryPlans.append(plan);
    });
}

void readObservations(TextReader& reader, MemberId member, casebook::FamilyRecords& records) {
    reader.each(QStringLiteral("observations"), [&](TextReader& entry) {
        constexpr double most = 1e6;
        people::Observation observation;
        observation.member = member;
        observation.day = entry.shiftedDay(QStringLiteral("day"));
        observation.kind = entry.textOr(QStringLiteral("kind"), people::weightKind());
        observation.value = entry.number(QStringLiteral("value"), -most, most);
        const bool isWeight = observation.kind == people::weightKind();
        observation.unit =
            entry.textOr(QStringLiteral("unit"), isWeight ? QStringLiteral("kg") : QString());
        observation.note = entry.textOr(QStringLiteral("note"), {});
        if (entry.reading().leavesOut(observation.day))
            return;
        entry.accept(people::check(observation, entry.reading().today));
        records.observations.append(observation);
    });
}

} // namespace ladlework::exchange
