#pragma once

#include "intake/ladder_machine.h"

#include <QDate>
#include <QList>
#include <cmath>
#include <random>

namespace ladlework::intake::testing {

/// A ladder with a log and decisions, drawn from a fixed seed.
struct RandomClimb {
    Ladder ladder;
    QList<LogDay> log;
    QList<Decision> decisions;
    QDate today;
};

/// Draws climbs that reach every rule often: long quiet stretches, short days, amounts on the exact
/// boundary, clusters of reactions, long gaps, stops with and without decisions. The raw numbers of
/// the engine are used, since the distributions of the standard library differ between libraries.
class RandomClimbs {
public:
    explicit RandomClimbs(unsigned seed) : m_engine(seed) {}

    RandomClimb next() {
        RandomClimb climb;
        drawLadder(climb.ladder);
        const QDate first(2024, 1, 1 + below(28));
        const int length = 1 + below(140);
        climb.today = first.addDays(length - 1);
        const int quiet = 40 + below(60); // of 100 days, how many are without a reaction
        int gapLeft = 0;
        for (int offset = 0; offset < length; ++offset) {
            const QDate day = first.addDays(offset);
            if (offset > 0 && below(100) < 4)
                gapLeft = 1 + below(14);
            if (below(100) < 4)
                climb.decisions.append(decisionOn(day, climb.ladder));
            if (gapLeft > 0 && offset > 0) {
                --gapLeft;
                continue;
            }
            climb.log.append(entryOn(day, climb.ladder, quiet));
            if (below(100) < 5)
                climb.log.append(entryOn(day, climb.ladder, quiet));
        }
        return climb;
    }

    int below(int limit) { return static_cast<int>(m_engine() % static_cast<unsigned>(limit)); }

    std::mt19937& engine() { return m_engine; }

private:
    void drawLadder(Ladder& ladder) {
        const int count = 1 + below(9);
        double rung = 0.05 * (1 + below(100));
        for (int i = 0; i < count; ++i) {
            ladder.rungs.append(quantity::Volume::fromMillilitres(std::round(rung * 100) / 100));
            rung = rung * (1.2 + below(13) / 10.0) + 0.05;
        }
        LadderRules& rules = ladder.rules;
        if (below(3) == 0)
            return;
        rules.goodShare = (50 + below(51)) / 100.0;
        rules.mildTo = below(4);
        rules.moderateTo = rules.mildTo + below(4);
        rules.strongTo = rules.moderateTo + below(4);
        rules.daysToAdvance = 1 + below(5);
        rules.holdDays = below(6);
        rules.moderateWindowDays = below(7);
        rules.staleDays = 1 + below(6);
        rules.rungsBack = 1 + below(3);
        rules.holdTargetDays = 1 + below(30);
    }

    /// Amounts to a millionth of a millilitre: they print exactly in decimals.
    double drunkMl(const Ladder& ladder) {
        const double asked =
            ladder.rungs[below(static_cast<int>(ladder.rungs.size()))].toMillilitres();
        const int kind = below(10);
        const double share = kind < 2   ? ladder.rules.goodShare
                             : kind < 3 ? ladder.rules.goodShare - 0.001
                             : kind < 4 ? 0.0
                                        : (50 + below(80)) / 100.0;
        return std::round(asked * share * 1e6) / 1e6;
    }

    LogDay entryOn(QDate day, const Ladder& ladder, int quiet) {
        LogDay entry;
        entry.day = day;
        // Mostly enough for any rung, so that the climb gets somewhere.
        const double enough = ladder.rungs.last().toMillilitres();
        entry.drunk = quantity::Volume::fromMillilitres(below(3) > 0 ? enough : drunkMl(ladder));
        if (below(100) >= quiet)
            entry.worstReaction = below(100) < 93 ? below(7) : below(11);
        else if (below(2) == 0)
            entry.worstReaction = 0;
        entry.redFlag = below(100) < 1;
        return entry;
    }

    Decision decisionOn(QDate day, const Ladder& ladder) {
        Decision decision;
        decision.day = day;
        decision.resumeAtRung = below(static_cast<int>(ladder.rungs.size()));
        decision.reason = QStringLiteral("spoken with the clinician");
        return decision;
    }

    std::mt19937 m_engine;
};

} // namespace ladlework::intake::testing
