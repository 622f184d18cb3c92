#include "ui/shell/history_panel.h"

#include "ui/paint/theme.h"
#include "ui/shell/history_model.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace ladlework::ui {

HistoryPanel::HistoryPanel(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_model(new HistoryModel(context.workbook, this)),
      m_view(new QListView), m_back(new QPushButton(tr("Take back to here"))) {
    const int gap = step(*this);
    auto* title = new QLabel(tr("History"));
    title->setFont(sectionFont(font()));
    auto* close = new QToolButton;
    close->setText(tr("Close"));
    close->setAccessibleName(tr("Close the history"));
    connect(close, &QToolButton::clicked, this, &HistoryPanel::closed);
    auto* head = new QHBoxLayout;
    head->addWidget(title, 1);
    head->addWidget(close);

    m_view->setModel(m_model);
    m_view->setAccessibleName(tr("What was done, newest first"));
    m_view->setWordWrap(true);
    m_view->setUniformItemSizes(false);
    m_view->setSpacing(gap / 4);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setResizeMode(QListView::Adjust);
    m_back->setToolTip(tr("Undo the chosen action and everything after it"));

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap);
    column->addLayout(head);
    column->addWidget(m_view, 1);
    column->addWidget(m_back);

    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &HistoryPanel::updateButton);
    connect(m_back, &QPushButton::clicked, this, &HistoryPanel::undoBackTo);
    connect(&context.workbook, &store::Workbook::changed, this, &HistoryPanel::refresh);
    updateButton();
}

void HistoryPanel::showEvent(QShowEvent* event) {
    refresh();
    QWidget::showEvent(event);
}

void HistoryPanel::refresh() {
    if (!isVisible())
        return;
    m_model->refresh();
    updateButton();
}

void HistoryPanel::updateButton() {
    const QModelIndex current = m_view->currentIndex();
    m_back->setEnabled(current.isValid() && !m_model->entry(current.row()).undone);
}

void HistoryPanel::undoBackTo() {
    const QModelIndex current = m_view->currentIndex();
    if (!current.isValid())
        return;
    const qint64 wanted = m_model->entry(current.row()).id;
    store::Workbook& workbook = m_context.workbook;
    for (auto next = workbook.history().nextUndo(); next && next->id >= wanted;
         next = workbook.history().nextUndo()) {
        const Outcome outcome = workbook.undo();
        if (!outcome) {
            m_context.desk.tell(this, outcome.error().sentence);
            break;
        }
    }
    Q_EMIT tookBack();
}

} // namespace ladlework::ui
