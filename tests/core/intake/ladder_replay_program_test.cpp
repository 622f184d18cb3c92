// The program that replays here (replay.py) was written from the rules' text alone and shares no
// line with the machine: every day and the end must be equal.
#include "core/intake/random_ladders.h"
#include "intake/reckon_ladder.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QSet>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

QJsonObject rulesJson(const LadderRules& rules) {
    return {{QStringLiteral("good_share"), rules.goodShare},
            {QStringLiteral("mild_to"), rules.mildTo},
            {QStringLiteral("moderate_to"), rules.moderateTo},
            {QStringLiteral("strong_to"), rules.strongTo},
            {QStringLiteral("days_to_advance"), rules.daysToAdvance},
            {QStringLiteral("hold_days"), rules.holdDays},
            {QStringLiteral("moderate_window_days"), rules.moderateWindowDays},
            {QStringLiteral("stale_days"), rules.staleDays},
            {QStringLiteral("rungs_back"), rules.rungsBack},
            {QStringLiteral("hold_target_days"), rules.holdTargetDays}};
}

QJsonObject inputJson(const testing::RandomClimb& climb) {
    QJsonArray rungs;
    for (quantity::Volume rung : climb.ladder.rungs)
        rungs.append(rung.toMillilitres());
    QJsonArray log;
    for (const LogDay& day : climb.log)
        log.append(QJsonObject{
            {QStringLiteral("day"), day.day.toString(Qt::ISODate)},
            {QStringLiteral("drunk_ml"), day.drunk.toMillilitres()},
            {QStringLiteral("worst_reaction"),
             day.worstReaction ? QJsonValue(*day.worstReaction) : QJsonValue(QJsonValue::Null)},
            {QStringLiteral("red_flag"), day.redFlag}});
    QJsonArray decisions;
    for (const Decision& decision : climb.decisions)
        decisions.append(QJsonObject{{QStringLiteral("day"), decision.day.toString(Qt::ISODate)},
                                     {QStringLiteral("resume_at_rung"), decision.resumeAtRung},
                                     {QStringLiteral("reason"), decision.reason}});
    QJsonObject input{{QStringLiteral("band"), QStringLiteral("adult")},
                      {QStringLiteral("start_ml"), rungs.first()},
                      {QStringLiteral("target_ml"), QJsonArray{rungs.last(), 4000}},
                      {QStringLiteral("rungs_ml"), rungs},
                      {QStringLiteral("log"), log},
                      {QStringLiteral("decisions"), decisions},
                      {QStringLiteral("today"), climb.today.toString(Qt::ISODate)}};
    if (climb.ladder.rules != LadderRules{})
        input.insert(QStringLiteral("rules"), rulesJson(climb.ladder.rules));
    return input;
}

QJsonArray runReplayProgram(const QJsonArray& cases) {
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("cases.json")));
    if (!file.open(QIODevice::WriteOnly))
        return {};
    file.write(QJsonDocument(cases).toJson(QJsonDocument::Compact));
    file.close();
    QProcess python;
    python.start(
        QStringLiteral(LADLEWORK_PYTHON),
        {QStringLiteral(LADLEWORK_SOURCE_DIR "/tests/core/intake/replay.py"), file.fileName()});
    constexpr int mostMilliseconds = 120'000;
    EXPECT_TRUE(python.waitForFinished(mostMilliseconds)) << qPrintable(python.errorString());
    EXPECT_EQ(python.exitCode(), 0) << python.readAllStandardError().constData();
    return QJsonDocument::fromJson(python.readAllStandardOutput()).array();
}

void expectSame(const QJsonObject& ours, const QJsonObject& theirs, const QJsonObject& input) {
    const QJsonArray ourDays = ours.value(QStringLiteral("days")).toArray();
    const QJsonArray theirDays = theirs.value(QStringLiteral("days")).toArray();
    const QByteArray whole = QJsonDocument(input).toJson(QJsonDocument::Compact);
    ASSERT_EQ(ourDays.size(), theirDays.size()) << whole.constData();
    for (qsizetype i = 0; i < ourDays.size(); ++i)
        ASSERT_EQ(QJsonDocument(ourDays[i].toObject()).toJson().toStdString(),
                  QJsonDocument(theirDays[i].toObject()).toJson().toStdString())
            << "in " << whole.constData();
    for (const QString& key : {QStringLiteral("state"), QStringLiteral("rung"),
                               QStringLiteral("good_days"), QStringLiteral("days_at_target")})
        ASSERT_EQ(ours.value(key), theirs.value(key))
            << qPrintable(key) << " in " << whole.constData();
}

TEST(LadderReplayProgramTest, agreesOnEveryDayOfRandomLogs) {
    constexpr int count = 600;
    testing::RandomClimbs climbs(20240611);
    QJsonArray inputs;
    for (int i = 0; i < count; ++i)
        inputs.append(inputJson(climbs.next()));
    const QJsonArray theirs = runReplayProgram(inputs);
    ASSERT_EQ(theirs.size(), count);

    QSet<QString> seen;
    for (int i = 0; i < count; ++i) {
        const Result<QJsonObject> ours = reckonLadder(inputs[i].toObject());
        ASSERT_TRUE(ours.has_value()) << qPrintable(toLine(ours.error()));
        ASSERT_NO_FATAL_FAILURE(expectSame(*ours, theirs[i].toObject(), inputs[i].toObject()));
        for (const QJsonValue day : ours->value(QStringLiteral("days")).toArray())
            seen.insert(QStringLiteral("%1 by rule %2")
                            .arg(day[QStringLiteral("decision")].toString())
                            .arg(day[QStringLiteral("rule")].toInt()));
        seen.insert(ours->value(QStringLiteral("state")).toString());
    }
    // The agreement is worth something only when every rule and every state has been met.
    for (const char* met :
         {"stop by rule 1", "stop by rule 2", "back by rule 3", "back by rule 4", "hold by rule 4",
          "gap by rule 5", "stale by rule 5", "stay by rule 6", "hold by rule 7", "stay by rule 8",
          "advance by rule 8", "climbing", "holding", "stopped", "at-target", "easing-off"})
        EXPECT_TRUE(seen.contains(QLatin1String(met))) << met << " was never met";
}

} // namespace
} // namespace ladlework::intake
