#include "store/climb_rows.h"

#include "casebook/standing_maker.h"
#include "store/intake_rows.h"
#include "store/records.h"
#include "store/rows.h"
#include "store/volume_steps.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

using casebook::ClimbSoFar;
using quantity::Volume;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(ClimbRows)
};

/// The stop that the columns hold: that of the ladder itself, else that of an earlier one.
std::optional<ClimbSoFar::EarlierStop> stopOf(const ClimbSoFar& climb) {
    if (climb.state.stop)
        return ClimbSoFar::EarlierStop{climb.ladder, *climb.state.stop};
    return climb.earlier;
}

Fields fieldsOf(MemberId member, const ClimbSoFar& climb) {
    const intake::ClimbState& state = climb.state;
    Fields fields{{"member_id"_L1, member},
                  {"last_logged"_L1, climb.lastLogged},
                  {"ladder_id"_L1, climb.ladder},
                  {"first_day"_L1, state.firstDay},
                  {"day"_L1, state.day},
                  {"rung_of_day"_L1, state.rungOfDay},
                  {"rung"_L1, state.rung},
                  {"stepped_up"_L1, state.steppedUp},
                  {"good_days"_L1, state.goodDays},
                  {"days_at_target"_L1, state.daysAtTarget},
                  {"gap_run"_L1, state.gapRun},
                  {"hold_until"_L1, state.holdUntil},
                  {"last_moderate"_L1, state.lastModerate},
                  {"stopped"_L1, state.stopped}};
    if (const auto stop = stopOf(climb))
        fields += Fields{{"stop_ladder_id"_L1, stop->ladder},
                         {"stop_day"_L1, stop->day.day},
                         {"stop_rung"_L1, stop->day.rung},
                         {"stop_asked_ml"_L1, stop->day.asked.toMillilitres()},
                         {"stop_rule"_L1, stop->day.rule},
                         {"stop_good_days"_L1, stop->day.goodDays}};
    return fields;
}

ClimbSoFar::EarlierStop readStop(const Statement& row) {
    ClimbSoFar::EarlierStop stop;
    stop.ladder = row.id<LadderId>("stop_ladder_id"_L1);
    stop.day.day = row.day("stop_day"_L1);
    stop.day.rung = row.integer("stop_rung"_L1);
    stop.day.asked = Volume::fromMillilitres(row.real("stop_asked_ml"_L1));
    stop.day.decision = intake::LadderDecision::Stop;
    stop.day.rule = row.integer("stop_rule"_L1);
    stop.day.goodDays = row.integer("stop_good_days"_L1);
    return stop;
}

ClimbSoFar readClimb(const Statement& row) {
    ClimbSoFar climb;
    climb.lastLogged = row.day("last_logged"_L1);
    climb.ladder = row.id<LadderId>("ladder_id"_L1);
    intake::ClimbState& state = climb.state;
    state.firstDay = row.day("first_day"_L1);
    state.day = row.day("day"_L1);
    state.rungOfDay = row.integer("rung_of_day"_L1);
    state.rung = row.integer("rung"_L1);
    state.steppedUp = row.day("stepped_up"_L1);
    state.goodDays = row.integer("good_days"_L1);
    state.daysAtTarget = row.integer("days_at_target"_L1);
    state.gapRun = row.integer("gap_run"_L1);
    state.holdUntil = row.day("hold_until"_L1);
    state.lastModerate = row.day("last_moderate"_L1);
    state.stopped = row.flag("stopped"_L1);
    if (row.isNull("stop_ladder_id"_L1))
        return climb;
    const ClimbSoFar::EarlierStop stop = readStop(row);
    if (stop.ladder == climb.ladder)
        state.stop = stop.day;
    else
        climb.earlier = stop;
    return climb;
}

/// What the ladder machine reads of an entry or a reaction; a log of years has thousands.
intake::IntakeEntry readDrunk(const Statement& row) {
    intake::IntakeEntry entry;
    entry.day = row.day("day"_L1);
    entry.drunk = Volume::fromMillilitres(row.real("drunk_ml"_L1));
    return entry;
}

