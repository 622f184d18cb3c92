#include "week/week_outlook.h"

#include "core/week/cut_capacity.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

using namespace ladlework;
using namespace ladlework::week;
using quantity::Volume;
using Place = kitchen::Lot::Place;

namespace {
constexpr double rounding = 1e-6; // mL
const QDate monday(2026, 11, 2);

Volume ml(double millilitres) {
    return Volume::fromMillilitres(millilitres);
}

Demand demand(int id, const QString& name, double eachDay, int days = 7) {
    return {MemberId{id}, name, QList<Volume>(days, ml(eachDay))};
}

Source cooking(const QString& name, double volume, int ready, int last, QList<MemberId> may) {
    Source source;
    source.name = name;
    source.pot = PotId{1};
    source.volume = ml(volume);
    source.readyDay = ready;
    source.lastDay = last;
    source.may = std::move(may);
    return source;
}

Source lot(Place place, double volume, int ready, int last, QList<MemberId> may) {
    Source source = cooking(QStringLiteral("a jar"), volume, ready, last, std::move(may));
    source.pot = {};
    source.lot = LotId{1};
    source.place = place;
    return source;
}

OutlookInput inputOf(QList<Demand> demands, QList<Source> sources) {
    OutlookInput input;
    input.start = monday;
    input.demands = std::move(demands);
    input.sources = std::move(sources);
    input.spill = 0;
    input.fridgeRoom = ml(20000);
    input.freezerRoom = ml(20000);
    input.measures = quantity::MeasureSystem::Metric;
    return input;
}

OutlookInput randomInput(std::mt19937& random) {
    std::uniform_int_distribution<int> members(1, 4);
    std::uniform_int_distribution<int> sources(0, 5);
    std::uniform_int_distribution<int> tenths(0, 20);
    std::uniform_int_distribution<int> day(0, 4);
    std::bernoulli_distribution half(0.5);
    OutlookInput input = inputOf({}, {});
    input.days = 5;
    input.spill = 0.1;
    for (int id = members(random); id > 0; --id) {
        Demand wants = demand(id, QString::number(id), 0, input.days);
        for (Volume& volume : wants.perDay)
            volume = ml(tenths(random) * 31.7);
        input.demands.append(wants);
    }
    for (int count = sources(random); count > 0; --count) {
        QList<MemberId> may;
        for (const Demand& wants : input.demands) {
            if (half(random))
                may.append(wants.member);
        }
        const int ready = day(random);
        Source source = cooking(QString::number(count), tenths(random) * 97.3, ready,
                                ready + day(random) - 1, may);
        if (half(random)) {
            source.pot = {};
            source.lot = LotId{count};
        }
        if (source.lot.isStored() && half(random)) {
            source.place = Place::Freezer;
            source.lastDay = input.days - 1;
        }
        input.sources.append(source);
    }
    return input;
}

/// The same week served by the words of the header alone: what each source gives is the growth of
/// the least cut as sources are added, the oldest first.
class PlainServer {
public:
    explicit PlainServer(const OutlookInput& input) : m_input(input) {
        for (const Source& source : input.sources)
            left.push_back(source.volume.toMillilitres());
    }

    double serveDay(int day) {
        std::vector<std::size_t> order;
        for (std::size_t index = 0; index < left.size(); ++index) {
            const Source& source = m_input.sources[static_cast<qsizetype>(index)];
            if (source.readyDay <= day && day <= source.lastDay)
                order.push_back(index);
        }
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            const Source& one = m_input.sources[static_cast<qsizetype>(a)];
            const Source& other = m_input.sources[static_cast<qsizetype>(b)];
            return std::pair(one.lastDay, one.readyDay) < std::pair(other.lastDay, other.readyDay);
        });
        std::vector<double> wanted;
        std::vector<std::vector<bool>> may;
        for (const Demand& member : m_input.demands) {
            wanted.push_back(member.perDay[day].toMillilitres() * (1 + m_input.spill));
            std::vector<bool>& row = may.emplace_back(left.size());
            for (std::size_t index = 0; index < left.size(); ++index)
                row[index] =
                    m_input.sources[static_cast<qsizetype>(index)].may.contains(member.member);
        }
        std::vector<double> opened(left.size(), 0.0);
        double before = 0;
        for (const std::size_t index : order) {
            opened[index] = left[index];
            const double now = cutCapacity(opened, wanted, may);
            left[index] -= now - before;
            before = now;
        }
        return before;
    }

    std::vector<double> left;

private:
    const OutlookInput& m_input;
};
} // namespace

