#include "store/verify.h"

#include "store/climb_rows.h"
#include "store/database.h"
#include "store/history_rows.h"
#include "store/store_error.h"
#include "store/transaction.h"
#include "store/workbook.h"

#include <QCoreApplication>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Verify)
};

Finding finding(Finding::Severity severity, const QString& code, const QString& text,
                const QString& why, const QString& field = {}) {
    Finding made;
    made.severity = severity;
    made.code = code;
    made.text = text;
    made.why = why;
    made.field = field;
    return made;
}

void checkFile(Database& database, Findings& findings) {
    Statement rows = database.statement(QStringLiteral("PRAGMA integrity_check"));
    while (rows.next())
        if (const QString line = rows.text("integrity_check"_L1); line != u"ok")
            findings.append(finding(Finding::Severity::Stop, QStringLiteral("file-damaged"),
                                    Words::tr("The file is damaged; go back to a backup."), line));
}

void checkReferences(Database& database, Findings& findings) {
    Statement rows = database.statement(QStringLiteral("PRAGMA foreign_key_check"));
    while (rows.next()) {
        const QString row =
            rows.isNull("rowid"_L1) ? QString() : QString::number(rows.whole("rowid"_L1));
        findings.append(finding(
            Finding::Severity::Stop, QStringLiteral("lost-reference"),
            Words::tr("A record names another one that is not there; go back to a backup."),
            Words::tr("%1 names a missing %2").arg(rows.text("table"_L1), rows.text("parent"_L1)),
            rows.text("table"_L1) + QLatin1Char('/') + row));
    }
}

void checkHistory(Database& database, Findings& findings) {
    QList<qint64> entries;
    {
        Statement rows = database.statement(QStringLiteral("SELECT id FROM history ORDER BY id"));
        while (rows.next())
            entries.append(rows.whole("id"_L1));
    }
    for (const qint64 entry : entries)
        if (!isSound(database, entry))
            findings.append(
                finding(Finding::Severity::Caution, QStringLiteral("history-damaged"),
                        Words::tr("A recorded change is damaged and cannot be undone; the records "
                                  "themselves are not touched by this."),
                        {}, QStringLiteral("history/%1").arg(entry)));
}

/// Collects what the checks of single records say.
class RecordChecks {
public:
    RecordChecks(Findings& findings, const kitchen::Catalogue& catalogue)
        : m_findings(findings), m_catalogue(catalogue) {}

    void practice(PracticeRepository& repository) {
        note("practice"_L1, 1, people::check(repository.practice()));
        for (const people::Phase& phase : repository.phases())
            note("phase"_L1, phase.id.value, people::check(phase));
        note("house_rules"_L1, 1, intake::check(repository.houseRules()));
        for (const intake::Symptom& symptom : repository.symptoms())
            note("symptom"_L1, symptom.id.value, intake::check(symptom));
        for (const intake::LadderTemplate& ladderTemplate : repository.ladderTemplates())
            note("ladder_template"_L1, ladderTemplate.id.value, intake::check(ladderTemplate));
        for (const casebook::HandoutTemplate& kept : repository.handoutTemplates())
            note("handout_template"_L1, kept.id.value, casebook::check(kept));
        for (const casebook::LabelStock& stock : repository.labelStocks())
            note("label_stock"_L1, stock.id.value, casebook::check(stock));
        const QHash<QString, double> prices = repository.prices();
        for (const auto& [item, perKilogram] : prices.asKeyValueRange())
            note(QStringLiteral("price/%1").arg(item), checkPrice(item, perKilogram, m_catalogue));
    }

    void pots(const QList<kitchen::Pot>& pots, FamilyId owner) {
        for (const kitchen::Pot& pot : pots)
            if (pot.family == owner)
                note("pot"_L1, pot.id.value, kitchen::check(pot, m_catalogue));
    }

