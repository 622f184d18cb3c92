#pragma once

#include "casebook/casebook.h"
#include "ui/log/day_cells.h"
#include "ui/log/drink_source.h"
#include "ui/shared/screen_context.h"

#include <functional>

namespace ladlework::ui {

/// Puts what was typed on a day into the workbook, one action each, with a sentence for the
/// history. What cannot be understood, is ambiguous or is refused is said in words (`say`; an empty
/// sentence once something was kept) and nothing is written.
class LogWriter {
public:
    using Say = std::function<void(const QString& sentence)>;
    LogWriter(const ScreenContext& context, Say say) : m_context(context), m_say(std::move(say)) {}

    /// What the drinks entered from now on come out of, unless it is typed with them.
    void setSource(const DrinkSource& source) { m_source = source; }

    void drink(const casebook::Casebook& book, const people::Member& member, QDate day,
               quantity::Volume asked, const QString& text) const;
    void reaction(const casebook::Casebook& book, const people::Member& member, QDate day,
                  const QString& text) const;
    /// Every member with an amount asked and no entry yet drank what was asked.
    void allAsAsked(const casebook::Casebook& book, QDate day,
                    const QList<std::pair<people::Member, quantity::Volume>>& asked) const;

    void change(const intake::IntakeEntry& entry, const QString& name) const;
    void change(const intake::Reaction& reaction, const QString& name) const;
    void remove(const intake::IntakeEntry& entry, const QString& name) const;
    void remove(const intake::Reaction& reaction, const QString& name) const;

private:
    void act(const QString& sentence, const std::function<Outcome(store::Action&)>& work) const;
    Outcome putReactions(store::Action& action, const QList<intake::Reaction>& felt) const;
    void saySeveral(const QString& name, int drinks) const;
    void addDrink(const casebook::Casebook& book, const intake::IntakeEntry& entry,
                  const QString& name) const;

    const ScreenContext& m_context;
    Say m_say;
    DrinkSource m_source;
};

/// The words to type for a reaction: the practice's list, and the published red flags.
QList<SymptomWord> symptomWords(const casebook::FamilyRecords& records);

} // namespace ladlework::ui
