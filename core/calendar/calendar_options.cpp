#include "calendar/calendar_options.h"

#include <QCoreApplication>

namespace ladlework::calendar {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Calendar)
};

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

bool isAhead(quantity::Duration ahead) {
    constexpr double mostHours = 24;
    return ahead >= quantity::Duration() && ahead.toHours() <= mostHours;
}
} // namespace

Outcome check(const CalendarOptions& options) {
    if (!options.from.isValid())
        return bad(Words::tr("Choose the day the calendar begins with."), QStringLiteral("from"));
    if (options.days < 1 || options.days > mostCalendarDays)
        return bad(Words::tr("A calendar is made for 1 to %1 days.").arg(mostCalendarDays),
                   QStringLiteral("days"));
    if (!isAhead(options.aheadOfCooking))
        return bad(Words::tr("An alarm rings at most 24 hours ahead."),
                   QStringLiteral("aheadOfCooking"));
    if (!isAhead(options.aheadOfLimit))
        return bad(Words::tr("An alarm rings at most 24 hours ahead."),
                   QStringLiteral("aheadOfLimit"));
    if (!options.morning.isValid())
        return bad(Words::tr("Choose when the alarm of a whole day rings."),
                   QStringLiteral("morning"));
    for (qsizetype index = 0; index < options.thaws.size(); ++index) {
        const ThawMove& move = options.thaws[index];
        const QString place = QStringLiteral("thaws[%1].%2").arg(index);
        if (!move.day.isValid())
            return bad(Words::tr("Say on which day the stock is to be thawed."),
                       place.arg(QStringLiteral("day")));
        if (move.what.trimmed().isEmpty())
            return bad(Words::tr("Say which stock is to be thawed."),
                       place.arg(QStringLiteral("what")));
        if (!(move.volume > quantity::Volume()))
            return bad(Words::tr("Say how much stock is to be thawed."),
                       place.arg(QStringLiteral("volume")));
    }
    return {};
}

} // namespace ladlework::calendar
