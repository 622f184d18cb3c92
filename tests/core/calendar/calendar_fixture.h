#pragma once

#include "calendar/family_calendar.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

namespace ladlework::calendar {

/// The hand-made family, which lives by the clocks of New York.
class CalendarFixture : public ::testing::Test {
protected:
    CalendarFixture() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        records.family.zone = QTimeZone("America/New_York");
        options.from = hand_made::monday;
    }

    [[nodiscard]] QList<Entry> entries() const {
        return familyEntries(casebook::Casebook(records, catalogue, hand_made::today), options);
    }
    /// The one entry whose title is this, or begins with it and a blank.
    [[nodiscard]] Entry titled(const QString& title) const {
        QList<Entry> found;
        for (const Entry& entry : entries()) {
            if (entry.title == title || entry.title.startsWith(QString(title + QLatin1Char(' '))))
                found.append(entry);
        }
        EXPECT_EQ(found.size(), 1) << qPrintable(title);
        return found.value(0);
    }
    [[nodiscard]] QStringList titles() const {
        QStringList titles;
        for (const Entry& entry : entries())
            titles.append(entry.title);
        return titles;
    }
    /// "Mon 09:00" by the family's clocks.
    [[nodiscard]] QString local(const QDateTime& moment) const {
        return moment.toTimeZone(records.family.zone).toString(QStringLiteral("ddd HH:mm"));
    }
    [[nodiscard]] week::WeekPlan& plan() { return records.weeks.first(); }

    kitchen::Catalogue catalogue;
    casebook::FamilyRecords records;
    CalendarOptions options;
};

} // namespace ladlework::calendar