TEST(WeekOutlookTest, servedEachDayEqualsTheLeastCutOnRandomWeeks) {
    std::mt19937 random(42);
    for (int round = 0; round < 500; ++round) {
        const OutlookInput input = randomInput(random);
        const Outlook result = outlook(input);
        PlainServer plain(input);
        for (int day = 0; day < input.days; ++day) {
            const double served = plain.serveDay(day);
            ASSERT_NEAR(result.days[day].served.toMillilitres(), served, rounding)
                << "round " << round << " day " << day;
            for (std::size_t index = 0; index < plain.left.size(); ++index) {
                const Source& source = input.sources[static_cast<qsizetype>(index)];
                const bool there = source.lot.isStored() || day >= source.readyDay;
                if (source.place == Place::Fridge && there && day >= source.lastDay)
                    plain.left[index] = 0;
            }
        }
    }
}

TEST(WeekOutlookTest, keepsItsBalanceOnRandomWeeks) {
    std::mt19937 random(1);
    for (int round = 0; round < 500; ++round) {
        const OutlookInput input = randomInput(random);
        const Outlook result = outlook(input);
        ASSERT_EQ(result.days.size(), input.days);
        double standing = 0;
        for (const OutlookDay& day : result.days) {
            const auto index = static_cast<int>(monday.daysTo(day.day));
            EXPECT_LE(day.served, day.wanted);
            EXPECT_NEAR((day.served + day.shortBy).toMillilitres(), day.wanted.toMillilitres(),
                        rounding);
            double came = 0;
            double servings = 0;
            for (const Source& source : input.sources) {
                const int arrives = source.lot.isStored() ? 0 : source.readyDay;
                came += arrives == index ? source.volume.toMillilitres() : 0;
            }
            for (const Serving& serving : result.servings) {
                if (serving.day != index)
                    continue;
                const Source& source = input.sources[serving.source];
                servings += serving.volume.toMillilitres();
                EXPECT_TRUE(source.may.contains(serving.member));
                EXPECT_TRUE(source.readyDay <= index && index <= source.lastDay);
            }
            EXPECT_NEAR(servings, day.served.toMillilitres(), rounding);
            // What was there, what came, what went and what stands add up.
            standing += came - servings - day.spoilt.toMillilitres();
            EXPECT_NEAR((day.inFridge + day.inFreezer).toMillilitres(), standing, rounding);
        }
    }
}

TEST(WeekOutlookTest, addsTheSpillToWhatIsWanted) {
    OutlookInput input = inputOf({demand(1, QStringLiteral("Ana"), 1000)},
                                 {cooking(QStringLiteral("Legs"), 9000, 0, 6, {MemberId{1}})});
    input.spill = 0.10;
    const Outlook result = outlook(input);
    EXPECT_NEAR(result.days[0].wanted.toMillilitres(), 1100, rounding);
    EXPECT_NEAR(result.days[0].served.toMillilitres(), 1100, rounding);
}

TEST(WeekOutlookTest, namesWhoIsShortAndByHowMuch) {
    const Outlook result = outlook(
        inputOf({demand(1, QStringLiteral("Ana"), 1000), demand(2, QStringLiteral("Ben"), 500)},
                {cooking(QStringLiteral("Legs"), 1200, 0, 3, {MemberId{1}, MemberId{2}})}));
    ASSERT_TRUE(hasCode(result.findings, u"week-short"));
    const Finding& first = result.findings.first();
    EXPECT_EQ(first.severity, Finding::Severity::Caution);
    EXPECT_NEAR(first.value.value_or(0), 300, rounding);
    EXPECT_NEAR(first.limit.value_or(0), 1500, rounding);
    EXPECT_EQ(first.unit, QStringLiteral("mL"));
    EXPECT_TRUE(first.text.contains(QStringLiteral("Monday"))) << qPrintable(first.text);
    EXPECT_TRUE(first.text.contains(QStringLiteral("Ben 300 mL"))) << qPrintable(first.text);
    EXPECT_FALSE(first.text.contains(QStringLiteral("Ana"))) << qPrintable(first.text);
}

TEST(WeekOutlookTest, saysWhenTheRestIsNotForThem) {
    const Outlook result = outlook(
        inputOf({demand(1, QStringLiteral("Ana"), 100), demand(2, QStringLiteral("Ben"), 100)},
                {cooking(QStringLiteral("Cod"), 3000, 0, 6, {MemberId{1}}),
                 cooking(QStringLiteral("Legs"), 150, 0, 6, {MemberId{2}})}));
    ASSERT_TRUE(hasCode(result.findings, u"may-not-drink-rest"));
    EXPECT_FALSE(hasCode(result.findings, u"nothing-to-drink"));
    const auto finding =
        std::ranges::find(result.findings, QStringLiteral("may-not-drink-rest"), &Finding::code);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("Only this may be drunk by Ben: Legs")))
        << qPrintable(finding->text);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("Cod")));
}

