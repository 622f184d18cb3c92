#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableView;

namespace ladlework::ui {

class Section;
class StockModel;

/// What is in the refrigerator and the freezer, and how a container leaves it unused.
class StockSection final : public QWidget {
    Q_OBJECT
public:
    StockSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book);
    using QWidget::show;
    /// For the finding that leads here.
    [[nodiscard]] QTableView* table() const { return m_table; }

private:
    void markGone();

    const ScreenContext& m_context;
    QDate m_today;
    StockModel* m_model;
    QTableView* m_table;
    QLabel* m_empty;
    QPushButton* m_gone;
};

} // namespace ladlework::ui
