#include "intake/ladder_input.h"

#include "foundation/json_reader.h"

#include <QCoreApplication>

namespace ladlework::intake {

namespace {
using quantity::Volume;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ReckonLadder)
};

constexpr int mostYearsBack = 50;
/// One drop: a household cannot measure less.
constexpr double leastStartMl = quantity::units::millilitresPerDrop;
constexpr double mostRungMl = 4000;
constexpr double mostDrunkMl = 100'000;
constexpr int strongest = 10;
constexpr int mostCount = 100'000;

void failAt(JsonReader& reader, const QString& path, const QString& sentence) {
    reader.fail(Problem{Problem::Kind::BadInput, sentence, {}, path});
}

QString snakeCase(const QString& camelCase) {
    QString snake;
    for (QChar letter : camelCase) {
        if (letter.isUpper())
            snake += QLatin1Char('_');
        snake += letter.toLower();
    }
    return snake;
}

AgeBand readBand(JsonReader& reader) {
    const QString key = QStringLiteral("band");
    const std::optional<AgeBand> band = ageBandFromId(reader.text(key));
    if (!band)
        reader.fail(key,
                    Words::tr("This must be infant-under-6-months, infant-starting-solids, child "
                              "or adult."));
    return band.value_or(AgeBand::InfantUnderSixMonths);
}

/// An amount above nothing and at most 4 L.
Volume readAmount(JsonReader& reader, const QString& path, const QJsonValue& value) {
    const double ml = value.toDouble();
    if (!value.isDouble() || !(ml > 0 && ml <= mostRungMl))
        failAt(reader, path,
               Words::tr("This must be a number of millilitres above 0 and at most 4,000."));
    return Volume::fromMillilitres(ml);
}

QList<Volume> readAmounts(JsonReader& reader, const QString& key) {
    QList<Volume> amounts;
    const QJsonArray values = reader.array(key);
    for (qsizetype i = 0; i < values.size(); ++i)
        amounts.append(readAmount(reader, reader.pathOf(key, i), values[i]));
    return amounts;
}

Volume readStart(JsonReader& reader) {
    const QString key = QStringLiteral("start_ml");
    const double ml = reader.number(key, leastStartMl, mostRungMl);
    return Volume::fromMillilitres(ml);
}

Target readTarget(JsonReader& reader) {
    const QString key = QStringLiteral("target_ml");
    const QList<Volume> ends = readAmounts(reader, key);
    Target target;
    if (ends.size() != 2) {
        reader.fail(key,
                    Words::tr("This must be a list of two numbers: the low and the high end."));
        return target;
    }
    target.low = ends[0];
    target.high = ends[1];
    if (target.high < target.low)
        failAt(reader, reader.pathOf(key, 1),
               Words::tr("The high end of the target must not lie below the low end."));
    return target;
}

void readRulesOf(JsonReader& inner, LadderRules& rules) {
    const auto count = [&inner](const char* name, int& rule, int most) {
        rule = inner.optionalInteger(QLatin1String(name), 0, most).value_or(rule);
    };
    rules.goodShare =
        inner.optionalNumber(QStringLiteral("good_share"), 0, 1).value_or(rules.goodShare);
    count("mild_to", rules.mildTo, strongest);
    count("moderate_to", rules.moderateTo, strongest);
    count("strong_to", rules.strongTo, strongest);
    count("days_to_advance", rules.daysToAdvance, mostCount);
    count("hold_days", rules.holdDays, mostCount);
    count("moderate_window_days", rules.moderateWindowDays, mostCount);
    count("stale_days", rules.staleDays, mostCount);
    count("rungs_back", rules.rungsBack, mostCount);
    count("hold_target_days", rules.holdTargetDays, mostCount);
    if (inner.failed())
        return;
    if (const Outcome fit = check(rules); !fit)
        failAt(inner, inner.pathOf(snakeCase(fit.error().place)), fit.error().sentence);
}

LadderRules readRules(JsonReader& reader) {
    const QString key = QStringLiteral("rules");
    LadderRules rules;
    if (!reader.has(key))
        return rules;
    reader.readObject(key, [&rules](JsonReader& inner) { readRulesOf(inner, rules); });
    return rules;
}

QDate readPastDay(JsonReader& reader, QDate today) {
    const QString key = QStringLiteral("day");
    const QDate day = reader.day(key);
    if (reader.failed())
        return day;
    if (day > today)
        reader.fail(key,
                    Words::tr("This day lies after \"today\"; leave it out or mend one of them."));
    if (day < today.addYears(-mostYearsBack))
        reader.fail(
            key, Words::tr("This day lies more than 50 years before \"today\"; check the year."));
    return day;
}

QList<LogDay> readLog(JsonReader& reader, QDate today) {
    QList<LogDay> log;
    reader.readEach(QStringLiteral("log"), [&](JsonReader& inner) {
        const QString reaction = QStringLiteral("worst_reaction");
        LogDay day;
        day.day = readPastDay(inner, today);
        day.drunk =
            Volume::fromMillilitres(inner.number(QStringLiteral("drunk_ml"), 0, mostDrunkMl));
        if (!inner.isNull(reaction)) // null: none entered
            day.worstReaction = inner.integer(reaction, 0, strongest);
        day.redFlag = inner.flag(QStringLiteral("red_flag"));
        log.append(day);
    });
    return log;
}

QList<Decision> readDecisions(JsonReader& reader, QDate today) {
    QList<Decision> decisions;
    reader.readEach(QStringLiteral("decisions"), [&](JsonReader& inner) {
        Decision decision;
        decision.day = readPastDay(inner, today);
        decision.resumeAtRung = inner.integer(QStringLiteral("resume_at_rung"), 0, mostCount);
        const QString reason = QStringLiteral("reason");
        decision.reason = inner.text(reason);
        if (!inner.failed() && decision.reason.trimmed().isEmpty())
            inner.fail(reason, Words::tr("A decision to go on needs a reason; enter why."));
        decisions.append(decision);
    });
    return decisions;
}

void readRungs(JsonReader& reader, Ladder& ladder) {
    const QString key = QStringLiteral("rungs_ml");
    if (!reader.has(key))
        return;
    ladder.rungs = readAmounts(reader, key);
    if (reader.failed())
        return;
    if (const Outcome fit = check(ladder); !fit)
        failAt(reader, QString(fit.error().place).replace(QStringLiteral("rungs"), key),
               fit.error().sentence);
}

} // namespace

Result<LadderInput> readLadderInput(const QJsonObject& object) {
    JsonReader reader(object, QString());
    LadderInput input;
    input.band = readBand(reader);
    input.start = readStart(reader);
    input.target = readTarget(reader);
    input.ladder.rules = readRules(reader);
    readRungs(reader, input.ladder);
    input.today = reader.day(QStringLiteral("today"));
    input.log = readLog(reader, input.today);
    input.decisions = readDecisions(reader, input.today);
    if (const Outcome done = reader.finish(); !done)
        return passOn(done);
    return input;
}

} // namespace ladlework::intake
