#include "ui/members/containers_section.h"

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

using kitchen::Container;

namespace {
QHBoxLayout* rowIn(QWidget* part) {
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    return row;
}
} // namespace

ContainersSection::ContainersSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new ContainerModel(this)),
      m_table(makeTable(m_model, tr("Containers"), ContainerModel::KindColumn, this)),
      m_add(new QPushButton(tr("Add a container"), this)),
      m_remove(new QPushButton(tr("Remove container"), this)), m_name(new TextField(this)),
      m_shape(new QComboBox(this)), m_across(new LengthEdit(this)),
      m_by(new QLabel(tr("by"), this)), m_width(new LengthEdit(this)),
      m_height(new LengthEdit(this)), m_material(new QComboBox(this)), m_cover(new QComboBox(this)),
      m_none(
          new QLabel(tr("No container yet: cooling is reckoned in a usual shallow tray. Add what "
                        "this kitchen cools its stock in, measured inside."),
                     this)),
      m_line(new SideBySide(this)) {
    auto* section = new Section(tr("Containers"), this);
    section->setRemark(tr("What stock is cooled and kept in; pots say how it cools in them."));
    section->addAction(m_add);
    section->addAction(m_remove);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    section->body()->addWidget(m_table);
    m_none->setWordWrap(true);
    m_none->setForegroundRole(QPalette::PlaceholderText);
    section->body()->addWidget(m_none);
    makeLine();
    section->body()->addWidget(m_line);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connectEdits();
}

void ContainersSection::makeLine() {
    for (const auto shape : {Container::Shape::Cylinder, Container::Shape::Tray})
        m_shape->addItem(ContainerModel::shapeWords(shape), kitchen::containerShapeId(shape));
    for (const auto material :
         {Container::Material::Steel, Container::Material::Glass, Container::Material::Plastic})
        m_material->addItem(ContainerModel::materialWords(material),
                            kitchen::containerMaterialId(material));
    for (const bool covered : {false, true})
        m_cover->addItem(ContainerModel::coverWords(covered), covered);
    auto* sizes = new QWidget(m_line);
    QHBoxLayout* sizesRow = rowIn(sizes);
    sizesRow->addWidget(m_shape);
    sizesRow->addWidget(m_across, 1);
    sizesRow->addWidget(m_by);
    sizesRow->addWidget(m_width, 1);
    sizesRow->addWidget(new QLabel(tr("wide,"), sizes));
    sizesRow->addWidget(m_height, 1);
    sizesRow->addWidget(new QLabel(tr("high"), sizes));
    auto* kind = new QWidget(m_line);
    QHBoxLayout* kindRow = rowIn(kind);
    kindRow->addWidget(m_material, 1);
    kindRow->addWidget(m_cover, 1);
    constexpr int nameWidth = 20;
    constexpr int sizeWidth = 8;
    CharacterWidth::atLeast(*m_name, nameWidth);
    for (LengthEdit* edit : {m_across, m_width, m_height})
        CharacterWidth::atLeast(*edit, sizeWidth);
    m_line->add(m_name, 2);
    m_line->add(sizes, 3);
    m_line->add(kind, 2);
    m_name->setAccessibleName(tr("Name of the container"));
    m_shape->setAccessibleName(tr("Shape of the container"));
    m_across->setAccessibleName(tr("Inside length or width of the container"));
    m_width->setAccessibleName(tr("Inside width of the tray"));
    m_height->setAccessibleName(tr("Inside height of the container"));
    m_material->setAccessibleName(tr("What the container is made of"));
    m_cover->setAccessibleName(tr("While it cools"));
    m_cover->setToolTip(tr("Whether a lid is on while the stock cools"));
}

void ContainersSection::connectEdits() {
    connect(m_add, &QPushButton::clicked, this, &ContainersSection::add);
    connect(m_remove, &QPushButton::clicked, this, &ContainersSection::removeChosen);
    auto* deletes = new QShortcut(QKeySequence::Delete, m_table);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &ContainersSection::removeChosen);
    connect(m_name, &TextField::committed, this, &ContainersSection::saveChosen);
    for (LengthEdit* edit : {m_across, m_width, m_height})
        connect(edit, &QuantityEdit::valueCommitted, this, &ContainersSection::saveChosen);
    for (QComboBox* box : {m_shape, m_material, m_cover})
        connect(box, &QComboBox::activated, this, &ContainersSection::saveChosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &ContainersSection::showChosen);
}

