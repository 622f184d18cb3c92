#include "foundation/clock.h"

namespace ladlework {

QDateTime SystemClock::nowUtc() const {
    return QDateTime::currentDateTimeUtc();
}

} // namespace ladlework
