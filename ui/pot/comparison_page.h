#pragma once

#include "casebook/casebook.h"

#include <QWidget>
#include <memory>

class QComboBox;
class QLabel;
class QTableView;

namespace ladlework::ui {

class ComparisonModel;

/// The chosen pot beside another one. Escape goes back to the builder.
class ComparisonPage final : public QWidget {
    Q_OBJECT
public:
    explicit ComparisonPage(QWidget* parent);
    void show(const kitchen::Pot& pot, std::shared_ptr<const casebook::Casebook> book);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

Q_SIGNALS:
    void leave();

private:
    QWidget* makeHead();
    void fillOthers();
    void compare();

    std::shared_ptr<const casebook::Casebook> m_book;
    kitchen::Pot m_pot;
    QComboBox* m_other;
    QLabel* m_title;
    QLabel* m_sum;
    ComparisonModel* m_model;
    QTableView* m_table;
};

} // namespace ladlework::ui
