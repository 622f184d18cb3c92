#include "store/belonging.h"
#include "store/family_repository.h"
#include "store/kitchen_rows.h"
#include "store/records.h"
#include "store/removal.h"
#include "store/week_rows.h"

#include <QCoreApplication>

// Vessels, containers and free hours: the kitchen of a family.

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(FamilyRepository)
};
} // namespace

QList<kitchen::Vessel> FamilyRepository::vessels(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT * FROM vessel WHERE family_id = ? ORDER BY id"),
                   readVessel, family);
}

Result<VesselId> FamilyRepository::addVessel(Action&, const kitchen::Vessel& vessel) {
    if (const Outcome checked = kitchen::check(vessel); !checked)
        return passOn(checked);
    if (const Result<QDate> today = Belonging(m_database).todayOf(vessel.family, m_clock); !today)
        return passOn(today);
    return VesselId{insertRow(m_database, "vessel"_L1, fieldsOf(vessel))};
}

Outcome FamilyRepository::changeVessel(Action&, const kitchen::Vessel& vessel) {
    if (const Outcome checked = kitchen::check(vessel); !checked)
        return checked;
    const std::optional<FamilyId> before = Belonging(m_database).familyOf(vessel.id);
    if (!before)
        return noSuchRecord();
    if (*before != vessel.family)
        return problem(Problem::Kind::Refused,
                       Words::tr("A vessel stays in the family it was entered for; enter it anew "
                                 "in the other family."),
                       QStringLiteral("family"));
    updateRow(m_database, "vessel"_L1, vessel.id.value, fieldsOf(vessel));
    return {};
}

Outcome FamilyRepository::removeVessel(Action&, VesselId vessel) {
    if (!removeVesselRows(m_database, vessel))
        return noSuchRecord();
    return {};
}

QList<kitchen::Container> FamilyRepository::containers(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT * FROM container WHERE family_id = ? ORDER BY id"),
                   readContainer, family);
}

Result<ContainerId> FamilyRepository::addContainer(Action&, const kitchen::Container& container) {
    if (const Outcome checked = kitchen::check(container); !checked)
        return passOn(checked);
    if (const Result<QDate> today = Belonging(m_database).todayOf(container.family, m_clock);
        !today)
        return passOn(today);
    return ContainerId{insertRow(m_database, "container"_L1, fieldsOf(container))};
}

Outcome FamilyRepository::changeContainer(Action&, const kitchen::Container& container) {
    if (const Outcome checked = kitchen::check(container); !checked)
        return checked;
    const std::optional<FamilyId> before = Belonging(m_database).familyOf(container.id);
    if (!before)
        return noSuchRecord();
    if (*before != container.family)
        return problem(Problem::Kind::Refused,
                       Words::tr("A container stays in the family it was entered for; enter it "
                                 "anew in the other family."),
                       QStringLiteral("family"));
    updateRow(m_database, "container"_L1, container.id.value, fieldsOf(container));
    return {};
}

Outcome FamilyRepository::removeContainer(Action&, ContainerId container) {
    if (!removeContainerRows(m_database, container))
        return noSuchRecord();
    return {};
}

QList<week::UsualHours> FamilyRepository::usualHours(FamilyId family) const {
    return readAll(
        m_database,
        QStringLiteral("SELECT * FROM usual_hours WHERE family_id = ? ORDER BY position"),
        readUsualHours, family);
}

Outcome FamilyRepository::setUsualHours(Action&, FamilyId family,
                                        const QList<week::UsualHours>& hours) {
    if (const Result<QDate> today = Belonging(m_database).todayOf(family, m_clock); !today)
        return passOn(today);
    for (qsizetype line = 0; line < hours.size(); ++line)
        if (const Outcome checked = week::check(hours[line]); !checked)
            return problem(checked.error().kind, checked.error().sentence,
                           QStringLiteral("usualHours[%1].%2")
                               .arg(QString::number(line), checked.error().place));
    // Positions that are given again unchanged leave no change behind.
    run(m_database, QStringLiteral("DELETE FROM usual_hours WHERE family_id = ?"), family);
    for (qint64 position = 0; position < hours.size(); ++position) {
        const week::UsualHours& usual = hours.at(position);
        Fields fields = fieldsOf(usual.hours);
        fields +=
            {{"family_id"_L1, family}, {"position"_L1, position}, {"weekday"_L1, usual.weekday}};
        insertRow(m_database, "usual_hours"_L1, fields);
    }
    return {};
}

} // namespace ladlework::store
