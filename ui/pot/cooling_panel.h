#pragma once

#include "casebook/casebook.h"
#include "kitchen/cooling.h"
#include "ui/shared/amount_edit.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QSpinBox;

namespace ladlework::ui {

class CoolingCurve;
class FindingMark;

/// How the strained stock of a pot cools: what it is put into, which way and into how many, the
/// curve against the two limits, and the verdict. Container and way are the pot's own; how many and
/// how warm the kitchen is are tried out here only.
class CoolingPanel final : public QWidget {
    Q_OBJECT
public:
    explicit CoolingPanel(QWidget* parent);
    /// Takes the pot; the curve is reckoned by reckon(), which may wait for a quiet moment.
    void take(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
              const casebook::Casebook& book);
    /// Shows how it cools, and gives what there is to say about it.
    Findings reckon();
    /// The control that a finding's field names; nullptr when it is none of these.
    [[nodiscard]] QWidget* field(const QString& name) const;
    [[nodiscard]] QWidget* firstField() const;

Q_SIGNALS:
    /// One of the family's containers, or a usual one whose id is not stored.
    void containerChosen(const ladlework::kitchen::Container& container);
    void wayChosen(ladlework::kitchen::CoolingWay way);
    /// What is tried out here changed: reckon anew.
    void tried();

private:
    void layOut();
    void connectEdits();
    void fillContainers(const casebook::Casebook& book);
    [[nodiscard]] kitchen::CoolingInput input() const;
    void sayVerdict(const kitchen::Cooling& cooling, int count,
                    const std::optional<kitchen::SharedOut>& fewest);
    [[nodiscard]] QString shareWords(int count) const;
    [[nodiscard]] QString printDepth(quantity::Length depth) const;
    [[nodiscard]] QString stageWords(const std::optional<quantity::Duration>& reached,
                                     double celsius, quantity::Duration within) const;

    QComboBox* m_container;
    QComboBox* m_way;
    QSpinBox* m_count;
    TemperatureEdit* m_room;
    CoolingCurve* m_curve;
    FindingMark* m_mark;
    QLabel* m_verdict;
    QLabel* m_note;
    QList<kitchen::Container> m_containers; ///< as they stand in the list
    kitchen::Container m_chosen;
    PotId m_pot;
    bool m_isShared = false; ///< a pot of the practice, which can keep no family's container
    bool m_isTried = false;  ///< what was chosen for such a pot
    quantity::Volume m_stock;
    quantity::Temperature m_start;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
