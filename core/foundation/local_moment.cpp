#include "foundation/local_moment.h"

namespace ladlework {

namespace {
/// Seconds east of Greenwich at a moment; a zone without rules keeps its one offset.
qint64 offsetAt(qint64 secondsUtc, const QTimeZone& zone) {
    return zone.offsetFromUtc(QDateTime::fromSecsSinceEpoch(secondsUtc, Qt::UTC));
}

constexpr qint64 secondsADay = 24LL * 60 * 60;
} // namespace

QDateTime momentOf(QDate day, QTime time, const QTimeZone& zone) {
    if (!day.isValid() || !time.isValid() || !zone.isValid())
        return {};
    const qint64 shown = QDateTime(day, time, Qt::UTC).toSecsSinceEpoch();
    const qint64 before = offsetAt(shown - secondsADay, zone);
    const qint64 after = offsetAt(shown + secondsADay, zone);
    const bool beforeHolds = offsetAt(shown - before, zone) == before;
    const bool afterHolds = offsetAt(shown - after, zone) == after;
    const qint64 offset = !beforeHolds && afterHolds ? after : before;
    return QDateTime::fromSecsSinceEpoch(shown - offset, Qt::UTC);
}

bool isShownAgain(const QDateTime& moment, const QTimeZone& zone) {
    const QDateTime local = moment.toTimeZone(zone);
    return momentOf(local.date(), local.time(), zone) < moment;
}

} // namespace ladlework
