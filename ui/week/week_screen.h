#pragma once

#include "ui/shared/family_screen.h"
#include "ui/week/board_model.h"
#include "ui/week/week_changes.h"
#include "week/week_plan.h"

namespace ladlework::ui {

class DayHoursBar;
class KeptWeeks;
class PlanPanel;
class PotChooser;
class ShoppingPanel;
class WeekBoard;
class WeekPlanning;
class WeekStepper;

/// Pots on days, by hand or planned, and how the week goes.
class WeekScreen final : public FamilyScreen {
    Q_OBJECT
public:
    WeekScreen(const ScreenContext& context, QWidget* parent);

    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

    [[nodiscard]] WeekBoard* board() const { return m_board; }
    [[nodiscard]] PotChooser* chooser() const { return m_chooser; }
    [[nodiscard]] WeekStepper* stepper() const { return m_stepper; }
    [[nodiscard]] WeekPlanning* planning() const { return m_planning; }
    [[nodiscard]] PlanPanel* planPanel() const { return m_planPanel; }
    [[nodiscard]] DayHoursBar* hoursBar() const { return m_hours; }
    [[nodiscard]] KeptWeeks* keptWeeks() const { return m_kept; }
    [[nodiscard]] ShoppingPanel* shopping() const { return m_shopping; }

    // What keys, mouse and actions do; each is one step that can be undone.
    void putPot(PotId pot, QDate day);
    void takeOff(qsizetype placement);
    void movePot(qsizetype placement, QDate day);
    void setStart(qsizetype placement, QTime start);
    void copyLastWeek();
    /// A drag is previewed when the week can be reckoned in this time; else it shows once dropped.
    void setPreviewLimit(qint64 nanoseconds) { m_previewLimitNs = nanoseconds; }
    /// Plans the days that are left and not locked; the answer comes later.
    void planWeek();

protected:
    void refresh(bool sameFamily) override;
    void hideEvent(QHideEvent* event) override;

private:
    void makeActions();
    void makePlanActions();
    QWidget* makeMain();
    QWidget* makeBar();
    QWidget* makeSide();
    void connectBoard();
    void connectPlanning();
    void chooseFor(QDate day);
    void followDay();
    void showWeek();
    void showBoard();
    void showPreview(const std::optional<BoardDrop>& drop);
    void showPots();
    [[nodiscard]] QDate currentDay() const;
    /// A proposal is on the board: gives it up, for its pots are not those of the plan.
    bool leftProposal();
    void select(const std::optional<week::Placement>& placement);
    void wantScreen(const QString& screen);

    WeekChanges m_changes;
    WeekStepper* m_stepper;
    WeekBoard* m_board;
    PotChooser* m_chooser;
    ShoppingPanel* m_shopping;
    PlanPanel* m_planPanel;
    WeekPlanning* m_planning;
    DayHoursBar* m_hours = nullptr;
    KeptWeeks* m_kept = nullptr;
    QAction* m_plan = nullptr;
    QAction* m_stop = nullptr;
    QAction* m_lock = nullptr;
    QAction* m_copyLast = nullptr;
    bool m_takingPlan = false; ///< the change of the workbook is the plan that was just found
    qint64 m_lookNs = 0;       ///< what it took to reckon the week in sight
    /// A preview while dragging that takes longer than a frame would make the hand stutter.
    qint64 m_previewLimitNs = 16'000'000;
};

} // namespace ladlework::ui
