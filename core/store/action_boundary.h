#pragma once

#include "foundation/result.h"

#include <functional>

namespace ladlework::store {

/// The one place where exceptions end: a StoreError becomes its Problem, any other exception a
/// Problem that says that something went wrong inside the program.
Outcome atBoundary(const std::function<Outcome()>& work);

} // namespace ladlework::store
