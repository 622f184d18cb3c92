#include "ui/pot/pot_ingredients.h"

#include "casebook/first_pot.h"
#include "ui/pot/cuts_model.h"
#include "ui/pot/extras_model.h"
#include "ui/pot/item_picker.h"
#include "ui/shared/amount_delegate.h"
#include "ui/shared/table_look.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using quantity::Mass;

namespace {

constexpr int fewestRows = 2;
constexpr int mostRows = 8;

} // namespace

PotIngredients::PotIngredients(const kitchen::Catalogue& catalogue, QWidget* parent)
    : QWidget(parent), m_catalogue(catalogue), m_cuts(new CutsModel(catalogue, this)),
      m_extras(new ExtrasModel(catalogue, this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeCuts());
    layout->addWidget(makeExtras());
    connect(m_cuts, &CutsModel::edited, this, &PotIngredients::edited);
    connect(m_extras, &ExtrasModel::edited, this, &PotIngredients::edited);
    connect(m_cuts, &CutsModel::refused, this, &PotIngredients::refused);
    connect(m_extras, &ExtrasModel::refused, this, &PotIngredients::refused);
    connect(m_cuts, &CutsModel::priced, this, &PotIngredients::priced);
    connect(m_extras, &ExtrasModel::priced, this, &PotIngredients::priced);
}

QWidget* PotIngredients::makeCuts() {
    auto* part = new QWidget(this);
    m_cutsTable = makeTable(m_cuts, tr("Bones and cuts"), CutsModel::CutColumn, part);
    addRemoval(m_cutsTable, [this](int row) { m_cuts->remove(row); });
    m_cutDelegate = new AmountDelegate(AmountDelegate::Kind::Mass, m_measures, this);
    m_cutsTable->setItemDelegateForColumn(CutsModel::MassColumn, m_cutDelegate);
    m_cutPick = new ItemPicker(tr("Add bones or a cut"), part);
    QList<ItemPicker::Item> cuts;
    for (const kitchen::Cut& cut : m_catalogue.cuts())
        cuts.append({cut.name, cut.id});
    std::ranges::sort(cuts, {}, &ItemPicker::Item::name);
    m_cutPick->fill(cuts);
    m_cutMass = new MassEdit(part);
    m_cutMass->setAccessibleName(tr("Mass as bought"));
    auto* addButton = new QPushButton(tr("Add &cut"), part);
    auto* line = new QHBoxLayout;
    line->addWidget(m_cutPick, 1);
    line->addWidget(m_cutMass);
    line->addWidget(addButton);
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_cutsTable);
    layout->addLayout(line);
    connect(addButton, &QPushButton::clicked, this, &PotIngredients::addCut);
    connect(m_cutMass, &QLineEdit::returnPressed, this, &PotIngredients::addCut);
    connect(m_cutPick->lineEdit(), &QLineEdit::returnPressed, this, [this] {
        if (m_cutPick->id().isEmpty())
            return;
        m_cutMass->setFocus();
        m_cutMass->selectAll();
    });
    return part;
}

QWidget* PotIngredients::makeExtras() {
    auto* part = new QWidget(this);
    m_extrasTable =
        makeTable(m_extras, tr("Vegetables and seasoning"), ExtrasModel::ItemColumn, part);
    addRemoval(m_extrasTable, [this](int row) { m_extras->remove(row); });
    m_extraDelegate = new AmountDelegate(AmountDelegate::Kind::Mass, m_measures, this);
    m_extrasTable->setItemDelegateForColumn(ExtrasModel::MassColumn, m_extraDelegate);
    m_extraPick = new ItemPicker(tr("Add a vegetable, herb or spice"), part);
    QList<ItemPicker::Item> extras;
    for (const kitchen::Extra& extra : m_catalogue.extras())
        extras.append({extra.name, extra.id});
    std::ranges::sort(extras, {}, &ItemPicker::Item::name);
    m_extraPick->fill(extras);
    auto* addButton = new QPushButton(tr("Add &one"), part);
    addButton->setToolTip(tr("Adds one piece; type the number of pieces in the table"));
    auto* line = new QHBoxLayout;
    line->addWidget(m_extraPick, 1);
    line->addWidget(addButton);
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_extrasTable);
    layout->addLayout(line);
    connect(addButton, &QPushButton::clicked, this, &PotIngredients::addExtra);
    connect(m_extraPick->lineEdit(), &QLineEdit::returnPressed, this, [this] {
        if (!m_extraPick->id().isEmpty())
            addExtra();
    });
    return part;
}

void PotIngredients::show(const kitchen::Pot& pot, const Prices& prices) {
    const quantity::MeasureSystem measures = prices.measures;
    m_measures = measures;
    m_cutDelegate->setMeasures(measures);
    m_extraDelegate->setMeasures(measures);
    m_cuts->show(pot.cuts, prices);
    m_extras->show(pot.extras, prices);
    if (m_cutMass->value() <= Mass{} || !m_cutMass->hasFocus())
        m_cutMass->setValue(casebook::firstCutMass(), measures);
    fitRows(*m_cutsTable, fewestRows, mostRows);
    fitRows(*m_extrasTable, fewestRows, mostRows);
}

const QList<kitchen::CutInPot>& PotIngredients::cuts() const {
    return m_cuts->cuts();
}

const QList<kitchen::ExtraInPot>& PotIngredients::extras() const {
    return m_extras->extras();
}

QWidget* PotIngredients::cutsField(int row) const {
    if (m_cuts->rowCount() == 0)
        return m_cutPick;
    m_cutsTable->setCurrentIndex(
        m_cuts->index(std::clamp(row, 0, m_cuts->rowCount() - 1), CutsModel::MassColumn));
    return m_cutsTable;
}

QWidget* PotIngredients::extrasField(int row) const {
    if (row < 0 || row >= m_extras->rowCount())
        return m_extraPick;
    m_extrasTable->setCurrentIndex(m_extras->index(row, ExtrasModel::PiecesColumn));
    return m_extrasTable;
}

QWidget* PotIngredients::priceField() const {
    for (int row = 0; row < m_cuts->rowCount(); ++row) {
        const QModelIndex price = m_cuts->index(row, CutsModel::PriceColumn);
        if (!price.data(Qt::EditRole).toString().isEmpty())
            continue;
        m_cutsTable->setCurrentIndex(price);
        return m_cutsTable;
    }
    return m_extrasTable;
}

void PotIngredients::addRemoval(QTableView* table, const std::function<void(int)>& remove) {
    auto* action = new QAction(tr("Take it out"), table);
    action->setShortcut(QKeySequence::Delete);
    action->setShortcutContext(Qt::WidgetShortcut);
    table->addAction(action);
    table->setContextMenuPolicy(Qt::ActionsContextMenu);
    table->setToolTip(tr("Type to change an amount; Delete takes a line out"));
    connect(action, &QAction::triggered, this,
            [table, remove] { remove(table->currentIndex().row()); });
}

void PotIngredients::addCut() {
    const QString id = m_cutPick->id();
    if (id.isEmpty() || !m_cutMass->isGood() || m_cutMass->value() <= Mass{}) {
        m_cutPick->setFocus();
        return;
    }
    m_cutPick->clearPick();
    m_cutPick->setFocus();
    m_cuts->add({id, m_cutMass->value(), true});
}

void PotIngredients::addExtra() {
    const kitchen::Extra* extra = m_catalogue.extra(m_extraPick->id());
    if (!extra) {
        m_extraPick->setFocus();
        return;
    }
    m_extraPick->clearPick();
    m_extraPick->setFocus();
    m_extras->add({extra->id, extra->piece});
}

} // namespace ladlework::ui
