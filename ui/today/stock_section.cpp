#include "ui/today/stock_section.h"

#include "ui/paint/theme.h"
#include "ui/shared/section.h"
#include "ui/today/stock_model.h"

#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

StockSection::StockSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new StockModel(this)), m_table(new QTableView),
      m_empty(
          new QLabel(tr("No stock is stored. What a cooking yields is stored with its batch."))),
      m_gone(new QPushButton(tr("Thrown or given away"))) {
    auto* section = new Section(tr("Stock on hand"));
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_empty->setWordWrap(true);
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
    m_gone->setToolTip(tr("Takes the chosen container off the stock, from today on"));
    section->addAction(m_gone);
    section->body()->addWidget(m_table, 1);
    section->body()->addWidget(m_empty, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(section);

    const auto follow = [this] {
        m_gone->setEnabled(m_table->currentIndex().isValid());
    };
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, follow);
    connect(m_model, &QAbstractItemModel::modelReset, this, follow);
    connect(m_gone, &QPushButton::clicked, this, &StockSection::markGone);
    follow();
}

void StockSection::show(const casebook::Casebook& book) {
    m_today = book.today();
    const QList<casebook::StockItem> stock = book.stockOnHand();
    m_model->setStock(stock, m_today, book.records().family.measures);
    m_table->setVisible(!stock.isEmpty());
    m_gone->setVisible(!stock.isEmpty());
    m_empty->setVisible(stock.isEmpty());
}

void StockSection::markGone() {
    const QModelIndex current = m_table->currentIndex();
    if (!current.isValid())
        return;
    const casebook::StockItem item = m_model->item(current.row());
    kitchen::Lot lot = item.lot;
    lot.goneOn = m_today;
    m_context.act(this, tr("Took %1 off the stock").arg(item.potName), [&](store::Action& action) {
        return m_context.workbook.pots().changeLot(action, lot);
    });
}

} // namespace ladlework::ui