TEST(WeekOutlookTest, saysWhenNothingIsForThem) {
    const Outlook result =
        outlook(inputOf({demand(2, QStringLiteral("Ben"), 100)},
                        {cooking(QStringLiteral("Cod"), 3000, 0, 6, {MemberId{1}})}));
    EXPECT_TRUE(hasCode(result.findings, u"nothing-to-drink"));
}

TEST(WeekOutlookTest, countsAsSpoiltWhatIsLeftAfterTheLastDay) {
    const Outlook result =
        outlook(inputOf({demand(1, QStringLiteral("Ana"), 100)},
                        {cooking(QStringLiteral("Legs"), 1000, 1, 4, {MemberId{1}})}));
    // Days 1 to 4 take 100 mL each.
    EXPECT_NEAR(result.days[4].spoilt.toMillilitres(), 600, rounding);
    EXPECT_NEAR(result.days[4].inFridge.toMillilitres(), 0, rounding);
    EXPECT_NEAR(result.days[3].inFridge.toMillilitres(), 700, rounding);
    const auto finding =
        std::ranges::find(result.findings, QStringLiteral("week-spoilt"), &Finding::code);
    ASSERT_NE(finding, result.findings.end());
    EXPECT_NEAR(finding->value.value_or(0), 600, rounding);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("Friday"))) << qPrintable(finding->text);
}

TEST(WeekOutlookTest, carriesOverWhatIsStillGoodAtTheEnd) {
    const Outlook result = outlook(inputOf(
        {}, {cooking(QStringLiteral("Legs"), 1000, 5, 8, {}), lot(Place::Freezer, 500, 1, 6, {})}));
    for (const OutlookDay& day : result.days)
        EXPECT_EQ(day.spoilt, Volume());
    EXPECT_NEAR(result.days[6].inFridge.toMillilitres(), 1000, rounding);
    EXPECT_NEAR(result.days[6].inFreezer.toMillilitres(), 500, rounding);
    EXPECT_TRUE(result.findings.isEmpty());
}

TEST(WeekOutlookTest, freezerStockStandsInTheFridgeTheDayBefore) {
    const Outlook result = outlook(inputOf({demand(1, QStringLiteral("Ana"), 100)},
                                           {lot(Place::Freezer, 300, 1, 6, {MemberId{1}})}));
    EXPECT_EQ(result.days[0].served, Volume()); // it has to thaw first
    EXPECT_NEAR(result.days[0].inFridge.toMillilitres(), 100, rounding);
    EXPECT_NEAR(result.days[0].inFreezer.toMillilitres(), 200, rounding);
    EXPECT_NEAR(result.days[1].served.toMillilitres(), 100, rounding);
    EXPECT_NEAR(result.days[3].inFreezer.toMillilitres(), 0, rounding);
    EXPECT_NEAR(result.days[4].shortBy.toMillilitres(), 100, rounding);
}

TEST(WeekOutlookTest, saysWhenThereIsNoRoom) {
    OutlookInput input = inputOf(
        {}, {cooking(QStringLiteral("Legs"), 5000, 2, 8, {}), lot(Place::Freezer, 900, 1, 6, {})});
    input.fridgeRoom = ml(4000);
    input.freezerRoom = ml(800);
    const Outlook result = outlook(input);
    const auto fridge =
        std::ranges::find(result.findings, QStringLiteral("fridge-full"), &Finding::code);
    ASSERT_NE(fridge, result.findings.end());
    EXPECT_NEAR(fridge->value.value_or(0), 5000, rounding);
    EXPECT_NEAR(fridge->limit.value_or(0), 4000, rounding);
    EXPECT_EQ(fridge->field, QStringLiteral("day:2"));
    EXPECT_TRUE(hasCode(result.findings, u"freezer-full"));
}

TEST(WeekOutlookTest, printsInTheFamilysMeasures) {
    OutlookInput input = inputOf({demand(1, QStringLiteral("Ana"), 236.5882365)}, {});
    EXPECT_TRUE(outlook(input).findings.first().text.contains(QStringLiteral("mL")));
    input.measures = quantity::MeasureSystem::UsCustomary;
    EXPECT_TRUE(outlook(input).findings.first().text.contains(QStringLiteral("1 cup")));
}

TEST(WeekOutlookTest, aFamilyOfTwelveAndAnEmptyOneAreServed) {
    OutlookInput input = inputOf({}, {});
    EXPECT_EQ(outlook(input).days.size(), 7);
    QList<MemberId> all;
    for (int id = 1; id <= 12; ++id) {
        input.demands.append(demand(id, QString::number(id), 900));
        all.append(MemberId{id});
    }
    for (int day = 0; day < 7; ++day)
        input.sources.append(cooking(QString::number(day), 12 * 900.0, day, day + 3, all));
    const Outlook result = outlook(input);
    EXPECT_TRUE(result.findings.isEmpty());
    EXPECT_NEAR(result.days[6].served.toMillilitres(), 12 * 900.0, rounding);
}
