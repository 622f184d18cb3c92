#include "ui/week/board_view.h"

#include "ui/paint/theme.h"
#include "ui/week/board_delegate.h"
#include "ui/week/day_header.h"

#include <QDragMoveEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>

namespace ladlework::ui {

BoardView::BoardView(BoardModel* model, QWidget* parent) : QTableView(parent), m_model(model) {
    setHorizontalHeader(new DayHeader(this));
    setModel(model);
    setItemDelegate(new BoardDelegate(this));
    setAccessibleName(tr("Pots on the days of the week"));
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
    setDragDropMode(QAbstractItemView::DragDrop);
    setDragDropOverwriteMode(true);
    setDropIndicatorShown(true);
    setTabKeyNavigation(false);
    // The delegate shows the selection; a filled cell would hide its words.
    setStyleSheet(QStringLiteral("QTableView { selection-background-color: transparent; }"));
    setShowGrid(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    verticalHeader()->hide();
    fitRows();
    for (auto signal : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
        connect(model, signal, this, &BoardView::fitRows);
    connect(model, &QAbstractItemModel::dataChanged, this, &BoardView::setRowHeights);
}

void BoardView::fitRows() {
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultSectionSize(BoardDelegate::heightFor(*this));
    setRowHeights();
}

void BoardView::setRowHeights() {
    const int filled = std::max(1, m_model->filledRows());
    bool changed = false;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const int height =
            row < filled ? BoardDelegate::heightFor(*this) : BoardDelegate::emptyHeightFor(*this);
        changed = changed || rowHeight(row) != height;
        setRowHeight(row, height);
    }
    if (changed || minimumHeight() == 0)
        updateGeometry();
}

QSize BoardView::sizeHint() const {
    return {QTableView::sizeHint().width(), horizontalHeader()->sizeHint().height() +
                                                verticalHeader()->length() + 2 * frameWidth()};
}

QSize BoardView::minimumSizeHint() const {
    const int column =
        fontMetrics().horizontalAdvance(tr("makes 2\u00be quarts")) + 3 * step(*this) / 2;
    return {week::daysAWeek * column + 2 * frameWidth(), sizeHint().height()};
}

void BoardView::moveCurrent(int days) {
    const qsizetype placement = m_model->placementAt(currentIndex());
    const int column = currentIndex().column() + days;
    if (placement >= 0 && column >= 0 && column < week::daysAWeek)
        Q_EMIT moveWanted(placement, m_model->dayOf(column));
}

void BoardView::keyPressEvent(QKeyEvent* event) {
    const bool editing = state() == QAbstractItemView::EditingState;
    if (editing || !currentIndex().isValid()) {
        QTableView::keyPressEvent(event);
        return;
    }
    const bool control = event->modifiers() == Qt::ControlModifier;
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT chooserWanted(m_model->dayOf(currentIndex().column()));
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        if (m_model->placementAt(currentIndex()) >= 0)
            Q_EMIT removeWanted(m_model->placementAt(currentIndex()));
        return;
    case Qt::Key_Left:
    case Qt::Key_Right:
        if (!control)
            break;
        moveCurrent(event->key() == Qt::Key_Left ? -1 : 1);
        return;
    default:
        break;
    }
    QTableView::keyPressEvent(event);
}

void BoardView::mouseDoubleClickEvent(QMouseEvent* event) {
    const QModelIndex index = indexAt(event->pos());
    if (!index.isValid())
        return;
    if (m_model->placementAt(index) >= 0)
        edit(index);
    else
        Q_EMIT chooserWanted(m_model->dayOf(index.column()));
}

void BoardView::hover(const std::optional<BoardDrop>& drop) {
    if (drop == m_hovered)
        return;
    m_hovered = drop;
    Q_EMIT dropHovered(drop);
}

void BoardView::dragMoveEvent(QDragMoveEvent* event) {
    QTableView::dragMoveEvent(event);
    hover(m_model->dropOf(event->mimeData(), indexAt(event->position().toPoint())));
}

void BoardView::dragLeaveEvent(QDragLeaveEvent* event) {
    QTableView::dragLeaveEvent(event);
    hover(std::nullopt);
}

void BoardView::dropEvent(QDropEvent* event) {
    hover(std::nullopt);
    QTableView::dropEvent(event);
}

void BoardView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitRows();
}

} // namespace ladlework::ui
