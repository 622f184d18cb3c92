#include "store/family_repository.h"

#include "store/belonging.h"
#include "store/people_rows.h"
#include "store/records.h"
#include "store/removal.h"

#include <QCoreApplication>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(FamilyRepository)
};
} // namespace

QList<people::Family> FamilyRepository::families() const {
    QList<people::Family> families =
        readAll(m_database, QStringLiteral("SELECT * FROM family ORDER BY id"), readFamily);
    sortByName(families);
    return families;
}

std::optional<people::Family> FamilyRepository::family(FamilyId family) const {
    Statement find = m_database.statement(QStringLiteral("SELECT * FROM family WHERE id = ?"));
    if (!find.with(family).next())
        return std::nullopt;
    return readFamily(find);
}

QList<people::Member> FamilyRepository::members(FamilyId family) const {
    return readAll(
        m_database,
        QStringLiteral("SELECT * FROM member WHERE family_id = ? ORDER BY birth_day, id"),
        readMember, family);
}

QList<people::ToleranceNote> FamilyRepository::tolerances(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT note.* FROM member JOIN tolerance_note AS note "
                                  "ON note.member_id = member.id WHERE member.family_id = ? "
                                  "ORDER BY note.noted_day, note.id"),
                   readTolerance, family);
}

QList<people::Caution> FamilyRepository::cautions(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT caution.* FROM member JOIN caution "
                                  "ON caution.member_id = member.id WHERE member.family_id = ? "
                                  "ORDER BY caution.id"),
                   readCaution, family);
}

Result<FamilyId> FamilyRepository::addFamily(Action&, const people::Family& family) {
    if (const Outcome checked = people::check(family, m_clock.today(family.zone)); !checked)
        return passOn(checked);
    return FamilyId{insertRow(m_database, "family"_L1, fieldsOf(family))};
}

Outcome FamilyRepository::changeFamily(Action&, const people::Family& family) {
    if (const Outcome checked = people::check(family, m_clock.today(family.zone)); !checked)
        return checked;
    if (!updateRow(m_database, "family"_L1, family.id.value, fieldsOf(family)))
        return noSuchRecord();
    return {};
}

Outcome FamilyRepository::removeFamily(Action&, FamilyId family) {
    if (!removeFamilyRows(m_database, family))
        return noSuchRecord();
    return {};
}

Outcome FamilyRepository::checkMember(const people::Member& member) const {
    const Result<QDate> today = Belonging(m_database).todayOf(member.family, m_clock);
    if (!today)
        return passOn(today);
    if (member.phase.isStored() && !hasRow(m_database, "phase"_L1, member.phase.value))
        return problem(Problem::Kind::NotFound,
                       Words::tr("This phase is not in the workbook; choose another one."),
                       QStringLiteral("phase"));
    return people::check(member, *today);
}

Result<MemberId> FamilyRepository::addMember(Action&, const people::Member& member) {
    if (const Outcome checked = checkMember(member); !checked)
        return passOn(checked);
    return MemberId{insertRow(m_database, "member"_L1, fieldsOf(member))};
}

Outcome FamilyRepository::changeMember(Action&, const people::Member& member) {
    const std::optional<FamilyId> before = Belonging(m_database).familyOf(member.id);
    if (!before)
        return noSuchRecord();
    // The log of a member names pots and lots of the family.
    if (*before != member.family)
        return problem(Problem::Kind::Refused,
                       Words::tr("A member stays in the family it was entered for; enter the "
                                 "person anew in the other family."),
                       QStringLiteral("family"));
    if (const Outcome checked = checkMember(member); !checked)
        return checked;
    updateRow(m_database, "member"_L1, member.id.value, fieldsOf(member));
    return {};
}

Outcome FamilyRepository::removeMember(Action&, MemberId member) {
    if (!removeMemberRows(m_database, member))
        return noSuchRecord();
    return {};
}

Outcome FamilyRepository::checkTolerance(const people::ToleranceNote& note) const {
    const Result<QDate> today = Belonging(m_database).todayOf(note.member, m_clock);
    if (!today)
        return passOn(today);
    return people::check(note, *today);
}

Result<ToleranceId> FamilyRepository::addTolerance(Action&, const people::ToleranceNote& note) {
    if (const Outcome checked = checkTolerance(note); !checked)
        return passOn(checked);
    return ToleranceId{insertRow(m_database, "tolerance_note"_L1, fieldsOf(note))};
}

Outcome FamilyRepository::changeTolerance(Action&, const people::ToleranceNote& note) {
    const Belonging belonging(m_database);
    if (const Outcome move = belonging.mayMove("tolerance_note"_L1, note.id.value, note.member);
        !move)
        return move;
    if (const Outcome checked = checkTolerance(note); !checked)
        return checked;
    updateRow(m_database, "tolerance_note"_L1, note.id.value, fieldsOf(note));
    return {};
}

Outcome FamilyRepository::removeTolerance(Action&, ToleranceId note) {
    if (!deleteRow(m_database, "tolerance_note"_L1, note.value))
        return noSuchRecord();
    return {};
}

Outcome FamilyRepository::checkCaution(const people::Caution& caution) const {
    if (const Result<QDate> today = Belonging(m_database).todayOf(caution.member, m_clock); !today)
        return passOn(today);
    return people::check(caution);
}

Result<CautionId> FamilyRepository::addCaution(Action&, const people::Caution& caution) {
    if (const Outcome checked = checkCaution(caution); !checked)
        return passOn(checked);
    return CautionId{insertRow(m_database, "caution"_L1, fieldsOf(caution))};
}

Outcome FamilyRepository::changeCaution(Action&, const people::Caution& caution) {
    const Belonging belonging(m_database);
    if (const Outcome move = belonging.mayMove("caution"_L1, caution.id.value, caution.member);
        !move)
        return move;
    if (const Outcome checked = checkCaution(caution); !checked)
        return checked;
    updateRow(m_database, "caution"_L1, caution.id.value, fieldsOf(caution));
    return {};
}

Outcome FamilyRepository::removeCaution(Action&, CautionId caution) {
    if (!deleteRow(m_database, "caution"_L1, caution.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
