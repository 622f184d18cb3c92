#pragma once

#include "casebook/casebook.h"

namespace ladlework::casebook {

/// What is due of a member's retries: a new try that a note planned for today or before and that no
/// plan has taken up, today's step of an open plan, the outcome of one whose last day to watch is
/// over. A retry that an allergy or severe reaction is in the way of is never offered; an open plan
/// of it is to be closed. No step is due while the ladder is stopped.
Findings retryFindings(const Standing& standing, const Casebook& casebook);

} // namespace ladlework::casebook
