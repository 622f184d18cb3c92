#pragma once

#include "foundation/id.h"

namespace ladlework::store {

class Database;

// Removals of records that have children. The schema cascades nothing, so that every removed row
// is part of the recorded change; false when there is no such record.

bool removeFamilyRows(Database& database, FamilyId family);
bool removeMemberRows(Database& database, MemberId member);
bool removeVesselRows(Database& database, VesselId vessel);
bool removeContainerRows(Database& database, ContainerId container);
bool removeRetryRows(Database& database, RetryPlanId plan);
bool removeTemplateRows(Database& database, LadderTemplateId ladderTemplate);
bool removeLadderRows(Database& database, LadderId ladder);
bool removeHandoutTemplateRows(Database& database, HandoutTemplateId handoutTemplate);
/// All that hangs on a plan, but not the plan itself.
void removeWeekParts(Database& database, WeekPlanId plan);
bool removeWeekRows(Database& database, WeekPlanId plan);
bool removeWeekTemplateRows(Database& database, WeekTemplateId weekTemplate);
bool removePotRows(Database& database, PotId pot);
bool removeBatchRows(Database& database, BatchId batch);
bool removeLotRows(Database& database, LotId lot);

} // namespace ladlework::store
