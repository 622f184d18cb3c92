#include "exchange/practice_text.h"

#include "exchange/family_text.h"
#include "exchange/house_text.h"
#include "exchange/log_csv.h"

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <algorithm>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

Result<QByteArray> readFile(const QString& folder, const QString& name) {
    QFile file(folder + QLatin1Char('/') + name);
    if (!file.open(QIODevice::ReadOnly))
        return problem(Problem::Kind::Unavailable,
                       say("The file cannot be read: %1.").arg(file.errorString()), name);
    return file.readAll();
}

/// Puts the name of the file in front of the place of a problem in it.
tl::unexpected<Problem> inFile(const QString& name, Problem found) {
    found.place = found.place.isEmpty() ? name : name + QStringLiteral(": ") + found.place;
    return tl::unexpected<Problem>(std::move(found));
}

Result<QJsonObject> readObject(const QString& folder, const QString& name) {
    const Result<QByteArray> json = readFile(folder, name);
    if (!json)
        return passOn(json);
    Result<QJsonObject> object = parseJsonObject(*json);
    if (!object)
        return inFile(name, object.error());
    return object;
}

people::Practice readPractice(TextReader& reader) {
    people::Practice practice;
    practice.name = reader.text(QStringLiteral("name"));
    practice.practitioner = reader.text(QStringLiteral("practitioner"));
    practice.contact = reader.textOr(QStringLiteral("contact"), {});
    practice.emergencyNumber = reader.text(QStringLiteral("emergency_number"));
    practice.measures = readMeasures(reader, QStringLiteral("measures"));
    practice.paper = readPaper(reader, QStringLiteral("paper"));
    practice.zone = readZone(reader, QStringLiteral("zone"));
    practice.fridgeDays = reader
                              .optionalInteger(QStringLiteral("fridge_days"),
                                               people::leastFridgeDays(), people::mostFridgeDays())
                              .value_or(practice.fridgeDays);
    practice.currency = reader.textOr(QStringLiteral("currency"), {});
    practice.spill =
        reader.optionalNumber(QStringLiteral("spill"), 0.0, 1.0).value_or(practice.spill);
    reader.accept(people::check(practice));
    return practice;
}

/// A phase of the workbook with this name, or a new one at the end.
people::Phase& phaseToSet(QList<people::Phase>& phases, const QString& name) {
    for (people::Phase& phase : phases)
        if (phase.name.compare(name, Qt::CaseInsensitive) == 0)
            return phase;
    people::Phase added;
    added.name = name;
    for (const people::Phase& phase : std::as_const(phases)) {
        added.id.value = std::max(added.id.value, phase.id.value + 1);
        added.position = std::max(added.position, phase.position + 1);
    }
    added.id.value = std::max<qint64>(added.id.value, 1);
    phases.append(added);
    return phases.last();
}

void readPhases(TextReader& reader, QList<people::Phase>& phases) {
    reader.each(QStringLiteral("phases"), [&](TextReader& entry) {
        people::Phase& phase = phaseToSet(phases, entry.text(QStringLiteral("name")));
        kitchen::PhaseRules& rules = phase.rules;
        rules.strainHerbs = entry.flagOr(QStringLiteral("strain_herbs"), rules.strainHerbs);
        rules.strainVegetables =
            entry.flagOr(QStringLiteral("strain_vegetables"), rules.strainVegetables);
        rules.strainPeppercorns =
            entry.flagOr(QStringLiteral("strain_peppercorns"), rules.strainPeppercorns);
        rules.groundPepper = entry.flagOr(QStringLiteral("ground_pepper"), rules.groundPepper);
        rules.boneBroth = entry.flagOr(QStringLiteral("bone_broth"), rules.boneBroth);
        entry.accept(people::check(phase));
    });
}

