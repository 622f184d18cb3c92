#pragma once

#include "casebook/casebook.h"
#include "week/week_solver.h"

#include <QWidget>

class QTableView;

namespace ladlework::ui {

class BoardModel;
class BoardView;
class ServingsModel;
class WeekPicture;

/// Seven columns under one another: the pots on the stove, the picture of the stock, and who gets
/// how much. The three share their column edges.
class WeekBoard final : public QWidget {
    Q_OBJECT
public:
    explicit WeekBoard(QWidget* parent = nullptr);

    /// Shows a plan and how it goes, `solution` being that of `ahead`; everything is updated in
    /// place.
    void show(const casebook::Casebook& casebook, const week::WeekPlan& plan,
              const casebook::WeekAhead& ahead, const week::WeekSolution& solution);
    /// Shows how another plan would go, in the picture and the table only: the pots stay.
    void preview(const casebook::Casebook& casebook, const week::WeekPlan& plan,
                 const casebook::WeekAhead& ahead, const week::WeekSolution& solution);

    [[nodiscard]] BoardModel* model() const { return m_model; }
    [[nodiscard]] BoardView* view() const { return m_view; }
    [[nodiscard]] ServingsModel* servings() const { return m_servings; }
    [[nodiscard]] WeekPicture* picture() const { return m_picture; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QTableView* makeTable();
    void setHours(const casebook::Casebook& casebook, const week::WeekPlan& plan);
    void setGutter();
    void fitTable();

    BoardModel* m_model;
    BoardView* m_view;
    WeekPicture* m_picture;
    ServingsModel* m_servings;
    QTableView* m_table;
    QWidget* m_stove;
};

/// "makes 2¾ quarts": the stock that a pot gives in this family's kitchen.
QString yieldWords(const casebook::Casebook& casebook, const kitchen::Pot& pot);

} // namespace ladlework::ui
