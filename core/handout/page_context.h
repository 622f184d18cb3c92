#pragma once

#include "handout/document.h"
#include "handout/family_handout.h"

#include <QDate>

namespace ladlework::handout {

/// What every card of one handout needs: the records, the week, the names and the measures.
class PageContext {
public:
    PageContext(const casebook::Casebook& casebook, HandoutOptions options);

    [[nodiscard]] const casebook::Casebook& casebook() const { return m_casebook; }
    [[nodiscard]] const HandoutOptions& options() const { return m_options; }
    [[nodiscard]] const week::WeekPlan& plan() const { return m_plan; }
    [[nodiscard]] const people::Practice& practice() const { return m_casebook.records().practice; }
    [[nodiscard]] quantity::MeasureSystem measures() const {
        return m_casebook.records().family.measures;
    }

    [[nodiscard]] QString called(MemberId member) const;
    [[nodiscard]] QString called(const casebook::Standing& standing) const {
        return called(standing.member.id);
    }
    /// The family as she chose to name it; empty without names.
    [[nodiscard]] QString familyCalled() const;
    /// "Monday 2 November".
    [[nodiscard]] static QString weekday(QDate day);
    [[nodiscard]] QString print(quantity::Volume volume) const;
    [[nodiscard]] QString print(quantity::Mass mass) const;
    /// "9:00 AM" or "09:00", as the family's measures go.
    [[nodiscard]] QString print(QTime time) const;
    /// "135 °F (57 °C)", the family's own scale first.
    [[nodiscard]] QString print(quantity::Temperature temperature) const;

    /// What the member is asked on the seven days.
    [[nodiscard]] QList<quantity::Volume> amounts(MemberId member) const;
    /// The pots of the plan, each once, in the order of their first cooking.
    [[nodiscard]] QList<const kitchen::Pot*> pots() const;
    /// The placements of a pot in order of time.
    [[nodiscard]] QList<week::Placement> cookingsOf(PotId pot) const;
    /// The emergency number first, then the practice: for a card that must stand alone.
    [[nodiscard]] Facts whomToCall() const;
    /// "911", or words when the practice has set no number.
    [[nodiscard]] QString emergencyNumber() const;

private:
    const casebook::Casebook& m_casebook;
    HandoutOptions m_options;
    week::WeekPlan m_plan;
};

/// A name or a title with right-to-left letters, kept apart from the sentence around it (Unicode
/// isolates, UAX #9): otherwise an amount beside it would be drawn in the wrong order. Every other
/// text as it is.
QString isolated(const QString& text);

/// True when no ladder is made for someone so young.
bool isTooYoung(const casebook::Standing& standing);
/// True when the member's ladder is stopped.
bool isStopped(const casebook::Standing& standing);

} // namespace ladlework::handout
