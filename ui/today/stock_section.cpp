#include "ui/today/stock_section.h"

#include "kitchen/keeping.h"
#include "ui/paint/theme.h"
#include "ui/shared/action_button.h"
#include "ui/shared/day_text.h"
#include "ui/shared/finding_line.h"
#include "ui/shared/section.h"
#include "ui/today/stock_model.h"

#include <QAction>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLocale>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace ladlework::ui {

using kitchen::Lot;

StockSection::StockSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new StockModel(this)), m_table(new QTableView),
      m_empty(
          new QLabel(tr("No stock is stored. What a cooking yields is stored with its batch."))),
      m_amount(new VolumeEdit), m_follows(new QLabel), m_cautions(new QVBoxLayout) {
    auto* section = new Section(tr("Stock on hand"));
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_empty->setWordWrap(true);
    dressTable();
    makeActions();
    m_line = makeLine();
    section->body()->addWidget(m_table, 1);
    section->body()->addWidget(m_line);
    section->body()->addWidget(m_empty, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(section);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &StockSection::followChoice);
    connect(m_model, &QAbstractItemModel::modelReset, this, &StockSection::followChoice);
    connect(m_amount, &QuantityEdit::valueEdited, this, &StockSection::sayWhatFollows);
}

void StockSection::dressTable() {
    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("Stock on hand"));
    m_table->setProperty("bare", true);
    m_table->setProperty("roomy", true);
    m_table->setShowGrid(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() * 3 / 2);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(StockModel::PotColumn, QHeaderView::Stretch);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    constexpr int rowsSeen = 4;
    m_table->setMinimumHeight((rowsSeen + 1) * fontMetrics().height() * 3 / 2);
}

void StockSection::makeActions() {
    const auto action = [this](const QString& text, const QString& tip,
                               void (StockSection::*done)()) {
        auto* made = new QAction(text, this);
        made->setStatusTip(tip);
        made->setToolTip(tip);
        connect(made, &QAction::triggered, this, done);
        addAction(made);
        return made;
    };
    m_freeze = action(tr("Free&ze it"), tr("Puts the chosen stock into the freezer"),
                      &StockSection::freezeChosen);
    m_thaw = action(tr("&Thaw it"),
                    tr("Puts the chosen stock from the freezer into the "
                       "refrigerator, where it thaws overnight"),
                    &StockSection::thawChosen);
    m_gone = action(tr("Throw it a&way"),
                    tr("Takes the chosen stock off, thrown or given away (Delete, in the list)"),
                    &StockSection::throwChosenAway);
    auto* deletes = new QShortcut(QKeySequence::Delete, m_table);
    deletes->setContext(Qt::WidgetShortcut);
    connect(deletes, &QShortcut::activated, this, &StockSection::throwChosenAway);
}

QWidget* StockSection::makeLine() {
    auto* line = new QWidget;
    auto* column = new QVBoxLayout(line);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    constexpr int amountCharacters = 12;
    m_amount->setAccessibleName(tr("How much of the chosen stock"));
    m_amount->setToolTip(tr("All that is left in it, or less"));
    m_amount->setFixedWidth(fontMetrics().averageCharWidth() * amountCharacters);
    row->addWidget(m_amount);
    row->addWidget(buttonFor(m_freeze));
    row->addWidget(buttonFor(m_thaw));
    row->addWidget(buttonFor(m_gone));
    row->addStretch();
    column->addLayout(row);
    m_follows->setForegroundRole(QPalette::PlaceholderText);
    m_follows->setWordWrap(true);
    column->addWidget(m_follows);
    column->addLayout(m_cautions);
    return line;
}

void StockSection::show(const casebook::Casebook& book) {
    m_today = book.today();
    m_fridgeDays = book.records().practice.fridgeDays;
    m_measures = book.records().family.measures;
    m_batches = book.records().batches;
    const QList<casebook::StockItem> stock = book.stockOnHand();
    const int row = m_table->currentIndex().row();
    m_model->setStock(stock, m_today, m_measures);
    if (!m_table->currentIndex().isValid() && row >= 0 && !stock.isEmpty())
        m_table->selectRow(std::min(row, m_model->rowCount() - 1));
    m_table->setVisible(!stock.isEmpty());
    m_line->setVisible(!stock.isEmpty());
    m_empty->setVisible(stock.isEmpty());
    followChoice();
}

