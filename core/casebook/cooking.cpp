#include "casebook/cooking.h"

#include <algorithm>
#include <tuple>

namespace ladlework::casebook {

std::vector<Cooking> matchBatches(const QList<week::Placement>& placements,
                                  const QList<kitchen::Batch>& batches) {
    std::vector<Cooking> cookings;
    cookings.reserve(static_cast<std::size_t>(placements.size()));
    for (const week::Placement& placement : placements)
        cookings.push_back({placement, nullptr});
    std::vector<Cooking*> byStart;
    byStart.reserve(cookings.size());
    for (Cooking& cooking : cookings)
        byStart.push_back(&cooking);
    std::ranges::stable_sort(byStart, {}, [](const Cooking* cooking) {
        const QTime start = cooking->placement.start;
        return std::tuple(!start.isValid(), start);
    });
    std::vector<const kitchen::Batch*> open;
    open.reserve(static_cast<std::size_t>(batches.size()));
    for (const kitchen::Batch& batch : batches)
        open.push_back(&batch);
    std::ranges::stable_sort(open, {}, [](const kitchen::Batch* batch) { return batch->id.value; });
    for (Cooking* cooking : byStart) {
        const auto found = std::ranges::find_if(open, [&](const kitchen::Batch* batch) {
            return batch->pot == cooking->placement.pot && batch->day == cooking->placement.day;
        });
        if (found == open.end())
            continue;
        cooking->batch = *found;
        open.erase(found);
    }
    return cookings;
}

} // namespace ladlework::casebook
