#include "store/log_repository.h"

#include "store/belonging.h"
#include "store/intake_rows.h"
#include "store/records.h"

#include <QCoreApplication>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(LogRepository)
};
} // namespace

QList<intake::IntakeEntry> LogRepository::entries(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT entry.* FROM member JOIN intake_entry AS entry "
                                  "ON entry.member_id = member.id WHERE member.family_id = ? "
                                  "ORDER BY entry.day, entry.id"),
                   readEntry, family);
}

QList<intake::Reaction> LogRepository::reactions(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT reaction.* FROM member JOIN reaction "
                                  "ON reaction.member_id = member.id WHERE member.family_id = ? "
                                  "ORDER BY reaction.day, reaction.id"),
                   readReaction, family);
}

Outcome LogRepository::checkEntry(const intake::IntakeEntry& entry) const {
    const Belonging belonging(m_database);
    const Result<QDate> today = belonging.todayOf(entry.member, m_clock);
    if (!today)
        return passOn(today);
    const std::optional<FamilyId> family = belonging.familyOf(entry.member);
    if (entry.pot.isStored())
        if (const Outcome use = belonging.mayUse(*family, entry.pot); !use)
            return use;
    if (entry.lot.isStored() && belonging.familyOf(entry.lot) != family)
        return problem(Problem::Kind::NotFound,
                       Words::tr("This family has no such container on hand; choose another one."),
                       QStringLiteral("lot"));
    return intake::check(entry, *today);
}

Fields LogRepository::stamped(intake::IntakeEntry entry) const {
    if (!entry.enteredUtc.isValid())
        entry.enteredUtc = m_clock.nowUtc();
    return fieldsOf(entry);
}

Result<IntakeId> LogRepository::addEntry(Action&, const intake::IntakeEntry& entry) {
    if (const Outcome checked = checkEntry(entry); !checked)
        return passOn(checked);
    return IntakeId{insertRow(m_database, "intake_entry"_L1, stamped(entry))};
}

Outcome LogRepository::changeEntry(Action&, const intake::IntakeEntry& entry) {
    const Belonging belonging(m_database);
    if (const Outcome move = belonging.mayMove("intake_entry"_L1, entry.id.value, entry.member);
        !move)
        return move;
    if (const Outcome checked = checkEntry(entry); !checked)
        return checked;
    updateRow(m_database, "intake_entry"_L1, entry.id.value, stamped(entry));
    return {};
}

Outcome LogRepository::removeEntry(Action&, IntakeId entry) {
    if (!deleteRow(m_database, "intake_entry"_L1, entry.value))
        return noSuchRecord();
    return {};
}

Outcome LogRepository::checkReaction(const intake::Reaction& reaction) const {
    const Result<QDate> today = Belonging(m_database).todayOf(reaction.member, m_clock);
    if (!today)
        return passOn(today);
    return intake::check(reaction, *today);
}

Result<ReactionId> LogRepository::addReaction(Action&, const intake::Reaction& reaction) {
    if (const Outcome checked = checkReaction(reaction); !checked)
        return passOn(checked);
    return ReactionId{insertRow(m_database, "reaction"_L1, fieldsOf(reaction))};
}

Outcome LogRepository::changeReaction(Action&, const intake::Reaction& reaction) {
    const Belonging belonging(m_database);
    if (const Outcome move = belonging.mayMove("reaction"_L1, reaction.id.value, reaction.member);
        !move)
        return move;
    if (const Outcome checked = checkReaction(reaction); !checked)
        return checked;
    updateRow(m_database, "reaction"_L1, reaction.id.value, fieldsOf(reaction));
    return {};
}

Outcome LogRepository::removeReaction(Action&, ReactionId reaction) {
    if (!deleteRow(m_database, "reaction"_L1, reaction.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
