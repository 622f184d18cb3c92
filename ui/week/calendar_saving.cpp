#include "ui/week/calendar_saving.h"

#include "calendar/family_calendar.h"
#include "calendar/icalendar.h"
#include "foundation/whole_file.h"
#include "week/week_findings.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace ladlework::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(CalendarSaving)
};

QString suggestedFile(const QString& name, QDate monday) {
    static const QRegularExpression unfit(QStringLiteral("[\\\\/:*?\"<>|\\x00-\\x1f]+"));
    constexpr qsizetype longest = 100;
    const QString fit = QString(name).replace(unfit, QStringLiteral(" -")).left(longest);
    return QStringLiteral("%1, %2.ics").arg(fit.trimmed(), monday.toString(Qt::ISODate));
}
} // namespace

QList<calendar::ThawMove> thawMoves(const casebook::WeekAhead& ahead,
                                    const week::WeekSolution& solution) {
    QList<calendar::ThawMove> moves;
    for (const week::StockMove& move : solution.thawing)
        if (move.volume >= quantity::Volume::fromDrops(1))
            moves.append({ahead.start.addDays(move.day),
                          week::sourceName(ahead.problem, solution, move.from, ahead.start),
                          move.volume});
    return moves;
}

bool saveForCalendar(QWidget* parent, const ScreenContext& context,
                     const casebook::Casebook& casebook, QDate monday,
                     const QList<calendar::ThawMove>& thaws) {
    calendar::CalendarOptions options;
    options.from = monday;
    options.thaws = thaws;
    const QList<calendar::Entry> entries = calendar::familyEntries(casebook, options);
    if (entries.isEmpty()) {
        context.desk.tell(parent, Words::tr("This week has nothing for a calendar yet. Put a pot "
                                            "on one of its days."));
        return false;
    }
    const QString name = calendar::calendarName(casebook, options.names);
    const std::optional<QString> path =
        context.desk.fileToSave(parent, Words::tr("Save for a calendar"),
                                suggestedFile(name, monday), Words::tr("Calendar (*.ics)"));
    if (!path)
        return false;
    const Outcome saved =
        writeWhole(calendar::toICalendar({name, entries}, context.clock.nowUtc()), *path);
    if (!saved)
        context.desk.tell(parent, saved.error().sentence);
    return saved.has_value();
}

} // namespace ladlework::ui
