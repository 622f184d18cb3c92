#include "calendar/entries.h"
#include "casebook/next_review.h"
#include "casebook/retry_steps.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::calendar {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Calendar)
};

QString watchWords(int days) {
    return days == 1 ? Words::tr("Then watch for 1 day without it.")
                     : Words::tr("Then watch for %1 days without it.").arg(days);
}

Entry retryEntry(const EntryMaker& maker, const casebook::RetryStep& step) {
    QStringList details{
        Words::tr("Step %1 of %2.").arg(step.step + 1).arg(step.plan->steps.size())};
    if (step.plan->watchDays > 0)
        details.append(watchWords(step.plan->watchDays));
    return maker.wholeDay(
        QStringLiteral("retry/%1/%2").arg(step.plan->id.value).arg(step.step), step.day,
        Words::tr("%1 tries %2 of stock with %3")
            .arg(maker.called(step.plan->member), maker.print(step.amount), step.what),
        details);
}

/// The note that set the day keeps its entry when the day is put off; else the family's own.
QString reviewKey(const casebook::FamilyRecords& records, QDate day) {
    const auto note = std::ranges::find(records.notes, day, &casebook::VisitNote::reviewOn);
    return note == records.notes.end() ? QStringLiteral("review/family")
                                       : QStringLiteral("review/note-%1").arg(note->id.value);
}

QStringList contactLines(const people::Practice& practice) {
    QStringList lines{practice.name};
    lines += practice.contact.split(QLatin1Char('\n'));
    for (QString& line : lines)
        line = line.trimmed();
    lines.removeAll(QString());
    return lines;
}

/// The family talks with the practice; in a calendar of several families the practice looks at one.
Entry reviewEntry(const EntryMaker& maker, QDate day) {
    const people::Practice& practice = maker.records().practice;
    const QString with = practice.practitioner.isEmpty() ? practice.name : practice.practitioner;
    const bool toFamily = !maker.options().familyInTitles;
    return maker.wholeDay(reviewKey(maker.records(), day), day,
                          toFamily && !with.isEmpty() ? Words::tr("Review with %1").arg(with)
                                                      : Words::tr("Review"),
                          toFamily ? contactLines(practice) : QStringList());
}
} // namespace

QList<Entry> followUpEntries(const EntryMaker& maker) {
    const QDate from = maker.options().from;
    QList<Entry> entries;
    for (const casebook::RetryStep& step :
         casebook::retrySteps(maker.casebook(), from, from.addDays(maker.options().days - 1)))
        entries.append(retryEntry(maker, step));
    const QDate review = casebook::nextReview(maker.records());
    if (maker.isAsked(review))
        entries.append(reviewEntry(maker, review));
    return entries;
}

} // namespace ladlework::calendar
