#pragma once

#include "foundation/result.h"

#include <QDate>
#include <QLocale>

namespace ladlework::ui {

/// What a day may be: any, when a bound is null.
struct DayRange {
    QDate first;
    QDate last;
    [[nodiscard]] bool holds(QDate day) const {
        return (first.isNull() || day >= first) && (last.isNull() || day <= last);
    }
};

/// Reads a day as people type it (see DayEdit). Words are English and those of the locale; the
/// order of "11/2" is the locale's. A day without a year is the one nearest to `today` inside
/// `range`, or the nearest of all when none is inside. BadInput says what would be understood. The
/// range is not imposed here.
Result<QDate> parseDay(const QString& text, QDate today, const DayRange& range,
                       const QLocale& locale);

/// "Mon 2 Nov 2026", or "Mon, Nov 2, 2026" where the locale puts the month first. Reads back.
QString printDay(QDate day, const QLocale& locale);
/// "2 Nov", or "Nov 2" where the locale puts the month first.
QString printShortDay(QDate day, const QLocale& locale);

} // namespace ladlework::ui
