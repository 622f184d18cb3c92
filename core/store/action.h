#pragma once

#include <QString>

namespace ladlework::store {

/// The right to write: only Workbook::act() and Workbook::create() make one, and every writing
/// function of a repository asks for it, so that nothing can be written outside a user action.
class Action {
public:
    Action(const Action&) = delete;
    Action& operator=(const Action&) = delete;

private:
    friend class Workbook;
    Action() = default;
};

} // namespace ladlework::store
