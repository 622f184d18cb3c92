#pragma once

#include "calendar/calendar_entry.h"
#include "calendar/calendar_options.h"
#include "casebook/casebook.h"

#include <QStringList>

namespace ladlework::calendar {

/// What every entry of one family's calendar needs: its zone, names, measures, and ids that stay.
/// Casebook and options must outlive it.
class EntryMaker {
public:
    EntryMaker(const casebook::Casebook& casebook, const CalendarOptions& options)
        : m_casebook(casebook), m_options(options) {}

    [[nodiscard]] const casebook::Casebook& casebook() const { return m_casebook; }
    [[nodiscard]] const CalendarOptions& options() const { return m_options; }
    [[nodiscard]] const casebook::FamilyRecords& records() const { return m_casebook.records(); }
    [[nodiscard]] const QTimeZone& zone() const { return records().family.zone; }
    [[nodiscard]] quantity::MeasureSystem measures() const { return records().family.measures; }
    /// True for a day that the calendar is made for.
    [[nodiscard]] bool isAsked(QDate day) const;

    [[nodiscard]] QString called(MemberId member) const;
    /// "Monday 2 November".
    [[nodiscard]] static QString weekday(QDate day);
    /// "9:00 AM" or "09:00" by the family's clocks and habits, with the day of the week when it is
    /// another than `day`.
    [[nodiscard]] QString clock(const QDateTime& moment, QDate day) const;
    [[nodiscard]] QString print(quantity::Volume volume) const;
    /// "70 °F (21 °C)", the family's own scale first.
    [[nodiscard]] QString print(quantity::Temperature temperature) const;

    /// An entry of a whole day whose alarm rings in the morning. `key` says which entry it is among
    /// all of this family, now and at every later export.
    [[nodiscard]] Entry wholeDay(const QString& key, QDate day, const QString& title,
                                 const QStringList& details) const;
    /// An entry from one moment to another whose alarm rings so long before its start.
    [[nodiscard]] Entry timed(const QString& key, const QDateTime& start, const QDateTime& end,
                              quantity::Duration ahead, const QString& title,
                              const QStringList& details) const;
    /// Something to be done at a moment: an entry of a few minutes that rings at its start.
    [[nodiscard]] Entry reminder(const QString& key, const QDateTime& moment, const QString& title,
                                 const QStringList& details) const;
    /// Something to be done before a time limit: ends there, begins and rings a while before.
    [[nodiscard]] Entry limit(const QString& key, const QDateTime& latest, const QString& title,
                              const QStringList& details) const;

private:
    [[nodiscard]] Entry made(const QString& key, const QString& title,
                             const QStringList& details) const;
    [[nodiscard]] QString titleOf(const QString& title) const;

    const casebook::Casebook& m_casebook;
    const CalendarOptions& m_options;
};

} // namespace ladlework::calendar
