#include "exchange/week_text.h"

#include "kitchen/catalogue.h"

#include <QCoreApplication>
#include <array>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

/// A time of day; an invalid one when the key is absent.
QTime readTimeOrNone(TextReader& reader, const QString& key) {
    if (!reader.has(key))
        return {};
    const QTime time = QTime::fromString(reader.text(key), QStringLiteral("H:mm"));
    if (!time.isValid())
        reader.fail(key, say("This must be a time of day written as \"HH:MM\"."));
    return time;
}

constexpr std::array weekdays{"monday", "tuesday",  "wednesday", "thursday",
                              "friday", "saturday", "sunday"};

std::optional<int> weekdayFromWord(QStringView word) {
    for (std::size_t index = 0; index < weekdays.size(); ++index)
        if (word == QLatin1String(weekdays.at(index)))
            return static_cast<int>(index) + 1;
    return std::nullopt;
}

week::FreeHours readFreeHours(TextReader& reader) {
    constexpr int most = 1000; // week::check() knows the true limit
    week::FreeHours hours;
    hours.from = readTimeOrNone(reader, QStringLiteral("from"));
    hours.length = reader.duration(QStringLiteral("length"));
    hours.pots = reader.optionalInteger(QStringLiteral("pots"), 0, most).value_or(hours.pots);
    return hours;
}

void readPlacements(TextReader& reader, const Keys& pots, week::WeekPlan& plan) {
    reader.each(QStringLiteral("pots"), [&](TextReader& entry) {
        week::Placement placement;
        placement.day = entry.shiftedDay(QStringLiteral("day"));
        placement.pot = PotId{pots.find(entry, QStringLiteral("pot"))};
        placement.start = readTimeOrNone(entry, QStringLiteral("start"));
        plan.placements.append(placement);
    });
}

void readOwnHours(TextReader& reader, week::WeekPlan& plan) {
    reader.each(QStringLiteral("locked"), [&](TextReader& entry) {
        plan.lockedDays.append(entry.shiftedDay(QStringLiteral("day")));
    });
    reader.each(QStringLiteral("hours"), [&](TextReader& entry) {
        week::DayHours own;
        own.day = entry.shiftedDay(QStringLiteral("day"));
        entry.each(QStringLiteral("free"),
                   [&](TextReader& inner) { own.hours.append(readFreeHours(inner)); });
        plan.hours.append(own);
    });
}

void readShopping(TextReader& reader, week::WeekPlan& plan) {
    reader.each(QStringLiteral("extras"), [&](TextReader& entry) {
        week::HouseholdExtra extra;
        extra.text = entry.text(QStringLiteral("text"));
        if (entry.has(QStringLiteral("section")))
            extra.section =
                entry.word(QStringLiteral("section"), week::shopSectionFromId,
                           QStringLiteral("meat, fish, vegetables, herbs, dry, household"));
        plan.extras.append(extra);
    });
    reader.each(QStringLiteral("at_home"), [&](TextReader& entry) {
        week::AtHome atHome;
        atHome.item = entry.text(QStringLiteral("item"));
        atHome.mass = entry.mass(QStringLiteral("mass"));
        const kitchen::Catalogue& catalogue = entry.reading().catalogue;
        if (!entry.failed() && atHome.item != QStringLiteral("salt") &&
            catalogue.cut(atHome.item) == nullptr && catalogue.extra(atHome.item) == nullptr)
            entry.fail(QStringLiteral("item"),
                       say("\"%1\" is not in the catalogue; mend its spelling.").arg(atHome.item));
        plan.atHome.append(atHome);
    });
}

} // namespace

void readUsualHours(TextReader& reader, FamilyText& family) {
    reader.each(QStringLiteral("free_hours"), [&](TextReader& entry) {
        week::UsualHours usual;
        usual.weekday =
            entry.word(QStringLiteral("weekday"), weekdayFromWord,
                       QStringLiteral("monday, tuesday, wednesday, thursday, friday, saturday, "
                                      "sunday"));
        usual.hours = readFreeHours(entry);
        entry.accept(week::check(usual));
        family.records.usualHours.append(usual);
    });
}

void readWeeks(TextReader& reader, FamilyText& family) {
    reader.each(QStringLiteral("weeks"), [&](TextReader& entry) {
        week::WeekPlan plan;
        plan.start = entry.shiftedDay(QStringLiteral("start"));
        plan.note = entry.textOr(QStringLiteral("note"), {});
        if (plan.start.isValid() && plan.start != week::weekStart(plan.start))
            entry.fail(QStringLiteral("start"), say("A week starts on a Monday."));
        readPlacements(entry, family.pots, plan);
        readOwnHours(entry, plan);
        readShopping(entry, plan);
        entry.accept(week::check(plan));
        for (const week::WeekPlan& other : std::as_const(family.records.weeks))
            if (other.start == plan.start)
                entry.fail(QStringLiteral("start"), say("This week is planned twice."));
        family.records.weeks.append(plan);
    });
}

} // namespace ladlework::exchange
