#pragma once

#include "foundation/result.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonObject>
#include <QJsonValue>
#include <QSet>
#include <QStringList>
#include <optional>

namespace ladlework {

/// Reads one JSON object strictly: every key must be asked for, every value must have the type
/// asked for, and the first thing that is wrong is kept as a Problem whose place is the JSON path
/// ("cuts[1].mass_g"). After it all further reads return defaults, so that a reader can be written
/// straight down and asked once at the end with finish().
class JsonReader {
public:
    JsonReader(QJsonObject object, QString path);

    [[nodiscard]] bool has(const QString& key) const;

    QString text(const QString& key);
    bool flag(const QString& key);
    /// A finite number within [least, most].
    double number(const QString& key, double least, double most);
    /// A whole number within [least, most].
    int integer(const QString& key, int least, int most);
    /// An ISO day "YYYY-MM-DD".
    QDate day(const QString& key);
    QJsonArray array(const QString& key);
    QJsonObject object(const QString& key);
    /// Is the key there with the value null? It counts as asked for then.
    bool isNull(const QString& key);
    /// The keys that the object holds, for objects whose keys are names.
    [[nodiscard]] QStringList keys() const { return m_object.keys(); }

    /// Reads the object under a key: `read` takes its JsonReader, which is finished here.
    template <class Read>
    void readObject(const QString& key, const Read& read) {
        const QJsonObject value = object(key);
        if (!failed())
            readInner(value, pathOf(key), read);
    }
    /// Reads a list of objects one by one, up to the first that is wrong.
    template <class Read>
    void readEach(const QString& key, const Read& read) {
        const QJsonArray values = array(key);
        for (qsizetype index = 0; index < values.size() && !failed(); ++index)
            readInner(values.at(index), pathOf(key, index), read);
    }

    // Nothing, the other value or an empty list when the key is absent; null is a wrong type.
    std::optional<QString> optionalText(const QString& key);
    std::optional<double> optionalNumber(const QString& key, double least, double most);
    std::optional<int> optionalInteger(const QString& key, int least, int most);
    bool flagOr(const QString& key, bool otherwise);
    QStringList optionalTexts(const QString& key);

    /// The path of a key, or of one place in an array under it.
    [[nodiscard]] QString pathOf(const QString& key) const;
    [[nodiscard]] QString pathOf(const QString& key, qsizetype index) const;

    /// Takes over a problem found by a reader of an inner object, or by the caller.
    void fail(Problem problem);
    void fail(const QString& key, const QString& sentence);
    [[nodiscard]] bool failed() const { return m_problem.has_value(); }

    /// The first problem found; else BadInput when the object holds a key that was never asked for.
    Outcome finish();

private:
    QJsonValue take(const QString& key);
    /// Fails with the sentence that an object is wanted at this path.
    void failNoObject(const QString& path);

    template <class Read>
    void readInner(const QJsonValue& value, const QString& path, const Read& read) {
        if (!value.isObject()) {
            failNoObject(path);
            return;
        }
        JsonReader inner(value.toObject(), path);
        read(inner);
        if (const Outcome done = inner.finish(); !done)
            fail(done.error());
    }

    QJsonObject m_object;
    QString m_path;
    QSet<QString> m_asked;
    std::optional<Problem> m_problem;
};

/// Parses a JSON text whose top level is an object; BadInput names the offset otherwise.
Result<QJsonObject> parseJsonObject(const QByteArray& json);

} // namespace ladlework
