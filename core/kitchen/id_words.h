#pragma once

#include <QString>
#include <optional>
#include <stdexcept>

namespace ladlework::kitchen {

// The words under which the values of an enumeration are stored and read: `words` is an array of
// pairs of a value and its word.

/// The word of a value; a value without one is a broken invariant (throws).
template <class Words, class Value>
QString wordOf(const Words& words, Value value) {
    for (const auto& [known, word] : words)
        if (known == value)
            return QLatin1String(word);
    throw std::logic_error("a value without a word");
}

/// The value of a word; nothing when no value has it.
template <class Value, class Words>
std::optional<Value> valueOf(const Words& words, QStringView id) {
    for (const auto& [known, word] : words)
        if (id == QLatin1String(word))
            return known;
    return std::nullopt;
}

} // namespace ladlework::kitchen
