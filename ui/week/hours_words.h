#pragma once

#include "week/free_hours.h"

#include <QList>
#include <QString>

namespace ladlework::ui {

/// "6 h free", "6 h free, 2 pots", "no time": the free hours of a day for the head of its column.
QString hoursInShort(const QList<week::FreeHours>& hours);

/// "free from 9:00 AM for 6 h, 2 pots at once; ...", or "no cooking on this day".
QString hoursInWords(const QList<week::FreeHours>& hours);

} // namespace ladlework::ui
