#pragma once

#include "casebook/family_records.h"

#include <QString>

namespace ladlework::exchange {

/// A family's log as a table that readLog() takes: all its columns, a line for each drink and each
/// reaction, by day and then as the members stand. Amounts are in millilitres to the hundredth.
QString logTable(const casebook::FamilyRecords& records);

} // namespace ladlework::exchange
