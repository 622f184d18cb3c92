#pragma once

#include "casebook/family_needs.h"
#include "week/week_plan.h"

#include <QHash>

namespace ladlework::store {

class Database;

/// The excerpts of all families, read table by table and not family by family. `nowUtc` decides
/// what can still matter today in any time zone; `weeks` are the plans that can.
QHash<FamilyId, casebook::FamilyExcerpt> readExcerpts(Database& database, const QDateTime& nowUtc,
                                                      const QList<week::WeekPlan>& weeks);

/// The first start of a plan whose cookings can still be asked for.
QDate firstWeekOfExcerpts(const QDateTime& nowUtc);

} // namespace ladlework::store
