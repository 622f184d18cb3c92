#include "people/tolerance.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace ladlework::people {

namespace {
using Verdict = ToleranceNote::Verdict;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ToleranceNote)
};

constexpr std::array verdicts{Verdict::Fine, Verdict::SmallAmounts, Verdict::Avoid,
                              Verdict::TryAgainOn};
constexpr std::array subjectKinds{Subject::Kind::Animal, Subject::Kind::Cut,
                                  Subject::Kind::Ingredient};

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Outcome checkRetry(const ToleranceNote& note) {
    const QString field = QStringLiteral("tryAgainOn");
    if (note.verdict != Verdict::TryAgainOn)
        return note.tryAgainOn
                   ? Outcome(bad(
                         Words::tr("A day to try again belongs to the verdict \"try again on\"; "
                                   "remove the day or change the verdict."),
                         field))
                   : Outcome();
    if (!note.tryAgainOn || !note.tryAgainOn->isValid())
        return bad(Words::tr("Enter the day on which it may be tried again."), field);
    if (*note.tryAgainOn <= note.noted)
        return bad(Words::tr("The day to try again must come after the day of the note."), field);
    return {};
}
} // namespace

Outcome check(const ToleranceNote& note, QDate today) {
    if (note.subject.id.trimmed().isEmpty())
        return bad(Words::tr("Choose the animal, cut or ingredient that the note speaks about."),
                   QStringLiteral("subject"));
    if (!note.noted.isValid() || note.noted > today)
        return bad(Words::tr("The day of the note must be today or an earlier day."),
                   QStringLiteral("noted"));
    if (note.allergy && note.verdict != Verdict::Avoid)
        return bad(
            Words::tr("An allergy or severe reaction is always to be avoided: set the verdict "
                      "to \"avoid\", and refer for any retry."),
            QStringLiteral("verdict"));
    if (note.verdict != Verdict::Fine && note.reason.trimmed().isEmpty())
        return bad(Words::tr("Enter the reason, so that it can be understood later."),
                   QStringLiteral("reason"));
    return checkRetry(note);
}

bool forbids(const ToleranceNote& note) {
    return note.verdict == Verdict::Avoid || note.verdict == Verdict::TryAgainOn;
}

bool allergyStands(const QList<ToleranceNote>& notesOfMember, const Subject& subject) {
    const auto place = [](const ToleranceNote& note) {
        return std::pair(note.noted, note.id.value);
    };
    return std::ranges::any_of(notesOfMember, [&](const ToleranceNote& recorded) {
        const auto takesBack = [&](const ToleranceNote& later) {
            return later.subject == subject && !forbids(later) && place(later) > place(recorded);
        };
        return recorded.allergy && recorded.subject == subject &&
               std::ranges::none_of(notesOfMember, takesBack);
    });
}

QString verdictId(Verdict verdict) {
    switch (verdict) {
    case Verdict::Fine:
        return QStringLiteral("fine");
    case Verdict::SmallAmounts:
        return QStringLiteral("small-amounts");
    case Verdict::Avoid:
        return QStringLiteral("avoid");
    case Verdict::TryAgainOn:
        return QStringLiteral("try-again-on");
    }
    return {};
}

std::optional<Verdict> verdictFromId(QStringView id) {
    for (Verdict verdict : verdicts)
        if (id == verdictId(verdict))
            return verdict;
    return std::nullopt;
}

QString verdictName(Verdict verdict) {
    switch (verdict) {
    case Verdict::Fine:
        return Words::tr("fine");
    case Verdict::SmallAmounts:
        return Words::tr("small amounts");
    case Verdict::Avoid:
        return Words::tr("avoid");
    case Verdict::TryAgainOn:
        return Words::tr("try again on");
    }
    return {};
}

QString subjectKindId(Subject::Kind kind) {
    switch (kind) {
    case Subject::Kind::Animal:
        return QStringLiteral("animal");
    case Subject::Kind::Cut:
        return QStringLiteral("cut");
    case Subject::Kind::Ingredient:
        return QStringLiteral("ingredient");
    }
    return {};
}

std::optional<Subject::Kind> subjectKindFromId(QStringView id) {
    for (Subject::Kind kind : subjectKinds)
        if (id == subjectKindId(kind))
            return kind;
    return std::nullopt;
}

} // namespace ladlework::people
