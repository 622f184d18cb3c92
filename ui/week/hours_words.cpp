#include "ui/week/hours_words.h"

#include "quantity/measure.h"
#include "ui/shared/start_time.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace ladlework::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(HoursWords)
};
} // namespace

QString hoursInShort(const QList<week::FreeHours>& hours) {
    if (hours.isEmpty())
        return Words::tr("no time");
    quantity::Duration all;
    int pots = 0;
    for (const week::FreeHours& free : hours) {
        all += free.length;
        pots = std::max(pots, free.pots);
    }
    const QString length = quantity::printDuration(all);
    return pots > 1 ? Words::tr("%1 free, %2 pots").arg(length).arg(pots)
                    : Words::tr("%1 free").arg(length);
}

QString hoursInWords(const QList<week::FreeHours>& hours) {
    if (hours.isEmpty())
        return Words::tr("no cooking on this day");
    QStringList parts;
    for (const week::FreeHours& free : hours) {
        const QString length = quantity::printDuration(free.length);
        QString part = free.from.isValid()
                           ? Words::tr("from %1 for %2").arg(printStartTime(free.from), length)
                           : Words::tr("for %1").arg(length);
        if (free.pots > 1)
            part = Words::tr("%1, %2 pots at once").arg(part).arg(free.pots);
        parts << part;
    }
    return Words::tr("free %1").arg(parts.join(QStringLiteral("; ")));
}

} // namespace ladlework::ui
