#include "store/practice_repository.h"

#include "store/belonging.h"
#include "store/people_rows.h"
#include "store/records.h"
#include "store/store_error.h"

#include <QCoreApplication>
#include <sqlite3.h>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(PracticeRepository)
};

constexpr qint64 theOnlyRow = 1;
} // namespace

people::Practice PracticeRepository::practice() const {
    const QString sql = QStringLiteral("SELECT * FROM practice WHERE id = 1");
    const QList<people::Practice> found = readAll(m_database, sql, readPractice);
    if (found.isEmpty())
        throw StoreError(SQLITE_CORRUPT, 0, QStringLiteral("the practice is missing"), sql);
    return found.first();
}

QList<people::Phase> PracticeRepository::phases() const {
    return readAll(m_database, QStringLiteral("SELECT * FROM phase ORDER BY position, id"),
                   readPhase);
}

Outcome PracticeRepository::setPractice(Action&, const people::Practice& practice) {
    if (const Outcome checked = people::check(practice); !checked)
        return checked;
    if (!updateRow(m_database, "practice"_L1, theOnlyRow, fieldsOf(practice))) {
        Fields fields = fieldsOf(practice);
        fields.append({"id"_L1, theOnlyRow});
        insertRow(m_database, "practice"_L1, fields);
    }
    return {};
}

Result<PhaseId> PracticeRepository::addPhase(Action&, const people::Phase& phase) {
    if (const Outcome checked = people::check(phase); !checked)
        return passOn(checked);
    return PhaseId{insertRow(m_database, "phase"_L1, fieldsOf(phase))};
}

Outcome PracticeRepository::changePhase(Action&, const people::Phase& phase) {
    if (const Outcome checked = people::check(phase); !checked)
        return checked;
    if (!updateRow(m_database, "phase"_L1, phase.id.value, fieldsOf(phase)))
        return noSuchRecord();
    return {};
}

Outcome PracticeRepository::removePhase(Action&, PhaseId phase) {
    Statement find = m_database.statement(
        QStringLiteral("SELECT count(*) AS members FROM member WHERE phase_id = ?"));
    find.with(phase).next();
    // No names: another family's are not for the screen that a client looks at.
    if (const int members = find.integer("members"_L1); members > 0)
        return problem(Problem::Kind::Refused,
                       members == 1
                           ? Words::tr("One member stands in this phase; give that member another "
                                       "phase first.")
                           : Words::tr("%1 members stand in this phase; give them another phase "
                                       "first.")
                                 .arg(members));
    if (!deleteRow(m_database, "phase"_L1, phase.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
