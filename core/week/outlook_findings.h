#pragma once

#include "week/week_outlook.h"

#include <vector>

namespace ladlework::week {

/// What an outlook was made of, kept for the sentences about it. All in mL.
struct OutlookTrace {
    std::vector<std::vector<double>> shortBy;   ///< [day][member]
    std::vector<std::vector<double>> leftAfter; ///< [day][source] what stands and may be drunk
    std::vector<double> spoilt;                 ///< [source]
};

/// The sentences about a served week; codes and values as week_outlook.h says.
Findings outlookFindings(const OutlookInput& input, const Outlook& outlook,
                         const OutlookTrace& trace);

} // namespace ladlework::week
