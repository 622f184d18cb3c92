#include "store/excerpt_reader.h"

#include "store/climb_rows.h"
#include "store/intake_rows.h"
#include "store/kitchen_rows.h"
#include "store/people_rows.h"
#include "store/records.h"
#include "store/volume_steps.h"

#include <QSet>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

using casebook::FamilyExcerpt;
using casebook::FamilyRecords;

namespace {
/// Members of whom a retry may be due by the day of the one question mark.
constexpr auto membersWithRetries =
    "SELECT member_id FROM tolerance_note WHERE try_again_day <= ? "
    "UNION SELECT member_id FROM retry_plan WHERE outcome = 'open'"_L1;

/// Lots past their use-by before one day that are not gone by another; the three question marks are
/// the first, the second and the first day. The index on both columns finds either kind.
constexpr auto pastLots = "SELECT * FROM lot WHERE gone_day IS NULL AND use_by_day < ? "
                          "UNION ALL SELECT * FROM lot WHERE gone_day > ? AND use_by_day < ?"_L1;

/// Reads each table once and hands its rows out to the families.
class Reader {
public:
    Reader(Database& database, const QDateTime& nowUtc)
        : m_database(database), m_earliest(nowUtc.date().addDays(-1)),
          m_latest(nowUtc.date().addDays(1)) {}

    QHash<FamilyId, FamilyExcerpt> read(const QList<week::WeekPlan>& weeks) {
        readPeople();
        readFollowUp();
        readClimbs();
        readKitchen(weeks);
        readNotes();
        return std::move(m_excerpts);
    }

private:
    template <class Record>
    using Lists = QList<Record> FamilyRecords::*;

    void readPeople() {
        for (people::Family& family :
             readAll(m_database, QStringLiteral("SELECT * FROM family"), readFamily)) {
            const FamilyId id = family.id;
            m_excerpts[id].records.family = std::move(family);
        }
        for (people::Member& member :
             readAll(m_database, QStringLiteral("SELECT * FROM member ORDER BY birth_day, id"),
                     readMember)) {
            m_familyOf.insert(member.id, member.family);
            const FamilyId family = member.family;
            give(&FamilyRecords::members, family, std::move(member));
        }
    }

    void readFollowUp() {
        giveToMembers(&FamilyRecords::tolerances,
                      readAll(m_database,
                              QStringLiteral("SELECT * FROM tolerance_note WHERE member_id IN (%1) "
                                             "ORDER BY noted_day, id")
                                  .arg(membersWithRetries),
                              readTolerance, m_latest));
        giveToMembers(&FamilyRecords::cautions,
                      readAll(m_database,
                              QStringLiteral("SELECT * FROM caution WHERE member_id IN (%1) "
                                             "ORDER BY id")
                                  .arg(membersWithRetries),
                              readCaution, m_latest));
        readRetries();
        // From the members, so that the index on member and day finds the latest weights of each.
        giveToMembers(&FamilyRecords::observations,
                      readAll(m_database,
                              QStringLiteral("SELECT seen.* FROM member "
                                             "CROSS JOIN observation AS seen "
                                             "ON seen.member_id = member.id AND seen.day >= ? "
                                             "WHERE seen.kind = ? ORDER BY seen.day, seen.id"),
                              readObservation, people::weightsCountFrom(m_earliest),
                              people::weightKind()));
    }

    void readRetries() {
        QList<people::RetryPlan> plans =
            readAll(m_database,
                    QStringLiteral(
                        "SELECT * FROM retry_plan WHERE outcome = 'open' ORDER BY start_day, id"),
                    readRetryPlan);
        Statement rows = m_database.statement(
            QStringLiteral("SELECT step.* FROM retry_plan AS plan JOIN retry_step AS step "
                           "ON step.retry_plan_id = plan.id WHERE plan.outcome = 'open' "
                           "ORDER BY step.retry_plan_id, step.position"));
        giveSteps(plans, &people::RetryPlan::steps, rows, {"retry_step"_L1, "retry_plan_id"_L1});
        giveToMembers(&FamilyRecords::retryPlans, std::move(plans));
    }

    void readClimbs() {
        giveToMembers(&FamilyRecords::targets,
                      readAll(m_database,
                              QStringLiteral("SELECT * FROM target ORDER BY from_day, id"),
                              readTarget));
        QList<intake::Ladder> ladders = readAll(
            m_database, QStringLiteral("SELECT * FROM ladder ORDER BY from_day, id"), readLadder);
        {
            Statement rows = m_database.statement(
                QStringLiteral("SELECT * FROM ladder_rung ORDER BY ladder_id, position"));
            giveSteps(ladders, &intake::Ladder::rungs, rows, {"ladder_rung"_L1, "ladder_id"_L1});
        }
        giveToMembers(&FamilyRecords::ladders, std::move(ladders));
        giveToMembers(&FamilyRecords::decisions,
                      readAll(m_database, QStringLiteral("SELECT * FROM decision ORDER BY day, id"),
                              readDecision));
        giveToMembers(
            &FamilyRecords::reactions,
            readAll(m_database,
                    QStringLiteral("SELECT * FROM reaction WHERE red_flag = 1 ORDER BY day, id"),
                    readReaction));
        const QHash<MemberId, casebook::ClimbSoFar> climbs = keptClimbs(m_database);
        for (const auto& [member, climb] : climbs.asKeyValueRange())
            if (FamilyExcerpt* excerpt = of(m_familyOf.value(member)))
                excerpt->climbs.insert(member, climb);
    }

