#include "ui/shared/start_time.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace ladlework::ui {

namespace {

constexpr int noon = 12;
constexpr int lastAfternoonHour = 5;

tl::unexpected<Problem> notUnderstood(const QString& text) {
    return problem(Problem::Kind::BadInput,
                   QCoreApplication::translate(
                       "StartTime", "\"%1\" is no time of day. Type 9:30, 2:30 pm or 14:30.")
                       .arg(text.trimmed()));
}

/// The hour of the day from an hour and its half of the day; -1 when they do not agree.
int hourOfDay(int hour, const QString& half, bool writtenInFull) {
    if (!half.isEmpty()) {
        if (hour < 1 || hour > noon)
            return -1;
        return hour % noon + (half.startsWith(QLatin1Char('p')) ? noon : 0);
    }
    if (!writtenInFull && hour >= 1 && hour <= lastAfternoonHour)
        return hour + noon;
    return hour;
}

} // namespace

Result<QTime> parseStartTime(const QString& text) {
    const QString typed = text.simplified().toLower();
    if (typed.isEmpty())
        return QTime();
    if (typed == QCoreApplication::translate("StartTime", "noon"))
        return QTime(noon, 0);
    static const QRegularExpression form(
        QStringLiteral("^(\\d{1,2})(?:[:.h ]?(\\d{2}))?\\s*(?:([ap])\\.?\\s?m?\\.?)?$"));
    const QRegularExpressionMatch match = form.match(typed);
    if (!match.hasMatch())
        return notUnderstood(text);
    const QString hourText = match.captured(1);
    const bool writtenInFull = hourText.size() == 2;
    const int hour = hourOfDay(hourText.toInt(), match.captured(3), writtenInFull);
    const QTime time(hour, match.captured(2).isEmpty() ? 0 : match.captured(2).toInt());
    if (hour < 0 || !time.isValid())
        return notUnderstood(text);
    return time;
}

QString printStartTime(QTime time) {
    if (!time.isValid())
        return {};
    // Without a.m. and p.m. always two digits, so that "05:00" reads back as it was printed.
    const bool halves =
        QLocale().timeFormat(QLocale::ShortFormat).contains(QLatin1Char('a'), Qt::CaseInsensitive);
    return halves ? QLocale().toString(time, QLocale::ShortFormat)
                  : time.toString(QStringLiteral("HH:mm"));
}

} // namespace ladlework::ui
