#include "store/belonging.h"

#include "store/database.h"
#include "store/rows.h"

#include <QCoreApplication>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Belonging)
};
} // namespace

std::optional<FamilyId> Belonging::look(const QString& sql, qint64 id) const {
    Statement find = m_database.statement(sql);
    if (!find.with(id).next())
        return std::nullopt;
    return find.id<FamilyId>("family_id"_L1);
}

std::optional<FamilyId> Belonging::familyOf(MemberId member) const {
    return look(QStringLiteral("SELECT family_id FROM member WHERE id = ?"), member.value);
}

std::optional<FamilyId> Belonging::familyOf(VesselId vessel) const {
    return look(QStringLiteral("SELECT family_id FROM vessel WHERE id = ?"), vessel.value);
}

std::optional<FamilyId> Belonging::familyOf(ContainerId container) const {
    return look(QStringLiteral("SELECT family_id FROM container WHERE id = ?"), container.value);
}

std::optional<FamilyId> Belonging::familyOf(BatchId batch) const {
    return look(QStringLiteral("SELECT family_id FROM batch WHERE id = ?"), batch.value);
}

std::optional<FamilyId> Belonging::familyOf(LotId lot) const {
    return look(QStringLiteral("SELECT family_id FROM lot JOIN batch ON batch.id = lot.batch_id "
                               "WHERE lot.id = ?"),
                lot.value);
}

std::optional<FamilyId> Belonging::familyOf(PotId pot) const {
    return look(QStringLiteral("SELECT family_id FROM pot WHERE id = ?"), pot.value);
}

std::optional<FamilyId> Belonging::familyOfMemberRow(QLatin1StringView table, qint64 id) const {
    return look(QStringLiteral("SELECT family_id FROM %1 AS record JOIN member "
                               "ON member.id = record.member_id WHERE record.id = ?")
                    .arg(table),
                id);
}

QDate Belonging::today(FamilyId family, const Clock& clock) const {
    Statement find = m_database.statement(QStringLiteral("SELECT zone FROM family WHERE id = ?"));
    if (!find.with(family.value).next())
        return {};
    return clock.today(QTimeZone(find.text("zone"_L1).toLatin1()));
}

Result<QDate> Belonging::todayOf(MemberId member, const Clock& clock) const {
    const std::optional<FamilyId> family = familyOf(member);
    if (!family)
        return problem(Problem::Kind::NotFound,
                       Words::tr("This member is not in the workbook; choose another one."),
                       QStringLiteral("member"));
    return today(*family, clock);
}

Result<QDate> Belonging::todayOf(FamilyId family, const Clock& clock) const {
    if (!hasRow(m_database, "family"_L1, family.value))
        return problem(Problem::Kind::NotFound,
                       Words::tr("This family is not in the workbook; choose another one."),
                       QStringLiteral("family"));
    return today(family, clock);
}

Outcome Belonging::mayUse(FamilyId family, PotId pot) const {
    const std::optional<FamilyId> owner = familyOf(pot);
    if (!owner)
        return problem(Problem::Kind::NotFound,
                       Words::tr("This pot is not in the workbook; choose another one."),
                       QStringLiteral("pot"));
    if (owner->isStored() && *owner != family)
        return problem(Problem::Kind::Refused,
                       Words::tr("This pot belongs to another family; choose one of this family's "
                                 "pots or of the practice's."),
                       QStringLiteral("pot"));
    return {};
}

Outcome Belonging::mayUse(FamilyId family, VesselId vessel) const {
    const std::optional<FamilyId> owner = familyOf(vessel);
    if (!owner)
        return problem(Problem::Kind::NotFound,
                       Words::tr("This vessel is not in the workbook; choose another one."),
                       QStringLiteral("vessel"));
    if (*owner != family)
        return problem(Problem::Kind::Refused,
                       Words::tr("This vessel stands in another kitchen; choose one of this "
                                 "family's, or none."),
                       QStringLiteral("vessel"));
    return {};
}

Outcome Belonging::mayUse(FamilyId family, ContainerId container) const {
    const std::optional<FamilyId> owner = familyOf(container);
    if (!owner)
        return problem(Problem::Kind::NotFound,
                       Words::tr("This container is not in the workbook; choose another one."),
                       QStringLiteral("coolIn"));
    if (*owner != family)
        return problem(Problem::Kind::Refused,
                       Words::tr("This container stands in another kitchen; choose one of this "
                                 "family's, or none."),
                       QStringLiteral("coolIn"));
    return {};
}

Outcome Belonging::mayMove(QLatin1StringView table, qint64 id, MemberId member) const {
    const std::optional<FamilyId> before = familyOfMemberRow(table, id);
    if (!before)
        return noSuchRecord();
    const std::optional<FamilyId> after = familyOf(member);
    if (after && *after != *before)
        return problem(Problem::Kind::Refused,
                       Words::tr("This record belongs to a member of another family and stays "
                                 "there; enter a new one instead."),
                       QStringLiteral("member"));
    return {};
}

tl::unexpected<Problem> noSuchRecord() {
    return problem(Problem::Kind::NotFound,
                   Words::tr("This record is no longer in the workbook: it was removed or its "
                             "entry was undone."));
}

Outcome requireDay(QDate day, const QString& sentence, const QString& place) {
    if (!day.isValid())
        return problem(Problem::Kind::BadInput, sentence, place);
    return {};
}

} // namespace ladlework::store
