#include "exchange/family_text.h"

#include "exchange/week_text.h"
#include "kitchen/catalogue.h"

#include <QCoreApplication>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

people::Family readHead(TextReader& reader) {
    people::Family family;
    family.name = reader.text(QStringLiteral("name"));
    family.contact = reader.textOr(QStringLiteral("contact"), {});
    if (reader.has(QStringLiteral("status")))
        family.status = reader.word(QStringLiteral("status"), people::statusFromId,
                                    QStringLiteral("active, resting, finished"));
    family.since = reader.shiftedDay(QStringLiteral("since"));
    family.zone = readZone(reader, QStringLiteral("zone"));
    family.measures = readMeasures(reader, QStringLiteral("measures"));
    family.paper = readPaper(reader, QStringLiteral("paper"));
    constexpr int mostCookings = 1000; // people::check() knows the true limit
    family.mostOfOneAnimal =
        reader.optionalInteger(QStringLiteral("most_of_one_animal"), 0, mostCookings).value_or(0);
    family.handoutLanguage =
        reader.textOr(QStringLiteral("handout_language"), family.handoutLanguage);
    family.reviewOn = reader.shiftedDayOrNone(QStringLiteral("review_on"));
    family.remarks = reader.textOr(QStringLiteral("remarks"), {});
    return family;
}

/// The amounts of the head, which need the family's own measures.
void readRooms(TextReader& reader, people::Family& family) {
    family.altitude = reader.lengthOr(QStringLiteral("altitude"), family.altitude);
    family.fridgeRoom = reader.volumeOr(QStringLiteral("fridge_room"), family.fridgeRoom);
    family.freezerRoom = reader.volumeOr(QStringLiteral("freezer_room"), family.freezerRoom);
    family.meatPerDay = reader.massOr(QStringLiteral("meat_a_day"), family.meatPerDay);
}

void readNotes(TextReader& reader, FamilyText& family) {
    reader.each(QStringLiteral("notes"), [&](TextReader& entry) {
        casebook::VisitNote note;
        note.day = entry.shiftedDay(QStringLiteral("day"));
        note.text = entry.text(QStringLiteral("text"));
        note.agreed = entry.textOr(QStringLiteral("agreed"), {});
        note.reviewOn = entry.shiftedDayOrNone(QStringLiteral("review_on"));
        if (entry.reading().leavesOut(note.day))
            return;
        if (note.day > entry.reading().today)
            entry.fail(QStringLiteral("day"), say("A note cannot be of a day to come."));
        if (note.text.trimmed().isEmpty())
            entry.fail(QStringLiteral("text"), say("A note needs a text."));
        family.records.notes.append(note);
    });
}

} // namespace

FamilyText::FamilyText(const QList<kitchen::Pot>& practicePots, Keys practicePotKeys)
    : members(say("member")), vessels(say("vessel")), containers(say("container")),
      pots(std::move(practicePotKeys)), lots(say("lot")) {
    records.pots = practicePots;
}

quantity::MeasureSystem readMeasures(TextReader& reader, const QString& key) {
    const QString word = reader.text(key);
    if (word != QStringLiteral("us") && word != QStringLiteral("metric"))
        reader.fail(key, say("This must be one of: %1.").arg(QStringLiteral("us, metric")));
    return word == QStringLiteral("metric") ? quantity::MeasureSystem::Metric
                                            : quantity::MeasureSystem::UsCustomary;
}

people::Paper readPaper(TextReader& reader, const QString& key) {
    const QString word = reader.text(key);
    if (word != QStringLiteral("letter") && word != QStringLiteral("a4"))
        reader.fail(key, say("This must be one of: %1.").arg(QStringLiteral("letter, a4")));
    return word == QStringLiteral("a4") ? people::Paper::A4 : people::Paper::Letter;
}

QTimeZone readZone(TextReader& reader, const QString& key) {
    QTimeZone zone(reader.text(key).toLatin1());
    if (!reader.failed() && !zone.isValid())
        reader.fail(key, say("This is no time zone; write one such as \"Europe/Dublin\"."));
    return zone.isValid() ? zone : QTimeZone(QByteArrayLiteral("UTC"));
}

Outcome readFamilyText(const QJsonObject& object, const Reading& reading, const Clock& clock,
                       FamilyText& family) {
    const QString head = QStringLiteral("family");
    TextReader outer(object, {}, reading);
    const QJsonObject headObject = outer.object(head);
    if (outer.failed())
        return outer.finish();

    Reading own = reading;
    TextReader headReader(headObject, head, own);
    people::Family& record = family.records.family;
    record = readHead(headReader);
    own.measures = record.measures;
    own.today = clock.today(record.zone);
    readRooms(headReader, record);
    headReader.accept(people::check(record, own.today));
    if (Outcome finished = headReader.finish(); !finished)
        return finished;

    TextReader reader(object, {}, own);
    static_cast<void>(reader.object(head));
    readMembers(reader, family);
    readKitchen(reader, family);
    readUsualHours(reader, family);
    readWeeks(reader, family);
    readNotes(reader, family);
    return reader.finish();
}

} // namespace ladlework::exchange
