#pragma once

#include "casebook/casebook.h"
#include "week/shopping.h"
#include "week/week_plan.h"

namespace ladlework::casebook {

/// What a family has to buy for a week: its cookings, its household extras, less what is at home,
/// with the practice's prices and in the family's measures. A cooking whose pot is not there any
/// more asks for nothing.
week::ShoppingList shoppingFor(const Casebook& book, const week::WeekPlan& plan);

} // namespace ladlework::casebook
