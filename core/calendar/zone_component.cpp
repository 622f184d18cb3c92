#include "calendar/zone_component.h"

namespace ladlework::calendar {

namespace {
/// Where the time of a computer begins: an observance that is older is told from here.
const QDateTime& beginning() {
    static const QDateTime epoch = QDateTime::fromSecsSinceEpoch(0, Qt::UTC);
    return epoch;
}

/// Clocks that were put forward for a part of the year: summer time, also where the law calls the
/// other part the exception.
bool beginsSummerTime(const QTimeZone& zone, const QDateTime& change) {
    const QDateTime before = change.addSecs(-1);
    return zone.offsetFromUtc(change) > zone.offsetFromUtc(before) &&
           (zone.daylightTimeOffset(change) != 0 || zone.daylightTimeOffset(before) != 0);
}

void add(icalcomponent* component, const QTimeZone& zone, const QDateTime& change) {
    const int before = zone.offsetFromUtc(change.addSecs(-1));
    icalcomponent* part = icalcomponent_new(
        beginsSummerTime(zone, change) ? ICAL_XDAYLIGHT_COMPONENT : ICAL_XSTANDARD_COMPONENT);
    icalcomponent_add_property(part, icalproperty_new_dtstart(toIcalTime(change.addSecs(before))));
    icalcomponent_add_property(part, icalproperty_new_tzoffsetfrom(before));
    icalcomponent_add_property(part, icalproperty_new_tzoffsetto(zone.offsetFromUtc(change)));
    if (const QByteArray name = plainText(zone.abbreviation(change)); !name.isEmpty())
        icalcomponent_add_property(part, icalproperty_new_tzname(name.constData()));
    icalcomponent_add_component(component, part);
}

/// Since when the clocks show what they show at `from`.
QDateTime lastChange(const QTimeZone& zone, const QDateTime& from) {
    const QDateTime last =
        zone.hasTransitions() ? zone.previousTransition(from.addSecs(1)).atUtc : QDateTime();
    return last.isValid() && last > beginning() ? last : beginning();
}
} // namespace

bool isUtc(const QTimeZone& zone) {
    static const QDateTime late(QDate(2100, 1, 1), QTime(0, 0), Qt::UTC);
    const bool changes = zone.hasTransitions() && zone.previousTransition(late).atUtc.isValid();
    return !changes && zone.offsetFromUtc(beginning()) == 0;
}

Component zoneComponent(const QTimeZone& zone, const QDateTime& from, const QDateTime& to) {
    Component component(icalcomponent_new(ICAL_VTIMEZONE_COMPONENT));
    icalcomponent_add_property(component.get(), icalproperty_new_tzid(zone.id().constData()));
    add(component.get(), zone, lastChange(zone, from));
    if (!zone.hasTransitions())
        return component;
    for (const QTimeZone::OffsetData& change : zone.transitions(from.addSecs(1), to))
        add(component.get(), zone, change.atUtc);
    return component;
}

} // namespace ladlework::calendar
