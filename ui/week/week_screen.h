#pragma once

#include "ui/shared/family_screen.h"
#include "week/week_plan.h"

class QListView;

namespace ladlework::ui {

class PotChooser;
class ShoppingPanel;
class WeekBoard;
class WeekStepper;

/// Pots on days by hand, and how the week goes.
class WeekScreen final : public FamilyScreen {
    Q_OBJECT
public:
    WeekScreen(const ScreenContext& context, QWidget* parent);

    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

    [[nodiscard]] WeekBoard* board() const { return m_board; }
    [[nodiscard]] PotChooser* chooser() const { return m_chooser; }
    [[nodiscard]] WeekStepper* stepper() const { return m_stepper; }
    [[nodiscard]] ShoppingPanel* shopping() const { return m_shopping; }

    // What keys, mouse and actions do; each is one step that can be undone.
    void putPot(PotId pot, QDate day);
    void takeOff(qsizetype placement);
    void movePot(qsizetype placement, QDate day);
    void setStart(qsizetype placement, QTime start);
    void copyLastWeek();
    /// Puts the shopping list on the clipboard.
    void copyShoppingList();

protected:
    void refresh(bool sameFamily) override;

private:
    void makeActions();
    QWidget* makeMain();
    QWidget* makeSide();
    void connectBoard();
    void chooseFor(QDate day);
    void followDay();
    void showWeek();
    [[nodiscard]] Findings retries() const;
    void showPots();
    [[nodiscard]] week::WeekPlan plan() const;
    [[nodiscard]] QString potName(PotId pot) const;
    [[nodiscard]] QString potAt(qsizetype placement) const;
    bool save(const week::WeekPlan& changed, const QString& sentence);
    void select(const week::Placement& placement);

    WeekStepper* m_stepper;
    WeekBoard* m_board;
    PotChooser* m_chooser;
    ShoppingPanel* m_shopping;
    QAction* m_copyLast = nullptr;
};

} // namespace ladlework::ui
