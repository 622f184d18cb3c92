#include "exchange/log_csv.h"

#include "exchange/log_line.h"
#include "store/workbook.h"

#include <QCoreApplication>
#include <QSet>
#include <QStringDecoder>
#include <algorithm>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("LogCsv", sentence);
}

const QStringList& knownColumns() {
    static const QStringList columns{
        QStringLiteral("day"),      QStringLiteral("member"),   QStringLiteral("asked"),
        QStringLiteral("amount"),   QStringLiteral("pot"),      QStringLiteral("lot"),
        QStringLiteral("reaction"), QStringLiteral("strength"), QStringLiteral("red_flag"),
        QStringLiteral("start"),    QStringLiteral("length"),   QStringLiteral("note")};
    return columns;
}

Result<QHash<QString, qsizetype>> readHeader(const CsvRecord& header) {
    const QString place = say("line %1").arg(header.line);
    QHash<QString, qsizetype> columns;
    for (qsizetype index = 0; index < header.fields.size(); ++index) {
        const QString name = header.fields[index].trimmed().toLower();
        if (!knownColumns().contains(name))
            return problem(
                Problem::Kind::BadInput,
                say("\"%1\" is no column of a log; the columns are %2.")
                    .arg(header.fields[index].trimmed(), knownColumns().join(QStringLiteral(", "))),
                place);
        if (columns.contains(name))
            return problem(Problem::Kind::BadInput,
                           say("The column \"%1\" is there twice.").arg(name), place);
        columns.insert(name, index);
    }
    for (const QString& needed : {QStringLiteral("day"), QStringLiteral("member")})
        if (!columns.contains(needed))
            return problem(Problem::Kind::BadInput,
                           say("The column \"%1\" is missing.").arg(needed), place);
    if (!columns.contains(QStringLiteral("amount")) &&
        !columns.contains(QStringLiteral("reaction")))
        return problem(Problem::Kind::BadInput,
                       say("There must be a column \"amount\" or \"reaction\"."), place);
    return columns;
}

QChar separatorOf(const QString& csv) {
    const QString header = csv.section(QLatin1Char('\n'), 0, 0);
    const bool semicolons = header.contains(QLatin1Char(';')) && !header.contains(QLatin1Char(','));
    return semicolons ? QLatin1Char(';') : QLatin1Char(',');
}

QString signature(const intake::IntakeEntry& entry) {
    // Volumes are compared to the hundredth of a millilitre: far below any kitchen measure, far
    // above the rounding of unit conversions.
    return QStringList{QString::number(entry.member.value),
                       entry.day.toString(Qt::ISODate),
                       QString::number(entry.drunk.toMillilitres(), 'f', 2),
                       QString::number(entry.pot.value),
                       QString::number(entry.lot.value),
                       entry.note}
        .join(QChar(0x1f));
}

QString signature(const intake::Reaction& reaction) {
    return QStringList{QString::number(reaction.member.value),
                       reaction.day.toString(Qt::ISODate),
                       reaction.symptom.toCaseFolded(),
                       QString::number(reaction.strength),
                       QString::number(reaction.redFlag ? 1 : 0),
                       QString::number(reaction.startMinute.value_or(-1)),
                       QString::number(reaction.minutes.value_or(-1)),
                       reaction.note}
        .join(QChar(0x1f));
}

/// Counts what the workbook holds, so that a line is taken as known once for each time it is held.
class Held {
public:
    explicit Held(const casebook::FamilyRecords& records) {
        for (const intake::IntakeEntry& entry : records.entries)
            ++m_counts[signature(entry)];
        for (const intake::Reaction& reaction : records.reactions)
            ++m_counts[signature(reaction)];
    }

    template <class Record>
    bool take(const Record& record) {
        int& count = m_counts[signature(record)];
        return count > 0 && count-- > 0;
    }

private:
    QHash<QString, int> m_counts;
};

/// Drops what is held already from an addition; true when something is left.
bool isNew(LogAddition& addition, Held& held) {
    if (addition.entry && held.take(*addition.entry))
        addition.entry.reset();
    if (addition.reaction && held.take(*addition.reaction))
        addition.reaction.reset();
    return addition.entry || addition.reaction;
}

