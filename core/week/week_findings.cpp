#include "week/week_findings.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekFindings)
};
using quantity::Mass;
using quantity::Volume;

/// What is less than this is rounding and no amount that a kitchen could miss (a drop is 0.05 mL).
constexpr double noticeableMl = 0.01;

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class Teller {
public:
    Teller(const WeekProblem& problem, const WeekSolution& solution, QDate start,
           quantity::MeasureSystem measures)
        : m_problem(problem), m_solution(solution), m_start(start), m_measures(measures) {}
    Findings tell();

private:
    void tellShortDays();
    void tellChoices();
    void tellSpoilt();
    void tellRooms();
    [[nodiscard]] QString print(Volume volume) const {
        return quantity::printVolume(volume, m_measures);
    }
    [[nodiscard]] QString dayName(int day) const {
        return wordsLocale().dayName(m_start.addDays(day).dayOfWeek());
    }
    [[nodiscard]] QString nameOf(const StockSource& source) const {
        return sourceName(m_problem, m_solution, source, m_start);
    }
    [[nodiscard]] bool may(const StockSource& source, std::size_t drinker) const;
    [[nodiscard]] Volume shortInAll(std::size_t drinker) const;
    [[nodiscard]] std::vector<StockSource> sources() const;
    void add(const QString& code, const QString& text, double value, double limit,
             const QString& unit, const QString& field, const QString& why = {});

    const WeekProblem& m_problem;
    const WeekSolution& m_solution;
    QDate m_start;
    quantity::MeasureSystem m_measures;
    Findings m_findings;
};

void Teller::add(const QString& code, const QString& text, double value, double limit,
                 const QString& unit, const QString& field, const QString& why) {
    Finding finding = makeFinding(Finding::Severity::Caution, code, text, field);
    finding.value = value;
    finding.limit = limit;
    finding.unit = unit;
    finding.why = why;
    m_findings.append(finding);
}

bool Teller::may(const StockSource& source, std::size_t drinker) const {
    return source.kind == StockSource::Kind::Lot
               ? m_problem.lots[source.index].may[drinker]
               : m_problem.pots[m_solution.cookings[source.index].pot].may[drinker];
}

std::vector<StockSource> Teller::sources() const {
    std::vector<StockSource> all;
    for (std::size_t lot = 0; lot < m_problem.lots.size(); ++lot)
        if (m_problem.lots[lot].place == kitchen::Lot::Place::Freezer ||
            m_problem.lots[lot].useByDay >= 0)
            all.push_back({StockSource::Kind::Lot, lot});
    for (std::size_t cooking = 0; cooking < m_solution.cookings.size(); ++cooking)
        all.push_back({StockSource::Kind::Cooking, cooking});
    return all;
}

Volume Teller::shortInAll(std::size_t drinker) const {
    Volume all;
    for (const std::vector<Volume>& day : m_solution.shortBy)
        all += day[drinker];
    return all;
}

void Teller::tellShortDays() {
    constexpr double percent = 100;
    for (int day = 0; day < m_problem.days; ++day) {
        Volume missing;
        QStringList who;
        for (std::size_t drinker = 0; drinker < m_problem.drinkers.size(); ++drinker) {
            const Volume lacks = m_solution.shortBy[at(day)][drinker];
            missing += lacks;
            if (lacks.toMillilitres() >= noticeableMl)
                who.append(Words::tr("%1 %2").arg(m_problem.drinkers[drinker].name, print(lacks)));
        }
        if (who.isEmpty())
            continue;
        add(QStringLiteral("week-short"),
            Words::tr("%1 runs short by %2 (%3). Cook more before it or on it.")
                .arg(dayName(day), print(missing), who.join(QStringLiteral(", "))),
            missing.toMillilitres(), m_solution.stores[at(day)].wanted.toMillilitres(),
            QStringLiteral("mL"), QStringLiteral("day:%1").arg(day),
            Words::tr("The amounts hold %1 % for what is spilt or left in the jar.")
                .arg(qRound(m_problem.spill * percent)));
    }
}

