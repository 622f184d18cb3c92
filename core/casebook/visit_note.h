#pragma once

#include "foundation/id.h"

#include <QDate>
#include <QDateTime>
#include <QString>

namespace ladlework::casebook {

/// What the practitioner wrote about a visit, a call or a message.
struct VisitNote {
    NoteId id;
    FamilyId family;
    QDate day;
    QString text;
    QString agreed; ///< what was agreed, may be empty
    QDate reviewOn; ///< next review, may be null
};

/// A handout as it was given. The pages themselves are read by their id when they are asked for.
struct HandoutRecord {
    HandoutId id;
    FamilyId family;
    QDate week;
    QDateTime madeUtc;
    QString title;
};

} // namespace ladlework::casebook
