#include "ui/pot/pot_comparison.h"

#include "ui/pot/balance_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>
#include <functional>

namespace ladlework::ui {

using kitchen::Addition;
using kitchen::Brewed;
using kitchen::Range;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PotComparison)
};

QString none() {
    return QString(QChar(0x2014));
}

/// Gathers the lines of two pots.
class Comparing {
public:
    Comparing(const BrewedPot& first, const BrewedPot& second, const Prices& prices)
        : m_first(first), m_second(second), m_prices(prices) {}

    QList<ComparedLine> lines() {
        ranges();
        money();
        times();
        people();
        return m_lines;
    }

private:
    using Take = std::function<std::optional<Range>(const Brewed&)>;
    /// How the figures of a line are written: one alone, and one with its bounds.
    struct Print {
        std::function<QString(double)> one;
        std::function<QString(const Range&)> ranged;
    };

    [[nodiscard]] static Print decimals(int count, const QString& unit) {
        const auto number = [count](double value) {
            return QLocale().toString(value, 'f', count);
        };
        return {[number, unit](double value) { return QString(number(value) + u' ' + unit); },
                [number, unit](const Range& range) {
                    return Words::tr("%1 %2 (%3 to %4)")
                        .arg(number(range.best), unit, number(range.low), number(range.high));
                }};
    }

    [[nodiscard]] Print volume() const {
        const auto ml = [](double value) {
            return quantity::Volume::fromMillilitres(value);
        };
        const auto measures = m_prices.measures;
        return {[=](double value) { return quantity::printVolume(ml(value), measures); },
                [=](const Range& range) {
                    return quantity::printVolumeRange(ml(range.low), ml(range.best), ml(range.high),
                                                      measures);
                }};
    }

    [[nodiscard]] Print mass() const {
        const auto grams = [](double value) {
            return quantity::Mass::fromGrams(value);
        };
        const auto measures = m_prices.measures;
        return {[=](double value) { return quantity::printMass(grams(value), measures); },
                [=](const Range& range) {
                    return quantity::printMassRange(grams(range.low), grams(range.best),
                                                    grams(range.high), measures);
                }};
    }

    void ranges() {
        const Print days = decimals(1, Words::tr("days"));
        const Print grams = decimals(1, Words::tr("g"));
        const Print milligrams = decimals(0, Words::tr("mg"));
        add(
            Words::tr("Stock out"), [](const Brewed& b) { return b.stockMl; }, volume());
        add(
            Words::tr("Covers"), [](const Brewed& b) { return b.coverDays; }, days);
        add(
            Words::tr("Meat left"), [](const Brewed& b) { return b.meatLeftG; }, mass());
        add(
            Words::tr("Meat lasts"), [](const Brewed& b) { return b.meatDays; }, days);
        words(Words::tr("When cold"), setWords(m_first.brewed), setWords(m_second.brewed));
        add(Words::tr("Gelatin a cup"), aCup(&Brewed::gelatinGPer100Ml), grams);
        add(Words::tr("Protein a cup"), aCup(&Brewed::proteinGPer100Ml), grams);
        add(Words::tr("Sodium a cup"), aCup(&Brewed::sodiumMgPer100Ml), milligrams);
        add(Words::tr("Potassium a cup"), aCup(&Brewed::potassiumMgPer100Ml), milligrams);
        add(
            Words::tr("Fat to skim"), [](const Brewed& b) { return b.fatG; }, mass());
    }

    static Take aCup(Range Brewed::*per100Ml) {
        return [per100Ml](const Brewed& brewed) {
            return brewed.boilsDry ? std::nullopt
                                   : std::optional(kitchen::perCup(brewed.*per100Ml));
        };
    }

    /// Nothing is less than nothing.
    static std::optional<Range> above(const std::optional<Range>& range) {
        if (!range)
            return std::nullopt;
        return Range{std::max(0.0, range->low), std::max(0.0, range->best),
                     std::max(0.0, range->high)};
    }

