#include "ui/week/shopping_panel.h"

#include "casebook/week_shopping.h"
#include "ui/paint/theme.h"
#include "ui/shared/action_button.h"
#include "ui/shared/amount_delegate.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"
#include "ui/shared/text_field.h"
#include "ui/week/plan_edits.h"
#include "ui/week/shopping_model.h"

#include <QAction>
#include <QBoxLayout>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <algorithm>

namespace ladlework::ui {

using week::ShoppingItem;

ShoppingPanel::ShoppingPanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new ShoppingModel(this)),
      m_table(
          makeTable(m_model, tr("Shopping list of this week"), ShoppingModel::ThingColumn, this)),
      m_amounts(new AmountDelegate(AmountDelegate::Kind::Mass, quantity::MeasureSystem::UsCustomary,
                                   this)),
      m_none(new QLabel(tr("What the pots of the week need is listed here as soon as a pot stands "
                           "on a day."),
                        this)),
      m_total(new QLabel(this)), m_extra(new TextField(this)), m_section(new QComboBox(this)),
      m_add(new QPushButton(tr("A&dd"), this)) {
    auto* section = new Section(tr("Shopping list"), this);
    m_table->setItemDelegateForColumn(ShoppingModel::AtHomeColumn, m_amounts);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setWordWrap(true);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->setMinimumHeight(6 * step(*this));
    // It scrolls before the screen does.
    m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    m_none->setWordWrap(true);
    m_none->setForegroundRole(QPalette::PlaceholderText);
    m_total->setWordWrap(true);
    makeActions();
    section->addAction(buttonFor(m_copy));
    section->body()->addWidget(m_none);
    section->body()->addWidget(m_table, 1);
    section->body()->addWidget(m_total);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(buttonFor(m_have));
    buttons->addWidget(buttonFor(m_clear));
    buttons->addStretch();
    section->body()->addLayout(buttons);
    section->body()->addWidget(makeExtraLine());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    // The cell's editor is still open while the model speaks: act when it is done.
    connect(m_model, &ShoppingModel::atHomeWanted, this, &ShoppingPanel::setAtHome,
            Qt::QueuedConnection);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &ShoppingPanel::followChoice);
    connect(m_model, &QAbstractItemModel::modelReset, this, &ShoppingPanel::followChoice);
}

void ShoppingPanel::makeActions() {
    const auto action = [this](const QString& text, const QString& tip) {
        auto* made = new QAction(text, this);
        made->setStatusTip(tip);
        made->setToolTip(tip);
        addAction(made);
        return made;
    };
    m_have = action(tr("Have &it"), tr("All of the chosen thing is at home (Space, in the list)"));
    m_clear = action(tr("Take off"),
                     tr("Takes what you added off the list, or says that nothing of the chosen "
                        "thing is at home (Delete, in the list)"));
    m_copy = action(tr("Copy the list"), tr("Puts the shopping list on the clipboard"));
    m_copy->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C));
    m_copy->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(m_have, &QAction::triggered, this, &ShoppingPanel::haveChosen);
    connect(m_clear, &QAction::triggered, this, &ShoppingPanel::clearChosen);
    connect(m_copy, &QAction::triggered, this, &ShoppingPanel::copyToClipboard);
    const auto onKey = [this](Qt::Key key, void (ShoppingPanel::*done)()) {
        auto* shortcut = new QShortcut(key, m_table);
        shortcut->setContext(Qt::WidgetShortcut);
        connect(shortcut, &QShortcut::activated, this, done);
    };
    onKey(Qt::Key_Space, &ShoppingPanel::haveChosen);
    onKey(Qt::Key_Delete, &ShoppingPanel::clearChosen);
}

QWidget* ShoppingPanel::makeExtraLine() {
    auto* line = new QWidget(this);
    auto* column = new QVBoxLayout(line);
    column->setContentsMargins(0, 0, 0, 0);
    m_extra->setPlaceholderText(tr("Something else to buy"));
    m_extra->setAccessibleName(tr("Something else to buy"));
    m_section->setAccessibleName(tr("Where in the shop it is"));
    for (const week::ShopSection section :
         {week::ShopSection::Household, week::ShopSection::Dry, week::ShopSection::Vegetables,
          week::ShopSection::Herbs, week::ShopSection::Meat, week::ShopSection::Fish})
        m_section->addItem(ShoppingModel::sectionName(section), week::shopSectionId(section));
    m_add->setAccessibleName(tr("Add it to the shopping list"));
    column->addWidget(m_extra);
    auto* where = new QWidget(line); // asked for once there is something to add
    auto* row = new QHBoxLayout(where);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_section, 1);
    row->addWidget(m_add);
    column->addWidget(where);
    where->hide();
    connect(m_extra, &QLineEdit::textChanged, where,
            [where](const QString& text) { where->setVisible(!text.trimmed().isEmpty()); });
    connect(m_extra, &QLineEdit::returnPressed, this, &ShoppingPanel::addExtra);
    connect(m_add, &QPushButton::clicked, this, &ShoppingPanel::addExtra);
    return line;
}

