#include "ui/week/week_planner.h"

#include <QElapsedTimer>
#include <QMetaObject>
#include <algorithm>
#include <exception>
#include <utility>

namespace ladlework::ui {

namespace {

constexpr double patienceSeconds = 60;
/// For each of the searches for a way out.
constexpr double searchSeconds = 5;
constexpr qint64 progressEveryMs = 100;

} // namespace

WeekPlanner::WeekPlanner(QObject* parent) : QObject(parent), m_seconds(patienceSeconds) {}

WeekPlanner::~WeekPlanner() {
    m_thread.request_stop();
    if (m_thread.joinable())
        m_thread.join();
}

template <class Tell>
void WeekPlanner::post(quint64 number, Tell tell) {
    // The destructor waits for the thread, so this object is there whenever the thread speaks.
    QMetaObject::invokeMethod(
        this,
        [this, number, tell = std::move(tell)] {
            if (number == m_wanted)
                tell();
        },
        Qt::QueuedConnection);
}

void WeekPlanner::start(const casebook::WeekAhead& ahead) {
    m_wanted = ++m_last;
    if (m_running) {
        m_thread.request_stop();
        m_next = ahead.problem;
        return;
    }
    begin(ahead.problem);
}

void WeekPlanner::begin(week::WeekProblem problem) {
    m_running = true;
    m_thread = std::jthread([this, number = m_wanted, seconds = m_seconds,
                             problem = std::move(problem)](const std::stop_token& stop) {
        try {
            run(stop, number, seconds, problem);
        } catch (...) {
            // The barrier of the event loop tells of it, as of any other invariant that broke.
            post(number, [this, broken = std::current_exception()] {
                cancel();
                std::rethrow_exception(broken);
            });
        }
        QMetaObject::invokeMethod(
            this, [this] { threadEnded(); }, Qt::QueuedConnection);
    });
}

void WeekPlanner::threadEnded() {
    m_running = false;
    if (!m_next)
        return;
    begin(*std::exchange(m_next, std::nullopt));
}

void WeekPlanner::cancel() {
    if (!isBusy())
        return;
    m_wanted = 0;
    m_next.reset();
    m_thread.request_stop();
    Q_EMIT cancelled();
}

void WeekPlanner::run(const std::stop_token& stop, quint64 number, double seconds,
                      const week::WeekProblem& problem) {
    const week::WeekSolution quick = week::greedyWeek(problem);
    post(number, [this, quick] { Q_EMIT first(quick); });
    if (stop.stop_requested())
        return;
    week::SolveLimits limits;
    limits.stop = stop;
    limits.seconds = seconds;
    QElapsedTimer sinceTold;
    int levelTold = -1;
    limits.progress = [&](const week::SolveProgress& reached) {
        if (reached.level == levelTold && sinceTold.isValid() &&
            sinceTold.elapsed() < progressEveryMs)
            return;
        levelTold = reached.level;
        sinceTold.start();
        post(number, [this, reached] { Q_EMIT progress(reached); });
    };
    const week::WeekSolution best = week::solveWeek(problem, limits, &quick);
    if (stop.stop_requested())
        return;
    post(number, [this, best] { Q_EMIT solved(best); });
    limits.progress = {};
    limits.seconds = std::min(seconds, searchSeconds);
    const std::vector<week::WayOut> ways = week::waysOut(problem, best, limits);
    if (stop.stop_requested())
        return;
    post(number, [this, ways] {
        m_wanted = 0;
        Q_EMIT waysFound(ways);
    });
}

} // namespace ladlework::ui
