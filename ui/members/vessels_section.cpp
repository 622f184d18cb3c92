#include "ui/members/vessels_section.h"

#include "casebook/usual_vessel.h"
#include "ui/members/record_rows.h"
#include "ui/shared/character_width.h"
#include "ui/shared/section.h"
#include "ui/shared/side_by_side.h"
#include "ui/shared/table_look.h"
#include "ui/shared/text_field.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

using kitchen::Vessel;

VesselsSection::VesselsSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new VesselModel(this)),
      m_table(makeTable(m_model, tr("Vessels"), VesselModel::UseColumn, this)),
      m_name(new TextField(this)), m_diameter(new LengthEdit(this)), m_height(new LengthEdit(this)),
      m_place(new QComboBox(this)), m_lid(new QComboBox(this)),
      m_remove(new QPushButton(tr("Remove vessel"), this)),
      m_none(
          new QLabel(tr("No vessel yet: pots are reckoned with a usual stockpot. Add the pots of "
                        "this kitchen, measured inside."),
                     this)),
      m_line(new SideBySide(this)) {
    auto* section = new Section(tr("Vessels"), this);
    section->setRemark(tr("Measured inside; the pot builder draws and reckons with them."));
    m_add = new QPushButton(tr("Add a vessel"), this);
    section->addAction(m_add);
    section->addAction(m_remove);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    section->body()->addWidget(m_table);
    for (Vessel::Place place : {Vessel::Place::Stovetop, Vessel::Place::Oven,
                                Vessel::Place::SlowCooker, Vessel::Place::PressureCooker})
        m_place->addItem(VesselModel::placeWords(place), kitchen::placeId(place));
    for (Vessel::Lid lid : {Vessel::Lid::Open, Vessel::Lid::Ajar, Vessel::Lid::On})
        m_lid->addItem(VesselModel::lidWords(lid), kitchen::lidId(lid));
    m_none->setWordWrap(true);
    m_none->setForegroundRole(QPalette::PlaceholderText);
    section->body()->addWidget(m_none);
    auto* sizes = new QWidget(m_line);
    auto* sizesRow = new QHBoxLayout(sizes);
    sizesRow->setContentsMargins(0, 0, 0, 0);
    sizesRow->addWidget(m_diameter, 1);
    sizesRow->addWidget(new QLabel(tr("wide,"), sizes));
    sizesRow->addWidget(m_height, 1);
    sizesRow->addWidget(new QLabel(tr("high"), sizes));
    auto* use = new QWidget(m_line);
    auto* useRow = new QHBoxLayout(use);
    useRow->setContentsMargins(0, 0, 0, 0);
    useRow->addWidget(m_place, 1);
    useRow->addWidget(m_lid, 1);
    constexpr int nameWidth = 20;
    constexpr int sizeWidth = 10;
    CharacterWidth::atLeast(*m_name, nameWidth);
    CharacterWidth::atLeast(*m_diameter, sizeWidth);
    CharacterWidth::atLeast(*m_height, sizeWidth);
    m_line->add(m_name, 2);
    m_line->add(sizes, 2);
    m_line->add(use, 2);
    section->body()->addWidget(m_line);
    m_name->setAccessibleName(tr("Name of the vessel"));
    m_diameter->setAccessibleName(tr("Inside width"));
    m_height->setAccessibleName(tr("Inside height"));
    m_place->setAccessibleName(tr("Where it stands"));
    m_lid->setAccessibleName(tr("How the lid is used"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(m_add, &QPushButton::clicked, this, &VesselsSection::add);
    connectEdits();
}

void VesselsSection::connectEdits() {
    connect(m_remove, &QPushButton::clicked, this, &VesselsSection::removeChosen);
    auto* deletes = new QShortcut(QKeySequence::Delete, m_table);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &VesselsSection::removeChosen);
    connect(m_name, &TextField::committed, this, &VesselsSection::saveChosen);
    connect(m_diameter, &QuantityEdit::valueCommitted, this, &VesselsSection::saveChosen);
    connect(m_height, &QuantityEdit::valueCommitted, this, &VesselsSection::saveChosen);
    connect(m_place, &QComboBox::activated, this, &VesselsSection::saveChosen);
    connect(m_lid, &QComboBox::activated, this, &VesselsSection::saveChosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &VesselsSection::showChosen);
}

void VesselsSection::show(const casebook::Casebook& book) {
    const bool sameFamily = m_family == book.records().family.id;
    m_family = book.records().family.id;
    m_measures = book.records().family.measures;
    const int row = sameFamily ? m_table->currentIndex().row() : 0;
    {
        const QSignalBlocker blocker(m_table->selectionModel());
        m_model->setVessels(book.records().vessels, m_measures);
    }
    RecordRows{m_table, m_line, m_remove, m_none}.show(row);
    showChosen();
}

void VesselsSection::showChosen() {
    const Vessel* vessel = m_model->vesselAt(m_table->currentIndex().row());
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_name, m_diameter, m_height, m_place, m_lid, m_remove})
        widget->setEnabled(vessel);
    if (!vessel)
        return;
    m_name->setStored(vessel->name);
    m_diameter->setValue(vessel->diameter, m_measures);
    m_height->setValue(vessel->height, m_measures);
    m_place->setCurrentIndex(m_place->findData(kitchen::placeId(vessel->place)));
    m_lid->setCurrentIndex(m_lid->findData(kitchen::lidId(vessel->lid)));
}

QWidget* VesselsSection::firstField() const {
    return m_model->rowCount() > 0 ? static_cast<QWidget*>(m_diameter) : m_add;
}

Vessel VesselsSection::fromLine() const {
    Vessel vessel = *m_model->vesselAt(m_table->currentIndex().row());
    vessel.name = m_name->trimmed();
    vessel.diameter = m_diameter->value();
    vessel.height = m_height->value();
    vessel.place = kitchen::placeFromId(m_place->currentData().toString()).value_or(vessel.place);
    vessel.lid = kitchen::lidFromId(m_lid->currentData().toString()).value_or(vessel.lid);
    return vessel;
}

void VesselsSection::saveChosen() {
    if (!m_model->vesselAt(m_table->currentIndex().row()))
        return;
    const Vessel vessel = fromLine();
    const bool done = m_context.act(
        this, tr("Changed the vessel %1").arg(vessel.name), [&](store::Action& action) {
            return m_context.workbook.families().changeVessel(action, vessel);
        });
    if (!done)
        showChosen();
}

void VesselsSection::add() {
    Vessel vessel = casebook::usualVessel(); // its size is there to be typed over
    vessel.family = m_family;
    vessel.name = tr("Stockpot %1").arg(m_model->rowCount() + 1);
    const bool done = m_context.act(
        this, tr("Added the vessel %1").arg(vessel.name), [&](store::Action& action) -> Outcome {
            const auto added = m_context.workbook.families().addVessel(action, vessel);
            return added ? Outcome{} : Outcome(passOn(added));
        });
    if (!done)
        return;
    m_table->selectRow(m_model->rowCount() - 1);
    m_name->setFocus();
    m_name->selectAll();
}

void VesselsSection::removeChosen() {
    const Vessel* vessel = m_model->vesselAt(m_table->currentIndex().row());
    if (!vessel)
        return;
    const VesselId id = vessel->id;
    m_context.act(this, tr("Removed the vessel %1").arg(vessel->name), [&](store::Action& action) {
        return m_context.workbook.families().removeVessel(action, id);
    });
}

} // namespace ladlework::ui
