#include "foundation/csv.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>
#include <QStandardPaths>

#include <gtest/gtest.h>

namespace ladlework {
namespace {

QList<QStringList> fieldsOf(const Result<QList<CsvRecord>>& records) {
    QList<QStringList> all;
    for (const CsvRecord& record : *records)
        all.append(record.fields);
    return all;
}

struct ReadCase {
    QString text;
    QList<QStringList> records;
};

/// The examples of RFC 4180, section 2, rules 1 to 7, with the text as it stands there.
TEST(CsvTest, ReadsTheExamplesOfRfc4180) {
    const QStringList abc{QStringLiteral("aaa"), QStringLiteral("bbb"), QStringLiteral("ccc")};
    const QStringList xyz{QStringLiteral("zzz"), QStringLiteral("yyy"), QStringLiteral("xxx")};
    const QStringList header{QStringLiteral("field_name"), QStringLiteral("field_name"),
                             QStringLiteral("field_name")};
    const ReadCase cases[] = {
        {QStringLiteral("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), {abc, xyz}},
        {QStringLiteral("aaa,bbb,ccc\r\nzzz,yyy,xxx"), {abc, xyz}},
        {QStringLiteral("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"),
         {header, abc, xyz}},
        {QStringLiteral("aaa,bbb,ccc"), {abc}},
        {QStringLiteral("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), {abc, xyz}},
        {QStringLiteral("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
         {{QStringLiteral("aaa"), QStringLiteral("b\r\nbb"), QStringLiteral("ccc")}, xyz}},
        {QStringLiteral("\"aaa\",\"b\"\"bb\",\"ccc\""),
         {{QStringLiteral("aaa"), QStringLiteral("b\"bb"), QStringLiteral("ccc")}}},
    };
    for (const ReadCase& c : cases) {
        SCOPED_TRACE(c.text.toStdString());
        const Result<QList<CsvRecord>> records = readCsv(c.text);
        ASSERT_TRUE(records.has_value());
        EXPECT_EQ(fieldsOf(records), c.records);
    }
}

TEST(CsvTest, ReadsOddButSoundTexts) {
    const QString a = QStringLiteral("a");
    const QString b = QStringLiteral("b");
    const ReadCase cases[] = {
        {QString(), {}},
        {QStringLiteral("\n\r\n\r"), {}},
        {QStringLiteral("a\n\n\nb\n"), {{a}, {b}}},
        {QStringLiteral("a,b\na,b"), {{a, b}, {a, b}}},
        {QStringLiteral("a\rb"), {{a}, {b}}},
        {QStringLiteral("\uFEFFa,b\n"), {{a, b}}},
        {QStringLiteral("\uFEFF"), {}},
        {QStringLiteral(","), {{QString(), QString()}}},
        {QStringLiteral("a,\n,b"), {{a, QString()}, {QString(), b}}},
        {QStringLiteral("\"\""), {{QString()}}},
        {QStringLiteral("\"\"\"\""), {{QStringLiteral("\"")}}},
        {QStringLiteral(" a , b "), {{QStringLiteral(" a "), QStringLiteral(" b ")}}},
        {QStringLiteral("11\" pot,b"), {{QStringLiteral("11\" pot"), b}}},
        {QStringLiteral("\"a,b\""), {{QStringLiteral("a,b")}}},
        {QStringLiteral("\"\n\"\n"), {{QStringLiteral("\n")}}},
    };
    for (const ReadCase& c : cases) {
        SCOPED_TRACE(c.text.toStdString());
        const Result<QList<CsvRecord>> records = readCsv(c.text);
        ASSERT_TRUE(records.has_value());
        EXPECT_EQ(fieldsOf(records), c.records);
    }
}

TEST(CsvTest, ReadsAnotherSeparator) {
    const Result<QList<CsvRecord>> records =
        readCsv(QStringLiteral("a,b;\"c;d\"\n"), QLatin1Char(';'));
    ASSERT_TRUE(records.has_value());
    EXPECT_EQ(fieldsOf(records),
              (QList<QStringList>{{QStringLiteral("a,b"), QStringLiteral("c;d")}}));
}

TEST(CsvTest, CountsTheLineARecordStartsOn) {
    const Result<QList<CsvRecord>> records =
        readCsv(QStringLiteral("a\r\n\r\n\"b\r\nb\nb\"\nc\rd"));
    ASSERT_TRUE(records.has_value());
    QList<int> lines;
    for (const CsvRecord& record : *records)
        lines.append(record.line);
    EXPECT_EQ(lines, (QList<int>{1, 3, 6, 7}));
}

struct BadCase {
    QString text;
    QString place;
};

TEST(CsvTest, RefusesBrokenQuotes) {
    const BadCase cases[] = {
        {QStringLiteral("\""), QStringLiteral("line 1")},
        {QStringLiteral("a\nb,\"c\nd\n"), QStringLiteral("line 2")},
        {QStringLiteral("a\n\n\"b\"c"), QStringLiteral("line 3")},
        {QStringLiteral("\"a\" ,b"), QStringLiteral("line 1")},
        {QStringLiteral("\"a\nb\"c"), QStringLiteral("line 2")},
        {QStringLiteral("\"a\"\"\n"), QStringLiteral("line 1")},
    };
    for (const BadCase& c : cases) {
        SCOPED_TRACE(c.text.toStdString());
        const Result<QList<CsvRecord>> records = readCsv(c.text);
        ASSERT_FALSE(records.has_value());
        EXPECT_EQ(records.error().kind, Problem::Kind::BadInput);
        EXPECT_EQ(records.error().place, c.place);
        EXPECT_FALSE(records.error().sentence.isEmpty());
    }
}

TEST(CsvTest, QuotesOnlyWhereRfc4180AsksForIt) {
    const std::pair<QStringList, QString> cases[] = {
        {{QStringLiteral("aaa"), QStringLiteral("b bb")}, QStringLiteral("aaa,b bb\r\n")},
        {{QStringLiteral("a,b"), QString()}, QStringLiteral("\"a,b\",\r\n")},
        {{QStringLiteral("b\"bb")}, QStringLiteral("\"b\"\"bb\"\r\n")},
        {{QStringLiteral("b\r\nbb")}, QStringLiteral("\"b\r\nbb\"\r\n")},
        {{QStringLiteral("b\nbb")}, QStringLiteral("\"b\nbb\"\r\n")},
        {{QStringLiteral("b\rbb")}, QStringLiteral("\"b\rbb\"\r\n")},
        {{QStringLiteral("a;b")}, QStringLiteral("a;b\r\n")},
        {{QString()}, QStringLiteral("\"\"\r\n")},
        {{QString(), QString()}, QStringLiteral(",\r\n")},
    };
    for (const auto& [fields, text] : cases)
        EXPECT_EQ(writeCsvRecord(fields), text) << text.toStdString();
    EXPECT_EQ(writeCsvRecord({QStringLiteral("a;b"), QStringLiteral("c,d")}, QLatin1Char(';')),
              QStringLiteral("\"a;b\";c,d\r\n"));
}

/// Every record of one to three fields out of awkward ones.
QList<QStringList> awkwardRecords() {
    const QStringList fields{QString(),
                             QStringLiteral("plain"),
                             QStringLiteral(" spaced "),
                             QStringLiteral(","),
                             QStringLiteral("\""),
                             QStringLiteral("\"\"quoted\"\""),
                             QStringLiteral("two\r\nlines"),
                             QStringLiteral("two\nlines"),
                             QStringLiteral("\r"),
                             QStringLiteral("\uFEFFmark"),
                             QStringLiteral("1½ cups, \u4e2d\U0001F372"),
                             QStringLiteral("# no remark")};
    QList<QStringList> records;
    for (const QString& first : fields) {
        records.append({first});
        for (const QString& second : fields) {
            records.append({first, second});
            for (const QString& third : fields)
                records.append({first, second, third});
        }
    }
    return records;
}

QString written(const QList<QStringList>& records, QChar separator) {
    QString text;
    for (const QStringList& record : records)
        text += writeCsvRecord(record, separator);
    return text;
}

TEST(CsvTest, ReadsBackWhatItWrote) {
    const QList<QStringList> records = awkwardRecords();
    for (const QChar separator : {QLatin1Char(','), QLatin1Char(';'), QLatin1Char('\t')}) {
        const Result<QList<CsvRecord>> read = readCsv(written(records, separator), separator);
        ASSERT_TRUE(read.has_value());
        EXPECT_EQ(fieldsOf(read), records);
    }
}

/// The csv module of Python is the other parser.
QJsonArray readByPython(const QString& python, const QString& text) {
    const QString program =
        QStringLiteral("import csv, io, json, sys\n"
                       "text = sys.stdin.buffer.read().decode('utf-8')\n"
                       "rows = list(csv.reader(io.StringIO(text, newline=''), strict=True))\n"
                       "sys.stdout.write(json.dumps(rows))\n");
    QProcess process;
    process.start(python, {QStringLiteral("-c"), program});
    process.write(text.toUtf8());
    process.closeWriteChannel();
    EXPECT_TRUE(process.waitForFinished());
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return QJsonDocument::fromJson(process.readAllStandardOutput()).array();
}

TEST(CsvTest, IsReadBackByAnotherParser) {
    const QString python = QStandardPaths::findExecutable(QStringLiteral("python3"));
    if (python.isEmpty())
        GTEST_SKIP() << "python3 is not here";
    const QList<QStringList> records = awkwardRecords();
    QList<QStringList> read;
    for (const QJsonValue row : readByPython(python, written(records, QLatin1Char(',')))) {
        QStringList fields;
        for (const QJsonValue field : row.toArray())
            fields.append(field.toString());
        read.append(fields);
    }
    EXPECT_EQ(read, records);
}

} // namespace
} // namespace ladlework