const casebook::StockItem* StockSection::chosen() const {
    const QModelIndex current = m_table->currentIndex();
    return current.isValid() ? &m_model->item(current.row()) : nullptr;
}

void StockSection::followChoice() {
    const casebook::StockItem* item = chosen();
    const bool inFridge = item != nullptr && item->lot.place == Lot::Place::Fridge;
    m_freeze->setEnabled(inFridge && !item->pastUse);
    m_thaw->setEnabled(item != nullptr && !inFridge);
    m_gone->setEnabled(item != nullptr);
    m_amount->setEnabled(item != nullptr);
    if (item != nullptr)
        m_amount->setValue(item->left, m_measures);
    else
        m_amount->clear();
    sayWhatFollows();
}

/// Where the chosen stock can go and until when it keeps there, and what speaks against it.
void StockSection::sayWhatFollows() {
    while (QLayoutItem* old = m_cautions->takeAt(0)) {
        old->widget()->deleteLater();
        delete old;
    }
    const casebook::StockItem* item = chosen();
    if (item == nullptr) {
        m_follows->setText(tr("Choose a container to freeze it, thaw it or throw it away."));
        return;
    }
    if (item->lot.place == Lot::Place::Freezer) {
        m_follows->setText(
            tr("Thawed overnight in the refrigerator, it is to be drunk by %1.")
                .arg(printShortDay(kitchen::thawedUseBy(m_today, m_fridgeDays), QLocale())));
        return;
    }
    if (item->pastUse) {
        m_follows->setText(tr("It is past its day: throw it away."));
        return;
    }
    m_follows->setText(
        tr("In the freezer it is best by %1.")
            .arg(printShortDay(kitchen::useBy(Lot::Place::Freezer, m_today, 0), QLocale())));
    const auto batch = std::ranges::find(m_batches, item->lot.batch, &kitchen::Batch::id);
    if (batch == m_batches.cend())
        return;
    for (const Finding& finding : kitchen::freezeFindings(item->lot, batch->day, m_today))
        m_cautions->addWidget(new FindingLine(finding, m_measures));
}

bool StockSection::amountIsGood() {
    if (m_amount->isGood())
        return true;
    m_context.desk.tell(this, m_amount->problemSentence());
    m_amount->setFocus();
    return false;
}

QString StockSection::amountOf(const casebook::StockItem& item) const {
    return tr("%1 of %2").arg(quantity::printVolume(m_amount->value(), m_measures), item.potName);
}

bool StockSection::store(const Result<kitchen::LotMove>& move, const QString& sentence) {
    return m_context.act(this, sentence, [&](store::Action& action) -> Outcome {
        if (!move)
            return passOn(move);
        store::PotRepository& pots = m_context.workbook.pots();
        if (!move->splits())
            return pots.changeLot(action, move->moved);
        if (const Outcome stays = pots.changeLot(action, *move->stays); !stays)
            return stays;
        const Result<LotId> added = pots.addLot(action, move->moved);
        return added ? Outcome{} : Outcome(passOn(added));
    });
}

void StockSection::freezeChosen() {
    const casebook::StockItem* item = chosen();
    if (item == nullptr || !amountIsGood())
        return;
    store(kitchen::freeze(item->lot, item->left, m_amount->value(), m_today),
          tr("Put %1 into the freezer").arg(amountOf(*item)));
}

void StockSection::thawChosen() {
    const casebook::StockItem* item = chosen();
    if (item == nullptr || !amountIsGood())
        return;
    store(kitchen::thaw(item->lot, item->left, m_amount->value(), m_today, m_fridgeDays),
          tr("Took %1 out of the freezer to thaw").arg(amountOf(*item)));
}

void StockSection::throwChosenAway() {
    const casebook::StockItem* item = chosen();
    if (item == nullptr || !amountIsGood())
        return;
    store(kitchen::throwAway(item->lot, item->left, m_amount->value(), m_today),
          tr("Took %1 off the stock").arg(amountOf(*item)));
}

} // namespace ladlework::ui
