#include "calendar/family_calendar.h"

#include "calendar/entries.h"
#include "foundation/local_moment.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::calendar {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Calendar)
};

QDateTime beginOf(const Entry& entry) {
    return entry.isOfWholeDay() ? momentOf(entry.day, QTime(0, 0), entry.zone) : entry.start;
}
} // namespace

QList<Entry> familyEntries(const casebook::Casebook& casebook, const CalendarOptions& options) {
    const EntryMaker maker(casebook, options);
    QList<Entry> entries = cookingEntries(maker) + stockEntries(maker) + followUpEntries(maker);
    std::ranges::stable_sort(entries, {}, beginOf);
    return entries;
}

QString calendarName(const casebook::Casebook& casebook, casebook::Names names) {
    const QString called = casebook::calledFamily(casebook, names);
    return called.isEmpty() ? Words::tr("Stock") : Words::tr("Stock: %1").arg(called);
}

} // namespace ladlework::calendar
