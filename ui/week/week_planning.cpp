#include "ui/week/week_planning.h"

#include "casebook/planned_week.h"
#include "ui/week/plan_panel.h"
#include "ui/week/week_planner.h"

#include <utility>

namespace ladlework::ui {

WeekPlanning::WeekPlanning(PlanPanel* panel, QObject* parent)
    : QObject(parent), m_panel(panel), m_planner(new WeekPlanner(this)) {
    connect(m_planner, &WeekPlanner::first, this, &WeekPlanning::propose);
    connect(m_planner, &WeekPlanner::progress, this, [this](const week::SolveProgress& reached) {
        m_panel->showWorking(progressWords(*m_casebook, reached), reached.level, reached.levels);
    });
    connect(m_planner, &WeekPlanner::solved, this, &WeekPlanning::takeBest);
    connect(m_planner, &WeekPlanner::waysFound, this, &WeekPlanning::explain);
    connect(m_panel, &PlanPanel::cancelWanted, this, &WeekPlanning::cancel);
}

bool WeekPlanning::isBusy() const {
    return m_planner->isBusy();
}

void WeekPlanning::start(std::shared_ptr<const casebook::Casebook> casebook,
                         const week::WeekPlan& plan) {
    drop({});
    m_casebook = std::move(casebook);
    m_plan = plan;
    m_ahead = m_casebook->weekAhead(plan, casebook::Settled::Locked);
    if (const std::optional<PlanHint> why = obstacle(*m_casebook, plan, m_ahead)) {
        m_panel->showResult(tr("The week cannot be planned."), {*why});
        m_stands = true;
        end();
        return;
    }
    m_panel->showWorking(tr("Planning the week\u2026"), 0, 0);
    m_planner->start(m_ahead);
    Q_EMIT busyChanged();
}

void WeekPlanning::propose(const week::WeekSolution& solution) {
    m_proposal = casebook::plannedWeek(*m_casebook, m_plan, m_ahead, solution);
    m_panel->showWorking(tr("A first plan \u2013 looking for the best\u2026"), 0, 0);
    Q_EMIT proposalChanged();
}

void WeekPlanning::takeBest(const week::WeekSolution& solution) {
    const week::WeekPlan best = casebook::plannedWeek(*m_casebook, m_plan, m_ahead, solution);
    m_result = resultWords(*m_casebook, m_ahead.problem, solution);
    m_proposal.reset();
    Q_EMIT planned(best);
    Q_EMIT proposalChanged();
    m_panel->showResult(m_result, {}, true);
}

void WeekPlanning::explain(const std::vector<week::WayOut>& ways) {
    m_panel->showResult(m_result, hints(*m_casebook, m_ahead, ways));
    m_stands = true;
    end();
}

void WeekPlanning::cancel() {
    if (isBusy() && !m_result.isEmpty()) {
        m_planner->cancel();
        explain({}); // the plan stands; only what would help was not looked for to the end
        return;
    }
    drop(tr("Planning was stopped. The week is as it was."));
}

void WeekPlanning::drop(const QString& sentence) {
    if (!isBusy()) {
        // Why planning was dropped stays to be read; what was proven is not true any more.
        if (m_stands || sentence.isEmpty())
            m_panel->clear();
        m_stands = false;
        return;
    }
    const bool solving = m_result.isEmpty();
    m_planner->cancel();
    if (sentence.isEmpty() || !solving)
        m_panel->clear();
    else
        m_panel->showResult(sentence, {});
    const bool proposed = m_proposal.has_value();
    m_proposal.reset();
    end();
    if (proposed)
        Q_EMIT proposalChanged();
}

void WeekPlanning::end() {
    m_casebook.reset();
    m_result.clear();
    Q_EMIT busyChanged();
}

} // namespace ladlework::ui
