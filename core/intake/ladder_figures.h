#pragma once

#include <QString>

namespace ladlework::intake {

/// A figure of resources/reference/ladder-figures.csv in the unit of its row. An unknown id or a
/// broken table is a broken invariant (throws std::runtime_error).
double ladderFigure(const QString& id);

} // namespace ladlework::intake
