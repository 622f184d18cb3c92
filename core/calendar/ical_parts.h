#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <libical/ical.h>
#include <memory>

namespace ladlework::calendar {

struct FreeComponent {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
/// A component that belongs to no other yet.
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

/// Text as the format can hold it: line breaks as one line feed, no other control characters but
/// tabs (RFC 5545, section 3.1).
QByteArray plainText(const QString& text);

/// A date and time as its digits stand, without a zone.
icaltimetype toIcalTime(const QDateTime& shown);

} // namespace ladlework::calendar