/// The whole name and what the printed sheet calls a member: "Ana", "Ana L." beside another Ana,
/// "Member 1" on pages without names.
QStringList namesOf(const people::Member& member, qsizetype place) {
    const QStringList parts = member.name.simplified().split(QLatin1Char(' '));
    QStringList names{member.name, parts.first(), say("Member %1").arg(place + 1)};
    if (parts.size() > 1) {
        const QString initial = QStringLiteral("%1 %2").arg(parts.first(), parts.last().first(1));
        names << initial << QString(initial + QLatin1Char('.'));
    }
    return names;
}

} // namespace

QString datedName(const kitchen::Lot& lot) {
    return QStringLiteral("%1 of %2").arg(lot.container, lot.stored.toString(Qt::ISODate));
}

LogNames LogNames::of(const casebook::FamilyRecords& records) {
    LogNames names;
    for (qsizetype place = 0; place < records.members.size(); ++place)
        for (const QString& name : namesOf(records.members[place], place))
            names.members.insert(name.toCaseFolded(), records.members[place].id);
    for (const kitchen::Pot& pot : records.pots)
        names.pots.insert(pot.name.toCaseFolded(), pot.id);
    for (const kitchen::Lot& lot : records.lots) {
        names.lots.insert(lot.container.toCaseFolded(), lot.id);
        names.lots.insert(datedName(lot).toCaseFolded(), lot.id);
    }
    return names;
}

Problem toProblem(const LogRefusal& refusal) {
    const QString place = refusal.column.isEmpty()
                              ? say("line %1").arg(refusal.line)
                              : say("line %1, %2").arg(refusal.line).arg(refusal.column);
    return {Problem::Kind::BadInput, refusal.sentence, {}, place};
}

int LogReport::lineCount() const {
    QSet<int> lines;
    for (const LogAddition& addition : additions)
        lines.insert(addition.line);
    return static_cast<int>(lines.size());
}

int LogReport::entryCount() const {
    return static_cast<int>(
        std::count_if(additions.begin(), additions.end(),
                      [](const LogAddition& addition) { return addition.entry.has_value(); }));
}

int LogReport::reactionCount() const {
    return static_cast<int>(
        std::count_if(additions.begin(), additions.end(),
                      [](const LogAddition& addition) { return addition.reaction.has_value(); }));
}

Result<QString> textOfLog(const QByteArray& bytes) {
    QStringDecoder decoder(QStringDecoder::Utf8);
    QString text = decoder.decode(bytes);
    if (decoder.hasError())
        return problem(Problem::Kind::BadInput,
                       say("The text is not UTF-8; save the table again as CSV in UTF-8."));
    return text;
}

Result<LogReport> readLog(const QString& csv, const LogNames& names,
                          const casebook::FamilyRecords& records, const LogDays& days) {
    const auto lines = readCsv(csv, separatorOf(csv));
    if (!lines)
        return passOn(lines);
    if (lines->isEmpty())
        return problem(Problem::Kind::BadInput,
                       say("The file is empty; its first line must name the columns."));
    const auto columns = readHeader(lines->first());
    if (!columns)
        return passOn(columns);

    const LogContext context{names, records, days, *columns};
    Held held(records);
    LogReport report;
    for (const CsvRecord& line : lines->sliced(1)) {
        if (days.untilYesterday && dayOfLine(line, context) >= days.today) {
            ++report.leftOut;
            continue;
        }
        const auto read = readLogLine(line, context);
        if (!read) {
            report.refused.append(read.error());
            continue;
        }
        bool anyNew = false;
        for (LogAddition addition : *read)
            if (isNew(addition, held)) {
                report.additions.append(addition);
                anyNew = true;
            }
        if (!anyNew)
            ++report.alreadyThere;
    }
    return report;
}

Outcome importLog(store::Workbook& workbook, const casebook::FamilyRecords& records,
                  const LogReport& report) {
    if (!report.refused.isEmpty())
        return tl::unexpected<Problem>(toProblem(report.refused.first()));
    const QString sentence = report.lineCount() == 1
                                 ? say("Took in 1 line of a log for %1").arg(records.family.name)
                                 : say("Took in %1 lines of a log for %2")
                                       .arg(report.lineCount())
                                       .arg(records.family.name);
    return workbook.act(sentence, [&](store::Action& action) -> Outcome {
        for (const LogAddition& addition : report.additions) {
            if (addition.entry)
                if (const auto added = workbook.log().addEntry(action, *addition.entry); !added)
                    return passOn(added);
            if (addition.reaction)
                if (const auto added = workbook.log().addReaction(action, *addition.reaction);
                    !added)
                    return passOn(added);
        }
        return {};
    });
}

} // namespace ladlework::exchange