/// Reads the log of a family, where there is one, into its records.
Outcome readLogFile(const QString& folder, const QString& name, const Reading& reading,
                    FamilyText& family) {
    if (!QFile::exists(folder + QLatin1Char('/') + name))
        return {};
    const Result<QByteArray> csv = readFile(folder, name);
    if (!csv)
        return passOn(csv);
    const Result<QString> text = textOfLog(*csv);
    if (!text)
        return inFile(name, text.error());
    LogNames names = LogNames::of(family.records);
    for (auto key = family.members.all().begin(); key != family.members.all().end(); ++key)
        names.members.insert(key.key().toCaseFolded(), MemberId{key.value()});
    for (auto key = family.pots.all().begin(); key != family.pots.all().end(); ++key)
        names.pots.insert(key.key().toCaseFolded(), PotId{key.value()});
    for (auto key = family.lots.all().begin(); key != family.lots.all().end(); ++key)
        names.lots.insert(key.key().toCaseFolded(), LotId{key.value()});
    const LogDays days{reading.today, reading.shiftDays, reading.untilYesterday};
    const Result<LogReport> report = readLog(*text, names, family.records, days);
    if (!report)
        return inFile(name, report.error());
    if (!report->refused.isEmpty())
        return inFile(name, toProblem(report->refused.first()));
    for (const LogAddition& addition : report->additions) {
        if (addition.entry)
            family.records.entries.append(*addition.entry);
        if (addition.reaction)
            family.records.reactions.append(*addition.reaction);
    }
    return {};
}

Outcome readFamily(const QString& folder, const QString& word, const Reading& reading,
                   const Clock& clock, FamilyText& family) {
    const QString name = word + QStringLiteral(".json");
    const Result<QJsonObject> object = readObject(folder, name);
    if (!object)
        return passOn(object);
    if (const Outcome read = readFamilyText(*object, reading, clock, family); !read)
        return inFile(name, read.error());
    Reading own = reading;
    own.measures = family.records.family.measures;
    own.today = clock.today(family.records.family.zone);
    return readLogFile(folder, word + QStringLiteral("-log.csv"), own, family);
}

/// Days to add to every date, so that the week of `writtenFor` becomes the week of `today`.
int shiftOf(QDate writtenFor, QDate today) {
    return static_cast<int>(week::weekStart(writtenFor).daysTo(week::weekStart(today)));
}

/// The names of the family files: plain words, so that no file outside the folder is meant.
QStringList familyWords(TextReader& reader) {
    const QString key = QStringLiteral("families");
    QStringList words = reader.optionalTexts(key);
    static const QRegularExpression plain(QStringLiteral("^[A-Za-z0-9_-]+$"));
    for (qsizetype index = 0; index < words.size(); ++index) {
        const bool twice = words.indexOf(words[index]) != index;
        if (twice || !plain.match(words[index]).hasMatch())
            reader.fail({Problem::Kind::BadInput,
                         say("A family file is named once, by letters, digits, - and _ only."),
                         {},
                         reader.pathOf(key, index)});
    }
    return words;
}

} // namespace

Result<PracticeText> readPracticeText(const QString& folder, const QList<people::Phase>& phases,
                                      const kitchen::Catalogue& catalogue, const Clock& clock,
                                      Dates dates) {
    const QString name = QStringLiteral("practice.json");
    const Result<QJsonObject> object = readObject(folder, name);
    if (!object)
        return passOn(object);

    PracticeText text;
    text.phases = phases;
    Reading reading{catalogue, text.phases, {}, {}, 0, dates == Dates::MovedToThisWeek, {}};
    TextReader reader(*object, {}, reading);
    const QString head = QStringLiteral("practice");
    TextReader headReader(reader.object(head), head, reading);
    text.practice = readPractice(headReader);
    reader.accept(headReader.finish());
    const QString anchor = QStringLiteral("written_for");
    const bool moved = dates == Dates::MovedToThisWeek;
    const QDate writtenFor = moved || reader.has(anchor) ? reader.day(anchor) : QDate();
    readPhases(reader, text.phases);
    reading.measures = text.practice.measures;
    reading.today = clock.today(text.practice.zone);
    readHouse(reader, text);
    reading.houseRules = text.houseRules;
    Keys potKeys(say("pot"));
    text.pots = readPots(reader, potKeys, nullptr);
    const QStringList words = familyWords(reader);
    if (const Outcome finished = reader.finish(); !finished)
        return inFile(name, finished.error());

    if (moved)
        reading.shiftDays = shiftOf(writtenFor, reading.today);
    for (const QString& word : words) {
        FamilyText family(text.pots, potKeys);
        if (const Outcome read = readFamily(folder, word, reading, clock, family); !read)
            return passOn(read);
        text.families.append(std::move(family.records));
    }
    return text;
}

} // namespace ladlework::exchange