    void add(const QString& what, const Take& take, const Print& print) {
        const std::optional<Range> a = above(take(m_first.brewed));
        const std::optional<Range> b = above(take(m_second.brewed));
        ComparedLine line{what, a ? print.ranged(*a) : none(), b ? print.ranged(*b) : none(),
                          none(), false};
        if (a && b)
            judge(line, *a, *b, print);
        m_lines.append(line);
    }

    static void judge(ComparedLine& line, const Range& a, const Range& b, const Print& print) {
        const double more = b.best - a.best;
        if (print.one(a.best) == print.one(b.best)) {
            line.difference = Words::tr("the same");
            return;
        }
        line.clearly = b.low > a.high || b.high < a.low;
        const QString amount = print.one(std::abs(more));
        if (line.clearly)
            line.difference = more > 0 ? Words::tr("clearly more, by %1").arg(amount)
                                       : Words::tr("clearly less, by %1").arg(amount);
        else
            line.difference = more > 0 ? Words::tr("%1 more, within the ranges").arg(amount)
                                       : Words::tr("%1 less, within the ranges").arg(amount);
    }

    void words(const QString& what, const QString& a, const QString& b) {
        const bool same = a == b;
        m_lines.append({what, a, b, same ? Words::tr("the same") : Words::tr("differs"), !same});
    }

    void money() {
        const auto& a = m_first.brewed.cost;
        const auto& b = m_second.brewed.cost;
        if (!a && !b)
            return;
        money(Words::tr("Cost"), a, b);
        money(Words::tr("Cost a cup"), costACup(m_first.brewed), costACup(m_second.brewed));
    }

    void money(const QString& what, const std::optional<double>& a,
               const std::optional<double>& b) {
        const auto print = [this](const std::optional<double>& cost) {
            return cost ? printMoney(*cost, m_prices) : none();
        };
        ComparedLine line{what, print(a), print(b), none(), false};
        if (a && b) {
            line.clearly = print(a) != print(b);
            line.difference = !line.clearly ? Words::tr("the same")
                              : *b > *a     ? Words::tr("%1 more").arg(print(*b - *a))
                                            : Words::tr("%1 less").arg(print(*a - *b));
        }
        m_lines.append(line);
    }

    void times() {
        words(Words::tr("Simmers"), quantity::printDuration(m_first.pot.simmer),
              quantity::printDuration(m_second.pot.simmer));
        words(Words::tr("At the stove"), atTheStove(m_first), atTheStove(m_second));
    }

    /// The times at which somebody's hands are needed.
    static QString atTheStove(const BrewedPot& one) {
        QList<quantity::Duration> times;
        for (const Addition& addition : one.brewed.additions)
            if (addition.at > quantity::Duration{} && addition.at < one.pot.simmer &&
                !times.contains(addition.at))
                times.append(addition.at);
        QStringList text{Words::tr("start")};
        for (const quantity::Duration at : times)
            text.append(Words::tr("after %1").arg(quantity::printDuration(at)));
        text.append(Words::tr("end"));
        return text.join(QStringLiteral(", "));
    }

    void people() {
        for (const kitchen::WhoMay& who : m_first.brewed.who) {
            const auto say = [](const kitchen::WhoMay& one) {
                if (one.may)
                    return one.why.isEmpty() ? Words::tr("may") : Words::tr("may: %1").arg(one.why);
                return Words::tr("may not: %1").arg(one.why);
            };
            const auto other =
                std::find_if(m_second.brewed.who.begin(), m_second.brewed.who.end(),
                             [&who](const kitchen::WhoMay& one) { return one.name == who.name; });
            if (other == m_second.brewed.who.end())
                continue;
            const bool same = who.may == other->may;
            m_lines.append({who.name, say(who), say(*other),
                            same         ? Words::tr("the same")
                            : other->may ? Words::tr("may drink the second only")
                                         : Words::tr("may drink the first only"),
                            !same});
        }
    }

    const BrewedPot& m_first;
    const BrewedPot& m_second;
    const Prices& m_prices;
    QList<ComparedLine> m_lines;
};

} // namespace

QList<ComparedLine> comparePots(const BrewedPot& first, const BrewedPot& second,
                                const Prices& prices) {
    return Comparing(first, second, prices).lines();
}

} // namespace ladlework::ui
