#pragma once

#include "ui/shell/command_model.h"

#include <QFrame>
#include <QPointer>

class QLineEdit;
class QListView;

namespace ladlework::ui {

/// Everything that can be done, found by typing: a panel at the top of the window. Enter does the
/// chosen one, Escape closes; the focus goes back to where it was.
class CommandList final : public QFrame {
    Q_OBJECT
public:
    explicit CommandList(QWidget* window);

    void open(const QList<CommandModel::Command>& commands);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void place();
    void moveBy(int rows);
    void trigger(const QModelIndex& index);
    void close();
    using QFrame::close;

    CommandModel* m_model;
    QLineEdit* m_search;
    QListView* m_view;
    QPointer<QWidget> m_before;
};

} // namespace ladlework::ui
