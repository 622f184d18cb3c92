#include "ui/log/log_writer.h"

#include "intake/red_flags.h"
#include "ui/shared/day_text.h"

#include <QCoreApplication>
#include <QLocale>

namespace ladlework::ui {

using intake::IntakeEntry;
using intake::Reaction;

namespace {

struct LogWords {
    Q_DECLARE_TR_FUNCTIONS(LogWriter)
};

QString dayWords(QDate day) {
    return printDay(day, QLocale());
}

template <class Record>
QList<Record> ofDay(const QList<Record>& all, MemberId member, QDate day) {
    QList<Record> found;
    for (const Record& record : all)
        if (record.member == member && record.day == day)
            found.append(record);
    return found;
}

} // namespace

QList<SymptomWord> symptomWords(const casebook::FamilyRecords& records) {
    QList<SymptomWord> words;
    for (const intake::Symptom& symptom : records.symptoms)
        words.append({symptom.name, symptom.redFlag});
    for (const intake::SymptomKind& kind : intake::symptomKinds())
        if (kind.redFlag)
            words.append({kind.name, true});
    return words;
}

void LogWriter::act(const QString& sentence,
                    const std::function<Outcome(store::Action&)>& work) const {
    const Outcome outcome = m_context.workbook.act(sentence, work);
    m_say(outcome ? QString() : outcome.error().sentence);
}

void LogWriter::addDrink(const casebook::Casebook& book, const IntakeEntry& entry,
                         const QString& name) const {
    const QString amount = entry.drunk == quantity::Volume{}
                               ? LogWords::tr("nothing")
                               : quantity::printVolume(entry.drunk, book.records().family.measures);
    act(LogWords::tr("Entered %1 for %2 on %3").arg(amount, name, dayWords(entry.day)),
        [&](store::Action& action) -> Outcome {
            const auto added = m_context.workbook.log().addEntry(action, entry);
            return added ? Outcome{} : Outcome(passOn(added));
        });
}

void LogWriter::drink(const casebook::Casebook& book, const people::Member& member, QDate day,
                      quantity::Volume asked, const QString& text) const {
    const QList<IntakeEntry> before = ofDay(book.records().entries, member.id, day);
    if (text.isEmpty()) {
        if (before.size() == 1)
            remove(before.first(), member.name);
        else if (before.size() > 1)
            saySeveral(member.name, static_cast<int>(before.size()));
        return;
    }
    const Result<DrinkCell> cell = readDrink(text, book.records().family.measures);
    if (!cell) {
        m_say(cell.error().sentence);
        return;
    }
    if (cell->asAsked && asked <= quantity::Volume{}) {
        m_say(
            LogWords::tr("Nothing was asked of %1 on this day; type the amount.").arg(member.name));
        return;
    }
    const bool isNew = cell->another || before.isEmpty();
    if (!isNew && before.size() > 1) {
        saySeveral(member.name, static_cast<int>(before.size()));
        return;
    }
    IntakeEntry entry = isNew ? IntakeEntry{} : before.first();
    entry.member = member.id;
    entry.day = day;
    entry.drunk = cell->asAsked ? asked : cell->volume;
    if (!cell->from.isEmpty() || isNew) {
        const Result<DrinkSource> source =
            cell->from.isEmpty() ? Result<DrinkSource>(m_source) : findSource(book, cell->from);
        if (!source) {
            m_say(source.error().sentence);
            return;
        }
        const bool nothing = entry.drunk <= quantity::Volume{};
        entry.pot = nothing ? PotId{} : source->pot;
        entry.lot = nothing ? LotId{} : source->lot;
    }
    if (isNew) {
        entry.enteredUtc = m_context.clock.nowUtc();
        addDrink(book, entry, member.name);
    } else {
        change(entry, member.name);
    }
}

void LogWriter::saySeveral(const QString& name, int drinks) const {
    m_say(LogWords::tr("%1 has %2 drinks on this day. Change them in the list below, or type + and "
                       "the amount of one more.")
              .arg(name)
              .arg(drinks));
}

void LogWriter::reaction(const casebook::Casebook& book, const people::Member& member, QDate day,
                         const QString& text) const {
    const QList<Reaction> before = ofDay(book.records().reactions, member.id, day);
    const Result<QList<ReactionCell>> cells = readReactions(text, symptomWords(book.records()));
    if (!cells) {
        m_say(cells.error().sentence);
        return;
    }
    const ReactionCell& first = cells->first();
    if (!first.another && before.size() > 1) {
        m_say(LogWords::tr("%1 has %2 reactions on this day. Change them in the list below, or "
                           "type + and one more.")
                  .arg(member.name)
                  .arg(before.size()));
        return;
    }
    if (first.none) {
        if (!before.isEmpty())
            remove(before.first(), member.name);
        else
            m_say({});
        return;
    }
    QList<Reaction> felt;
    QStringList words;
    for (const ReactionCell& cell : *cells) {
        Reaction reaction = cell.another || before.isEmpty() ? Reaction{} : before.first();
        reaction.member = member.id;
        reaction.day = day;
        reaction.symptom = cell.symptom;
        reaction.strength = cell.strength;
        reaction.redFlag = cell.redFlag;
        if (cell.startMinute)
            reaction.startMinute = cell.startMinute;
        if (cell.minutes)
            reaction.minutes = cell.minutes;
        felt.append(reaction);
        words.append(QStringLiteral("%1 %2").arg(cell.symptom).arg(cell.strength));
    }
    if (felt.size() == 1 && felt.first().id.isStored()) {
        change(felt.first(), member.name);
        return;
    }
    act(LogWords::tr("Entered %1 for %2 on %3")
            .arg(words.join(QStringLiteral("; ")), member.name, dayWords(day)),
        [&](store::Action& action) { return putReactions(action, felt); });
}

Outcome LogWriter::putReactions(store::Action& action, const QList<Reaction>& felt) const {
    for (const Reaction& reaction : felt) {
        if (reaction.id.isStored()) {
            if (const Outcome changed = m_context.workbook.log().changeReaction(action, reaction);
                !changed)
                return changed;
            continue;
        }
        const auto added = m_context.workbook.log().addReaction(action, reaction);
        if (!added)
            return passOn(added);
    }
    return {};
}

void LogWriter::allAsAsked(const casebook::Casebook& book, QDate day,
                           const QList<std::pair<people::Member, quantity::Volume>>& asked) const {
    QList<IntakeEntry> entries;
    for (const auto& [member, volume] : asked) {
        if (volume <= quantity::Volume{} ||
            !ofDay(book.records().entries, member.id, day).isEmpty())
            continue;
        IntakeEntry entry;
        entry.member = member.id;
        entry.day = day;
        entry.drunk = volume;
        entry.pot = m_source.pot;
        entry.lot = m_source.lot;
        entry.enteredUtc = m_context.clock.nowUtc();
        entries.append(entry);
    }
    if (entries.isEmpty()) {
        m_say(LogWords::tr("Everyone who is asked to drink has an entry already."));
        return;
    }
    act(LogWords::tr("Entered what was asked for the rest of the family on %1").arg(dayWords(day)),
        [&](store::Action& action) -> Outcome {
            for (const IntakeEntry& entry : entries) {
                const auto added = m_context.workbook.log().addEntry(action, entry);
                if (!added)
                    return passOn(added);
            }
            return {};
        });
}

void LogWriter::change(const IntakeEntry& entry, const QString& name) const {
    act(LogWords::tr("Changed a drink of %1 on %2").arg(name, dayWords(entry.day)),
        [&](store::Action& action) { return m_context.workbook.log().changeEntry(action, entry); });
}

void LogWriter::change(const Reaction& reaction, const QString& name) const {
    act(LogWords::tr("Changed a reaction of %1 on %2").arg(name, dayWords(reaction.day)),
        [&](store::Action& action) {
            return m_context.workbook.log().changeReaction(action, reaction);
        });
}

void LogWriter::remove(const IntakeEntry& entry, const QString& name) const {
    act(LogWords::tr("Removed a drink of %1 on %2").arg(name, dayWords(entry.day)),
        [&](store::Action& action) {
            return m_context.workbook.log().removeEntry(action, entry.id);
        });
}

void LogWriter::remove(const Reaction& reaction, const QString& name) const {
    act(LogWords::tr("Removed a reaction of %1 on %2").arg(name, dayWords(reaction.day)),
        [&](store::Action& action) {
            return m_context.workbook.log().removeReaction(action, reaction.id);
        });
}

} // namespace ladlework::ui