void ContainersSection::show(const casebook::Casebook& book) {
    const bool sameFamily = m_family == book.records().family.id;
    m_family = book.records().family.id;
    m_measures = book.records().family.measures;
    const int row = sameFamily ? m_table->currentIndex().row() : 0;
    {
        const QSignalBlocker blocker(m_table->selectionModel());
        m_model->setContainers(book.records().containers, m_measures);
    }
    RecordRows{m_table, m_line, m_remove, m_none}.show(row);
    showChosen();
}

const Container* ContainersSection::chosen() const {
    return m_model->containerAt(m_table->currentIndex().row());
}

void ContainersSection::showChosen() {
    const Container* container = chosen();
    m_line->setEnabled(container != nullptr);
    m_remove->setEnabled(container != nullptr);
    if (container == nullptr)
        return;
    const bool isTray = container->shape == Container::Shape::Tray;
    m_name->setStored(container->name);
    m_shape->setCurrentIndex(m_shape->findData(kitchen::containerShapeId(container->shape)));
    m_across->setValue(container->across, m_measures);
    m_width->setValue(container->width, m_measures);
    m_by->setVisible(isTray);
    m_width->setVisible(isTray);
    m_height->setValue(container->height, m_measures);
    m_material->setCurrentIndex(
        m_material->findData(kitchen::containerMaterialId(container->material)));
    m_cover->setCurrentIndex(m_cover->findData(container->covered));
}

QWidget* ContainersSection::firstField() const {
    return m_model->rowCount() > 0 ? static_cast<QWidget*>(m_table) : m_add;
}

Container ContainersSection::fromLine() const {
    Container container = *chosen();
    container.name = m_name->trimmed();
    container.shape =
        kitchen::containerShapeFromId(m_shape->currentData().toString()).value_or(container.shape);
    container.across = m_across->value();
    container.height = m_height->value();
    container.material = kitchen::containerMaterialFromId(m_material->currentData().toString())
                             .value_or(container.material);
    container.covered = m_cover->currentData().toBool();
    const bool isTray = container.shape == Container::Shape::Tray;
    container.width = isTray ? m_width->value() : quantity::Length{};
    if (isTray && container.width <= quantity::Length{})
        container.width = container.across; // a round one becomes a square tray, to be typed over
    return container;
}

void ContainersSection::saveChosen() {
    if (chosen() == nullptr)
        return;
    const Container container = fromLine();
    const bool done = m_context.act(
        this, tr("Changed the container %1").arg(container.name), [&](store::Action& action) {
            return m_context.workbook.families().changeContainer(action, container);
        });
    if (!done)
        showChosen();
}

void ContainersSection::add() {
    Container container = kitchen::usualContainers().front(); // there to be typed over
    container.family = m_family;
    container.name = tr("Container %1").arg(m_model->rowCount() + 1);
    const bool done =
        m_context.act(this, tr("Added the container %1").arg(container.name),
                      [&](store::Action& action) -> Outcome {
                          const auto added =
                              m_context.workbook.families().addContainer(action, container);
                          return added ? Outcome{} : Outcome(passOn(added));
                      });
    if (!done)
        return;
    for (int row = 0; row < m_model->rowCount(); ++row)
        if (m_model->containerAt(row)->name == container.name)
            m_table->selectRow(row);
    m_name->setFocus();
    m_name->selectAll();
}

void ContainersSection::removeChosen() {
    const Container* container = chosen();
    if (container == nullptr)
        return;
    const ContainerId id = container->id;
    m_context.act(this, tr("Removed the container %1").arg(container->name),
                  [&](store::Action& action) {
                      return m_context.workbook.families().removeContainer(action, id);
                  });
}

} // namespace ladlework::ui