void ShoppingPanel::show(std::shared_ptr<const casebook::Casebook> book,
                         const week::WeekPlan& plan) {
    m_book = std::move(book);
    m_plan = plan;
    const quantity::MeasureSystem measures = m_book->records().family.measures;
    m_amounts->setMeasures(measures);
    const week::ShoppingList list = casebook::shoppingFor(*m_book, plan);
    const int row = m_table->currentIndex().row();
    m_model->setList(list, measures);
    for (int line = 0; line < m_model->rowCount(); ++line) {
        const bool heading = m_model->itemAt(line) == nullptr;
        if (heading != (m_table->columnSpan(line, 0) > 1))
            m_table->setSpan(line, 0, 1, heading ? ShoppingModel::ColumnCount : 1);
    }
    constexpr int firstThing = 1; // under its heading
    if (!m_table->currentIndex().isValid() && m_model->rowCount() > 0)
        m_table->setCurrentIndex(m_model->index(
            std::clamp(row, firstThing, m_model->rowCount() - 1), ShoppingModel::ThingColumn));
    m_table->setVisible(!list.items.isEmpty());
    m_none->setVisible(list.items.isEmpty());
    m_copy->setEnabled(!list.items.isEmpty());
    showTotal(list);
    followChoice();
}

void ShoppingPanel::showTotal(const week::ShoppingList& list) {
    m_total->setVisible(list.total > 0);
    const QString total =
        m_book->records().practice.currency + QLocale().toString(list.total, 'f', 2);
    if (list.withoutPrice == 0)
        m_total->setText(tr("About %1 in all.").arg(total));
    else if (list.withoutPrice == 1)
        m_total->setText(tr("About %1, and one thing without a price.").arg(total));
    else
        m_total->setText(
            tr("About %1, and %2 things without a price.").arg(total).arg(list.withoutPrice));
}

void ShoppingPanel::followChoice() {
    const ShoppingItem* item = m_model->itemAt(m_table->currentIndex().row());
    m_have->setEnabled(item != nullptr && !item->isHousehold());
    m_clear->setEnabled(item != nullptr &&
                        (item->isHousehold() || item->atHome > quantity::Mass()));
}

bool ShoppingPanel::save(const week::WeekPlan& changed, const QString& sentence) {
    return m_context.act(this, sentence, [&](store::Action& action) -> Outcome {
        const Result<WeekPlanId> stored = m_context.workbook.weeks().setPlan(action, changed);
        return stored ? Outcome{} : Outcome(passOn(stored));
    });
}

void ShoppingPanel::setAtHome(const QString& item, quantity::Mass mass) {
    const ShoppingItem* line = m_model->itemAt(m_model->rowOf(item));
    if (line == nullptr)
        return;
    const QString sentence =
        mass > quantity::Mass()
            ? tr("Noted %1 of %2 at home")
                  .arg(quantity::printMass(mass, m_book->records().family.measures), line->name)
            : tr("Noted that there is no %1 at home").arg(line->name);
    save(withAtHome(m_plan, item, mass), sentence);
}

void ShoppingPanel::haveChosen() {
    const ShoppingItem* item = m_model->itemAt(m_table->currentIndex().row());
    if (item == nullptr || item->isHousehold())
        return;
    setAtHome(item->id, item->isAtHome() ? quantity::Mass() : item->needed);
}

void ShoppingPanel::clearChosen() {
    const ShoppingItem* item = m_model->itemAt(m_table->currentIndex().row());
    if (item == nullptr)
        return;
    if (item->isHousehold())
        save(withoutExtra(m_plan, {item->name, item->section}),
             tr("Took %1 off the shopping list").arg(item->name));
    else if (item->atHome > quantity::Mass())
        setAtHome(item->id, {});
}

void ShoppingPanel::addExtra() {
    const QString text = m_extra->trimmed();
    if (text.isEmpty()) {
        m_extra->setFocus();
        return;
    }
    week::HouseholdExtra extra;
    extra.text = text;
    extra.section = week::shopSectionFromId(m_section->currentData().toString())
                        .value_or(week::ShopSection::Household);
    if (!save(withExtra(m_plan, extra), tr("Added %1 to the shopping list").arg(text)))
        return;
    m_extra->clear();
    m_extra->setFocus();
}

void ShoppingPanel::copyToClipboard() {
    QGuiApplication::clipboard()->setText(m_model->asText());
}

} // namespace ladlework::ui