    void family(const casebook::FamilyRecords& records, QDate today) {
        note("family"_L1, records.family.id.value, people::check(records.family, today));
        for (const auto& member : records.members)
            note("member"_L1, member.id.value, people::check(member, today));
        for (const auto& tolerance : records.tolerances)
            note("tolerance_note"_L1, tolerance.id.value, people::check(tolerance, today));
        for (const auto& caution : records.cautions)
            note("caution"_L1, caution.id.value, people::check(caution));
        for (const auto& plan : records.retryPlans)
            note("retry_plan"_L1, plan.id.value, people::check(plan, today));
        for (const auto& observation : records.observations)
            note("observation"_L1, observation.id.value, people::check(observation, today));
        for (const auto& visit : records.notes)
            note("visit_note"_L1, visit.id.value, checkNote(visit, today));
        kitchen(records, today);
        climb(records, today);
    }

private:
    void kitchen(const casebook::FamilyRecords& records, QDate today) {
        for (const auto& vessel : records.vessels)
            note("vessel"_L1, vessel.id.value, kitchen::check(vessel));
        for (const auto& container : records.containers)
            note("container"_L1, container.id.value, kitchen::check(container));
        pots(records.pots, records.family.id);
        for (const auto& batch : records.batches)
            note("batch"_L1, batch.id.value, kitchen::check(batch, today));
        for (const auto& lot : records.lots)
            note("lot"_L1, lot.id.value, kitchen::check(lot));
        weeks(records);
    }

    void weeks(const casebook::FamilyRecords& records) {
        for (const auto& usual : records.usualHours)
            note("usual_hours"_L1, records.family.id.value, week::check(usual));
        for (const auto& plan : records.weeks)
            note("week_plan"_L1, plan.id.value, week::check(plan));
        for (const auto& kept : records.weekTemplates)
            note("week_template"_L1, kept.id.value, week::check(kept));
    }

    void climb(const casebook::FamilyRecords& records, QDate today) {
        for (const auto& target : records.targets)
            note("target"_L1, target.id.value, intake::check(target));
        for (const auto& ladder : records.ladders)
            note("ladder"_L1, ladder.id.value, intake::check(ladder));
        for (const auto& decision : records.decisions)
            note("decision"_L1, decision.id.value, checkDecision(decision, today));
        for (const auto& entry : records.entries)
            note("intake_entry"_L1, entry.id.value, intake::check(entry, today));
        for (const auto& reaction : records.reactions)
            note("reaction"_L1, reaction.id.value, intake::check(reaction, today));
    }

    void note(QLatin1StringView table, qint64 id, const Outcome& outcome) {
        note(QStringLiteral("%1/%2").arg(table).arg(id), outcome);
    }

    void note(const QString& row, const Outcome& outcome) {
        if (!outcome)
            m_findings.append(finding(Finding::Severity::Caution,
                                      QStringLiteral("record-not-valid"), outcome.error().sentence,
                                      Words::tr("The record does not pass its own check."), row));
    }

    Findings& m_findings;
    const kitchen::Catalogue& m_catalogue;
};

void checkRecords(Workbook& workbook, const kitchen::Catalogue& catalogue, const Clock& clock,
                  Findings& findings) {
    RecordChecks checks(findings, catalogue);
    checks.practice(workbook.practice());
    checks.pots(workbook.pots().pots(FamilyId{}), FamilyId{});
    for (const people::Family& family : workbook.families().families())
        if (const auto records = workbook.records(family.id))
            checks.family(*records, clock.today(family.zone));
}
} // namespace

Findings verifyWorkbook(Workbook& workbook, Database& database, const kitchen::Catalogue& catalogue,
                        const Clock& clock) {
    Findings findings;
    try {
        const Transaction view(database, Transaction::Kind::Read);
        checkFile(database, findings);
        checkReferences(database, findings);
        checkHistory(database, findings);
        checkRecords(workbook, catalogue, clock, findings);
        findings += checkClimbs(database);
    } catch (const StoreError& error) {
        findings.append(finding(Finding::Severity::Stop, QStringLiteral("file-damaged"),
                                error.toProblem().sentence, QString::fromUtf8(error.what())));
    }
    return findings;
}

} // namespace ladlework::store
