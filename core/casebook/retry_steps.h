#pragma once

#include "casebook/casebook.h"

namespace ladlework::casebook {

/// One step of an open retry that falls on a day.
struct RetryStep {
    const people::RetryPlan* plan = nullptr; ///< owned by the casebook
    const Standing* standing = nullptr;      ///< of the member; owned by the casebook
    QString what;                            ///< the subject, in the catalogue's words
    int step = 0;                            ///< from 0
    QDate day;
    quantity::Volume amount;
};

/// The steps of open retries from `from` to `to` (both included), by day and then as the members
/// stand. None of a member whose ladder is stopped, and none that an allergy or severe reaction is
/// in the way of. The casebook must outlive the result.
QList<RetryStep> retrySteps(const Casebook& casebook, QDate from, QDate to);

/// True when the member has a step of this subject in those days.
bool isTriedAgain(const Casebook& casebook, MemberId member, const people::Subject& subject,
                  QDate from, QDate to);

} // namespace ladlework::casebook
