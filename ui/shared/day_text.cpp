#include "ui/shared/day_text.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>

namespace ladlework::ui {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("DayText", text);
}

bool monthComesFirst(const QLocale& locale) {
    const QString format = locale.dateFormat(QLocale::ShortFormat);
    return format.indexOf(u'M') < format.indexOf(u'd');
}

/// True when `word` starts the name with at least three letters, or is its short form ("Mi.").
bool isNameOf(const QString& word, const QString& name, QString shortName) {
    constexpr qsizetype fewestLetters = 3;
    shortName.remove(u'.');
    return word.compare(shortName, Qt::CaseInsensitive) == 0 ||
           (word.size() >= fewestLetters && name.startsWith(word, Qt::CaseInsensitive));
}

std::optional<int> monthOf(const QString& word, const QLocale& locale) {
    for (int month = 1; month <= 12; ++month) {
        for (const QLocale& language : {QLocale::c(), locale}) {
            if (isNameOf(word, language.monthName(month),
                         language.monthName(month, QLocale::ShortFormat)))
                return month;
        }
    }
    return std::nullopt;
}

std::optional<int> weekdayOf(const QString& word, const QLocale& locale) {
    for (int day = Qt::Monday; day <= Qt::Sunday; ++day) {
        for (const QLocale& language : {QLocale::c(), locale}) {
            if (isNameOf(word, language.dayName(day), language.dayName(day, QLocale::ShortFormat)))
                return day;
        }
    }
    return std::nullopt;
}

/// The last such weekday up to today; the next one where the range takes only that.
QDate nearWeekday(int weekday, QDate today, const DayRange& range) {
    const int back = (today.dayOfWeek() - weekday + 7) % 7;
    const QDate last = today.addDays(-back);
    return range.holds(last) || !range.holds(last.addDays(7)) ? last : last.addDays(7);
}

/// The day and month in the year that lies nearest to today, inside the range when one is.
QDate nearYear(int month, int day, QDate today, const DayRange& range) {
    QDate best;
    const auto away = [today](QDate date) {
        return std::abs(today.daysTo(date));
    };
    // Four years either side reach a 29 February.
    for (int year = today.year() - 4; year <= today.year() + 4; ++year) {
        const QDate candidate(year, month, day);
        if (!candidate.isValid())
            continue;
        const bool better =
            best.isNull() || range.holds(candidate) > range.holds(best) ||
            (range.holds(candidate) == range.holds(best) && away(candidate) < away(best));
        if (better)
            best = candidate;
    }
    return best;
}

int wholeYear(int year, QDate today) {
    return year < 100 ? today.year() / 100 * 100 + year : year;
}

tl::unexpected<Problem> notUnderstood(const QString& text) {
    return problem(Problem::Kind::BadInput,
                   tr("\"%1\" is not a day. Write it like \"2 Nov\", \"2026-11-02\", \"today\" or "
                      "\"mon\".")
                       .arg(text.trimmed()));
}

/// Numbers and a month's name, in any order that leaves no doubt.
QDate fromParts(const QStringList& parts, QDate today, const DayRange& range,
                const QLocale& locale) {
    std::optional<int> month;
    QList<int> numbers;
    for (const QString& part : parts) {
        bool isNumber = false;
        const int number = part.toInt(&isNumber);
        if (isNumber)
            numbers.append(number);
        else if (month || !(month = monthOf(part, locale)))
            return {};
    }
    if (!month) {
        if (numbers.size() < 2)
            return {};
        if (numbers.first() > 31 && numbers.size() == 3)
            return {numbers[0], numbers[1], numbers[2]};
        month = numbers.takeAt(monthComesFirst(locale) ? 0 : 1);
    }
    if (numbers.isEmpty() || numbers.size() > 2)
        return {};
    if (numbers.size() == 1)
        return nearYear(*month, numbers[0], today, range);
    if (numbers.first() > 31)
        numbers.swapItemsAt(0, 1);
    return {wholeYear(numbers[1], today), *month, numbers[0]};
}

} // namespace

Result<QDate> parseDay(const QString& text, QDate today, const DayRange& range,
                       const QLocale& locale) {
    const QString plain = text.trimmed().toLower();
    if (plain == u"today" || plain == tr("today"))
        return today;
    if (plain == u"yesterday" || plain == tr("yesterday"))
        return today.addDays(-1);
    if (plain == u"tomorrow" || plain == tr("tomorrow"))
        return today.addDays(1);

    static const QRegularExpression between(QStringLiteral("[\\s,./-]+"));
    QStringList parts = plain.split(between, Qt::SkipEmptyParts);
    if (parts.isEmpty())
        return notUnderstood(text);
    const std::optional<int> weekday = weekdayOf(parts.first(), locale);
    if (weekday && parts.size() == 1)
        return nearWeekday(*weekday, today, range);
    const QDate day = fromParts(weekday ? parts.mid(1) : parts, today, range, locale);
    if (!day.isValid())
        return notUnderstood(text);
    if (weekday && day.dayOfWeek() != *weekday)
        return problem(Problem::Kind::BadInput,
                       tr("%1 is a %2. Leave the weekday out or mend it.")
                           .arg(printDay(day, locale), locale.dayName(day.dayOfWeek())));
    return day;
}

QString printDay(QDate day, const QLocale& locale) {
    return locale.toString(day, monthComesFirst(locale) ? QStringLiteral("ddd, MMM d, yyyy")
                                                        : QStringLiteral("ddd d MMM yyyy"));
}

QString printShortDay(QDate day, const QLocale& locale) {
    return locale.toString(day, monthComesFirst(locale) ? QStringLiteral("MMM d")
                                                        : QStringLiteral("d MMM"));
}

} // namespace ladlework::ui
