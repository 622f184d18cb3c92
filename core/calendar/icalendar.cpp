#include "calendar/icalendar.h"

#include "calendar/zone_component.h"
#include "foundation/local_moment.h"

#include <algorithm>

namespace ladlework::calendar {

namespace {
struct FreeText {
    void operator()(char* text) const { icalmemory_free_buffer(text); }
};

/// A property outside the standard whose value is text.
void addOwn(icalcomponent* component, const char* name, const QString& text) {
    icalproperty* property = icalproperty_new_x(plainText(text).constData());
    icalproperty_set_x_name(property, name);
    icalcomponent_add_property(component, property);
}

icaltimetype utcTime(const QDateTime& moment) {
    icaltimetype time = toIcalTime(moment.toUTC());
    time.zone = icaltimezone_get_utc_timezone();
    return time;
}

icaltimetype wholeDay(QDate day) {
    icaltimetype time = icaltime_null_date();
    time.year = day.year();
    time.month = day.month();
    time.day = day.day();
    return time;
}

bool isToldInUtc(const Entry& entry) {
    return isUtc(entry.zone) || isShownAgain(entry.start, entry.zone) ||
           isShownAgain(entry.end, entry.zone);
}

/// DTSTART or DTEND at a moment, told by the clocks of the zone.
void addLocal(icalcomponent* event, icalproperty* property, const QTimeZone& zone) {
    icalproperty_add_parameter(property, icalparameter_new_tzid(zone.id().constData()));
    icalcomponent_add_property(event, property);
}

void addTimes(icalcomponent* event, const Entry& entry) {
    if (entry.isOfWholeDay()) {
        icalcomponent_add_property(event, icalproperty_new_dtstart(wholeDay(entry.day)));
        icalcomponent_add_property(event, icalproperty_new_dtend(wholeDay(entry.day.addDays(1))));
    } else if (isToldInUtc(entry)) {
        icalcomponent_add_property(event, icalproperty_new_dtstart(utcTime(entry.start)));
        icalcomponent_add_property(event, icalproperty_new_dtend(utcTime(entry.end)));
    } else {
        const QTimeZone& zone = entry.zone;
        addLocal(event, icalproperty_new_dtstart(toIcalTime(entry.start.toTimeZone(zone))), zone);
        addLocal(event, icalproperty_new_dtend(toIcalTime(entry.end.toTimeZone(zone))), zone);
    }
}

icalcomponent* alarmComponent(const Alarm& alarm) {
    icalcomponent* component = icalcomponent_new(ICAL_VALARM_COMPONENT);
    icaltriggertype trigger{};
    trigger.time = icaltime_null_time();
    trigger.duration = icaldurationtype_from_int(static_cast<int>(alarm.secondsFromStart));
    icalcomponent_add_property(component, icalproperty_new_action(ICAL_ACTION_DISPLAY));
    icalcomponent_add_property(component, icalproperty_new_trigger(trigger));
    icalcomponent_add_property(component,
                               icalproperty_new_description(plainText(alarm.words).constData()));
    return component;
}

/// Minutes since 2020: later exports go before earlier ones (RFC 5545, section 3.8.7.4).
int sequenceAt(const QDateTime& now) {
    constexpr qint64 secondsAMinute = 60;
    static const QDateTime first(QDate(2020, 1, 1), QTime(0, 0), Qt::UTC);
    return static_cast<int>(std::max<qint64>(0, first.secsTo(now) / secondsAMinute));
}

icalcomponent* eventComponent(const Entry& entry, const QDateTime& now) {
    icalcomponent* event = icalcomponent_new(ICAL_VEVENT_COMPONENT);
    icalcomponent_add_property(event, icalproperty_new_uid(entry.uid.toUtf8().constData()));
    icalcomponent_add_property(event, icalproperty_new_dtstamp(utcTime(now)));
    icalcomponent_add_property(event, icalproperty_new_lastmodified(utcTime(now)));
    icalcomponent_add_property(event, icalproperty_new_sequence(sequenceAt(now)));
    addTimes(event, entry);
    icalcomponent_add_property(event, icalproperty_new_summary(plainText(entry.title).constData()));
    if (!entry.details.isEmpty())
        icalcomponent_add_property(
            event, icalproperty_new_description(plainText(entry.details).constData()));
    icalcomponent_add_property(
        event, icalproperty_new_transp(entry.busy ? ICAL_TRANSP_OPAQUE : ICAL_TRANSP_TRANSPARENT));
    for (const Alarm& alarm : entry.alarms)
        icalcomponent_add_component(event, alarmComponent(alarm));
    return event;
}

/// The zones that times are told in, each once, and how far their clocks are asked for.
struct Zones {
    QList<QTimeZone> zones;
    QDateTime from;
    QDateTime to;
};

Zones zonesOf(const Calendar& calendar) {
    Zones found;
    for (const Entry& entry : calendar.entries) {
        if (entry.isOfWholeDay() || isToldInUtc(entry))
            continue;
        if (!found.zones.contains(entry.zone))
            found.zones.append(entry.zone);
        if (!found.from.isValid() || entry.start < found.from)
            found.from = entry.start;
        if (!found.to.isValid() || entry.end > found.to)
            found.to = entry.end;
    }
    return found;
}

void addZones(icalcomponent* whole, const Calendar& calendar) {
    const Zones needed = zonesOf(calendar);
    for (const QTimeZone& zone : needed.zones) {
        Component component = zoneComponent(zone, needed.from.addDays(-1), needed.to.addYears(1));
        icalcomponent_add_component(whole, component.release());
    }
    // What a calendar that knows no VTIMEZONE goes by.
    if (needed.zones.size() == 1)
        addOwn(whole, "X-WR-TIMEZONE", QString::fromLatin1(needed.zones.first().id()));
}
} // namespace

QByteArray plainText(const QString& text) {
    constexpr char16_t nextLine = 0x85;
    constexpr char16_t firstPrinting = 0x20;
    constexpr char16_t deleted = 0x7f;
    QString plain;
    plain.reserve(text.size());
    for (qsizetype at = 0; at < text.size(); ++at) {
        const QChar sign = text[at];
        const bool followed = at + 1 < text.size() && text[at + 1] == QLatin1Char('\n');
        if (sign == QLatin1Char('\r') && followed)
            continue;
        if (sign == QLatin1Char('\r') || sign == QLatin1Char('\n') || sign == QChar(nextLine) ||
            sign == QChar::LineSeparator || sign == QChar::ParagraphSeparator)
            plain += QLatin1Char('\n');
        else if (sign == QLatin1Char('\t') ||
                 (sign >= QChar(firstPrinting) && sign != QChar(deleted)))
            plain += sign;
    }
    return plain.toUtf8();
}

icaltimetype toIcalTime(const QDateTime& shown) {
    icaltimetype time = icaltime_null_time();
    time.year = shown.date().year();
    time.month = shown.date().month();
    time.day = shown.date().day();
    time.hour = shown.time().hour();
    time.minute = shown.time().minute();
    time.second = shown.time().second();
    return time;
}

QByteArray toICalendar(const Calendar& calendar, const QDateTime& now) {
    const Component whole(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
    icalcomponent_add_property(whole.get(), icalproperty_new_version("2.0"));
    icalcomponent_add_property(
        whole.get(), icalproperty_new_prodid("-//Ladlework//Ladlework " LADLEWORK_VERSION "//EN"));
    icalcomponent_add_property(whole.get(), icalproperty_new_calscale("GREGORIAN"));
    icalcomponent_add_property(whole.get(),
                               icalproperty_new_name(plainText(calendar.name).constData()));
    addOwn(whole.get(), "X-WR-CALNAME", calendar.name);
    addZones(whole.get(), calendar);
    for (const Entry& entry : calendar.entries)
        icalcomponent_add_component(whole.get(), eventComponent(entry, now));
    const std::unique_ptr<char, FreeText> text(icalcomponent_as_ical_string_r(whole.get()));
    return QByteArray(text.get());
}

} // namespace ladlework::calendar
