#include "exchange/log_line.h"

#include "intake/felt_items.h"
#include "intake/red_flags.h"

#include <QCoreApplication>
#include <QSet>

namespace ladlework::exchange {

namespace {

constexpr int minutesPerHour = 60;
constexpr int strongest = 10;

QString say(const char* sentence) {
    return QCoreApplication::translate("LogCsv", sentence);
}

/// Reads the cells of one line; keeps the first thing that is wrong.
class LineReader {
public:
    LineReader(const CsvRecord& record, const LogContext& context)
        : m_record(record), m_context(context) {}

    tl::expected<QList<LogAddition>, LogRefusal> read() {
        readDayAndMember();
        LogAddition addition;
        addition.line = m_record.line;
        const bool reacted = !cell(QStringLiteral("reaction")).isEmpty();
        if (!cell(QStringLiteral("amount")).isEmpty())
            addition.entry = readEntry(!reacted);
        QList<intake::Reaction> reactions;
        if (reacted)
            reactions = readReactions();
        else
            refuseLoneReactionCells();
        if (!addition.entry && !reacted)
            refuse(QStringLiteral("amount"),
                   say("There is neither an amount nor a reaction; write \"0\" or \"missed\" "
                       "where nothing was drunk."));
        if (m_refusal)
            return tl::unexpected<LogRefusal>(*m_refusal);
        QList<LogAddition> additions;
        for (const intake::Reaction& reaction : reactions) {
            addition.reaction = reaction;
            additions.append(addition);
            addition.entry.reset(); // what was drunk goes with the first
        }
        if (additions.isEmpty())
            additions.append(addition);
        return additions;
    }

private:
    [[nodiscard]] QString cell(const QString& column) const {
        const qsizetype place = m_context.columns.value(column, -1);
        return place < 0 ? QString() : m_record.fields.value(place).trimmed();
    }

    void refuse(const QString& column, const QString& sentence) {
        if (!m_refusal)
            m_refusal = LogRefusal{m_record.line, column, sentence};
    }

    void accept(const Outcome& checked, const QString& column) {
        if (!checked)
            refuse(column, checked.error().sentence);
    }

    void readDayAndMember() {
        const QString dayColumn = QStringLiteral("day");
        m_day = dayOfLine(m_record, m_context);
        if (!m_day.isValid())
            refuse(dayColumn, say("\"%1\" is no day of the calendar; write it as YYYY-MM-DD.")
                                  .arg(cell(dayColumn)));
        else if (m_day > m_context.days.today)
            refuse(dayColumn, say("%1 is still to come.").arg(cell(dayColumn)));
        const QString column = QStringLiteral("member");
        m_member = named(m_context.names.members, cell(column), column,
                         say("There is nobody called \"%1\" in this family."));
    }

    /// The one id that a name stands for.
    template <class IdType>
    IdType named(const QMultiHash<QString, IdType>& names, const QString& name,
                 const QString& column, const QString& unknown) {
        return onlyOne(names.values(name.toCaseFolded()), name, column, unknown);
    }

    template <class IdType>
    IdType onlyOne(const QList<IdType>& found, const QString& name, const QString& column,
                   const QString& unknown) {
        const QSet<IdType> ids(found.begin(), found.end());
        if (ids.isEmpty())
            refuse(column, unknown.arg(name));
        else if (ids.size() > 1)
            refuse(column, say("\"%1\" could be more than one; write the whole name.").arg(name));
        return ids.size() == 1 ? *ids.begin() : IdType{};
    }

    intake::IntakeEntry readEntry(bool withNote) {
        const QString amount = QStringLiteral("amount");
        intake::IntakeEntry entry;
        entry.member = m_member;
        entry.day = m_day;
        const QString text = cell(amount);
        const bool nothing = text.compare(QStringLiteral("missed"), Qt::CaseInsensitive) == 0;
        if (!nothing) {
            const auto drunk = quantity::parseVolume(text, m_context.records.family.measures);
            if (drunk)
                entry.drunk = *drunk;
            else
                refuse(amount, drunk.error().sentence);
        }
        const QString pot = QStringLiteral("pot");
        if (!cell(pot).isEmpty())
            entry.pot = named(m_context.names.pots, cell(pot), pot,
                              say("There is no pot called \"%1\" for this family."));
        if (!cell(QStringLiteral("lot")).isEmpty())
            takeLot(entry);
        if (withNote)
            entry.note = cell(QStringLiteral("note"));
        accept(intake::check(entry, m_context.days.today), amount);
        return entry;
    }

    /// A lot by its container, among those that were kept on the day; it tells the pot too.
    void takeLot(intake::IntakeEntry& entry) {
        const QString column = QStringLiteral("lot");
        const QList<LotId> called = m_context.names.lots.values(cell(column).toCaseFolded());
        QList<LotId> kept;
        for (const kitchen::Lot& lot : m_context.records.lots)
            if (called.contains(lot.id) && lot.stored <= m_day &&
                (!lot.goneOn.isValid() || lot.goneOn >= m_day))
                kept.append(lot.id);
        entry.lot = onlyOne(kept, cell(column), column,
                            say("There is no container \"%1\" kept on that day."));
        const PotId cooked = potOf(entry.lot);
        if (!entry.pot.isStored())
            entry.pot = cooked;
        else if (cooked.isStored() && entry.pot != cooked)
            refuse(column, say("\"%1\" was filled from another pot.").arg(cell(column)));
    }

