#pragma once

#include "foundation/json_reader.h"
#include "intake/ladder.h"
#include "quantity/measure.h"

#include <QDate>
#include <QHash>

namespace ladlework::kitchen {
class Catalogue;
}
namespace ladlework::people {
struct Phase;
}

namespace ladlework::exchange {

/// How dates and amounts of a practice text are to be taken.
struct Reading {
    const kitchen::Catalogue& catalogue;
    const QList<people::Phase>& phases;
    quantity::MeasureSystem measures = quantity::MeasureSystem::UsCustomary;
    QDate today;                    ///< nothing that has happened may lie after it
    int shiftDays = 0;              ///< added to every date that is read
    bool untilYesterday = false;    ///< leave out what happened on `today` or later
    intake::LadderRules houseRules; ///< what a ladder starts with

    /// True for a day that is left out: see `untilYesterday`.
    [[nodiscard]] bool leavesOut(QDate happened) const {
        return untilYesterday && happened >= today;
    }
};

/// A strict reader of one object of a practice text: amounts are written as a kitchen says them
/// ("3 lb 2 oz", "1½ cups", "2 h 30 min"), days are ISO days and come back shifted.
class TextReader : public JsonReader {
public:
    TextReader(const QJsonObject& object, const QString& path, const Reading& reading);

    [[nodiscard]] const Reading& reading() const { return m_reading; }

    quantity::Volume volume(const QString& key);
    quantity::Volume volumeOr(const QString& key, quantity::Volume otherwise);
    /// A list of volumes; empty when the key is absent.
    QList<quantity::Volume> volumes(const QString& key);
    quantity::Mass mass(const QString& key);
    quantity::Mass massOr(const QString& key, quantity::Mass otherwise);
    quantity::Length length(const QString& key);
    quantity::Length lengthOr(const QString& key, quantity::Length otherwise);
    quantity::Duration duration(const QString& key);

    /// A day, shifted.
    QDate shiftedDay(const QString& key);
    /// A day, shifted; an invalid one when the key is absent.
    QDate shiftedDayOrNone(const QString& key);

    QString textOr(const QString& key, const QString& otherwise);

    /// One of the words that `fromId` knows. `words` lists them for the sentence.
    template <class Value>
    Value word(const QString& key, std::optional<Value> (*fromId)(QStringView),
               const QString& words) {
        const std::optional<Value> known = fromId(text(key));
        if (!known)
            failWithWords(key, words);
        return known.value_or(Value{});
    }

    /// Calls `read` with a reader of each object in the list under `key`, until one fails. An
    /// absent key is an empty list.
    template <class Read>
    void each(const QString& key, Read read) {
        if (!has(key))
            return;
        const QJsonArray values = array(key);
        for (qsizetype index = 0; index < values.size() && !failed(); ++index) {
            if (!values[index].isObject()) {
                failAt(pathOf(key, index));
                return;
            }
            TextReader inner(values[index].toObject(), pathOf(key, index), m_reading);
            read(inner);
            if (const Outcome finished = inner.finish(); !finished)
                fail(finished.error());
        }
    }

    /// Takes over what a check() of the record just read has found.
    void accept(const Outcome& checked);

    using JsonReader::fail;

private:
    template <class Value>
    Value taken(const QString& key, const Result<Value>& parsed);
    void failWithWords(const QString& key, const QString& words);
    void failAt(const QString& place);

    QString m_place;
    const Reading& m_reading;
};

/// The keys by which one record of a file speaks of another, with their provisional numbers.
class Keys {
public:
    /// `what` names the kind of record in sentences: "pot".
    explicit Keys(QString what) : m_what(std::move(what)) {}

    /// Reads the key of the record under "key" and gives it the next number, from 1 on.
    qint64 add(TextReader& reader);
    /// The number of the record that `key` of `reader` names; 0 and a problem when there is none.
    qint64 find(TextReader& reader, const QString& key) const;
    [[nodiscard]] const QHash<QString, qint64>& all() const { return m_numbers; }

private:
    QString m_what;
    QHash<QString, qint64> m_numbers;
};

} // namespace ladlework::exchange
