#include "ui/shell/window_fixture.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QTabBar>

namespace ladlework::ui {
namespace {

void addCells(QStringList& texts, const QAbstractItemModel& model, const QModelIndex& parent) {
    for (int row = 0; row < model.rowCount(parent); ++row) {
        for (int column = 0; column < model.columnCount(parent); ++column) {
            const QModelIndex cell = model.index(row, column, parent);
            texts << cell.data().toString() << cell.data(Qt::ToolTipRole).toString();
            addCells(texts, model, cell);
        }
    }
}

void addMenu(QStringList& texts, const QMenu& menu) {
    for (const QAction* action : menu.actions()) {
        if (!action->isVisible())
            continue;
        texts << action->text() << action->toolTip() << action->statusTip();
        if (action->menu() != nullptr)
            addMenu(texts, *action->menu());
    }
}

} // namespace

QStringList WindowFixture::visibleTexts() const {
    QStringList texts{m_window->windowTitle()};
    for (const QWidget* widget : m_window->findChildren<QWidget*>()) {
        if (!widget->isVisible())
            continue;
        texts << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription();
        if (const auto* label = qobject_cast<const QLabel*>(widget))
            texts << label->text();
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget))
            texts << button->text();
        if (const auto* edit = qobject_cast<const QLineEdit*>(widget))
            texts << edit->text() << edit->placeholderText();
        if (const auto* edit = qobject_cast<const QPlainTextEdit*>(widget))
            texts << edit->toPlainText();
        if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
            for (int item = 0; item < box->count(); ++item)
                texts << box->itemText(item);
        }
        if (const auto* view = qobject_cast<const QAbstractItemView*>(widget);
            view != nullptr && view->model() != nullptr)
            addCells(texts, *view->model(), view->rootIndex());
    }
    for (const QAction* action : m_window->menuBar()->actions()) {
        if (action->menu() != nullptr)
            addMenu(texts, *action->menu());
    }
    texts.removeAll(QString());
    return texts;
}

} // namespace ladlework::ui
