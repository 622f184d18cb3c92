#pragma once

#include "foundation/id.h"
#include "intake/ladder_machine.h"

#include <QDate>
#include <optional>

namespace ladlework::casebook {

struct MemberLog;

/// Where a member's log has led up to its last day. It follows from the log, the ladders and the
/// decisions alone, whatever today is: with it a standing can be derived without the log.
struct ClimbSoFar {
    /// A stop of an earlier ladder under which a ladder began.
    struct EarlierStop {
        LadderId ladder; ///< the one that it stopped
        intake::LadderDay day;
        friend bool operator==(const EarlierStop&, const EarlierStop&) = default;
    };

    QDate lastLogged;         ///< the last day with an entry or a reaction; null: nothing is logged
    LadderId ladder;          ///< in force on that day; not stored (0) when none was
    intake::ClimbState state; ///< of that ladder at the end of that day
    std::optional<EarlierStop> earlier; ///< while that ladder is stopped by an earlier one's stop
    friend bool operator==(const ClimbSoFar&, const ClimbSoFar&) = default;
};

/// Replays the log of one member. Every ladder with rungs must pass check() (else
/// std::invalid_argument).
ClimbSoFar climbSoFar(const MemberLog& log);

/// True when the standing of today follows from `log.soFar` without the log: it is there, nothing
/// is logged after today, and the ladder of today is the one that it stands on.
bool canGoOn(const MemberLog& log, QDate today);

} // namespace ladlework::casebook
