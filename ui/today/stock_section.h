#pragma once

#include "casebook/casebook.h"
#include "kitchen/lot_moves.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QAction;
class QLabel;
class QTableView;
class QVBoxLayout;

namespace ladlework::ui {

class StockModel;

/// What is in the refrigerator and the freezer, and how it goes from the one to the other or
/// leaves both unused: all that is left of the chosen container, or a part of it. Its actions()
/// belong on the screen that shows it.
class StockSection final : public QWidget {
    Q_OBJECT
public:
    StockSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book);
    using QWidget::show;
    /// For the finding that leads here.
    [[nodiscard]] QTableView* table() const { return m_table; }
    /// How much of the chosen container the next action is about.
    [[nodiscard]] VolumeEdit* amount() const { return m_amount; }

    void freezeChosen();
    void thawChosen();
    void throwChosenAway();

private:
    void dressTable();
    void makeActions();
    QWidget* makeLine();
    void followChoice();
    void sayWhatFollows();
    /// The chosen line; nullptr when there is none.
    [[nodiscard]] const casebook::StockItem* chosen() const;
    /// False, with the sentence told, when the amount cannot be read.
    [[nodiscard]] bool amountIsGood();
    bool store(const Result<kitchen::LotMove>& move, const QString& sentence);
    [[nodiscard]] QString amountOf(const casebook::StockItem& item) const;

    const ScreenContext& m_context;
    QDate m_today;
    int m_fridgeDays = 0;
    QList<kitchen::Batch> m_batches;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    StockModel* m_model;
    QTableView* m_table;
    QLabel* m_empty;
    VolumeEdit* m_amount;
    QAction* m_freeze = nullptr;
    QAction* m_thaw = nullptr;
    QAction* m_gone = nullptr;
    QWidget* m_line = nullptr;
    QLabel* m_follows;
    QVBoxLayout* m_cautions;
};

} // namespace ladlework::ui
