#include "casebook/week_shopping.h"

namespace ladlework::casebook {

week::ShoppingList shoppingFor(const Casebook& book, const week::WeekPlan& plan) {
    week::ShoppingInput input;
    for (const week::Placement& placement : plan.placements)
        if (const kitchen::Pot* pot = book.pot(placement.pot))
            input.pots.append(*pot);
    input.extras = plan.extras;
    input.atHome = plan.atHome;
    input.prices = book.records().prices;
    input.measures = book.records().family.measures;
    return week::shoppingList(input, book.catalogue());
}

} // namespace ladlework::casebook
