#include "foundation/csv.h"

#include <QCoreApplication>

namespace ladlework {

namespace {

constexpr QChar quote = QLatin1Char('"');
constexpr QChar carriageReturn = QLatin1Char('\r');
constexpr QChar lineFeed = QLatin1Char('\n');
constexpr QChar byteOrderMark = QChar(QChar::ByteOrderMark);

/// Goes through the text once, record by record.
class CsvScanner {
public:
    CsvScanner(QStringView text, QChar separator) : m_text(text), m_separator(separator) {
        if (m_text.startsWith(byteOrderMark))
            m_at = 1;
    }

    Result<QList<CsvRecord>> scan() {
        QList<CsvRecord> records;
        while (m_at < m_text.size()) {
            if (skipLineBreak())
                continue;
            Result<CsvRecord> record = scanRecord();
            if (!record)
                return passOn(record);
            records.append(*std::move(record));
        }
        return records;
    }

private:
    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }
    [[nodiscard]] QChar here() const { return m_text[m_at]; }
    [[nodiscard]] bool atLineBreak() const {
        return !atEnd() && (here() == carriageReturn || here() == lineFeed);
    }

    /// Steps over one CRLF, LF or CR.
    bool skipLineBreak() {
        if (!atLineBreak())
            return false;
        const bool pair =
            here() == carriageReturn && m_at + 1 < m_text.size() && m_text[m_at + 1] == lineFeed;
        m_at += pair ? 2 : 1;
        ++m_line;
        return true;
    }

    Result<CsvRecord> scanRecord() {
        CsvRecord record;
        record.line = m_line;
        for (;;) {
            Result<QString> field = !atEnd() && here() == quote ? scanQuoted() : scanPlain();
            if (!field)
                return passOn(field);
            record.fields.append(*std::move(field));
            if (atEnd() || skipLineBreak())
                return record;
            ++m_at; // the separator
        }
    }

    Result<QString> scanPlain() {
        const qsizetype start = m_at;
        while (!atEnd() && here() != m_separator && !atLineBreak())
            ++m_at;
        return m_text.sliced(start, m_at - start).toString();
    }

    Result<QString> scanQuoted() {
        const int firstLine = m_line;
        QString field;
        ++m_at;
        while (!atEnd()) {
            const qsizetype start = m_at;
            if (skipLineBreak()) {
                field += m_text.sliced(start, m_at - start);
            } else if (here() != quote) {
                field += here();
                ++m_at;
            } else if (m_at + 1 < m_text.size() && m_text[m_at + 1] == quote) {
                field += quote;
                m_at += 2;
            } else {
                ++m_at;
                return closed(std::move(field));
            }
        }
        return wrong(QCoreApplication::translate(
                         "Csv", "A quotation mark is opened here and never closed; close it, or "
                                "write two of them where one is meant."),
                     firstLine);
    }

    Result<QString> closed(QString field) {
        if (atEnd() || here() == m_separator || atLineBreak())
            return field;
        return wrong(QCoreApplication::translate(
                         "Csv",
                         "There is text after a closing quotation mark; put the whole "
                         "field inside the marks, and write two of them where one is meant."),
                     m_line);
    }

    static tl::unexpected<Problem> wrong(const QString& sentence, int line) {
        return problem(Problem::Kind::BadInput, sentence,
                       QCoreApplication::translate("Csv", "line %1").arg(line));
    }

    QStringView m_text;
    QChar m_separator;
    qsizetype m_at = 0;
    int m_line = 1;
};

bool asksForQuotes(const QString& field, QChar separator) {
    return field.contains(separator) || field.contains(quote) || field.contains(carriageReturn) ||
           field.contains(lineFeed) || field.startsWith(byteOrderMark);
}

QString quoted(const QString& field) {
    QString doubled = field;
    doubled.replace(quote, QStringLiteral("\"\""));
    return quote + doubled + quote;
}

} // namespace

Result<QList<CsvRecord>> readCsv(const QString& text, QChar separator) {
    return CsvScanner(text, separator).scan();
}

QString writeCsvRecord(const QStringList& fields, QChar separator) {
    // A lone empty field would be written as a blank line, which a reader leaves out.
    const bool wouldBeBlank = fields.size() == 1 && fields.first().isEmpty();
    QString record;
    for (const QString& field : fields) {
        if (&field != &fields.first())
            record += separator;
        record += wouldBeBlank || asksForQuotes(field, separator) ? quoted(field) : field;
    }
    record += QStringLiteral("\r\n");
    return record;
}

} // namespace ladlework
