#pragma once

#include <sstream>
#include <string>

namespace ladlework::week::rules {

/// The parts, one after the other.
template <class... Part>
std::string sentence(const Part&... parts) {
    std::ostringstream out;
    (out << ... << parts);
    return out.str();
}

} // namespace ladlework::week::rules
