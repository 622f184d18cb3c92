#pragma once

#include "casebook/visit_note.h"
#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "store/action.h"

#include <QList>

namespace ladlework::store {

class Database;

/// A note has a text and a day that is not after today.
Outcome checkNote(const casebook::VisitNote& note, QDate today);

/// Visit notes.
class NoteRepository {
public:
    explicit NoteRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    /// Newest first.
    [[nodiscard]] QList<casebook::VisitNote> notes(FamilyId family) const;

    /// The text must not be blank; the day not after today.
    Result<NoteId> addNote(Action&, const casebook::VisitNote& note);
    Outcome changeNote(Action&, const casebook::VisitNote& note);
    Outcome removeNote(Action&, NoteId note);

private:
    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
