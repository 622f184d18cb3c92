#pragma once

#include "casebook/family_records.h"
#include "casebook/week_ahead.h"
#include "intake/ladder_machine.h"
#include "intake/projection.h"
#include "kitchen/brew.h"
#include "kitchen/calibration.h"
#include "kitchen/container.h"

#include <memory>
#include <optional>
#include <vector>

namespace ladlework::casebook {

/// Where one member stands on a day, derived from the records alone.
struct Standing {
    people::Member member;
    AgeBand band = AgeBand::Adult;
    std::optional<people::Phase> phase;
    std::optional<intake::Target> target; ///< the latest one in force
    std::optional<intake::Ladder> ladder; ///< the latest one in force
    /// A stop on an earlier ladder holds on a later one until a recorded decision; the first day of
    /// a ladder included, which then begins on its first rung.
    /// Up to yesterday, and today when an entry, a reaction or a decision of today is recorded.
    intake::LadderReplay replay;
    std::optional<intake::TargetDate> targetDate;
    /// The day of the stop while stopped, also when it came on an earlier ladder; null otherwise.
    QDate stoppedSince;
    /// A recorded decision to go on that takes effect after today.
    std::optional<intake::Decision> goesOn;
    /// What the easing off of the target leaves of the ladder today; nothing before it begins.
    std::optional<quantity::Volume> easedToday;
    quantity::Volume askedToday; ///< never more than easedToday; 0 while stopped or without ladder
    /// The latest note of each subject; with the allergy that an earlier note records while it
    /// stands (people::allergyStands()).
    QList<people::ToleranceNote> tolerances;
    QList<people::Caution> cautions;
    std::optional<QDate> lastEntry;
    Findings findings; ///< target, band, cautions, weight, stop
};

/// A stored container with what is left in it.
struct StockItem {
    kitchen::Lot lot;
    PotId pot;
    QString potName;
    quantity::Volume left; ///< never below 0
    bool pastUse = false;
};

/// One family's records and all that follows from them on a given day. Immutable: a change in the
/// workbook makes a new one. The catalogue must outlive it.
class Casebook {
public:
    Casebook(FamilyRecords records, const kitchen::Catalogue& catalogue, QDate today);

    [[nodiscard]] const FamilyRecords& records() const { return m_records; }
    [[nodiscard]] const kitchen::Catalogue& catalogue() const { return *m_catalogue; }
    [[nodiscard]] QDate today() const { return m_today; }

    /// One for each member, in the order of the records.
    [[nodiscard]] const std::vector<Standing>& standings() const { return m_standings; }
    /// nullptr when the member is not of this family.
    [[nodiscard]] const Standing* standing(MemberId member) const;

    [[nodiscard]] const kitchen::Pot* pot(PotId pot) const;
    [[nodiscard]] const kitchen::Vessel* vessel(VesselId vessel) const;

    /// What the measured batches of a vessel say of its evaporation; nullptr when the vessel is not
    /// this family's or no batch that was cooked in it counts (see learnt_vessels.h). Reckoned at
    /// the first call, for all vessels; any thread may be the first.
    [[nodiscard]] const kitchen::Calibration* calibration(VesselId vessel) const;

    /// What the pot cools in: its own container, else the family's first, else a usual one.
    [[nodiscard]] kitchen::Container containerFor(const kitchen::Pot& pot) const;

    /// The pot as this family would cook it: its vessel (the pot's, else the family's largest),
    /// what that vessel's batches have taught, altitude, the practice's prices, the most careful
    /// phase rules among those who drink, drinkers with today's amount.
    [[nodiscard]] kitchen::BrewInput brewInput(const kitchen::Pot& pot) const;

    /// Everyone as a drinker, members under 6 months included (they may not).
    [[nodiscard]] std::vector<kitchen::Drinker> drinkers() const;

    /// May this member have this pot: tolerances, recorded allergies, age band, and bone broth only
    /// in a phase that allows it.
    [[nodiscard]] kitchen::WhoMay whoMay(const Standing& standing, const kitchen::Pot& pot) const;

    /// Lots not gone, with what is left after the log; oldest use-by first. A lot that was drunk to
    /// the end is left out.
    [[nodiscard]] QList<StockItem> stockOnHand() const;

    /// What the member is asked to drink on each of `days` days from `start`: for past days the
    /// amount in force then, from today on the climb as it goes when every day is a good day; no
    /// more than the easing off of the target in force leaves (intake::easedAmount()).
    /// Nothing for days more than ten years after today: no plan reaches so far.
    [[nodiscard]] QList<quantity::Volume> plannedAmounts(MemberId member, QDate start,
                                                         int days) const;

    /// The plan of a week (by its Monday); an empty one when none is stored.
    [[nodiscard]] week::WeekPlan plan(QDate weekStart) const;
    /// The week as the planner sees it, with stock on hand and the yields of the pots. In the week
    /// of today only today and the days after it are in it, and a cooking of the past counts with
    /// what the log leaves of it unless its lots were stored. A later week starts with what the
    /// weeks before it leave over (up to four weeks ahead). A week that is over is shown as it was
    /// planned.
    [[nodiscard]] WeekAhead weekAhead(const week::WeekPlan& plan,
                                      Settled settled = Settled::All) const;

    /// What in this family wants the practitioner, worst first: stopped ladders, red flags, stuck
    /// ladders, no entry for days, targets reached, weight lost, a review due, a retry, one of its
    /// steps or its outcome due, a target held long enough, stock past its use-by. Empty when all
    /// is well.
    [[nodiscard]] Findings attention() const;

private:
    friend class ExcerptReader;
    Casebook(FamilyRecords records, std::vector<Standing> standings,
             const kitchen::Catalogue& catalogue, QDate today);

    /// The most careful phase rules among those who drink and may have the pot.
    [[nodiscard]] kitchen::PhaseRules rulesFor(const kitchen::Pot& pot) const;

    FamilyRecords m_records;
    const kitchen::Catalogue* m_catalogue;
    QDate m_today;
    std::vector<Standing> m_standings;
    struct Learnt;
    std::shared_ptr<Learnt> m_learnt; ///< filled once; copies have the same records and share it
};

} // namespace ladlework::casebook
