#pragma once

#include "intake/ladder.h"
#include "intake/ladder_template.h"
#include "intake/log.h"
#include "intake/symptom.h"
#include "intake/target.h"
#include "store/rows.h"

namespace ladlework::store {

class Statement;

// What a record of core/intake is in its table, without its id, and back with it.

Fields fieldsOf(const intake::Target& target);
intake::Target readTarget(const Statement& row);
Fields fieldsOf(const intake::LadderRules& rules);
intake::LadderRules readRules(const Statement& row);
/// Without the rungs, which have their own table.
Fields fieldsOf(const intake::LadderTemplate& ladderTemplate);
intake::LadderTemplate readTemplate(const Statement& row);
Fields fieldsOf(const intake::Symptom& symptom);
intake::Symptom readSymptom(const Statement& row);
/// Without the rungs, which have their own table.
Fields fieldsOf(const intake::Ladder& ladder);
intake::Ladder readLadder(const Statement& row);
Fields fieldsOf(const intake::Decision& decision);
intake::Decision readDecision(const Statement& row);
Fields fieldsOf(const intake::IntakeEntry& entry);
intake::IntakeEntry readEntry(const Statement& row);
Fields fieldsOf(const intake::Reaction& reaction);
intake::Reaction readReaction(const Statement& row);

} // namespace ladlework::store
