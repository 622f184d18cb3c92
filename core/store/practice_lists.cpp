#include "store/belonging.h"
#include "store/intake_rows.h"
#include "store/practice_repository.h"
#include "store/records.h"
#include "store/removal.h"
#include "store/store_error.h"
#include "store/volume_steps.h"

#include <QCoreApplication>
#include <sqlite3.h>

// What the practice sets for all families: rules of new ladders, templates, symptoms, prices.

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(PracticeRepository)
};

constexpr qint64 theOnlyRow = 1;
constexpr double mostPerKilogram = 1e6;
constexpr StepsTable rungsTable{"ladder_template_rung"_L1, "ladder_template_id"_L1};
} // namespace

Outcome checkPrice(const QString& item, double perKilogram, const kitchen::Catalogue& catalogue) {
    if (item != u"salt" && catalogue.cut(item) == nullptr && catalogue.extra(item) == nullptr)
        return problem(Problem::Kind::BadInput,
                       Words::tr("There is no cut and no ingredient \"%1\" that a price could be "
                                 "for; choose one of the list.")
                           .arg(item),
                       QStringLiteral("item"));
    if (!(perKilogram > 0 && perKilogram <= mostPerKilogram))
        return problem(Problem::Kind::BadInput,
                       Words::tr("A price must be more than 0 and at most 1,000,000 a kilogram; "
                                 "correct it or leave it empty."),
                       QStringLiteral("price"));
    return {};
}

intake::LadderRules PracticeRepository::houseRules() const {
    const QString sql = QStringLiteral("SELECT * FROM house_rules WHERE id = 1");
    const QList<intake::LadderRules> found = readAll(m_database, sql, readRules);
    if (found.isEmpty())
        throw StoreError(SQLITE_CORRUPT, 0, QStringLiteral("the house rules are missing"), sql);
    return found.first();
}

Outcome PracticeRepository::setHouseRules(Action&, const intake::LadderRules& rules) {
    if (const Outcome checked = intake::check(rules); !checked)
        return checked;
    if (!updateRow(m_database, "house_rules"_L1, theOnlyRow, fieldsOf(rules))) {
        Fields fields = fieldsOf(rules);
        fields.append({"id"_L1, theOnlyRow});
        insertRow(m_database, "house_rules"_L1, fields);
    }
    return {};
}

QList<intake::Symptom> PracticeRepository::symptoms() const {
    return readAll(m_database, QStringLiteral("SELECT * FROM symptom ORDER BY position, id"),
                   readSymptom);
}

Outcome PracticeRepository::checkSymptom(const intake::Symptom& symptom) const {
    if (const Outcome checked = intake::check(symptom); !checked)
        return checked;
    if (nameIsTaken(symptoms(), symptom))
        return problem(Problem::Kind::Refused,
                       Words::tr("\"%1\" is on the list already; choose another name.")
                           .arg(symptom.name.simplified()),
                       QStringLiteral("name"));
    return {};
}

Result<SymptomId> PracticeRepository::addSymptom(Action&, const intake::Symptom& symptom) {
    intake::Symptom added = symptom;
    added.id = {};
    if (const Outcome checked = checkSymptom(added); !checked)
        return passOn(checked);
    return SymptomId{insertRow(m_database, "symptom"_L1, fieldsOf(added))};
}

Outcome PracticeRepository::changeSymptom(Action&, const intake::Symptom& symptom) {
    if (const Outcome checked = checkSymptom(symptom); !checked)
        return checked;
    if (!updateRow(m_database, "symptom"_L1, symptom.id.value, fieldsOf(symptom)))
        return noSuchRecord();
    return {};
}

Outcome PracticeRepository::removeSymptom(Action&, SymptomId symptom) {
    if (!deleteRow(m_database, "symptom"_L1, symptom.value))
        return noSuchRecord();
    return {};
}

QList<intake::LadderTemplate> PracticeRepository::ladderTemplates() const {
    QList<intake::LadderTemplate> templates = readAll(
        m_database, QStringLiteral("SELECT * FROM ladder_template ORDER BY id"), readTemplate);
    Statement rows = m_database.statement(
        QStringLiteral("SELECT * FROM ladder_template_rung ORDER BY ladder_template_id, position"));
    giveSteps(templates, &intake::LadderTemplate::rungs, rows, rungsTable);
    sortByName(templates);
    return templates;
}

Outcome PracticeRepository::checkTemplate(const intake::LadderTemplate& ladderTemplate) const {
    if (const Outcome checked = intake::check(ladderTemplate); !checked)
        return checked;
    if (nameIsTaken(ladderTemplates(), ladderTemplate))
        return problem(Problem::Kind::Refused,
                       Words::tr("There is a ladder template \"%1\" already; choose another name.")
                           .arg(ladderTemplate.name.simplified()),
                       QStringLiteral("name"));
    return {};
}

Result<LadderTemplateId>
PracticeRepository::addLadderTemplate(Action&, const intake::LadderTemplate& ladderTemplate) {
    intake::LadderTemplate added = ladderTemplate;
    added.id = {};
    if (const Outcome checked = checkTemplate(added); !checked)
        return passOn(checked);
    const LadderTemplateId id{insertRow(m_database, "ladder_template"_L1, fieldsOf(added))};
    setSteps(m_database, rungsTable, id.value, added.rungs);
    return id;
}

Outcome PracticeRepository::changeLadderTemplate(Action&,
                                                 const intake::LadderTemplate& ladderTemplate) {
    if (const Outcome checked = checkTemplate(ladderTemplate); !checked)
        return checked;
    if (!updateRow(m_database, "ladder_template"_L1, ladderTemplate.id.value,
                   fieldsOf(ladderTemplate)))
        return noSuchRecord();
    setSteps(m_database, rungsTable, ladderTemplate.id.value, ladderTemplate.rungs);
    return {};
}

Outcome PracticeRepository::removeLadderTemplate(Action&, LadderTemplateId ladderTemplate) {
    if (!removeTemplateRows(m_database, ladderTemplate))
        return noSuchRecord();
    return {};
}

QHash<QString, double> PracticeRepository::prices() const {
    QHash<QString, double> prices;
    Statement rows = m_database.statement(QStringLiteral("SELECT * FROM price"));
    while (rows.next())
        prices.insert(rows.text("item"_L1), rows.real("per_kg"_L1));
    return prices;
}

Outcome PracticeRepository::setPrice(Action&, const QString& item,
                                     std::optional<double> perKilogram) {
    if (!perKilogram) {
        run(m_database, QStringLiteral("DELETE FROM price WHERE item = ?"), item);
        return {};
    }
    if (const Outcome checked = checkPrice(item, *perKilogram, m_catalogue); !checked)
        return checked;
    run(m_database,
        QStringLiteral("INSERT INTO price (item, per_kg) VALUES (?, ?) "
                       "ON CONFLICT (item) DO UPDATE SET per_kg = excluded.per_kg"),
        item, *perKilogram);
    return {};
}

} // namespace ladlework::store
