#include "ui/log/import_lines.h"

#include "foundation/csv.h"
#include "ui/shared/day_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace ladlework::ui {

namespace {

struct ImportWords {
    Q_DECLARE_TR_FUNCTIONS(ImportLines)
};

QString nameOf(const casebook::FamilyRecords& records, MemberId member) {
    const auto found = std::ranges::find(records.members, member, &people::Member::id);
    return found == records.members.end() ? QString() : found->name;
}

QString wordsOf(const exchange::LogAddition& addition, const casebook::FamilyRecords& records) {
    QStringList parts;
    MemberId member;
    QDate day;
    if (addition.entry) {
        member = addition.entry->member;
        day = addition.entry->day;
        parts.append(addition.entry->drunk == quantity::Volume{}
                         ? ImportWords::tr("missed")
                         : quantity::printVolume(addition.entry->drunk, records.family.measures));
    }
    if (addition.reaction) {
        member = addition.reaction->member;
        day = addition.reaction->day;
        QString felt = QStringLiteral("%1 %2")
                           .arg(addition.reaction->symptom)
                           .arg(addition.reaction->strength);
        if (addition.reaction->redFlag)
            felt += ImportWords::tr(" (red flag: stops the ladder)");
        parts.append(felt);
    }
    return ImportWords::tr("%1, %2: %3")
        .arg(nameOf(records, member), printDay(day, QLocale()), parts.join(QStringLiteral(", ")));
}

/// Every record of the sheet but the header, as already there until the report says otherwise.
QHash<int, ImportLine> heldLines(const QList<CsvRecord>& records) {
    QHash<int, ImportLine> lines;
    for (const CsvRecord& record : records.sliced(std::min<qsizetype>(1, records.size()))) {
        QStringList fields = record.fields;
        fields.removeAll(QString());
        lines.insert(record.line, {record.line, ImportLine::Fate::AlreadyThere,
                                   fields.join(QStringLiteral(" · ")), QString()});
    }
    return lines;
}

QChar separatorOf(const QString& sheet) {
    const QString header = sheet.section(u'\n', 0, 0);
    return header.contains(u';') && !header.contains(u',') ? QChar(u';') : QChar(u',');
}

} // namespace

int ImportPreview::count(ImportLine::Fate fate) const {
    return static_cast<int>(std::ranges::count(lines, fate, &ImportLine::fate));
}

QString withCommas(const QString& sheet) {
    if (!sheet.section(u'\n', 0, 0).contains(u'\t'))
        return sheet;
    const Result<QList<CsvRecord>> records = readCsv(sheet, QChar(u'\t'));
    if (!records)
        return sheet; // reading it will say what is wrong
    QString text;
    int line = 1;
    for (const CsvRecord& record : *records) {
        for (; line < record.line; ++line)
            text += QStringLiteral("\r\n"); // so that the lines keep their numbers
        const QString written = writeCsvRecord(record.fields);
        text += written;
        line += static_cast<int>(written.count(u'\n'));
    }
    return text;
}

Result<ImportPreview> previewImport(const QString& sheet, const casebook::FamilyRecords& records,
                                    QDate today) {
    const QString csv = withCommas(sheet);
    Result<exchange::LogReport> report =
        exchange::readLog(csv, exchange::LogNames::of(records), records, {today, 0, false});
    if (!report)
        return problem(
            report.error().kind,
            report.error().place.isEmpty()
                ? report.error().sentence
                : ImportWords::tr("%1 (%2)").arg(report.error().sentence, report.error().place),
            report.error().place);
    const Result<QList<CsvRecord>> read = readCsv(csv, separatorOf(csv));
    if (!read)
        return passOn(read);
    QHash<int, ImportLine> lines = heldLines(*read);
    for (const exchange::LogAddition& addition : report->additions) {
        ImportLine& line = lines[addition.line];
        const QString words = wordsOf(addition, records);
        // A line with several reactions gives several additions.
        line.words = line.fate == ImportLine::Fate::Added
                         ? QStringLiteral("%1; %2").arg(line.words, words)
                         : words;
        line.fate = ImportLine::Fate::Added;
    }
    for (const exchange::LogRefusal& refusal : report->refused) {
        lines[refusal.line].fate = ImportLine::Fate::Refused;
        lines[refusal.line].words =
            refusal.column.isEmpty()
                ? refusal.sentence
                : QStringLiteral("%1: %2").arg(refusal.column, refusal.sentence);
    }
    ImportPreview preview{lines.values(), *std::move(report)};
    std::ranges::sort(preview.lines, {}, &ImportLine::line);
    return preview;
}

} // namespace ladlework::ui
