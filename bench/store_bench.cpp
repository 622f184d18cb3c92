#include "casebook/family_needs.h"
#include "exchange/invented_practice.h"
#include "goals.h"
#include "store/database.h"
#include "store/workbook.h"

#include <QCommandLineParser>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <cstdlib>
#include <iostream>
#include <sqlite3.h>
#include <stdexcept>

// What the first look of the day and one entry of the log cost, on the disk that holds the folder
// for temporary files. A goal that is missed ends the program with 1.
namespace ladlework::bench {

using quantity::Volume;

namespace {
constexpr double nanosecondsPerMillisecond = 1e6;
constexpr int askedFamilies = 500;

struct Sizes {
    int families = askedFamilies;
    int tenYearFamilies = 50;
    int looks = 5;
    int entries = 40;
    bool whole = false;
};

/// Stops the program: a benchmark that could not do its work has no figures.
template <class Value>
Value must(Result<Value> result) {
    if (!result)
        throw std::runtime_error(toLine(result.error()).toStdString());
    return std::move(*result);
}

void must(const Outcome& outcome) {
    if (!outcome)
        throw std::runtime_error(toLine(outcome.error()).toStdString());
}

double millisecondsOf(const std::function<void()>& work) {
    QElapsedTimer timer;
    timer.start();
    work();
    return static_cast<double>(timer.nsecsElapsed()) / nanosecondsPerMillisecond;
}

double median(std::vector<double> times) {
    std::ranges::sort(times);
    return times.at(times.size() / 2);
}

using Needs = QHash<FamilyId, casebook::FamilyNeeds>;

casebook::FamilyNeeds wholeNeeds(store::Workbook& workbook, FamilyId family,
                                 const kitchen::Catalogue& catalogue, QDate today) {
    return casebook::needsOf(casebook::Casebook(must(workbook.records(family)), catalogue, today));
}

/// What the first page of the day shows, from all records of each family.
Needs throughCasebooks(store::Workbook& workbook, const kitchen::Catalogue& catalogue,
                       const Clock& clock) {
    Needs needs;
    for (const people::Family& family : workbook.families().families())
        needs.insert(family.id,
                     wholeNeeds(workbook, family.id, catalogue, clock.today(family.zone)));
    return needs;
}

/// The same as the program reads it at the start; how many families took their whole records is
/// counted.
Needs throughExcerpts(store::Workbook& workbook, const kitchen::Catalogue& catalogue,
                      const Clock& clock, int& whole) {
    Needs needs;
    whole = 0;
    QHash<FamilyId, casebook::FamilyExcerpt> excerpts = workbook.excerpts();
    for (const people::Family& family : workbook.families().families()) {
        const QDate today = clock.today(family.zone);
        std::optional<casebook::FamilyNeeds> found =
            casebook::needsOf(excerpts.take(family.id), catalogue, today);
        if (!found) {
            ++whole;
            found = wholeNeeds(workbook, family.id, catalogue, today);
        }
        needs.insert(family.id, *std::move(found));
    }
    return needs;
}

/// A practice in a file of its own, made for this run.
class Practice {
public:
    Practice(const QString& folder, int families, int years, const kitchen::Catalogue& catalogue,
             const Clock& clock)
        : m_path(QStringLiteral("%1/%2-families-%3-years.ladlework")
                     .arg(folder)
                     .arg(families)
                     .arg(years)),
          m_catalogue(catalogue), m_clock(clock) {
        std::cout << families << " families, " << years << " year(s): made in " << std::flush;
        exchange::InventedSize size;
        size.families = families;
        size.years = years;
        const double made = millisecondsOf(
            [&] { must(exchange::createInventedPractice(m_path, size, m_catalogue, m_clock)); });
        std::cout << made / 1000 << " s, " << QFile(m_path).size() / 1'000'000 << " MB\n";
    }

    [[nodiscard]] const QString& path() const { return m_path; }

    /// The least disturbed of some looks, each into a workbook that was opened for it.
    double look(int times, const std::function<void(store::Workbook&)>& look) const {
        std::vector<double> looks;
        std::vector<double> openings;
        for (int time = 0; time < times; ++time) {
            std::unique_ptr<store::Workbook> workbook;
            openings.push_back(
                millisecondsOf([&] { workbook = must(store::Workbook::open(m_path, m_clock)); }));
            looks.push_back(millisecondsOf([&] { look(*workbook); }));
        }
        std::cout << "  opened and checked in " << median(openings) << " ms; looks:";
        for (const double taken : looks)
            std::cout << ' ' << taken;
        std::cout << " ms\n";
        return std::ranges::min(looks);
    }

private:
    QString m_path;
    const kitchen::Catalogue& m_catalogue;
    const Clock& m_clock;
};

/// The same row as a log entry writes, through SQLite alone.
class BareInsert {
public:
    /// Works on a copy of the file without its triggers, opened with the program's own settings.
    BareInsert(const QString& original, const QString& copy)
        : m_database(copied(original, copy), store::Database::Access::ReadWrite) {
        QStringList triggers;
        {
            store::Statement rows = m_database.statement(
                QStringLiteral("SELECT name FROM sqlite_schema WHERE type = 'trigger'"));
            while (rows.next())
                triggers.append(rows.text(QLatin1StringView("name")));
        }
        for (const QString& trigger : triggers)
            m_database.script(QStringLiteral("DROP TRIGGER ") + trigger);
        require(sqlite3_prepare_v2(m_database.handle(),
                                   "INSERT INTO intake_entry (member_id, day, drunk_ml, pot_id, "
                                   "lot_id, note, entered_at_utc) VALUES (?1, ?2, ?3, NULL, NULL, "
                                   "'', '2026-01-01T12:00:00.000Z')",
                                   -1, &m_insert, nullptr));
    }
    ~BareInsert() { sqlite3_finalize(m_insert); }
    BareInsert(const BareInsert&) = delete;
    BareInsert& operator=(const BareInsert&) = delete;

