#include "ui/families/need_table.h"

#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace ladlework::ui {

namespace {

/// The first column: the mark and its word, or the day.
class MarkDelegate final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        const QVariant severity = index.data(NeedModel::SeverityRole);
        option->displayAlignment = Qt::AlignLeft | Qt::AlignTop;
        if (!severity.isValid() || option->widget == nullptr)
            return;
        const int side = option->fontMetrics.height();
        const double ratio = option->widget->devicePixelRatioF();
        QPixmap pixmap(QSize(side, side) * ratio);
        pixmap.setDevicePixelRatio(ratio);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        const double inset = side * 0.12;
        drawFindingMark(painter, QRectF(inset, inset, side - 2 * inset, side - 2 * inset),
                        static_cast<Finding::Severity>(severity.toInt()),
                        coloursOf(*option->widget));
        painter.end();
        option->features |= QStyleOptionViewItem::HasDecoration;
        option->icon = QIcon(pixmap);
        option->decorationSize = QSize(side, side);
        option->decorationAlignment = Qt::AlignTop | Qt::AlignLeft;
        option->font.setWeight(QFont::DemiBold);
    }
};

class TopDelegate final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        option->displayAlignment = Qt::AlignLeft | Qt::AlignTop;
        if (index.column() == NeedModel::FamilyColumn)
            option->font.setWeight(QFont::DemiBold);
    }
};

} // namespace

NeedTable::NeedTable(const QString& name, QWidget* parent)
    : QTableView(parent), m_model(new NeedModel(this)) {
    setModel(m_model);
    setAccessibleName(name);
    setProperty("bare", true);
    setItemDelegate(new TopDelegate(this));
    setItemDelegateForColumn(NeedModel::MarkColumn, new MarkDelegate(this));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(true);
    setTextElideMode(Qt::ElideRight);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    horizontalHeader()->hide();
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setMinimumSectionSize(1);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(1);
    connect(this, &QTableView::clicked, this, &NeedTable::choose);
}

void NeedTable::setNeeds(const QList<Need>& needs) {
    m_model->setNeeds(needs);
    fitColumns();
}

QSize NeedTable::sizeHint() const {
    return {QTableView::sizeHint().width(), verticalHeader()->length() + 2 * frameWidth()};
}

QSize NeedTable::minimumSizeHint() const {
    const int fewest = 6 * ui::step(*this);
    return {QTableView::minimumSizeHint().width(), std::min(fewest, sizeHint().height())};
}

void NeedTable::fitColumns() {
    const int most = viewport()->width() * 2 / 5;
    for (const int column : {NeedModel::MarkColumn, NeedModel::FamilyColumn}) {
        const int wanted = sizeHintForColumn(column) + ui::step(*this);
        setColumnWidth(column, std::min(wanted, std::max(most, ui::step(*this) * 6)));
    }
    resizeRowsToContents();
    for (int row = 0; row < m_model->rowCount(); ++row)
        setRowHeight(row, rowHeight(row) + ui::step(*this) / 2);
    updateGeometry();
}

void NeedTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitColumns();
}

void NeedTable::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        choose(currentIndex());
    else
        QTableView::keyPressEvent(event);
}

void NeedTable::choose(const QModelIndex& index) {
    if (!index.isValid())
        return;
    const Need need = m_model->need(index.row());
    Q_EMIT wanted(need.family, need.screen);
}

} // namespace ladlework::ui
