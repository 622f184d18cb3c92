#include "foundation/json_reader.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <cmath>

namespace ladlework {

namespace {

/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(JsonReader)
};

QString withRange(const QString& sentence, double least, double most) {
    return sentence.arg(least, 0, 'g', 12).arg(most, 0, 'g', 12);
}

} // namespace

JsonReader::JsonReader(QJsonObject object, QString path)
    : m_object(std::move(object)), m_path(std::move(path)) {}

bool JsonReader::has(const QString& key) const {
    return m_object.contains(key);
}

QJsonValue JsonReader::take(const QString& key) {
    m_asked.insert(key);
    const QJsonValue value = m_object.value(key);
    if (value.isUndefined())
        fail(key, Say::tr("This is missing; give it a value."));
    return value;
}

QString JsonReader::text(const QString& key) {
    const QJsonValue value = take(key);
    if (!value.isString())
        fail(key, Say::tr("This must be text in quotation marks."));
    return failed() ? QString() : value.toString();
}

bool JsonReader::flag(const QString& key) {
    const QJsonValue value = take(key);
    if (!value.isBool())
        fail(key, Say::tr("This must be true or false."));
    return !failed() && value.toBool();
}

double JsonReader::number(const QString& key, double least, double most) {
    const QJsonValue value = take(key);
    const double read = value.toDouble();
    // The comparison is written so that a not-a-number fails it.
    if (!value.isDouble() || !(read >= least && read <= most))
        fail(key, withRange(Say::tr("This must be a number from %1 to %2."), least, most));
    return failed() ? 0.0 : read;
}

int JsonReader::integer(const QString& key, int least, int most) {
    const QJsonValue value = take(key);
    const double read = value.toDouble();
    if (!value.isDouble() || !(read >= least && read <= most) || std::trunc(read) != read)
        fail(key, withRange(Say::tr("This must be a whole number from %1 to %2."), least, most));
    return failed() ? 0 : static_cast<int>(read);
}

QDate JsonReader::day(const QString& key) {
    const QJsonValue value = take(key);
    const QString written = value.toString();
    const QDate read = QDate::fromString(written, QStringLiteral("yyyy-MM-dd"));
    // The length is asked for because Qt reads years of more than four digits.
    if (!read.isValid() || written.size() != 10)
        fail(key, Say::tr("This must be a day of the calendar written as \"YYYY-MM-DD\"."));
    return failed() ? QDate() : read;
}

QJsonArray JsonReader::array(const QString& key) {
    const QJsonValue value = take(key);
    if (!value.isArray())
        fail(key, Say::tr("This must be a list in square brackets."));
    return failed() ? QJsonArray() : value.toArray();
}

QJsonObject JsonReader::object(const QString& key) {
    const QJsonValue value = take(key);
    if (!value.isObject())
        failNoObject(pathOf(key));
    return failed() ? QJsonObject() : value.toObject();
}

bool JsonReader::isNull(const QString& key) {
    const bool null = m_object.value(key).isNull();
    if (null)
        m_asked.insert(key);
    return null;
}

void JsonReader::failNoObject(const QString& path) {
    fail({Problem::Kind::BadInput, Say::tr("This must be an object in curly brackets."), {}, path});
}

std::optional<QString> JsonReader::optionalText(const QString& key) {
    m_asked.insert(key);
    if (!has(key))
        return std::nullopt;
    QString read = text(key);
    return failed() ? std::nullopt : std::optional(std::move(read));
}

std::optional<double> JsonReader::optionalNumber(const QString& key, double least, double most) {
    m_asked.insert(key);
    if (!has(key))
        return std::nullopt;
    const double read = number(key, least, most);
    return failed() ? std::nullopt : std::optional(read);
}

std::optional<int> JsonReader::optionalInteger(const QString& key, int least, int most) {
    m_asked.insert(key);
    if (!has(key))
        return std::nullopt;
    const int read = integer(key, least, most);
    return failed() ? std::nullopt : std::optional(read);
}

bool JsonReader::flagOr(const QString& key, bool otherwise) {
    m_asked.insert(key);
    if (!has(key))
        return otherwise;
    const bool read = flag(key);
    return failed() ? otherwise : read;
}

QStringList JsonReader::optionalTexts(const QString& key) {
    m_asked.insert(key);
    if (!has(key))
        return {};
    QStringList texts;
    const QJsonArray values = array(key);
    for (qsizetype index = 0; index < values.size(); ++index) {
        if (!values[index].isString())
            fail({Problem::Kind::BadInput,
                  Say::tr("This must be text in quotation marks."),
                  {},
                  pathOf(key, index)});
        texts.append(values[index].toString());
    }
    return failed() ? QStringList() : texts;
}

QString JsonReader::pathOf(const QString& key) const {
    return m_path.isEmpty() ? key : QString(m_path + QLatin1Char('.') + key);
}

QString JsonReader::pathOf(const QString& key, qsizetype index) const {
    return pathOf(key) + QLatin1Char('[') + QString::number(index) + QLatin1Char(']');
}

void JsonReader::fail(Problem problem) {
    if (!m_problem)
        m_problem = std::move(problem);
}

void JsonReader::fail(const QString& key, const QString& sentence) {
    fail({Problem::Kind::BadInput, sentence, {}, pathOf(key)});
}

Outcome JsonReader::finish() {
    for (const QString& key : m_object.keys())
        if (!m_asked.contains(key))
            fail(key, Say::tr("This is not known here; mend its spelling or leave it out."));
    if (m_problem)
        return tl::unexpected(*m_problem);
    return {};
}

Result<QJsonObject> parseJsonObject(const QByteArray& json) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    const QString place =
        Say::tr("offset %1").arg(error.error == QJsonParseError::NoError ? 0 : error.offset);
    if (error.error != QJsonParseError::NoError)
        return problem(Problem::Kind::BadInput,
                       Say::tr("This is not JSON that can be read: %1.").arg(error.errorString()),
                       place);
    if (!document.isObject())
        return problem(Problem::Kind::BadInput,
                       Say::tr("The JSON must be one object in curly brackets."), place);
    return document.object();
}

} // namespace ladlework
