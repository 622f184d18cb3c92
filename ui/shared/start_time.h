#pragma once

#include "foundation/result.h"

#include <QTime>

namespace ladlework::ui {

/// A time of day as people type it: "9", "9:30", "930", "9am", "2:30 pm", "14:00", "14.30", "noon".
/// A bare hour from 1 to 5 is in the afternoon: nobody puts a pot on at night ("05:00" is early).
/// Blank text gives an invalid time: no start is set. Anything else is BadInput that quotes it.
Result<QTime> parseStartTime(const QString& text);

/// "9:00 AM" or "09:00", as the desktop's locale writes it; empty for an invalid time.
QString printStartTime(QTime time);

} // namespace ladlework::ui
