#include "store/belonging.h"
#include "store/page_rows.h"
#include "store/practice_repository.h"
#include "store/records.h"
#include "store/removal.h"

#include <QCoreApplication>

// How the practice puts its pages together, and its label sheets.

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(PracticeRepository)
};

/// Positions that are given again unchanged leave no change behind.
void setSections(Database& database, HandoutTemplateId kept,
                 const QList<casebook::HandoutSection>& sections) {
    run(database,
        QStringLiteral("DELETE FROM handout_template_section WHERE handout_template_id = ?"), kept);
    for (qint64 position = 0; position < sections.size(); ++position) {
        Fields fields = fieldsOf(sections.at(position));
        fields += {{"handout_template_id"_L1, kept}, {"position"_L1, position}};
        insertRow(database, "handout_template_section"_L1, fields);
    }
}
} // namespace

QList<casebook::HandoutTemplate> PracticeRepository::handoutTemplates() const {
    QList<casebook::HandoutTemplate> templates =
        readAll(m_database, QStringLiteral("SELECT * FROM handout_template ORDER BY id"),
                readHandoutTemplate);
    QHash<HandoutTemplateId, QList<casebook::HandoutSection>> sections;
    Statement rows = m_database.statement(QStringLiteral("SELECT * FROM handout_template_section "
                                                         "ORDER BY handout_template_id, position"));
    while (rows.next())
        sections[rows.id<HandoutTemplateId>("handout_template_id"_L1)].append(
            readHandoutSection(rows));
    for (casebook::HandoutTemplate& kept : templates)
        kept.sections = sections.value(kept.id);
    sortByName(templates);
    return templates;
}

Outcome PracticeRepository::checkHandoutTemplate(const casebook::HandoutTemplate& kept) const {
    if (const Outcome checked = casebook::check(kept); !checked)
        return checked;
    if (nameIsTaken(handoutTemplates(), kept))
        return problem(Problem::Kind::Refused,
                       Words::tr("There is a template \"%1\" already; choose another name.")
                           .arg(kept.name.simplified()),
                       QStringLiteral("name"));
    return {};
}

Result<HandoutTemplateId>
PracticeRepository::addHandoutTemplate(Action&, const casebook::HandoutTemplate& kept) {
    casebook::HandoutTemplate added = kept;
    added.id = {};
    if (const Outcome checked = checkHandoutTemplate(added); !checked)
        return passOn(checked);
    const HandoutTemplateId id{insertRow(m_database, "handout_template"_L1, fieldsOf(added))};
    setSections(m_database, id, added.sections);
    return id;
}

Outcome PracticeRepository::changeHandoutTemplate(Action&, const casebook::HandoutTemplate& kept) {
    if (const Outcome checked = checkHandoutTemplate(kept); !checked)
        return checked;
    if (!updateRow(m_database, "handout_template"_L1, kept.id.value, fieldsOf(kept)))
        return noSuchRecord();
    setSections(m_database, kept.id, kept.sections);
    return {};
}

Outcome PracticeRepository::removeHandoutTemplate(Action&, HandoutTemplateId kept) {
    if (!removeHandoutTemplateRows(m_database, kept))
        return noSuchRecord();
    return {};
}

QList<casebook::LabelStock> PracticeRepository::labelStocks() const {
    QList<casebook::LabelStock> stocks = readAll(
        m_database, QStringLiteral("SELECT * FROM label_stock ORDER BY id"), readLabelStock);
    sortByName(stocks);
    return stocks;
}

Outcome PracticeRepository::checkLabelStock(const casebook::LabelStock& stock) const {
    if (const Outcome checked = casebook::check(stock); !checked)
        return checked;
    if (nameIsTaken(labelStocks(), stock))
        return problem(Problem::Kind::Refused,
                       Words::tr("There is a label sheet \"%1\" already; choose another name.")
                           .arg(stock.name.simplified()),
                       QStringLiteral("name"));
    return {};
}

Result<LabelStockId> PracticeRepository::addLabelStock(Action&, const casebook::LabelStock& stock) {
    casebook::LabelStock added = stock;
    added.id = {};
    if (const Outcome checked = checkLabelStock(added); !checked)
        return passOn(checked);
    return LabelStockId{insertRow(m_database, "label_stock"_L1, fieldsOf(added))};
}

Outcome PracticeRepository::changeLabelStock(Action&, const casebook::LabelStock& stock) {
    if (const Outcome checked = checkLabelStock(stock); !checked)
        return checked;
    if (!updateRow(m_database, "label_stock"_L1, stock.id.value, fieldsOf(stock)))
        return noSuchRecord();
    return {};
}

Outcome PracticeRepository::removeLabelStock(Action&, LabelStockId stock) {
    if (!deleteRow(m_database, "label_stock"_L1, stock.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
