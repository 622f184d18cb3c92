#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"
#include "week/shopping.h"
#include "week/week_plan.h"

#include <QWidget>
#include <memory>

class QAction;
class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace ladlework::ui {

class AmountDelegate;
class Section;
class ShoppingModel;
class TextField;

/// The shopping list of a week, with what is at home, and things to buy that no pot asks for. Its
/// actions() belong on the screen that shows it.
class ShoppingPanel final : public QWidget {
    Q_OBJECT
public:
    explicit ShoppingPanel(const ScreenContext& context, QWidget* parent = nullptr);

    /// `plan` has its family and start, also when it is not stored yet.
    void show(std::shared_ptr<const casebook::Casebook> book, const week::WeekPlan& plan);
    using QWidget::show;

    [[nodiscard]] ShoppingModel* model() const { return m_model; }
    [[nodiscard]] QTableView* table() const { return m_table; }
    [[nodiscard]] TextField* extra() const { return m_extra; }
    [[nodiscard]] QComboBox* extraSection() const { return m_section; }

    // What keys, mouse and actions do; each is one step that can be undone.
    void setAtHome(const QString& item, quantity::Mass mass);
    /// All of the chosen thing is at home; when it is already, nothing of it.
    void haveChosen();
    /// Takes a household extra off the list, or what is at home of the chosen thing away.
    void clearChosen();
    /// Adds what is written below the list.
    void addExtra();
    void copyToClipboard();

private:
    void makeActions();
    QWidget* makeExtraLine();
    void showTotal(const week::ShoppingList& list);
    void followChoice();
    bool save(const week::WeekPlan& changed, const QString& sentence);

    const ScreenContext& m_context;
    std::shared_ptr<const casebook::Casebook> m_book;
    week::WeekPlan m_plan;
    ShoppingModel* m_model;
    QTableView* m_table;
    AmountDelegate* m_amounts;
    QLabel* m_none;
    QLabel* m_total;
    TextField* m_extra;
    QComboBox* m_section;
    QPushButton* m_add;
    QAction* m_have = nullptr;
    QAction* m_clear = nullptr;
    QAction* m_copy = nullptr;
};

} // namespace ladlework::ui