    [[nodiscard]] PotId potOf(LotId id) const {
        for (const kitchen::Lot& lot : m_context.records.lots)
            if (lot.id == id)
                for (const kitchen::Batch& batch : m_context.records.batches)
                    if (batch.id == lot.batch)
                        return batch.pot;
        return {};
    }

    /// One reaction with the strength of its column; or, where that is blank, each of the cell with
    /// its own.
    QList<intake::Reaction> readReactions() {
        const QString text = cell(QStringLiteral("reaction"));
        if (!cell(QStringLiteral("strength")).isEmpty())
            return {readReaction(text, cell(QStringLiteral("strength")))};
        QStringList known;
        for (const intake::SymptomKind& kind : intake::symptomKinds())
            known.append(kind.name);
        for (const intake::Symptom& own : m_context.records.symptoms)
            known.append(own.name);
        QList<intake::Reaction> reactions;
        for (const QString& item : intake::feltItems(text, known)) {
            const auto [words, strength] = known.contains(item, Qt::CaseInsensitive)
                                               ? intake::FeltWords{item, QString()}
                                               : intake::feltWords(item);
            reactions.append(readReaction(words, strength));
        }
        return reactions;
    }

    intake::Reaction readReaction(const QString& words, const QString& strengthText) {
        const QString column = QStringLiteral("reaction");
        intake::Reaction reaction;
        reaction.member = m_member;
        reaction.day = m_day;
        reaction.symptom = words;
        reaction.redFlag = readRedFlag() || intake::redFlagIn(words);
        for (const intake::SymptomKind& kind : intake::symptomKinds())
            if (kind.id.compare(words, Qt::CaseInsensitive) == 0 ||
                kind.name.compare(words, Qt::CaseInsensitive) == 0)
                reaction.symptom = kind.name;
        for (const intake::Symptom& own : m_context.records.symptoms)
            if (own.name.compare(reaction.symptom, Qt::CaseInsensitive) == 0) {
                reaction.symptom = own.name;
                reaction.redFlag = reaction.redFlag || own.redFlag;
            }
        bool isNumber = false;
        reaction.strength = strengthText.toInt(&isNumber);
        if (strengthText.isEmpty() && reaction.redFlag)
            reaction.strength = strongest; // as where it is typed into a day
        else if (!isNumber || reaction.strength < 0 || reaction.strength > strongest)
            refuse(QStringLiteral("strength"), say("A reaction needs a strength from 0 to 10."));
        readTimes(reaction);
        reaction.note = cell(QStringLiteral("note"));
        accept(intake::check(reaction, m_context.days.today), column);
        return reaction;
    }

    bool readRedFlag() {
        const QString column = QStringLiteral("red_flag");
        const QString word = cell(column).toLower();
        if (!word.isEmpty() && word != QStringLiteral("yes") && word != QStringLiteral("no"))
            refuse(column, say("This must be \"yes\" or \"no\"."));
        return word == QStringLiteral("yes");
    }

    void readTimes(intake::Reaction& reaction) {
        const QString start = QStringLiteral("start");
        if (!cell(start).isEmpty()) {
            const QTime time = QTime::fromString(cell(start), QStringLiteral("H:mm"));
            if (time.isValid())
                reaction.startMinute = time.hour() * minutesPerHour + time.minute();
            else
                refuse(start, say("This must be a time of day written as HH:MM."));
        }
        const QString length = QStringLiteral("length");
        if (!cell(length).isEmpty()) {
            const auto duration = quantity::parseDuration(cell(length));
            if (duration)
                reaction.minutes = qRound(duration->toMinutes());
            else
                refuse(length, duration.error().sentence);
        }
    }

    void refuseLoneReactionCells() {
        for (const QString& column : {QStringLiteral("strength"), QStringLiteral("red_flag"),
                                      QStringLiteral("start"), QStringLiteral("length")})
            if (!cell(column).isEmpty())
                refuse(QStringLiteral("reaction"),
                       say("\"%1\" is given without a reaction; write what was felt.").arg(column));
    }

    const CsvRecord& m_record;
    const LogContext& m_context;
    QDate m_day;
    MemberId m_member;
    std::optional<LogRefusal> m_refusal;
};

} // namespace

tl::expected<QList<LogAddition>, LogRefusal> readLogLine(const CsvRecord& record,
                                                         const LogContext& context) {
    if (record.fields.size() > context.columns.size())
        return tl::unexpected<LogRefusal>(
            {record.line,
             {},
             say("The line has more cells than the header; quote text that has a comma in it.")});
    return LineReader(record, context).read();
}

QDate dayOfLine(const CsvRecord& record, const LogContext& context) {
    const qsizetype place = context.columns.value(QStringLiteral("day"), -1);
    const QString text = place < 0 ? QString() : record.fields.value(place).trimmed();
    const QDate day = QDate::fromString(text, QStringLiteral("yyyy-MM-dd"));
    // The length is asked for because Qt reads years of more than four digits.
    return day.isValid() && text.size() == 10 ? day.addDays(context.days.shiftDays) : QDate();
}

} // namespace ladlework::exchange
