#pragma once

#include "foundation/id.h"
#include "foundation/name.h"
#include "kitchen/phase_rules.h"

namespace ladlework::people {

/// Where a member stands in the programme. The practice edits names, order and rules.
struct Phase {
    PhaseId id;
    QString name;
    int position = 0; ///< 0 is the first phase
    kitchen::PhaseRules rules;
};

/// Non-blank name; position 0 or more.
Outcome check(const Phase& phase);

} // namespace ladlework::people
