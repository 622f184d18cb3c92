#include "store/belonging.h"
#include "store/records.h"
#include "store/removal.h"
#include "store/week_repository.h"
#include "store/week_rows.h"

#include <QCoreApplication>
#include <QHash>

// Weeks that are kept under a name.

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekRepository)
};

/// Positions that are given again unchanged leave no change behind.
void setPlacements(Database& database, WeekTemplateId kept,
                   const QList<week::TemplatePlacement>& placements) {
    run(database, QStringLiteral("DELETE FROM week_template_placement WHERE week_template_id = ?"),
        kept);
    for (qint64 position = 0; position < placements.size(); ++position) {
        const week::TemplatePlacement& placement = placements.at(position);
        insertRow(database, "week_template_placement"_L1,
                  {{"week_template_id"_L1, kept},
                   {"position"_L1, position},
                   {"day"_L1, placement.day},
                   {"pot_id"_L1, placement.pot},
                   {"start_minute"_L1, minuteOf(placement.start)}});
    }
}

std::optional<FamilyId> ownerOf(Database& database, WeekTemplateId kept) {
    Statement find =
        database.statement(QStringLiteral("SELECT family_id FROM week_template WHERE id = ?"));
    if (!find.with(kept).next())
        return std::nullopt;
    return find.id<FamilyId>("family_id"_L1);
}
} // namespace

QList<week::WeekTemplate> WeekRepository::templates(FamilyId family) const {
    QList<week::WeekTemplate> templates =
        readAll(m_database,
                QStringLiteral("SELECT * FROM week_template WHERE family_id = ? "
                               "ORDER BY id"),
                readWeekTemplate, family);
    QHash<WeekTemplateId, QList<week::TemplatePlacement>> placements;
    Statement rows = m_database.statement(
        QStringLiteral("SELECT placement.* FROM week_template AS kept "
                       "JOIN week_template_placement AS placement "
                       "ON placement.week_template_id = kept.id WHERE kept.family_id = ? "
                       "ORDER BY placement.week_template_id, placement.position"));
    rows.with(family);
    while (rows.next())
        placements[rows.id<WeekTemplateId>("week_template_id"_L1)].append(
            readTemplatePlacement(rows));
    for (week::WeekTemplate& kept : templates)
        kept.placements = placements.value(kept.id);
    sortByName(templates);
    return templates;
}

Outcome WeekRepository::checkTemplate(const week::WeekTemplate& kept) const {
    if (const Outcome checked = week::check(kept); !checked)
        return checked;
    const Belonging belonging(m_database);
    if (const Result<QDate> today = belonging.todayOf(kept.family, m_clock); !today)
        return passOn(today);
    for (const week::TemplatePlacement& placement : kept.placements)
        if (const Outcome use = belonging.mayUse(kept.family, placement.pot); !use)
            return use;
    if (nameIsTaken(templates(kept.family), kept))
        return problem(Problem::Kind::Refused,
                       Words::tr("A week \"%1\" is kept already; choose another name.")
                           .arg(kept.name.simplified()),
                       QStringLiteral("name"));
    return {};
}

Result<WeekTemplateId> WeekRepository::addTemplate(Action&, const week::WeekTemplate& kept) {
    week::WeekTemplate added = kept;
    added.id = {};
    if (const Outcome checked = checkTemplate(added); !checked)
        return passOn(checked);
    const WeekTemplateId id{
        insertRow(m_database, "week_template"_L1,
                  {{"family_id"_L1, added.family}, {"name"_L1, added.name.simplified()}})};
    setPlacements(m_database, id, added.placements);
    return id;
}

Outcome WeekRepository::changeTemplate(Action&, const week::WeekTemplate& kept) {
    const std::optional<FamilyId> before = ownerOf(m_database, kept.id);
    if (!before)
        return noSuchRecord();
    if (*before != kept.family)
        return problem(Problem::Kind::Refused,
                       Words::tr("A week stays with the family that it is kept for; keep it anew "
                                 "for the other family."),
                       QStringLiteral("family"));
    if (const Outcome checked = checkTemplate(kept); !checked)
        return checked;
    updateRow(m_database, "week_template"_L1, kept.id.value, {{"name"_L1, kept.name.simplified()}});
    setPlacements(m_database, kept.id, kept.placements);
    return {};
}

Outcome WeekRepository::removeTemplate(Action&, WeekTemplateId kept) {
    if (!removeWeekTemplateRows(m_database, kept))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
