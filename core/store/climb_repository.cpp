#include "store/climb_repository.h"

#include "store/belonging.h"
#include "store/intake_rows.h"
#include "store/records.h"
#include "store/removal.h"
#include "store/volume_steps.h"

#include <QCoreApplication>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(ClimbRepository)
};

constexpr StepsTable rungsTable{"ladder_rung"_L1, "ladder_id"_L1};
} // namespace

QList<intake::Target> ClimbRepository::targets(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT target.* FROM member JOIN target "
                                  "ON target.member_id = member.id WHERE member.family_id = ? "
                                  "ORDER BY target.from_day, target.id"),
                   readTarget, family);
}

QList<intake::Ladder> ClimbRepository::ladders(FamilyId family) const {
    QList<intake::Ladder> ladders =
        readAll(m_database,
                QStringLiteral("SELECT ladder.* FROM member JOIN ladder "
                               "ON ladder.member_id = member.id WHERE member.family_id = ? "
                               "ORDER BY ladder.from_day, ladder.id"),
                readLadder, family);
    Statement rows = m_database.statement(
        QStringLiteral("SELECT rung.* FROM member JOIN ladder ON ladder.member_id = member.id "
                       "JOIN ladder_rung AS rung ON rung.ladder_id = ladder.id "
                       "WHERE member.family_id = ? ORDER BY rung.ladder_id, rung.position"));
    rows.with(family);
    giveSteps(ladders, &intake::Ladder::rungs, rows, rungsTable);
    return ladders;
}

QList<intake::Decision> ClimbRepository::decisions(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT decision.* FROM member JOIN decision "
                                  "ON decision.member_id = member.id WHERE member.family_id = ? "
                                  "ORDER BY decision.day, decision.id"),
                   readDecision, family);
}

Outcome ClimbRepository::checkTarget(const intake::Target& target) const {
    if (const Result<QDate> today = Belonging(m_database).todayOf(target.member, m_clock); !today)
        return passOn(today);
    if (const Outcome day =
            requireDay(target.from, Words::tr("Enter the day from which the target holds."),
                       QStringLiteral("from"));
        !day)
        return day;
    return intake::check(target);
}

Result<TargetId> ClimbRepository::addTarget(Action&, const intake::Target& target) {
    if (const Outcome checked = checkTarget(target); !checked)
        return passOn(checked);
    return TargetId{insertRow(m_database, "target"_L1, fieldsOf(target))};
}

Outcome ClimbRepository::changeTarget(Action&, const intake::Target& target) {
    const Belonging belonging(m_database);
    if (const Outcome move = belonging.mayMove("target"_L1, target.id.value, target.member); !move)
        return move;
    if (const Outcome checked = checkTarget(target); !checked)
        return checked;
    updateRow(m_database, "target"_L1, target.id.value, fieldsOf(target));
    return {};
}

Outcome ClimbRepository::removeTarget(Action&, TargetId target) {
    if (!deleteRow(m_database, "target"_L1, target.value))
        return noSuchRecord();
    return {};
}

Outcome ClimbRepository::checkLadder(const intake::Ladder& ladder) const {
    if (const Result<QDate> today = Belonging(m_database).todayOf(ladder.member, m_clock); !today)
        return passOn(today);
    if (const Outcome day =
            requireDay(ladder.from, Words::tr("Enter the day from which the ladder holds."),
                       QStringLiteral("from"));
        !day)
        return day;
    return intake::check(ladder);
}

Result<LadderId> ClimbRepository::addLadder(Action&, const intake::Ladder& ladder) {
    if (const Outcome checked = checkLadder(ladder); !checked)
        return passOn(checked);
    const LadderId id{insertRow(m_database, "ladder"_L1, fieldsOf(ladder))};
    setSteps(m_database, rungsTable, id.value, ladder.rungs);
    return id;
}

Outcome ClimbRepository::changeLadder(Action&, const intake::Ladder& ladder) {
    const Belonging belonging(m_database);
    if (const Outcome move = belonging.mayMove("ladder"_L1, ladder.id.value, ladder.member); !move)
        return move;
    if (const Outcome checked = checkLadder(ladder); !checked)
        return checked;
    updateRow(m_database, "ladder"_L1, ladder.id.value, fieldsOf(ladder));
    setSteps(m_database, rungsTable, ladder.id.value, ladder.rungs);
    return {};
}

Outcome ClimbRepository::removeLadder(Action&, LadderId ladder) {
    if (!removeLadderRows(m_database, ladder))
        return noSuchRecord();
    return {};
}

Outcome checkDecision(const intake::Decision& decision, QDate today) {
    if (const Outcome day = requireDay(decision.day, Words::tr("Enter the day of the decision."),
                                       QStringLiteral("day"));
        !day)
        return day;
    if (decision.day > today.addDays(1))
        return problem(Problem::Kind::BadInput,
                       Words::tr("The day of the decision lies too far ahead; enter tomorrow or an "
                                 "earlier day."),
                       QStringLiteral("day"));
    if (decision.resumeAtRung < 0)
        return problem(Problem::Kind::BadInput,
                       Words::tr("Choose the rung of the ladder at which the member goes on."),
                       QStringLiteral("resumeAtRung"));
    if (decision.reason.trimmed().isEmpty())
        return problem(Problem::Kind::BadInput,
                       Words::tr("Going on after a stop needs a reason; write it down."),
                       QStringLiteral("reason"));
    return {};
}

Result<DecisionId> ClimbRepository::addDecision(Action&, const intake::Decision& decision) {
    const Result<QDate> today = Belonging(m_database).todayOf(decision.member, m_clock);
    if (!today)
        return passOn(today);
    if (const Outcome checked = checkDecision(decision, *today); !checked)
        return passOn(checked);
    Statement find = m_database.statement(
        QStringLiteral("SELECT 1 FROM decision WHERE member_id = ? AND day = ?"));
    if (find.with(decision.member, decision.day).next())
        return problem(Problem::Kind::Refused,
                       Words::tr("There is a decision for this member on this day already; remove "
                                 "it first."),
                       QStringLiteral("day"));
    return DecisionId{insertRow(m_database, "decision"_L1, fieldsOf(decision))};
}

Outcome ClimbRepository::removeDecision(Action&, DecisionId decision) {
    if (!deleteRow(m_database, "decision"_L1, decision.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
