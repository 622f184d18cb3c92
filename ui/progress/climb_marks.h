#pragma once

#include "intake/ladder_machine.h"

#include <QPointF>
#include <optional>

class QPainter;

namespace ladlework::ui {

struct Colours;

/// What one day shows on the climb.
struct ClimbMark {
    intake::LadderDecision decision = intake::LadderDecision::Stay;
    bool enoughDrunk = false;
    std::optional<int> worstReaction;
    bool redFlag = false;
    bool stopped = false; ///< the day began stopped: nothing was asked
};

/// How strong a day's reaction was, by the ladder's own rules.
enum class Bearing { Fine, Mild, Moderate, Strong, Stop };
Bearing bearingOf(const ClimbMark& mark, const intake::LadderRules& rules);

/// Draws how strong a reaction was, by shape; nothing for a fine day.
void drawReactionMark(QPainter& painter, QPointF middle, double size, Bearing bearing,
                      const Colours& colours);

/// Draws a day: a filled dot when enough was drunk, a ring when less, a short upright tick for a
/// gap, a short level bar while the ladder is stopped; and above it the reaction by shape: a small
/// triangle (mild), a diamond (moderate), a square (strong), an octagon (stop).
void drawClimbMark(QPainter& painter, QPointF middle, double size, const ClimbMark& mark,
                   const intake::LadderRules& rules, const Colours& colours);

} // namespace ladlework::ui
