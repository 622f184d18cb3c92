#pragma once

#include "casebook/casebook.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QSpinBox;

namespace ladlework::ui {

class DayEdit;

/// What was cooked comes back: the pot, the day, the stock that came out, and the containers it
/// went into. One action makes the batch and its containers.
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
    void fillPots(const casebook::Casebook& book);
    void suitPot();
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
    QLabel* m_useBy;
};

} // namespace ladlework::ui
