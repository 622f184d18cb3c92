#include "store/note_repository.h"

#include "store/belonging.h"
#include "store/records.h"
#include "store/rows.h"

#include <QCoreApplication>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(NoteRepository)
};

Fields fieldsOf(const casebook::VisitNote& note) {
    return {{"family_id"_L1, note.family},
            {"day"_L1, note.day},
            {"text"_L1, note.text},
            {"agreed"_L1, note.agreed},
            {"review_day"_L1, note.reviewOn}};
}

casebook::VisitNote readNote(const Statement& row) {
    casebook::VisitNote note;
    note.id = row.id<NoteId>("id"_L1);
    note.family = row.id<FamilyId>("family_id"_L1);
    note.day = row.day("day"_L1);
    note.text = row.text("text"_L1);
    note.agreed = row.text("agreed"_L1);
    note.reviewOn = row.day("review_day"_L1);
    return note;
}
} // namespace

Outcome checkNote(const casebook::VisitNote& note, QDate today) {
    if (note.text.trimmed().isEmpty())
        return problem(Problem::Kind::BadInput,
                       Words::tr("The note is empty; write what was talked about."),
                       QStringLiteral("text"));
    if (!note.day.isValid())
        return problem(Problem::Kind::BadInput, Words::tr("Enter the day of the visit or call."),
                       QStringLiteral("day"));
    if (note.day > today)
        return problem(Problem::Kind::BadInput,
                       Words::tr("The day of the visit lies in the future; enter today or an "
                                 "earlier day."),
                       QStringLiteral("day"));
    return {};
}

QList<casebook::VisitNote> NoteRepository::notes(FamilyId family) const {
    return readAll(
        m_database,
        QStringLiteral("SELECT * FROM visit_note WHERE family_id = ? ORDER BY day DESC, id DESC"),
        readNote, family);
}

Result<NoteId> NoteRepository::addNote(Action&, const casebook::VisitNote& note) {
    const Result<QDate> today = Belonging(m_database).todayOf(note.family, m_clock);
    if (!today)
        return passOn(today);
    if (const Outcome checked = checkNote(note, *today); !checked)
        return passOn(checked);
    return NoteId{insertRow(m_database, "visit_note"_L1, fieldsOf(note))};
}

Outcome NoteRepository::changeNote(Action&, const casebook::VisitNote& note) {
    const Result<QDate> today = Belonging(m_database).todayOf(note.family, m_clock);
    if (!today)
        return passOn(today);
    if (const Outcome checked = checkNote(note, *today); !checked)
        return checked;
    Statement find =
        m_database.statement(QStringLiteral("SELECT family_id FROM visit_note WHERE id = ?"));
    if (!find.with(note.id).next())
        return noSuchRecord();
    if (find.id<FamilyId>("family_id"_L1) != note.family)
        return problem(Problem::Kind::Refused,
                       Words::tr("A note stays with the family it was written for."),
                       QStringLiteral("family"));
    updateRow(m_database, "visit_note"_L1, note.id.value, fieldsOf(note));
    return {};
}

Outcome NoteRepository::removeNote(Action&, NoteId note) {
    if (!deleteRow(m_database, "visit_note"_L1, note.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
