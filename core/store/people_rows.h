#pragma once

#include "people/caution.h"
#include "people/family.h"
#include "people/member.h"
#include "people/observation.h"
#include "people/phase.h"
#include "people/practice.h"
#include "people/retry_plan.h"
#include "people/tolerance.h"
#include "store/rows.h"

namespace ladlework::store {

class Statement;

// What a record of core/people is in its table, without its id, and back with it.

Fields fieldsOf(const people::Practice& practice);
people::Practice readPractice(const Statement& row);
Fields fieldsOf(const people::Phase& phase);
people::Phase readPhase(const Statement& row);
Fields fieldsOf(const people::Family& family);
people::Family readFamily(const Statement& row);
Fields fieldsOf(const people::Member& member);
people::Member readMember(const Statement& row);
Fields fieldsOf(const people::ToleranceNote& note);
people::ToleranceNote readTolerance(const Statement& row);
Fields fieldsOf(const people::Caution& caution);
people::Caution readCaution(const Statement& row);
/// Without the steps, which have their own table.
Fields fieldsOf(const people::RetryPlan& plan);
people::RetryPlan readRetryPlan(const Statement& row);
Fields fieldsOf(const people::Observation& observation);
people::Observation readObservation(const Statement& row);

} // namespace ladlework::store
