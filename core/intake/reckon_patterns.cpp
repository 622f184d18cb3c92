#include "intake/reckon_patterns.h"

#include "foundation/finding_json.h"
#include "foundation/json_reader.h"
#include "intake/patterns.h"

#include <QCoreApplication>
#include <QJsonArray>

namespace ladlework::intake {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(ReckonPatterns)
};

constexpr int strongest = 10;
constexpr int mostWindowDays = 365;

struct PatternInput {
    QList<PatternDay> days;
    PatternRules rules;
};

QStringList readExposures(JsonReader& reader) {
    const QString key = QStringLiteral("exposures");
    QStringList exposures;
    const QJsonArray values = reader.array(key);
    for (qsizetype i = 0; i < values.size(); ++i) {
        const QString subject = values[i].toString().trimmed();
        if (subject.isEmpty())
            reader.fail(Problem{Problem::Kind::BadInput,
                                Words::tr("This must be the name of something that was taken."),
                                {},
                                reader.pathOf(key, i)});
        exposures.append(subject);
    }
    return exposures;
}

Result<PatternInput> readInput(const QJsonObject& object) {
    JsonReader reader(object, QString());
    PatternInput input;
    reader.readEach(QStringLiteral("days"), [&input](JsonReader& inner) {
        const QString reaction = QStringLiteral("worst_reaction");
        PatternDay day;
        day.day = inner.day(QStringLiteral("day"));
        day.exposures = readExposures(inner);
        if (!inner.isNull(reaction)) // null: none entered
            day.worstReaction = inner.integer(reaction, 0, strongest);
        input.days.append(day);
    });
    input.rules.windowDays = reader.integer(QStringLiteral("window_days"), 0, mostWindowDays);
    input.rules.reactionAtLeast = reader.integer(QStringLiteral("reaction_at_least"), 0, strongest);
    if (const Outcome done = reader.finish(); !done)
        return passOn(done);
    return input;
}

QJsonObject toJson(const Pattern& pattern) {
    const bool hasRatio = pattern.riskRatio.has_value();
    const QJsonValue none(QJsonValue::Null);
    return {{QStringLiteral("subject"), pattern.subject},
            {QStringLiteral("exposed_reacted"), pattern.exposedReacted},
            {QStringLiteral("exposed_fine"), pattern.exposedFine},
            {QStringLiteral("other_reacted"), pattern.otherReacted},
            {QStringLiteral("other_fine"), pattern.otherFine},
            {QStringLiteral("risk_ratio"), hasRatio ? QJsonValue(*pattern.riskRatio) : none},
            {QStringLiteral("risk_ratio_95"),
             hasRatio ? QJsonValue(QJsonArray{pattern.riskLow, pattern.riskHigh}) : none},
            {QStringLiteral("p"), pattern.p},
            {QStringLiteral("q"), pattern.q},
            {QStringLiteral("enough"), pattern.enough}};
}

Finding note(const QString& code, const QString& text) {
    Finding finding;
    finding.code = code;
    finding.text = text;
    return finding;
}

Findings findingsFor(const QList<Pattern>& found) {
    Findings findings;
    for (const Pattern& pattern : found) {
        if (!isWorthTalkingAbout(pattern))
            continue;
        Finding finding =
            note(QStringLiteral("pattern-worth-talking-about"), explain(pattern, pattern.subject));
        finding.value = pattern.q;
        finding.source = Words::tr("Fisher's exact test, adjusted over all subjects (Benjamini and "
                                   "Hochberg 1995)");
        findings.append(finding);
    }
    if (std::ranges::none_of(found, &Pattern::enough))
        findings.append(note(QStringLiteral("patterns-not-enough"),
                             Words::tr("There are not enough days to say anything of any "
                                       "subject.")));
    if (!findings.isEmpty() && !found.isEmpty())
        findings.append(
            note(QStringLiteral("pattern-is-no-cause"),
                 Words::tr("Days that follow one another are not independent, and what is taken "
                           "together cannot be told apart: a pattern is no proof of a cause.")));
    return findings;
}
} // namespace

Result<QJsonObject> reckonPatterns(const QJsonObject& object) {
    const Result<PatternInput> input = readInput(object);
    if (!input)
        return passOn(input);
    const QList<Pattern> found = patterns(input->days, input->rules);
    QJsonArray subjects;
    for (const Pattern& pattern : found)
        subjects.append(toJson(pattern));
    return QJsonObject{{QStringLiteral("subjects"), subjects},
                       {QStringLiteral("findings"), findingsJson(findingsFor(found))}};
}

} // namespace ladlework::intake
