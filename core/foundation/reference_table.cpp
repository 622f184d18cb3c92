#include "foundation/reference_table.h"

#include "foundation/csv.h"

#include <QCoreApplication>
#include <QFile>
#include <cmath>
#include <stdexcept>

namespace ladlework {

namespace {

/// The text with every remark line emptied, so that line numbers stay and a remark may hold any
/// character. A line inside a quoted field is no remark even when it starts with #.
QString withoutRemarks(const QString& text) {
    QStringList lines = text.split(QLatin1Char('\n'));
    bool insideQuotes = false;
    for (QString& line : lines) {
        if (!insideQuotes && line.startsWith(QLatin1Char('#')))
            line.clear();
        if (line.count(QLatin1Char('"')) % 2 != 0)
            insideQuotes = !insideQuotes;
    }
    return lines.join(QLatin1Char('\n'));
}

QString fileOf(const QString& name) {
    return QStringLiteral(":/reference/") + name + QStringLiteral(".csv");
}

QString placeOf(const QString& name, int line) {
    return QCoreApplication::translate("ReferenceTable", "%1.csv, line %2").arg(name).arg(line);
}

tl::unexpected<Problem> damaged(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::Damaged, sentence, place);
}

Result<QHash<QString, qsizetype>> readHeader(const CsvRecord& header, const QString& name) {
    QHash<QString, qsizetype> columns;
    for (qsizetype index = 0; index < header.fields.size(); ++index) {
        const QString& column = header.fields[index];
        if (column.isEmpty() || columns.contains(column))
            return damaged(QCoreApplication::translate(
                               "ReferenceTable", "The column name \"%1\" is blank or stands twice.")
                               .arg(column),
                           placeOf(name, header.line));
        columns.insert(column, index);
    }
    for (const QString& needed : {QStringLiteral("source"), QStringLiteral("basis")})
        if (!columns.contains(needed))
            return damaged(
                QCoreApplication::translate("ReferenceTable", "The column \"%1\" is missing.")
                    .arg(needed),
                placeOf(name, header.line));
    return columns;
}

} // namespace

Result<ReferenceTable> ReferenceTable::load(const QString& name) {
    QFile file(fileOf(name));
    if (!file.open(QIODevice::ReadOnly))
        return damaged(
            QCoreApplication::translate(
                "ReferenceTable", "The reference table is missing; install the program anew."),
            file.fileName());
    const Result<QList<CsvRecord>> records =
        readCsv(withoutRemarks(QString::fromUtf8(file.readAll())));
    if (!records)
        return problem(Problem::Kind::Damaged, records.error().sentence,
                       name + QStringLiteral(".csv, ") + records.error().place);
    if (records->isEmpty())
        return damaged(
            QCoreApplication::translate("ReferenceTable", "The reference table has no header."),
            placeOf(name, 1));

    ReferenceTable table;
    table.m_name = name;
    const CsvRecord& header = records->first();
    Result<QHash<QString, qsizetype>> columns = readHeader(header, name);
    if (!columns)
        return passOn(columns);
    table.m_columns = *std::move(columns);
    for (const CsvRecord& record : records->sliced(1)) {
        if (record.fields.size() != header.fields.size())
            return damaged(QCoreApplication::translate(
                               "ReferenceTable", "The line has %1 fields where the header has %2.")
                               .arg(record.fields.size())
                               .arg(header.fields.size()),
                           placeOf(name, record.line));
        table.m_rows.push_back(record.fields);
        table.m_lines.push_back(record.line);
    }
    return table;
}

const QString& ReferenceTable::Row::text(const QString& column) const {
    const auto found = m_table.m_columns.constFind(column);
    if (found == m_table.m_columns.cend())
        throw std::runtime_error(QStringLiteral("%1.csv has no column \"%2\"")
                                     .arg(m_table.m_name, column)
                                     .toStdString());
    return m_table.m_rows.at(static_cast<size_t>(m_index)).at(*found);
}

double ReferenceTable::Row::number(const QString& column) const {
    const QString& cell = text(column);
    bool understood = false;
    const double read = cell.toDouble(&understood);
    if (!understood || !std::isfinite(read))
        broken(column, QStringLiteral("a number"));
    return read;
}

QString ReferenceTable::Row::cited() const {
    return QStringLiteral("%1 (%2)").arg(text(QStringLiteral("source")),
                                         text(QStringLiteral("basis")));
}

bool ReferenceTable::Row::flag(const QString& column) const {
    const QString& cell = text(column);
    const bool yes = cell == QLatin1String("yes");
    if (!yes && cell != QLatin1String("no"))
        broken(column, QStringLiteral("yes or no"));
    return yes;
}

void ReferenceTable::Row::broken(const QString& column, const QString& wanted) const {
    throw std::runtime_error(QStringLiteral("%1.csv, line %2, column \"%3\": \"%4\" is not %5")
                                 .arg(m_table.m_name)
                                 .arg(m_table.m_lines.at(static_cast<size_t>(m_index)))
                                 .arg(column, text(column), wanted)
                                 .toStdString());
}

} // namespace ladlework