/// Who is short while there is stock that is not for them.
void Teller::tellChoices() {
    for (std::size_t drinker = 0; drinker < m_problem.drinkers.size(); ++drinker) {
        const Volume missing = shortInAll(drinker);
        if (missing.toMillilitres() < noticeableMl)
            continue;
        QStringList own;
        QStringList others;
        for (const StockSource& source : sources()) {
            QStringList& names = may(source, drinker) ? own : others;
            if (!names.contains(nameOf(source)))
                names.append(nameOf(source));
        }
        if (others.isEmpty())
            continue;
        Volume wanted;
        for (const Volume volume : m_problem.drinkers[drinker].perDay)
            wanted += volume * (1.0 + m_problem.spill);
        const QString& name = m_problem.drinkers[drinker].name;
        const QString rest = others.join(QStringLiteral("; "));
        add(own.isEmpty() ? QStringLiteral("nothing-to-drink")
                          : QStringLiteral("may-not-drink-rest"),
            own.isEmpty()
                ? Words::tr("%1 may drink none of the stock of this week (%2). Plan a pot that "
                            "%1 may have.")
                      .arg(name, rest)
                : Words::tr("Only this may be drunk by %1: %2. The rest (%3) may not.")
                      .arg(name, own.join(QStringLiteral("; ")), rest),
            missing.toMillilitres(), wanted.toMillilitres(), QStringLiteral("mL"),
            QStringLiteral("tolerances"));
    }
}

void Teller::tellSpoilt() {
    for (const Spoiling& spoiling : m_solution.spoiling) {
        const bool meat = spoiling.meat > Mass();
        // Meat on hand has no name of its own.
        const QString name = meat && spoiling.from.kind == StockSource::Kind::Lot
                                 ? Words::tr("the meat on hand")
                                 : nameOf(spoiling.from);
        if (meat)
            add(QStringLiteral("meat-spoilt"),
                Words::tr("%1 of meat of %2 is left after %3, its last good day. Freeze it fresh, "
                          "or make a pot with less meat.")
                    .arg(quantity::printMass(spoiling.meat, m_measures), name,
                         dayName(spoiling.day)),
                spoiling.meat.toGrams(), m_problem.meatPerDay.toGrams(), QStringLiteral("g"),
                QStringLiteral("day:%1").arg(spoiling.day));
        else if (spoiling.volume.toMillilitres() >= noticeableMl)
            add(QStringLiteral("week-spoilt"),
                Words::tr("%1 of %2 is left after %3, its last good day. Freeze it fresh, cook "
                          "less, or cook it later.")
                    .arg(print(spoiling.volume), name, dayName(spoiling.day)),
                spoiling.volume.toMillilitres(), 0, QStringLiteral("mL"),
                QStringLiteral("day:%1").arg(spoiling.day));
    }
}

void Teller::tellRooms() {
    for (int day = 0; day < m_problem.days; ++day) {
        const StoreDay& store = m_solution.stores[at(day)];
        const QString field = QStringLiteral("day:%1").arg(day);
        if ((store.fridge - m_problem.fridgeRoom).toMillilitres() > noticeableMl)
            add(QStringLiteral("fridge-full"),
                Words::tr("%1 ends with %2 in the refrigerator, which has room for %3. Freeze some "
                          "or cook less at a time.")
                    .arg(dayName(day), print(store.fridge), print(m_problem.fridgeRoom)),
                store.fridge.toMillilitres(), m_problem.fridgeRoom.toMillilitres(),
                QStringLiteral("mL"), field);
        if ((store.freezer - m_problem.freezerRoom).toMillilitres() > noticeableMl)
            add(QStringLiteral("freezer-full"),
                Words::tr("%1 ends with %2 in the freezer, which has room for %3. Use the frozen "
                          "stock first.")
                    .arg(dayName(day), print(store.freezer), print(m_problem.freezerRoom)),
                store.freezer.toMillilitres(), m_problem.freezerRoom.toMillilitres(),
                QStringLiteral("mL"), field);
    }
}

Findings Teller::tell() {
    tellShortDays();
    tellChoices();
    tellSpoilt();
    tellRooms();
    return std::move(m_findings);
}

} // namespace

QString sourceName(const WeekProblem& problem, const WeekSolution& solution,
                   const StockSource& source, QDate start) {
    if (source.kind == StockSource::Kind::Lot)
        return problem.lots[source.index].name;
    const PlannedCooking& cooking = solution.cookings[source.index];
    return Words::tr("%1, %2").arg(problem.pots[cooking.pot].name,
                                   wordsLocale().dayName(start.addDays(cooking.day).dayOfWeek()));
}

Findings weekFindings(const WeekProblem& problem, const WeekSolution& solution, QDate start,
                      quantity::MeasureSystem measures) {
    return Teller(problem, solution, start, measures).tell();
}

} // namespace ladlework::week
