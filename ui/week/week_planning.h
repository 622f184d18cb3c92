#pragma once

#include "casebook/casebook.h"
#include "ui/week/plan_words.h"

#include <QObject>
#include <memory>
#include <optional>

namespace ladlework::ui {

class PlanPanel;
class WeekPlanner;

/// Planning one week from the wish to the answer: looks first whether it can be planned, has it
/// solved, proposes what is found at once, hands over the best plan, and says all of it in the
/// panel. Writes nothing itself. A plan is handed over only when nothing changed since the start.
class WeekPlanning final : public QObject {
    Q_OBJECT
public:
    WeekPlanning(PlanPanel* panel, QObject* parent);

    void start(std::shared_ptr<const casebook::Casebook> casebook, const week::WeekPlan& plan);
    /// The person asked for it: the week stays as it was.
    void cancel();
    /// Something changed: what is under way is dropped and `sentence` says so, unless it is empty;
    /// a result that stands is put away.
    void drop(const QString& sentence);
    /// Solving, or looking for what would help.
    [[nodiscard]] bool isBusy() const;
    /// The first plan while the best is looked for.
    [[nodiscard]] const std::optional<week::WeekPlan>& proposal() const { return m_proposal; }
    [[nodiscard]] WeekPlanner* planner() const { return m_planner; }

Q_SIGNALS:
    /// What is proposed came or went.
    void proposalChanged();
    void busyChanged();
    /// The answer, to be stored when it differs from what is planned; the panel already says it.
    void planned(const ladlework::week::WeekPlan& plan);

private:
    void propose(const week::WeekSolution& solution);
    void takeBest(const week::WeekSolution& solution);
    void explain(const std::vector<week::WayOut>& ways);
    void end();

    PlanPanel* m_panel;
    WeekPlanner* m_planner;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    week::WeekPlan m_plan;
    casebook::WeekAhead m_ahead;
    std::optional<week::WeekPlan> m_proposal;
    QString m_result;      ///< what was proven, while ways out are still looked for
    bool m_stands = false; ///< the panel shows a result
};

} // namespace ladlework::ui
