#include "store/pot_repository.h"

#include "store/belonging.h"
#include "store/kitchen_rows.h"
#include "store/records.h"
#include "store/removal.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(PotRepository)
};

/// Positions that are given again unchanged leave no change behind.
void setContents(Database& database, PotId id, const kitchen::Pot& pot) {
    run(database, QStringLiteral("DELETE FROM pot_cut WHERE pot_id = ?"), id);
    run(database, QStringLiteral("DELETE FROM pot_extra WHERE pot_id = ?"), id);
    for (qint64 position = 0; position < pot.cuts.size(); ++position) {
        const kitchen::CutInPot& cut = pot.cuts.at(position);
        insertRow(database, "pot_cut"_L1,
                  {{"pot_id"_L1, id},
                   {"position"_L1, position},
                   {"cut"_L1, cut.cut},
                   {"mass_g"_L1, cut.mass.toGrams()},
                   {"raw"_L1, cut.raw}});
    }
    for (qint64 position = 0; position < pot.extras.size(); ++position) {
        const kitchen::ExtraInPot& extra = pot.extras.at(position);
        insertRow(database, "pot_extra"_L1,
                  {{"pot_id"_L1, id},
                   {"position"_L1, position},
                   {"item"_L1, extra.item},
                   {"mass_g"_L1, extra.mass.toGrams()}});
    }
}

template <class Item>
QHash<PotId, QList<Item>> contents(Database& database, QLatin1StringView table,
                                   Item (*read)(const Statement&), FamilyId family) {
    QHash<PotId, QList<Item>> items;
    Statement rows = database.statement(
        QStringLiteral("SELECT item.* FROM pot JOIN %1 AS item ON item.pot_id = pot.id "
                       "WHERE pot.family_id = ? OR pot.family_id IS NULL "
                       "ORDER BY item.pot_id, item.position")
            .arg(table));
    rows.with(family);
    while (rows.next())
        items[rows.id<PotId>("pot_id"_L1)].append(read(rows));
    return items;
}
} // namespace

QList<kitchen::Pot> PotRepository::pots(FamilyId family) const {
    QList<kitchen::Pot> pots =
        readAll(m_database,
                QStringLiteral("SELECT * FROM pot WHERE family_id = ? OR family_id IS NULL "
                               "ORDER BY id"),
                readPot, family);
    const auto cuts = contents(m_database, "pot_cut"_L1, readCut, family);
    const auto extras = contents(m_database, "pot_extra"_L1, readExtra, family);
    for (kitchen::Pot& pot : pots) {
        pot.cuts = cuts.value(pot.id);
        pot.extras = extras.value(pot.id);
    }
    sortByName(pots);
    return pots;
}

QList<kitchen::Batch> PotRepository::batches(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT * FROM batch WHERE family_id = ? ORDER BY day, id"),
                   readBatch, family);
}

QList<kitchen::Lot> PotRepository::lots(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT lot.* FROM batch JOIN lot ON lot.batch_id = batch.id "
                                  "WHERE batch.family_id = ? ORDER BY lot.use_by_day, lot.id"),
                   readLot, family);
}

Outcome PotRepository::checkPot(const kitchen::Pot& pot) const {
    const Belonging belonging(m_database);
    if (pot.family.isStored())
        if (const Result<QDate> today = belonging.todayOf(pot.family, m_clock); !today)
            return passOn(today);
    if (pot.vessel.isStored())
        if (const Outcome use = belonging.mayUse(pot.family, pot.vessel); !use)
            return use;
    if (pot.coolIn.isStored())
        if (const Outcome use = belonging.mayUse(pot.family, pot.coolIn); !use)
            return use;
    return kitchen::check(pot, m_catalogue);
}

Result<PotId> PotRepository::addPot(Action&, const kitchen::Pot& pot) {
    if (const Outcome checked = checkPot(pot); !checked)
        return passOn(checked);
    const PotId id{insertRow(m_database, "pot"_L1, fieldsOf(pot))};
    setContents(m_database, id, pot);
    return id;
}

Outcome PotRepository::changePot(Action&, const kitchen::Pot& pot) {
    const std::optional<FamilyId> before = Belonging(m_database).familyOf(pot.id);
    if (!before)
        return noSuchRecord();
    if (*before != pot.family && pot.family.isStored())
        return problem(Problem::Kind::Refused,
                       Words::tr("Others may be cooking this pot; copy it to make it this "
                                 "family's own."),
                       QStringLiteral("family"));
    if (const Outcome checked = checkPot(pot); !checked)
        return checked;
    updateRow(m_database, "pot"_L1, pot.id.value, fieldsOf(pot));
    setContents(m_database, pot.id, pot);
    return {};
}

