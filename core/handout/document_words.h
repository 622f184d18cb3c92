#pragma once

#include "handout/document.h"

#include <QLatin1String>
#include <array>
#include <utility>

namespace ladlework::handout {

// The words of the JSON form, in one place for writing and reading.

/// 2 brought the letterhead, label sheets and rows that belong together. Older documents are read
/// as they are.
inline constexpr int documentFormat = 2;
inline constexpr int oldestDocumentFormat = 1;

inline constexpr std::array paperWords{
    std::pair{people::Paper::Letter, QLatin1String("letter")},
    std::pair{people::Paper::A4, QLatin1String("a4")},
};

inline constexpr std::array cardWords{
    std::pair{Card::Kind::Cover, QLatin1String("cover")},
    std::pair{Card::Kind::Week, QLatin1String("week")},
    std::pair{Card::Kind::Pot, QLatin1String("pot")},
    std::pair{Card::Kind::Ladder, QLatin1String("ladder")},
    std::pair{Card::Kind::Shopping, QLatin1String("shopping")},
    std::pair{Card::Kind::Keeping, QLatin1String("keeping")},
    std::pair{Card::Kind::Cautions, QLatin1String("cautions")},
    std::pair{Card::Kind::Text, QLatin1String("text")},
    std::pair{Card::Kind::LogSheet, QLatin1String("log-sheet")},
    std::pair{Card::Kind::JarLabels, QLatin1String("jar-labels")},
};

inline constexpr std::array signWords{
    std::pair{Lines::Sign::Dot, QLatin1String("dot")},
    std::pair{Lines::Sign::Number, QLatin1String("number")},
    std::pair{Lines::Sign::TickBox, QLatin1String("tick-box")},
};

} // namespace ladlework::handout
