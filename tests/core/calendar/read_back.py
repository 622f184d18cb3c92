"""Reads an iCalendar file with the icalendar module and tells what it found, as JSON.

Independent of the program: the format is read by icalendar, zones by zoneinfo (the system's own
database). Times are also worked out from the file's VTIMEZONE alone, by the text of RFC 5545.
"""

import datetime
import json
import sys
import zoneinfo

import icalendar

UTC = datetime.timezone.utc


def check_lines(raw):
    """RFC 5545, section 3.1: CRLF at the end of each line, at most 75 octets before it."""
    complaints = []
    if not raw.endswith(b"\r\n"):
        complaints.append("the file does not end with CRLF")
    lines = raw.split(b"\r\n")[:-1]
    for number, line in enumerate(lines, 1):
        if len(line) > 75:
            complaints.append(f"line {number} has {len(line)} octets")
        if any(octet < 0x20 and octet != 0x09 or octet == 0x7F for octet in line):
            complaints.append(f"line {number} has a control character")
        try:
            line.decode("utf-8")
        except UnicodeDecodeError:
            complaints.append(f"line {number} is cut inside a character")
    return complaints


def observances(calendar):
    """By TZID: (onset in UTC as a naive time, offset before, offset since), in order of onset."""
    zones = {}
    for component in calendar.walk("VTIMEZONE"):
        found = []
        for part in component.subcomponents:
            before = part["TZOFFSETFROM"].td
            found.append((part["DTSTART"].dt.replace(tzinfo=None) - before, before,
                          part["TZOFFSETTO"].td))
        zones[str(component["TZID"])] = sorted(found)
    return zones


def by_observances(shown, found):
    """A local time in UTC: the first of two, the offset before a gap (section 3.3.5)."""
    for index, (onset, _, offset) in enumerate(found):
        moment = shown - offset
        end = found[index + 1][0] if index + 1 < len(found) else datetime.datetime.max
        if onset <= moment < end:
            return moment
    for onset, before, offset in found:
        if onset + before <= shown < onset + offset:
            return shown - before
    return shown - found[0][1]


def by_zoneinfo(shown, zone):
    """The same by the system's database. fold=0 is the first of two and the offset before a gap."""
    return shown.replace(tzinfo=zoneinfo.ZoneInfo(zone), fold=0).astimezone(UTC)


def moment(prop, zones):
    """What a DTSTART or DTEND says."""
    value = prop.dt
    if not isinstance(value, datetime.datetime):
        return {"day": value.isoformat()}
    shown = value.replace(tzinfo=None)
    zone = prop.params.get("TZID")
    if zone is None:
        return {"utc": shown.isoformat() + "Z", "told": "utc" if value.tzinfo else "floating"}
    result = {"told": zone, "shown": shown.isoformat(),
              "by_file": by_observances(shown, zones[zone]).isoformat() + "Z"}
    try:
        result["utc"] = by_zoneinfo(shown, zone).strftime("%Y-%m-%dT%H:%M:%SZ")
    except zoneinfo.ZoneInfoNotFoundError:
        result["utc"] = result["by_file"]
    return result


def alarm(component):
    return {"seconds": int(component["TRIGGER"].dt.total_seconds()),
            "words": str(component["DESCRIPTION"]), "action": str(component["ACTION"])}


def event(component, zones):
    return {"uid": str(component["UID"]), "summary": str(component["SUMMARY"]),
            "description": str(component.get("DESCRIPTION", "")),
            "start": moment(component["DTSTART"], zones), "end": moment(component["DTEND"], zones),
            "stamp": component["DTSTAMP"].dt.strftime("%Y-%m-%dT%H:%M:%SZ"),
            "sequence": int(component["SEQUENCE"]), "transp": str(component["TRANSP"]),
            "alarms": [alarm(part) for part in component.walk("VALARM")]}


def main():
    with open(sys.argv[1], "rb") as file:
        raw = file.read()
    calendar = icalendar.Calendar.from_ical(raw)
    zones = observances(calendar)
    json.dump({"complaints": check_lines(raw), "name": str(calendar["X-WR-CALNAME"]),
               "new_name": str(calendar["NAME"]), "version": str(calendar["VERSION"]),
               "prodid": str(calendar["PRODID"]), "zones": sorted(zones),
               "zone": str(calendar.get("X-WR-TIMEZONE", "")),
               "events": [event(part, zones) for part in calendar.walk("VEVENT")]}, sys.stdout)


main()
