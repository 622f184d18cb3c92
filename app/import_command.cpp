#include "app/command.h"
#include "exchange/log_csv.h"

#include <QJsonArray>

namespace ladlework::app {

namespace {

QString memberName(const casebook::FamilyRecords& records, MemberId id) {
    for (const people::Member& member : records.members)
        if (member.id == id)
            return member.name;
    return {};
}

QJsonArray additionsOf(const exchange::LogReport& report, const casebook::FamilyRecords& records) {
    QJsonArray list;
    for (const exchange::LogAddition& addition : report.additions) {
        QJsonObject line{{QStringLiteral("line"), addition.line}};
        const MemberId member = addition.entry ? addition.entry->member : addition.reaction->member;
        const QDate day = addition.entry ? addition.entry->day : addition.reaction->day;
        line.insert(QStringLiteral("member"), memberName(records, member));
        line.insert(QStringLiteral("day"), day.toString(Qt::ISODate));
        if (addition.entry)
            line.insert(QStringLiteral("drunk_ml"), addition.entry->drunk.toMillilitres());
        if (addition.reaction) {
            line.insert(QStringLiteral("reaction"), addition.reaction->symptom);
            line.insert(QStringLiteral("strength"), addition.reaction->strength);
            line.insert(QStringLiteral("red_flag"), addition.reaction->redFlag);
        }
        list.append(line);
    }
    return list;
}

QJsonArray refusedOf(const exchange::LogReport& report) {
    QJsonArray list;
    for (const exchange::LogRefusal& refusal : report.refused)
        list.append(QJsonObject{{QStringLiteral("line"), refusal.line},
                                {QStringLiteral("column"), refusal.column},
                                {QStringLiteral("text"), refusal.sentence}});
    return list;
}

} // namespace

Result<Answer> runImport(const Words& words, const Outside& outside) {
    const bool dryRun = words.has(QStringLiteral("dry-run"));
    const auto log = words.needed(QStringLiteral("log"));
    if (!log)
        return passOn(log);
    const auto open =
        openFamily(words, dryRun ? store::Opening::ToRead : store::Opening::ToWrite, outside);
    if (!open)
        return passOn(open);
    const casebook::FamilyRecords& records = open->records;
    const auto csv = readInput(*log);
    if (!csv)
        return passOn(csv);
    const auto text = exchange::textOfLog(*csv);
    if (!text)
        return inFile(*log, text.error());

    const exchange::LogDays days{outside.clock.today(records.family.zone), 0, false};
    const auto report = exchange::readLog(*text, exchange::LogNames::of(records), records, days);
    if (!report)
        return inFile(*log, report.error());

    Answer answer;
    answer.json = QJsonObject{{QStringLiteral("workbook"), words.at(0)},
                              {QStringLiteral("family"), records.family.name},
                              {QStringLiteral("log"), *log},
                              {QStringLiteral("dry_run"), dryRun},
                              {QStringLiteral("entries"), report->entryCount()},
                              {QStringLiteral("reactions"), report->reactionCount()},
                              {QStringLiteral("already_there"), report->alreadyThere},
                              {QStringLiteral("lines"), additionsOf(*report, records)},
                              {QStringLiteral("refused"), refusedOf(*report)}};
    if (!report->refused.isEmpty()) {
        const Problem first = inFile(*log, exchange::toProblem(report->refused.first())).value();
        if (!dryRun)
            return tl::unexpected<Problem>(first);
        answer.problem = first; // the report itself is what a dry run is asked for
        return answer;
    }
    if (!dryRun)
        if (const Outcome imported = exchange::importLog(*open->workbook, records, *report);
            !imported)
            return inFile(words.at(0), imported.error());
    return answer;
}

} // namespace ladlework::app
