#pragma once

#include "casebook/casebook.h"
#include "ui/log/day_cells.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

namespace ladlework::ui {

/// Puts what was typed on a day into the workbook, one action each, with a sentence for the
/// history. What cannot be understood or is ambiguous is told at the desk and nothing is written.
class LogWriter {
public:
    LogWriter(const ScreenContext& context, QWidget* desk) : m_context(context), m_desk(desk) {}

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
    void tellSeveral(const QString& name, int drinks) const;
    void addDrink(const casebook::Casebook& book, intake::IntakeEntry entry,
                  const QString& name) const;

    const ScreenContext& m_context;
    QWidget* m_desk;
};

/// The practice's symptom list as words to type.
QList<SymptomWord> symptomWords();

} // namespace ladlework::ui
