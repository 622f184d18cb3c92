#include "week/cooking_time.h"

#include "foundation/reference_table.h"

#include <QHash>
#include <stdexcept>

namespace ladlework::week {

namespace {
using quantity::Duration;

double figure(const QString& id) {
    static const QHash<QString, double> rows = [] {
        const ReferenceTable table =
            valueOrThrow(ReferenceTable::load(QStringLiteral("cooking-times")));
        QHash<QString, double> read;
        for (qsizetype index = 0; index < table.size(); ++index) {
            const ReferenceTable::Row row = table.row(index);
            read.insert(row.text(QStringLiteral("id")), row.number(QStringLiteral("value")));
        }
        return read;
    }();
    const auto found = rows.constFind(id);
    if (found == rows.constEnd())
        throw std::runtime_error("cooking-times.csv: no row " + id.toStdString());
    return *found;
}

Duration minutes(const QString& id) {
    return Duration::fromMinutes(figure(id));
}
} // namespace

CookingTime cookingTime(const kitchen::Pot& pot) {
    CookingTime time;
    time.total = heatUpTime() + pot.simmer + minutes(QStringLiteral("finish"));
    time.handsOn =
        minutes(QStringLiteral("hands-on")) +
        minutes(QStringLiteral("hands-on-cut")) * static_cast<double>(pot.cuts.size()) +
        minutes(QStringLiteral("hands-on-extra")) * static_cast<double>(pot.extras.size());
    return time;
}

Duration heatUpTime() {
    return minutes(QStringLiteral("heat-up"));
}

int thawKeepsDays() {
    return static_cast<int>(figure(QStringLiteral("thaw-keeps")));
}

} // namespace ladlework::week
