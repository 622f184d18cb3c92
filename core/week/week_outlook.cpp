#include "week/week_outlook.h"

#include "week/outlook_findings.h"
#include "week/serving_flow.h"

#include <algorithm>
#include <numeric>

namespace ladlework::week {

namespace {
using quantity::Volume;
using Place = kitchen::Lot::Place;

/// Serves the days one after the other and keeps what is left in each source.
class Server {
public:
    explicit Server(const OutlookInput& input);
    Outlook run();

private:
    void serveDay(int day);
    void closeDay(int day);
    void fillStores();
    [[nodiscard]] double wantedBy(std::size_t member, int day) const;
    [[nodiscard]] bool stands(const Source& source, int day) const;
    [[nodiscard]] std::vector<std::size_t> drinkable(int day) const;
    [[nodiscard]] std::vector<std::size_t> inTurn(const std::vector<std::size_t>& sources) const;
    [[nodiscard]] bool may(std::size_t member, std::size_t source) const {
        return sourceAt(source).may.contains(demandAt(member).member);
    }
    [[nodiscard]] const Source& sourceAt(std::size_t index) const {
        return m_input.sources[static_cast<qsizetype>(index)];
    }
    [[nodiscard]] const Demand& demandAt(std::size_t index) const {
        return m_input.demands[static_cast<qsizetype>(index)];
    }

    const OutlookInput& m_input;
    std::vector<double> m_left;               ///< by source, mL
    std::vector<std::vector<double>> m_atEnd; ///< [day][source] mL, spoilt taken out
    std::vector<std::vector<double>> m_taken; ///< [day][source] mL
    OutlookTrace m_trace;
    Outlook m_outlook;
};

Server::Server(const OutlookInput& input) : m_input(input) {
    for (const Source& source : input.sources)
        m_left.push_back(std::max(0.0, source.volume.toMillilitres()));
    m_trace.spoilt.assign(m_left.size(), 0.0);
}

double Server::wantedBy(std::size_t member, int day) const {
    const double ml = demandAt(member).perDay.value(day).toMillilitres();
    return std::max(0.0, ml) * (1.0 + m_input.spill);
}

/// A lot on hand is there from the first day on, a cooking from the day it can be drunk.
bool Server::stands(const Source& source, int day) const {
    return source.lot.isStored() || day >= source.readyDay;
}

/// What can be drunk on a day, the oldest first.
std::vector<std::size_t> Server::drinkable(int day) const {
    std::vector<std::size_t> sources;
    for (std::size_t index = 0; index < m_left.size(); ++index) {
        const Source& source = sourceAt(index);
        if (m_left[index] > 0 && source.readyDay <= day && day <= source.lastDay)
            sources.push_back(index);
    }
    std::ranges::stable_sort(sources, {}, [this](std::size_t index) {
        return std::pair(sourceAt(index).lastDay, sourceAt(index).readyDay);
    });
    return sources;
}

/// The members, the one with the fewest choices first.
std::vector<std::size_t> Server::inTurn(const std::vector<std::size_t>& sources) const {
    std::vector<std::size_t> members(static_cast<std::size_t>(m_input.demands.size()));
    std::iota(members.begin(), members.end(), std::size_t{0});
    std::ranges::stable_sort(members, {}, [&](std::size_t member) {
        return std::ranges::count_if(sources,
                                     [&](std::size_t source) { return may(member, source); });
    });
    return members;
}

void Server::serveDay(int day) {
    const std::vector<std::size_t> sources = drinkable(day);
    const std::vector<std::size_t> members = inTurn(sources);
    ServingProblem problem;
    for (const std::size_t source : sources)
        problem.left.push_back(m_left[source]);
    for (const std::size_t member : members) {
        problem.wanted.push_back(wantedBy(member, day));
        std::vector<bool>& row = problem.may.emplace_back();
        for (const std::size_t source : sources)
            row.push_back(may(member, source));
    }
    const Servings served = serve(problem);

    std::vector<double> shortBy(members.size());
    std::vector<double> taken(m_left.size());
    for (std::size_t turn = 0; turn < members.size(); ++turn) {
        double drunk = 0;
        for (std::size_t place = 0; place < sources.size(); ++place) {
            const double ml = served[turn][place];
            if (ml <= 0)
                continue;
            m_outlook.servings.append({day, demandAt(members[turn]).member,
                                       static_cast<qsizetype>(sources[place]),
                                       Volume::fromMillilitres(ml)});
            taken[sources[place]] += ml;
            drunk += ml;
        }
        shortBy[members[turn]] = std::max(0.0, problem.wanted[turn] - drunk);
    }
    for (std::size_t index = 0; index < m_left.size(); ++index)
        m_left[index] = std::max(0.0, m_left[index] - taken[index]);
    m_trace.shortBy.push_back(std::move(shortBy));
    m_taken.push_back(std::move(taken));
}

void Server::closeDay(int day) {
    OutlookDay result;
    result.day = m_input.start.addDays(day);
    double wanted = 0;
    for (std::size_t member = 0; member < m_trace.shortBy.back().size(); ++member)
        wanted += wantedBy(member, day);
    const std::vector<double>& taken = m_taken.back();
    const double served = std::accumulate(taken.begin(), taken.end(), 0.0);
    result.wanted = Volume::fromMillilitres(wanted);
    result.served = Volume::fromMillilitres(std::min(served, wanted));
    result.shortBy = result.wanted - result.served;

    std::vector<double> standing(m_left.size());
    double spoilt = 0;
    for (std::size_t index = 0; index < m_left.size(); ++index) {
        const Source& source = sourceAt(index);
        if (day >= source.readyDay && day <= source.lastDay)
            standing[index] = m_left[index];
        // Freezer stock does not spoil here; fridge stock does at the end of its last day.
        if (source.place == Place::Fridge && stands(source, day) && day >= source.lastDay) {
            spoilt += m_left[index];
            m_trace.spoilt[index] += m_left[index];
            m_left[index] = 0;
        }
    }
    result.spoilt = Volume::fromMillilitres(spoilt);
    m_trace.leftAfter.push_back(std::move(standing));
    m_atEnd.push_back(m_left);
    m_outlook.days.append(result);
}

/// What stands where at the end of each day. Freezer stock that is drunk tomorrow was moved to the
/// refrigerator today.
void Server::fillStores() {
    for (int day = 0; day < m_input.days; ++day) {
        const auto today = static_cast<std::size_t>(day);
        double fridge = 0;
        double freezer = 0;
        for (std::size_t index = 0; index < m_left.size(); ++index) {
            const Source& source = sourceAt(index);
            if (!stands(source, day))
                continue;
            const double left = m_atEnd[today][index];
            const double thawing = source.place == Place::Freezer && day + 1 < m_input.days
                                       ? m_taken[today + 1][index]
                                       : 0.0;
            fridge += source.place == Place::Fridge ? left : thawing;
            freezer += source.place == Place::Freezer ? left - thawing : 0.0;
        }
        m_outlook.days[day].inFridge = Volume::fromMillilitres(fridge);
        m_outlook.days[day].inFreezer = Volume::fromMillilitres(std::max(0.0, freezer));
    }
}

Outlook Server::run() {
    for (int day = 0; day < m_input.days; ++day) {
        serveDay(day);
        closeDay(day);
    }
    fillStores();
    m_outlook.findings = outlookFindings(m_input, m_outlook, m_trace);
    return std::move(m_outlook);
}
} // namespace

Outlook outlook(const OutlookInput& input) {
    return Server(input).run();
}

} // namespace ladlework::week
