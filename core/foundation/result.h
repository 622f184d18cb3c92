#pragma once

#include "foundation/problem.h"

#include <stdexcept>
#include <tl/expected.hpp>
#include <utility>

namespace ladlework {

/// What a function returns that can fail because of what a person did or a disk holds: the value,
/// or a Problem with a sentence to show. Exceptions are for broken invariants only.
template <class Value>
using Result = tl::expected<Value, Problem>;

/// A Result without a value: done, or why not.
using Outcome = Result<void>;

/// Shorthand for returning a Problem: `return problem(Problem::Kind::BadInput, tr("..."));`
inline tl::unexpected<Problem> problem(Problem::Kind kind, QString sentence, QString place = {},
                                       QString detail = {}) {
    return tl::unexpected<Problem>(
        Problem{kind, std::move(sentence), std::move(detail), std::move(place)});
}

/// Passes a Problem on from one Result type to another.
template <class Value>
tl::unexpected<Problem> passOn(const Result<Value>& failed) {
    return tl::unexpected<Problem>(failed.error());
}

/// The value of what ships with the program and is tested, such as a reference table. A Problem
/// there is a broken invariant: throws std::runtime_error with its line.
template <class Value>
Value valueOrThrow(Result<Value> result) {
    if (!result)
        throw std::runtime_error(toLine(result.error()).toStdString());
    return *std::move(result);
}

} // namespace ladlework
