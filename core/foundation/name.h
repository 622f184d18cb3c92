#pragma once

#include "foundation/result.h"

#include <QString>

namespace ladlework {

/// A non-blank, trimmed, single-line name of at most 200 characters: checked once, here.
class Name {
public:
    static constexpr int longest = 200;

    /// The trimmed name with inner line breaks turned into spaces, or a BadInput problem when
    /// nothing is left or it is too long. `what` is the thing named, for the sentence ("family").
    static Result<Name> from(const QString& text, const QString& what);

    [[nodiscard]] const QString& text() const { return m_text; }
    friend bool operator==(const Name&, const Name&) = default;

private:
    explicit Name(QString text) : m_text(std::move(text)) {}
    QString m_text;
};

} // namespace ladlework
