#include "store/workbook.h"

#include "store/action_boundary.h"
#include "store/changeset.h"
#include "store/climb_rows.h"
#include "store/excerpt_reader.h"
#include "store/history_rows.h"
#include "store/store_error.h"
#include "store/transaction.h"
#include "store/verify.h"
#include "store/workbook_file.h"

#include <exception>
#include <stdexcept>

namespace ladlework::store {

namespace {
/// The phases that a new workbook starts with.
Outcome addShippedPhases(Action& action, PracticeRepository& practice) {
    const Result<std::vector<kitchen::ShippedPhase>> shipped = kitchen::shippedPhases();
    if (!shipped)
        return passOn(shipped);
    for (const kitchen::ShippedPhase& one : *shipped) {
        const people::Phase phase{{}, one.name, one.position, one.rules};
        if (const Result<PhaseId> added = practice.addPhase(action, phase); !added)
            return passOn(added);
    }
    return {};
}

/// After a migration, or after another program has changed the records. What is kept of the climbs
/// only makes reading quicker, so a full disk is no reason not to open.
void keepClimbs(Database& database) {
    try {
        if (allClimbsKept(database))
            return;
        Transaction transaction(database, Transaction::Kind::Write);
        makeMissingClimbs(database);
        transaction.commit();
    } catch (const StoreError& error) {
        qWarning("what is kept of the climbs could not be made: %s", error.what());
    }
}
} // namespace

struct Workbook::Parts {
    Parts(OpenFile opened, const Clock& theClock, kitchen::Catalogue theCatalogue)
        : file(std::move(opened)), clock(theClock), catalogue(std::move(theCatalogue)) {}

