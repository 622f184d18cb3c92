#pragma once

#include "casebook/visit_note.h"
#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "store/action.h"

#include <QList>

namespace ladlework::store {

class Database;

/// Handouts as they were given: the PDF and the document it was made from.
class HandoutRepository {
public:
    explicit HandoutRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    /// Newest first, without the pages.
    [[nodiscard]] QList<casebook::HandoutRecord> handouts(FamilyId family) const;
    /// The PDF as it was given; empty when there is no such record.
    [[nodiscard]] QByteArray pdf(HandoutId handout) const;
    /// The document that the pages were made from; empty when there is no such record.
    [[nodiscard]] QByteArray documentJson(HandoutId handout) const;

    /// A record without the moment at which it was made gets the moment of now.
    Result<HandoutId> addHandout(Action&, const casebook::HandoutRecord& record,
                                 const QByteArray& pdf, const QByteArray& documentJson);
    Outcome removeHandout(Action&, HandoutId handout);

private:
    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
