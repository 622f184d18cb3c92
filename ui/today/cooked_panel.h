#pragma once

#include "casebook/casebook.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QHash>
#include <QWidget>

class QComboBox;
class QLabel;
class QSpinBox;
class QToolButton;

namespace ladlework::ui {

class DayEdit;

/// What was cooked comes back: the pot, the day, the stock that came out, and the containers it
/// went into; folded away, how it was cooked where that was not as the pot asks, so that a measured
/// yield teaches of the right vessel. One action makes the batch and its containers.
class CookedPanel final : public QWidget {
    Q_OBJECT
public:
    CookedPanel(const ScreenContext& context, QWidget* parent);
    /// Takes the pots and the plan of a family; the panel itself stays shown or hidden.
    void take(const casebook::Casebook& book);
    [[nodiscard]] QWidget* firstField() const;

Q_SIGNALS:
    void recorded();

private:
    QWidget* makeLine();
    QWidget* makeDifferently();
    void fillPots(const casebook::Casebook& book);
    void suitPot();
    void suitVessel();
    [[nodiscard]] kitchen::AsCooked asCooked() const;
    [[nodiscard]] bool isReadable();
    void showUseBy();
    void record();

    const ScreenContext& m_context;
    FamilyId m_family;
    QDate m_today;
    int m_fridgeDays = 0;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    QComboBox* m_pot;
    DayEdit* m_day;
    VolumeEdit* m_yield;
    QSpinBox* m_fridge;
    QSpinBox* m_freezer;
    QToolButton* m_differently;
    QWidget* m_asCooked;
    QComboBox* m_vessel;
    QComboBox* m_lid;
    VolumeEdit* m_water;
    DurationEdit* m_simmer;
    QLabel* m_useBy;
    QHash<PotId, kitchen::AsCooked> m_planned; ///< what each pot asks for in this kitchen
    QList<kitchen::Vessel> m_vessels;
};

} // namespace ladlework::ui