intake::Reaction readFelt(const Statement& row) {
    intake::Reaction reaction;
    reaction.day = row.day("day"_L1);
    reaction.strength = row.integer("strength"_L1);
    reaction.redFlag = row.flag("red_flag"_L1);
    return reaction;
}

QList<intake::Ladder> laddersOf(Database& database, MemberId member) {
    QList<intake::Ladder> ladders = readAll(
        database, QStringLiteral("SELECT * FROM ladder WHERE member_id = ?"), readLadder, member);
    Statement rows = database.statement(
        QStringLiteral("SELECT rung.* FROM ladder JOIN ladder_rung AS rung "
                       "ON rung.ladder_id = ladder.id WHERE ladder.member_id = ? "
                       "ORDER BY rung.ladder_id, rung.position"));
    rows.with(member);
    giveSteps(ladders, &intake::Ladder::rungs, rows, {"ladder_rung"_L1, "ladder_id"_L1});
    return ladders;
}

/// What follows from the records; nothing when a ladder is not valid.
std::optional<ClimbSoFar> derivedClimb(Database& database, MemberId member) {
    casebook::MemberLog log;
    log.ladders = casebook::inOrder(laddersOf(database, member));
    if (!std::ranges::all_of(log.ladders, [](const intake::Ladder& ladder) {
            return intake::check(ladder).has_value();
        }))
        return std::nullopt;
    log.entries = readAll(
        database, QStringLiteral("SELECT day, drunk_ml FROM intake_entry WHERE member_id = ?"),
        readDrunk, member);
    log.reactions =
        readAll(database,
                QStringLiteral("SELECT day, strength, red_flag FROM reaction WHERE member_id = ?"),
                readFelt, member);
    log.decisions = readAll(
        database, QStringLiteral("SELECT * FROM decision WHERE member_id = ? ORDER BY day, id"),
        readDecision, member);
    return casebook::climbSoFar(log);
}

MemberId readMemberId(const Statement& row) {
    return row.id<MemberId>("id"_L1);
}

const QString& withoutRow() {
    static const QString sql = QStringLiteral(
        "SELECT id FROM member WHERE id NOT IN (SELECT member_id FROM climb_so_far)");
    return sql;
}
} // namespace

QHash<MemberId, ClimbSoFar> keptClimbs(Database& database) {
    QHash<MemberId, ClimbSoFar> climbs;
    Statement rows = database.statement(QStringLiteral("SELECT * FROM climb_so_far"));
    while (rows.next())
        climbs.insert(rows.id<MemberId>("member_id"_L1), readClimb(rows));
    return climbs;
}

bool allClimbsKept(Database& database) {
    return !database.statement(withoutRow()).next();
}

void makeMissingClimbs(Database& database) {
    const QList<MemberId> members = readAll(database, withoutRow(), readMemberId);
    for (const MemberId member : members)
        if (const std::optional<ClimbSoFar> climb = derivedClimb(database, member))
            insertRow(database, "climb_so_far"_L1, fieldsOf(member, *climb));
}

Findings checkClimbs(Database& database) {
    Findings findings;
    const QHash<MemberId, ClimbSoFar> kept = keptClimbs(database);
    for (const auto& [member, climb] : kept.asKeyValueRange()) {
        if (derivedClimb(database, member) == climb)
            continue;
        Finding finding;
        finding.severity = Finding::Severity::Caution;
        finding.code = QStringLiteral("climb-out-of-step");
        finding.text = Words::tr("What the list of families shows of a member may be out of date; "
                                 "enter or change a day of that member's log.");
        finding.why = Words::tr("What is kept of the climb does not follow from the log.");
        finding.field = QStringLiteral("climb_so_far/%1").arg(member.value);
        findings.append(finding);
    }
    return findings;
}

} // namespace ladlework::store
