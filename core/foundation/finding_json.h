#pragma once

#include "foundation/finding.h"

#include <QJsonArray>

namespace ladlework {

/// Findings as the command line prints them: objects of severity, code, text, value, limit, unit
/// and source; a number that a finding does not have is null.
QJsonArray findingsJson(const Findings& findings);

} // namespace ladlework