Outcome PotRepository::notInUse(PotId pot) const {
    const auto dayIn = [this, pot](const QString& sql) -> QString {
        Statement find = m_database.statement(sql);
        return find.with(pot).next() ? QLocale().toString(find.day("day"_L1), QLocale::LongFormat)
                                     : QString();
    };
    QString day = dayIn(QStringLiteral("SELECT day FROM batch WHERE pot_id = ? ORDER BY day DESC"));
    if (!day.isEmpty())
        return problem(
            Problem::Kind::Refused,
            Words::tr("This pot was cooked on %1, so it stays; remove that batch first.").arg(day));
    day =
        dayIn(QStringLiteral("SELECT day FROM week_placement WHERE pot_id = ? ORDER BY day DESC"));
    if (!day.isEmpty())
        return problem(Problem::Kind::Refused,
                       Words::tr("This pot is planned for %1, so it stays; take it out of that "
                                 "week first.")
                           .arg(day));
    day = dayIn(QStringLiteral("SELECT day FROM intake_entry WHERE pot_id = ? ORDER BY day DESC"));
    if (!day.isEmpty())
        return problem(Problem::Kind::Refused,
                       Words::tr("The log of %1 names this pot, so it stays; change that entry "
                                 "first.")
                           .arg(day));
    Statement kept = m_database.statement(
        QStringLiteral("SELECT 1 FROM week_template_placement WHERE pot_id = ?"));
    // No name: a practice's pot may stand in a week of another family.
    if (kept.with(pot).next())
        return problem(Problem::Kind::Refused,
                       Words::tr("This pot stands in a week that is kept to be used again, so it "
                                 "stays; take it out of that week, or remove that week, first."));
    return {};
}

Outcome PotRepository::removePot(Action&, PotId pot) {
    if (const Outcome free = notInUse(pot); !free)
        return free;
    if (!removePotRows(m_database, pot))
        return noSuchRecord();
    return {};
}

Outcome PotRepository::checkBatch(const kitchen::Batch& batch) const {
    const Belonging belonging(m_database);
    const Result<QDate> today = belonging.todayOf(batch.family, m_clock);
    if (!today)
        return passOn(today);
    if (const Outcome use = belonging.mayUse(batch.family, batch.pot); !use)
        return use;
    if (batch.cooked.vessel.isStored())
        if (const Outcome use = belonging.mayUse(batch.family, batch.cooked.vessel); !use)
            return use;
    return kitchen::check(batch, *today);
}

Result<BatchId> PotRepository::addBatch(Action&, const kitchen::Batch& batch) {
    if (const Outcome checked = checkBatch(batch); !checked)
        return passOn(checked);
    return BatchId{insertRow(m_database, "batch"_L1, fieldsOf(batch))};
}

Outcome PotRepository::changeBatch(Action&, const kitchen::Batch& batch) {
    const std::optional<FamilyId> before = Belonging(m_database).familyOf(batch.id);
    if (!before)
        return noSuchRecord();
    if (*before != batch.family)
        return problem(Problem::Kind::Refused,
                       Words::tr("A batch stays with the family that cooked it."),
                       QStringLiteral("family"));
    if (const Outcome checked = checkBatch(batch); !checked)
        return checked;
    updateRow(m_database, "batch"_L1, batch.id.value, fieldsOf(batch));
    return {};
}

Outcome PotRepository::removeBatch(Action&, BatchId batch) {
    if (!removeBatchRows(m_database, batch))
        return noSuchRecord();
    return {};
}

Outcome PotRepository::checkLot(const kitchen::Lot& lot) const {
    if (!hasRow(m_database, "batch"_L1, lot.batch.value))
        return problem(Problem::Kind::NotFound,
                       Words::tr("This batch is not in the workbook; choose another one."),
                       QStringLiteral("batch"));
    return kitchen::check(lot);
}

Result<LotId> PotRepository::addLot(Action&, const kitchen::Lot& lot) {
    if (const Outcome checked = checkLot(lot); !checked)
        return passOn(checked);
    return LotId{insertRow(m_database, "lot"_L1, fieldsOf(lot))};
}

Outcome PotRepository::changeLot(Action&, const kitchen::Lot& lot) {
    const Belonging belonging(m_database);
    const std::optional<FamilyId> before = belonging.familyOf(lot.id);
    if (!before)
        return noSuchRecord();
    if (const Outcome checked = checkLot(lot); !checked)
        return checked;
    if (belonging.familyOf(lot.batch) != before)
        return problem(Problem::Kind::Refused,
                       Words::tr("A lot stays with the family that cooked it."),
                       QStringLiteral("batch"));
    updateRow(m_database, "lot"_L1, lot.id.value, fieldsOf(lot));
    return {};
}

Outcome PotRepository::removeLot(Action&, LotId lot) {
    if (!removeLotRows(m_database, lot))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
