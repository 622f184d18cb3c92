#include "exchange/text_reader.h"

#include <QCoreApplication>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

} // namespace

TextReader::TextReader(const QJsonObject& object, const QString& path, const Reading& reading)
    : JsonReader(object, path), m_place(path), m_reading(reading) {}

template <class Value>
Value TextReader::taken(const QString& key, const Result<Value>& parsed) {
    if (parsed)
        return *parsed;
    fail(key, parsed.error().sentence);
    return Value{};
}

quantity::Volume TextReader::volume(const QString& key) {
    return taken(key, quantity::parseVolume(text(key), m_reading.measures));
}

quantity::Volume TextReader::volumeOr(const QString& key, quantity::Volume otherwise) {
    return has(key) ? volume(key) : otherwise;
}

QList<quantity::Volume> TextReader::volumes(const QString& key) {
    QList<quantity::Volume> volumes;
    const QStringList texts = optionalTexts(key);
    for (qsizetype index = 0; index < texts.size(); ++index) {
        const auto parsed = quantity::parseVolume(texts[index], m_reading.measures);
        if (!parsed)
            fail({parsed.error().kind, parsed.error().sentence, {}, pathOf(key, index)});
        volumes.append(parsed.value_or(quantity::Volume()));
    }
    return volumes;
}

quantity::Mass TextReader::mass(const QString& key) {
    return taken(key, quantity::parseMass(text(key), m_reading.measures));
}

quantity::Mass TextReader::massOr(const QString& key, quantity::Mass otherwise) {
    return has(key) ? mass(key) : otherwise;
}

quantity::Length TextReader::length(const QString& key) {
    return taken(key, quantity::parseLength(text(key), m_reading.measures));
}

quantity::Length TextReader::lengthOr(const QString& key, quantity::Length otherwise) {
    return has(key) ? length(key) : otherwise;
}

quantity::Duration TextReader::duration(const QString& key) {
    return taken(key, quantity::parseDuration(text(key)));
}

QDate TextReader::shiftedDay(const QString& key) {
    const QDate written = day(key);
    return written.isValid() ? written.addDays(m_reading.shiftDays) : written;
}

QDate TextReader::shiftedDayOrNone(const QString& key) {
    return has(key) ? shiftedDay(key) : QDate();
}

QString TextReader::textOr(const QString& key, const QString& otherwise) {
    return optionalText(key).value_or(otherwise);
}

void TextReader::accept(const Outcome& checked) {
    if (checked || failed())
        return;
    Problem found = checked.error();
    found.place = found.place.isEmpty() ? m_place : pathOf(found.place);
    fail(found);
}

void TextReader::failWithWords(const QString& key, const QString& words) {
    fail(key, say("This must be one of: %1.").arg(words));
}

void TextReader::failAt(const QString& place) {
    fail({Problem::Kind::BadInput, say("This must be an object in curly brackets."), {}, place});
}

qint64 Keys::add(TextReader& reader) {
    const QString keyName = QStringLiteral("key");
    const QString key = reader.text(keyName);
    if (reader.failed())
        return 0;
    if (key.trimmed().isEmpty())
        reader.fail(keyName, say("A key must not be blank."));
    if (m_numbers.contains(key))
        reader.fail(
            keyName,
            say("Another %1 of this file has the key \"%2\"; give each its own.").arg(m_what, key));
    const qint64 number = m_numbers.size() + 1;
    m_numbers.insert(key, number);
    return number;
}

qint64 Keys::find(TextReader& reader, const QString& key) const {
    const QString named = reader.text(key);
    if (reader.failed())
        return 0;
    const qint64 number = m_numbers.value(named, 0);
    if (number == 0)
        reader.fail(key, say("There is no %1 with the key \"%2\".").arg(m_what, named));
    return number;
}

} // namespace ladlework::exchange
