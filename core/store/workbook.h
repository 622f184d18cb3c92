#pragma once

#include "casebook/family_needs.h"
#include "casebook/family_records.h"
#include "foundation/clock.h"
#include "foundation/result.h"
#include "store/action.h"
#include "store/climb_repository.h"
#include "store/family_repository.h"
#include "store/handout_repository.h"
#include "store/history.h"
#include "store/log_repository.h"
#include "store/note_repository.h"
#include "store/opening.h"
#include "store/pot_repository.h"
#include "store/practice_repository.h"
#include "store/week_repository.h"

#include <QObject>
#include <functional>
#include <memory>

namespace ladlework::store {

class Database;

/// One workbook: a SQLite file that holds a practice. All reading goes through its repositories,
/// all writing through act(). Reads throw StoreError when the disk or the file fails under them;
/// what people do wrong comes back as a Problem. One thread: the one that opened it.
class Workbook : public QObject {
    Q_OBJECT
public:
    /// Makes a new workbook (mode 0600) with the shipped phases and lets `fill` write into it, in
    /// one transaction that is no history entry: there is nothing before it to go back to. The
    /// file appears whole or not at all; an existing file is Refused.
    static Result<std::unique_ptr<Workbook>>
    create(const QString& path, const Clock& clock,
           const std::function<Outcome(Action&, Workbook&)>& fill = {});

    /// Opens a workbook and migrates it when it is of an older schema (after a backup beside it).
    /// Foreign, Newer, Damaged, ReadOnly-with-migration-due: a Problem, and the file is left byte
    /// for byte as it was. A file or folder that cannot be written opens read-only.
    /// Asked ToRead it never locks, mends or migrates: it is read-only, and Refused when it is of
    /// an older schema or was not closed properly.
    static Result<std::unique_ptr<Workbook>> open(const QString& path, const Clock& clock,
                                                  Opening opening = Opening::ToWrite);

    ~Workbook() override;
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;

    [[nodiscard]] QString path() const;
    /// Empty while it can be written; else the sentence that says why not.
    [[nodiscard]] QString readOnlyReason() const;

    /// Does one user action: `work` in one transaction, recorded as one history entry with this
    /// sentence ("Changed Ana's target to 4-6 cups"). When `work` gives a Problem or throws,
    /// nothing is written. An action that changes nothing leaves no entry. Emits changed() after;
    /// what a listener throws does not come out here (the action is done), but is thrown again from
    /// the event loop.
    Outcome act(const QString& sentence, const std::function<Outcome(Action&)>& work);

    /// Takes back the last action, or does the last undone one again; also across restarts.
    /// Refused when there is none. Emits changed().
    Outcome undo();
    Outcome redo();
    [[nodiscard]] const History& history() const;

    [[nodiscard]] PracticeRepository& practice();
    [[nodiscard]] FamilyRepository& families();
    [[nodiscard]] ClimbRepository& climbs();
    [[nodiscard]] PotRepository& pots();
    [[nodiscard]] LogRepository& log();
    [[nodiscard]] WeekRepository& weeks();
    [[nodiscard]] NoteRepository& notes();
    [[nodiscard]] HandoutRepository& handouts();

    /// Everything of one family; NotFound when there is no such family.
    [[nodiscard]] Result<casebook::FamilyRecords> records(FamilyId family);

    /// Of every family what its needs follow from, in one view and a few queries for all of them.
    [[nodiscard]] QHash<FamilyId, casebook::FamilyExcerpt> excerpts();

    /// integrity_check, foreign_key_check, that what is kept of each climb follows from the log,
    /// and that every stored record passes its check(): one finding for each thing that is wrong;
    /// empty when all is well.
    [[nodiscard]] Findings verify();

Q_SIGNALS:
    void changed();

private:
    struct Parts;
    explicit Workbook(std::unique_ptr<Parts> parts);
    Outcome write(const std::function<Outcome(Database&)>& work);
    void tellOfChange();
    std::unique_ptr<Parts> m_parts;
};

} // namespace ladlework::store