    OpenFile file;
    const Clock& clock;
    const kitchen::Catalogue catalogue;
    History history{*file.database};
    PracticeRepository practice{*file.database, clock, catalogue};
    FamilyRepository families{*file.database, clock, catalogue};
    ClimbRepository climbs{*file.database, clock};
    PotRepository pots{*file.database, clock, catalogue};
    LogRepository log{*file.database, clock};
    WeekRepository weeks{*file.database, clock};
    NoteRepository notes{*file.database, clock};
    HandoutRepository handouts{*file.database, clock};
};

Workbook::Workbook(std::unique_ptr<Parts> parts) : m_parts(std::move(parts)) {}

Workbook::~Workbook() = default;

Result<std::unique_ptr<Workbook>>
Workbook::create(const QString& path, const Clock& clock,
                 const std::function<Outcome(Action&, Workbook&)>& fill) {
    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    if (!catalogue)
        return passOn(catalogue);
    const auto fillFile = [&](OpenFile file) -> Outcome {
        Workbook workbook(std::make_unique<Parts>(std::move(file), clock, *catalogue));
        Action action;
        Transaction transaction(*workbook.m_parts->file.database, Transaction::Kind::Write);
        PracticeRepository& practice = workbook.practice();
        if (const Outcome set = practice.setPractice(action, {}); !set)
            return set;
        if (const Outcome set = practice.setHouseRules(action, {}); !set)
            return set;
        if (const Outcome added = addShippedPhases(action, practice); !added)
            return added;
        for (const intake::Symptom& symptom : intake::shippedSymptoms())
            if (const Result<SymptomId> added = practice.addSymptom(action, symptom); !added)
                return passOn(added);
        if (fill)
            if (const Outcome filled = fill(action, workbook); !filled)
                return filled;
        makeMissingClimbs(*workbook.m_parts->file.database);
        transaction.commit();
        return {};
    };
    if (const Outcome made = createWorkbookFile(path, shippedMigrations(), fillFile); !made)
        return passOn(made);
    return open(path, clock);
}

Result<std::unique_ptr<Workbook>> Workbook::open(const QString& path, const Clock& clock,
                                                 Opening opening) {
    Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    if (!catalogue)
        return passOn(catalogue);
    Result<OpenFile> file = openWorkbookFile(path, shippedMigrations(), clock, opening);
    if (!file)
        return passOn(file);
    if (file->readOnlyReason.isEmpty())
        keepClimbs(*file->database);
    auto parts = std::make_unique<Parts>(std::move(*file), clock, std::move(*catalogue));
    return std::unique_ptr<Workbook>(new Workbook(std::move(parts)));
}

QString Workbook::path() const {
    return m_parts->file.path;
}

QString Workbook::readOnlyReason() const {
    return m_parts->file.readOnlyReason;
}

Outcome Workbook::act(const QString& sentence, const std::function<Outcome(Action&)>& work) {
    return write([&](Database& database) -> Outcome {
        Action action;
        QByteArray changes;
        {
            const ChangeRecorder recorder(database);
            if (const Outcome done = work(action); !done)
                return done;
            changes = recorder.changeset();
        }
        if (!changes.isEmpty())
            addHistory(database, m_parts->clock.nowUtc(), sentence, changes);
        return {};
    });
}

Outcome Workbook::undo() {
    return write([this](Database& database) -> Outcome {
        const std::optional<HistoryEntry> entry = m_parts->history.nextUndo();
        if (!entry)
            return problem(Problem::Kind::Refused, tr("There is nothing to undo."));
        if (!applyChangeset(database, inverted(changesetOf(database, entry->id))))
            return problem(Problem::Kind::Damaged,
                           tr("\"%1\" cannot be undone: something other than this program has "
                              "changed the workbook since. Nothing was changed.")
                               .arg(entry->sentence));
        setUndone(database, entry->id, true);
        return {};
    });
}

Outcome Workbook::redo() {
    return write([this](Database& database) -> Outcome {
        const std::optional<HistoryEntry> entry = m_parts->history.nextRedo();
        if (!entry)
            return problem(Problem::Kind::Refused, tr("There is nothing to redo."));
        if (!applyChangeset(database, changesetOf(database, entry->id)))
            return problem(Problem::Kind::Damaged,
                           tr("\"%1\" cannot be done again: something other than this program has "
                              "changed the workbook since. Nothing was changed.")
                               .arg(entry->sentence));
        setUndone(database, entry->id, false);
        return {};
    });
}

Outcome Workbook::write(const std::function<Outcome(Database&)>& work) {
    if (!readOnlyReason().isEmpty())
        return problem(Problem::Kind::ReadOnly, readOnlyReason());
    Database& database = *m_parts->file.database;
    const Outcome outcome = atBoundary([&]() -> Outcome {
        if (database.inTransaction())
            throw std::logic_error("an action within an action");
        Transaction transaction(database, Transaction::Kind::Write);
        if (const Outcome done = work(database); !done)
            return done;
        makeMissingClimbs(database);
        transaction.commit();
        return {};
    });
    if (outcome)
        tellOfChange();
    return outcome;
}

void Workbook::tellOfChange() {
    try {
        Q_EMIT changed();
    } catch (...) {
        // The change is on the disk: whoever shows it has failed, not the action. The event loop's
        // own barrier tells of it.
        QMetaObject::invokeMethod(
            this, [broken = std::current_exception()] { std::rethrow_exception(broken); },
            Qt::QueuedConnection);
    }
}

const History& Workbook::history() const {
    return m_parts->history;
}

PracticeRepository& Workbook::practice() {
    return m_parts->practice;
}

FamilyRepository& Workbook::families() {
    return m_parts->families;
}

ClimbRepository& Workbook::climbs() {
    return m_parts->climbs;
}

PotRepository& Workbook::pots() {
    return m_parts->pots;
}

LogRepository& Workbook::log() {
    return m_parts->log;
}

WeekRepository& Workbook::weeks() {
    return m_parts->weeks;
}

NoteRepository& Workbook::notes() {
    return m_parts->notes;
}

HandoutRepository& Workbook::handouts() {
    return m_parts->handouts;
}

Result<casebook::FamilyRecords> Workbook::records(FamilyId family) {
    // One view over all queries, also while another window writes.
    const Transaction view(*m_parts->file.database, Transaction::Kind::Read);
    const std::optional<people::Family> found = m_parts->families.family(family);
    if (!found)
        return problem(Problem::Kind::NotFound,
                       tr("This family is no longer in the workbook; choose another one."));
    casebook::FamilyRecords records;
    records.practice = m_parts->practice.practice();
    records.phases = m_parts->practice.phases();
    records.houseRules = m_parts->practice.houseRules();
    records.ladderTemplates = m_parts->practice.ladderTemplates();
    records.symptoms = m_parts->practice.symptoms();
    records.prices = m_parts->practice.prices();
    records.handoutTemplates = m_parts->practice.handoutTemplates();
    records.labelStocks = m_parts->practice.labelStocks();
    records.family = *found;
    records.usualHours = m_parts->families.usualHours(family);
    records.members = m_parts->families.members(family);
    records.tolerances = m_parts->families.tolerances(family);
    records.cautions = m_parts->families.cautions(family);
    records.retryPlans = m_parts->families.retryPlans(family);
    records.observations = m_parts->families.observations(family);
    records.targets = m_parts->climbs.targets(family);
    records.ladders = m_parts->climbs.ladders(family);
    records.decisions = m_parts->climbs.decisions(family);
    records.entries = m_parts->log.entries(family);
    records.reactions = m_parts->log.reactions(family);
    records.vessels = m_parts->families.vessels(family);
    records.containers = m_parts->families.containers(family);
    records.pots = m_parts->pots.pots(family);
    records.batches = m_parts->pots.batches(family);
    records.lots = m_parts->pots.lots(family);
    records.weeks = m_parts->weeks.plans(family);
    records.weekTemplates = m_parts->weeks.templates(family);
    records.notes = m_parts->notes.notes(family);
    records.handouts = m_parts->handouts.handouts(family);
    return records;
}

QHash<FamilyId, casebook::FamilyExcerpt> Workbook::excerpts() {
    const Transaction view(*m_parts->file.database, Transaction::Kind::Read);
    const QDateTime now = m_parts->clock.nowUtc();
    return readExcerpts(*m_parts->file.database, now,
                        m_parts->weeks.plansFrom(firstWeekOfExcerpts(now)));
}

Findings Workbook::verify() {
    return verifyWorkbook(*this, *m_parts->file.database, m_parts->catalogue, m_parts->clock);
}

} // namespace ladlework::store