    double insert(const intake::IntakeEntry& entry) {
        const QByteArray day = entry.day.toString(Qt::ISODate).toUtf8();
        return millisecondsOf([&] {
            require(sqlite3_bind_int64(m_insert, 1, entry.member.value));
            require(sqlite3_bind_text(m_insert, 2, day.constData(), -1, SQLITE_STATIC));
            require(sqlite3_bind_double(m_insert, 3, entry.drunk.toMillilitres()));
            if (sqlite3_step(m_insert) != SQLITE_DONE)
                throw std::runtime_error("the bare insert failed");
            require(sqlite3_reset(m_insert));
        });
    }

private:
    static QString copied(const QString& original, const QString& copy) {
        if (!QFile::copy(original, copy))
            throw std::runtime_error("the workbook cannot be copied");
        return copy;
    }
    static void require(int code) {
        if (code != SQLITE_OK)
            throw std::runtime_error(sqlite3_errstr(code));
    }

    store::Database m_database;
    sqlite3_stmt* m_insert = nullptr;
};

/// What an entry of today costs beyond the bare insert, in the middle of several taken in turns.
double entryBeyondBare(const QString& path, const Clock& clock, int times) {
    BareInsert bare(path, path + QStringLiteral(".bare"));
    const std::unique_ptr<store::Workbook> workbook = must(store::Workbook::open(path, clock));
    const people::Family family = workbook->families().families().first();
    intake::IntakeEntry entry;
    entry.member = workbook->climbs().ladders(family.id).first().member;
    entry.day = clock.today(family.zone);
    entry.drunk = Volume::fromMillilitres(200);
    std::vector<double> acts;
    std::vector<double> inserts;
    for (int time = 0; time < times; ++time) {
        inserts.push_back(bare.insert(entry));
        acts.push_back(millisecondsOf([&] {
            must(workbook->act(QStringLiteral("Logged an entry"), [&](store::Action& action) {
                return workbook->log().addEntry(action, entry).map([](IntakeId) {});
            }));
        }));
    }
    const double beyond = median(acts) - median(inserts);
    std::cout << "  an entry of a log of " << workbook->log().entries(family.id).size()
              << " entries (" << times << " times): " << median(acts) << " ms; the bare insert "
              << median(inserts) << " ms; beyond it " << beyond << " ms\n";
    return beyond;
}

/// Milliseconds of the program's look; with --whole both ways are held against each other.
double lookAt(const Practice& practice, const Sizes& sizes, const kitchen::Catalogue& catalogue,
              const Clock& clock) {
    Needs needs;
    int whole = 0;
    const double look = practice.look(sizes.looks, [&](store::Workbook& workbook) {
        needs = throughExcerpts(workbook, catalogue, clock, whole);
    });
    std::cout << "  families that took their whole records: " << whole << "\n";
    if (!sizes.whole)
        return look;
    std::cout << "  through whole casebooks:\n";
    practice.look(1, [&](store::Workbook& workbook) {
        if (throughCasebooks(workbook, catalogue, clock) != needs)
            throw std::runtime_error("the two ways do not agree");
    });
    return look;
}

Sizes sizesFrom(const QStringList& arguments) {
    QCommandLineParser parser;
    const QCommandLineOption families(QStringLiteral("families"), QString(), QStringLiteral("n"),
                                      QString::number(askedFamilies));
    const QCommandLineOption tenYears(QStringLiteral("ten-year-families"), QString(),
                                      QStringLiteral("n"), QStringLiteral("50"));
    const QCommandLineOption whole(QStringLiteral("whole"));
    parser.addOptions({families, tenYears, whole});
    parser.process(arguments);
    Sizes sizes;
    sizes.families = parser.value(families).toInt();
    sizes.tenYearFamilies = parser.value(tenYears).toInt();
    sizes.whole = parser.isSet(whole);
    return sizes;
}

int run(const QStringList& arguments) {
    const Sizes sizes = sizesFrom(arguments);
    const QTemporaryDir folder;
    const kitchen::Catalogue catalogue = must(kitchen::Catalogue::load());
    const SystemClock clock;
    std::vector<Goal> goals;
    for (const auto& [families, years] :
         {std::pair(sizes.families, 1), std::pair(sizes.tenYearFamilies, 10)}) {
        const Practice practice(folder.path(), families, years, catalogue, clock);
        const double look = lookAt(practice, sizes, catalogue, clock);
        const std::string log = " after " + std::to_string(years) + " year(s)";
        goals.push_back({"the needs of 500 families" + log, look * askedFamilies / families, 150,
                         families == askedFamilies ? "ms" : "ms, scaled"});
        const double beyond = entryBeyondBare(practice.path(), clock, sizes.entries);
        goals.push_back({"an entry beyond the bare insert" + log, beyond, 20, "ms"});
    }
    return allMet(goals, std::cout) ? EXIT_SUCCESS : EXIT_FAILURE;
}
} // namespace

} // namespace ladlework::bench

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    try {
        return ladlework::bench::run(QCoreApplication::arguments());
    } catch (const std::exception& broken) {
        std::cerr << broken.what() << '\n';
        return EXIT_FAILURE;
    }
}
