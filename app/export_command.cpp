#include "app/command.h"
#include "calendar/family_calendar.h"
#include "calendar/icalendar.h"
#include "exchange/log_table.h"
#include "foundation/whole_file.h"

#include <QCoreApplication>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

const QString& familyOption() {
    static const QString option = QStringLiteral("family");
    return option;
}

const QString& weekOption() {
    static const QString option = QStringLiteral("week");
    return option;
}

/// Families whose calendars go into one file, and what they are made with.
struct Export {
    std::unique_ptr<store::Workbook> workbook;
    QList<FamilyId> families;
    calendar::CalendarOptions options;
};

/// The Monday of --week, or of today where the family lives (the practice, for all families).
Result<QDate> mondayFrom(const Words& words, const Export& what, const Outside& outside) {
    if (words.has(weekOption())) {
        const auto day = words.neededDay(weekOption(), outside.clock.nowUtc().date());
        return day ? Result<QDate>(week::weekStart(*day)) : passOn(day);
    }
    const auto family = what.workbook->families().family(what.families.value(0));
    const QTimeZone zone = words.has(familyOption()) && family
                               ? family->zone
                               : what.workbook->practice().practice().zone;
    return week::weekStart(outside.clock.today(zone));
}

Result<Export> exportFrom(const Words& words, const Outside& outside) {
    const auto names = namesFrom(words);
    if (!names)
        return passOn(names);
    auto workbook = openWorkbook(words.at(0), store::Opening::ToRead, outside);
    if (!workbook)
        return passOn(workbook);
    Export what{*std::move(workbook), {}, {}};
    if (words.has(familyOption())) {
        const auto family = familyNamed(*what.workbook, words.value(familyOption()));
        if (!family)
            return passOn(family);
        what.families = {*family};
    } else {
        for (const people::Family& family : what.workbook->families().families())
            what.families.append(family.id);
    }
    const auto monday = mondayFrom(words, what, outside);
    if (!monday)
        return passOn(monday);
    what.options.from = *monday;
    what.options.names = *names;
    what.options.familyInTitles = !words.has(familyOption());
    return what;
}

Result<calendar::Calendar> calendarOf(const Export& what, const QString& workbook,
                                      const Outside& outside) {
    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    calendar::Calendar made;
    for (const FamilyId family : what.families) {
        const auto records = what.workbook->records(family);
        if (!records)
            return inFile(workbook, records.error());
        const casebook::Casebook book(*records, catalogue,
                                      outside.clock.today(records->family.zone));
        made.entries += calendar::familyEntries(book, what.options);
        made.name = what.options.familyInTitles ? say("Stock, all families")
                                                : calendar::calendarName(book, what.options.names);
    }
    if (made.entries.isEmpty())
        return problem(Problem::Kind::Refused,
                       say("There is nothing for a calendar in the week of %1; put pots on its "
                           "days in the window.")
                           .arg(what.options.from.toString(Qt::ISODate)),
                       workbook);
    return made;
}

Result<Answer> exportCalendar(const Words& words, const QString& out, const Outside& outside) {
    const auto what = exportFrom(words, outside);
    if (!what)
        return passOn(what);
    const auto made = calendarOf(*what, words.at(0), outside);
    if (!made)
        return passOn(made);
    const QByteArray bytes = calendar::toICalendar(*made, outside.clock.nowUtc());
    if (const Outcome written = writeWhole(bytes, out); !written)
        return passOn(written);
    const QString monday = what->options.from.toString(Qt::ISODate);
    QJsonObject json{{QStringLiteral("out"), out},
                     {QStringLiteral("as"), QStringLiteral("ics")},
                     {QStringLiteral("week"), monday},
                     {QStringLiteral("families"), what->families.size()},
                     {QStringLiteral("entries"), made->entries.size()}};
    if (words.has(weekOption()) && words.value(weekOption()) != monday)
        json.insert(QStringLiteral("remark"),
                    say("%1 is no Monday; the week that holds it begins on %2.")
                        .arg(words.value(weekOption()), monday));
    return Answer{json, std::nullopt};
}

Result<Answer> exportLog(const Words& words, const QString& out, const Outside& outside) {
    for (const QString& option : {weekOption(), QStringLiteral("names")})
        if (words.has(option))
            return problem(Problem::Kind::BadInput,
                           say("This goes with --as ics; a log is written whole."),
                           QStringLiteral("--") + option);
    if (!words.has(familyOption()))
        return problem(Problem::Kind::BadInput, say("A log is one family's; add --family NAME."),
                       QStringLiteral("--family"));
    const auto open = openFamily(words, store::Opening::ToRead, outside);
    if (!open)
        return passOn(open);
    const QByteArray bytes = exchange::logTable(open->records).toUtf8();
    if (const Outcome written = writeWhole(bytes, out); !written)
        return passOn(written);
    return Answer{QJsonObject{{QStringLiteral("out"), out},
                              {QStringLiteral("as"), QStringLiteral("csv")},
                              {QStringLiteral("entries"), open->records.entries.size()},
                              {QStringLiteral("reactions"), open->records.reactions.size()}},
                  std::nullopt};
}

} // namespace

Result<Answer> runExport(const Words& words, const Outside& outside) {
    const auto as = words.needed(QStringLiteral("as"));
    if (!as)
        return passOn(as);
    if (*as == QStringLiteral("json"))
        return problem(Problem::Kind::BadInput,
                       say("This program cannot write json yet; use ics for a week or csv for a "
                           "log."),
                       QStringLiteral("--as"));
    if (*as != QStringLiteral("ics") && *as != QStringLiteral("csv"))
        return badOption(QStringLiteral("as"), say("csv or ics"));
    const auto out = words.needed(QStringLiteral("out"));
    if (!out)
        return passOn(out);
    if (const Outcome target = checkTarget(*out, words.at(0)); !target)
        return passOn(target);
    return *as == QStringLiteral("ics") ? exportCalendar(words, *out, outside)
                                        : exportLog(words, *out, outside);
}

} // namespace ladlework::app
