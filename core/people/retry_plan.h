#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "kitchen/catalogue.h"
#include "people/caution.h"
#include "people/tolerance.h"
#include "quantity/volume.h"

#include <QDate>
#include <QList>
#include <QString>
#include <optional>

namespace ladlework::people {

/// How something that was avoided is tried again: small amounts, with days to watch after each.
struct RetryPlan {
    enum class Ending { Open, Borne, NotBorne, GivenUp };

    RetryPlanId id;
    MemberId member;
    Subject subject;
    QDate start;
    int watchDays = 2;             ///< days without the subject after each step
    QList<quantity::Volume> steps; ///< what is drunk of it on each step's day
    Ending outcome = Ending::Open;
    QDate closed; ///< the day of the outcome; null while open
    QString note;

    /// The day of a step (from 0); null for a step that the plan does not have.
    [[nodiscard]] QDate dayOfStep(int step) const;
    /// The last day to watch, after the last step; null without steps.
    [[nodiscard]] QDate lastDay() const;
};

/// A subject is named; start a day; watch days 0 to 30; 1 to 12 steps, each positive and at most 1
/// L, none less than the one before; closed exactly when there is an outcome, not before the start
/// and not after `today`. The place of the Problem is the field.
Outcome check(const RetryPlan& plan, QDate today);

/// Refused when something is in the way of a retry: a recorded allergy or severe reaction of this
/// member to the subject (any note of it, old ones too, or a caution that keeps it out), or no note
/// in force that keeps it out. A note reaches every subject that shares a cut with its own, and an
/// allergy to a cut is one to its animal. The sentence of an allergy refers to the treating
/// clinician.
Outcome mayRetry(const QList<ToleranceNote>& notesOfMember, const QList<Caution>& cautionsOfMember,
                 const Subject& subject, const QString& memberName,
                 const kitchen::Catalogue& catalogue);

/// The usual steps of resources/reference/retry-steps.csv, and how long to watch.
RetryPlan usualRetry(MemberId member, const Subject& subject, QDate start);

/// The amount of the plan on a day: nothing when it is closed or the day is no step.
std::optional<quantity::Volume> retryAmount(const RetryPlan& plan, QDate day);

/// The note that an outcome leads to, noted on the day of the outcome: Borne gives SmallAmounts,
/// NotBorne Avoid; none for the rest.
std::optional<ToleranceNote> noteOf(const RetryPlan& plan);

QString retryOutcomeId(RetryPlan::Ending outcome); ///< "open", "borne", "not-borne", "given-up"
std::optional<RetryPlan::Ending> retryOutcomeFromId(QStringView id);
QString retryOutcomeName(RetryPlan::Ending outcome); ///< for people, translated

} // namespace ladlework::people