    void readKitchen(const QList<week::WeekPlan>& weeks) {
        for (const week::WeekPlan& plan : weeks)
            give(&FamilyRecords::weeks, plan.family, plan);
        giveToMembers(
            &FamilyRecords::entries,
            readAll(m_database,
                    QStringLiteral("SELECT entry.* FROM (%1) AS past "
                                   "CROSS JOIN intake_entry AS entry "
                                   "ON entry.lot_id = past.id ORDER BY entry.day, entry.id")
                        .arg(pastLots),
                    readEntry, m_latest, m_earliest, m_latest));
        QHash<BatchId, FamilyId> cooked;
        for (kitchen::Batch& batch : batches()) {
            cooked.insert(batch.id, batch.family);
            const FamilyId family = batch.family;
            give(&FamilyRecords::batches, family, std::move(batch));
        }
        for (kitchen::Lot& lot :
             readAll(m_database, QString(pastLots), readLot, m_latest, m_earliest, m_latest))
            give(&FamilyRecords::lots, cooked.value(lot.batch), lot);
        readPotNames();
    }

    /// Those of past lots, and those of the days whose cookings can still be asked for.
    QList<kitchen::Batch> batches() {
        return readAll(m_database,
                       QStringLiteral("SELECT * FROM batch WHERE id IN (SELECT batch_id FROM (%1)) "
                                      "UNION SELECT batch.* FROM family CROSS JOIN batch "
                                      "ON batch.family_id = family.id AND batch.day >= ? "
                                      "ORDER BY day, id")
                           .arg(pastLots),
                       readBatch, m_latest, m_earliest, m_latest,
                       m_earliest.addDays(-week::daysAWeek));
    }

    /// The pots that lots and plans name; of a pot its name is enough.
    void readPotNames() {
        QHash<PotId, QString> names;
        {
            Statement rows = m_database.statement(QStringLiteral("SELECT id, name FROM pot"));
            while (rows.next())
                names.insert(rows.id<PotId>("id"_L1), rows.text("name"_L1));
        }
        for (FamilyExcerpt& excerpt : m_excerpts) {
            QSet<PotId> named;
            for (const kitchen::Batch& batch : std::as_const(excerpt.records.batches))
                named.insert(batch.pot);
            for (const week::WeekPlan& plan : std::as_const(excerpt.records.weeks))
                for (const week::Placement& placement : plan.placements)
                    named.insert(placement.pot);
            for (const PotId id : std::as_const(named)) {
                kitchen::Pot pot;
                pot.id = id;
                pot.name = names.value(id);
                excerpt.records.pots.append(std::move(pot));
            }
        }
    }

    void readNotes() {
        // Two looks at the end of an index for each family, however many notes it has.
        Statement rows = m_database.statement(QStringLiteral(
            "SELECT id, (SELECT max(day) FROM visit_note WHERE family_id = family.id) AS day, "
            "(SELECT max(review_day) FROM visit_note WHERE family_id = family.id) AS review_day "
            "FROM family"));
        while (rows.next()) {
            if (rows.isNull("day"_L1))
                continue;
            casebook::VisitNote note;
            note.family = rows.id<FamilyId>("id"_L1);
            note.day = rows.day("day"_L1);
            note.reviewOn = rows.day("review_day"_L1);
            const FamilyId family = note.family;
            give(&FamilyRecords::notes, family, std::move(note));
        }
    }

    /// nullptr when there is no such family: a damaged file may name it.
    FamilyExcerpt* of(FamilyId family) {
        const auto found = m_excerpts.find(family);
        return found == m_excerpts.end() ? nullptr : &*found;
    }

    template <class Record>
    void give(Lists<Record> list, FamilyId family, Record record) {
        if (FamilyExcerpt* excerpt = of(family))
            (excerpt->records.*list).append(std::move(record));
    }

    template <class Record>
    void giveToMembers(Lists<Record> list, QList<Record> records) {
        for (Record& record : records) {
            const FamilyId family = m_familyOf.value(record.member);
            give(list, family, std::move(record));
        }
    }

    Database& m_database;
    // Today in any time zone lies from one to the other.
    QDate m_earliest;
    QDate m_latest;
    QHash<FamilyId, FamilyExcerpt> m_excerpts;
    QHash<MemberId, FamilyId> m_familyOf;
};
} // namespace

QHash<FamilyId, FamilyExcerpt> readExcerpts(Database& database, const QDateTime& nowUtc,
                                            const QList<week::WeekPlan>& weeks) {
    return Reader(database, nowUtc).read(weeks);
}

QDate firstWeekOfExcerpts(const QDateTime& nowUtc) {
    // A day before today's in Greenwich, a week of days back from there, in a plan of seven days.
    return nowUtc.date().addDays(-1 - 2 * week::daysAWeek);
}

} // namespace ladlework::store
