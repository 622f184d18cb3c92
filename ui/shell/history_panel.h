#pragma once

#include "ui/shared/screen_context.h"

#include <QWidget>

class QListView;
class QPushButton;

namespace ladlework::ui {

class HistoryModel;

/// What was done, newest first, and the way back to before any of it.
class HistoryPanel final : public QWidget {
    Q_OBJECT
public:
    HistoryPanel(const ScreenContext& context, QWidget* parent);

Q_SIGNALS:
    void closed();
    /// Something was taken back, in whatever family.
    void tookBack();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();
    void updateButton();
    void undoBackTo();

    const ScreenContext& m_context;
    HistoryModel* m_model;
    QListView* m_view;
    QPushButton* m_back;
};

} // namespace ladlework::ui
