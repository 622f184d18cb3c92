#pragma once

#include "casebook/week_ahead.h"
#include "week/in_the_way.h"
#include "week/week_solver.h"

#include <QObject>
#include <optional>
#include <thread>
#include <vector>

namespace ladlework::ui {

/// Plans a week on a thread of its own and tells of it on the thread it lives on. One solve at a
/// time: a start while one is under way gives that one up and begins when it has ended. What was
/// given up tells nothing any more.
class WeekPlanner final : public QObject {
    Q_OBJECT
public:
    explicit WeekPlanner(QObject* parent = nullptr);
    WeekPlanner(const WeekPlanner&) = delete;
    WeekPlanner& operator=(const WeekPlanner&) = delete;
    /// Gives up what is under way and waits until the solver has noticed.
    ~WeekPlanner() override;

    /// `ahead` is the Settled::Locked view of a plan; its problem must pass check().
    void start(const casebook::WeekAhead& ahead);
    /// Gives up; cancelled() tells of it at once, although the solver takes a moment to notice.
    void cancel();
    [[nodiscard]] bool isBusy() const { return m_wanted != 0; }

    /// Of the solve, for all levels together, in seconds; after that the best plan so far is the
    /// answer.
    void setLimit(double seconds) { m_seconds = seconds; }

Q_SIGNALS:
    /// The greedy plan, moments after the start.
    void first(const ladlework::week::WeekSolution& solution);
    /// At most a few times a second, and at each new level.
    void progress(const ladlework::week::SolveProgress& progress);
    /// The best plan.
    void solved(const ladlework::week::WeekSolution& solution);
    /// The end, after solved(): what would help when someone is short; empty when nobody is.
    void waysFound(const std::vector<ladlework::week::WayOut>& ways);
    void cancelled();

private:
    void run(const std::stop_token& stop, quint64 number, double seconds,
             const week::WeekProblem& problem);
    /// Calls `tell` on this object's thread unless the run was given up by then.
    template <class Tell>
    void post(quint64 number, Tell tell);
    void begin(week::WeekProblem problem);
    void threadEnded();

    double m_seconds;
    quint64 m_last = 0;                      ///< number of the latest run
    quint64 m_wanted = 0;                    ///< the run whose results are wanted; 0: none
    std::optional<week::WeekProblem> m_next; ///< begins when the thread has ended
    bool m_running = false;
    std::jthread m_thread;
};

} // namespace ladlework::ui
