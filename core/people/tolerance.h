#pragma once

#include "foundation/id.h"
#include "foundation/result.h"

#include <QDate>
#include <QList>
#include <QString>
#include <optional>

namespace ladlework::people {

/// What a tolerance note speaks about: an animal, a cut or an ingredient of the catalogue.
struct Subject {
    enum class Kind { Animal, Cut, Ingredient };
    Kind kind = Kind::Animal;
    QString id; ///< the catalogue's id: "poultry", "beef-shank", "celery"
    friend bool operator==(const Subject&, const Subject&) = default;
};

/// How a member takes a subject.
struct ToleranceNote {
    enum class Verdict { Fine, SmallAmounts, Avoid, TryAgainOn };

    ToleranceId id;
    MemberId member;
    Subject subject;
    Verdict verdict = Verdict::Avoid;
    bool allergy = false; ///< a recorded allergy or severe reaction: never offered as a retry
    QString reason;
    std::optional<QDate> tryAgainOn; ///< set exactly when the verdict is TryAgainOn
    QDate noted;
};

/// TryAgainOn has a day after `noted` and no allergy; Avoid, SmallAmounts and TryAgainOn have a
/// reason; an allergy is Avoid; a subject is named; `noted` is a day not after `today`. The place
/// of the Problem names the field.
Outcome check(const ToleranceNote& note, QDate today);

/// True when the member may not drink a pot with the subject on `day`: Avoid, and TryAgainOn
/// (also on and after its day: the retry is a plan, not a permission).
bool forbids(const ToleranceNote& note);

/// True while a recorded allergy or severe reaction to the subject holds: some note of the subject
/// records one, and no later note of it decides Fine or SmallAmounts. A later plain Avoid or
/// TryAgainOn takes nothing back. The notes are those of one member, in any order.
bool allergyStands(const QList<ToleranceNote>& notesOfMember, const Subject& subject);

QString
verdictId(ToleranceNote::Verdict verdict); ///< "fine", "small-amounts", "avoid", "try-again-on"
std::optional<ToleranceNote::Verdict> verdictFromId(QStringView id);
QString verdictName(ToleranceNote::Verdict verdict); ///< for people, translated
QString subjectKindId(Subject::Kind kind);           ///< "animal", "cut", "ingredient"
std::optional<Subject::Kind> subjectKindFromId(QStringView id);

} // namespace ladlework::people
