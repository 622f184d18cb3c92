#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "ui/shared/amount_edit.h"

#include <QWidget>

class QAction;
class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace ladlework::ui {

class FindingMark;

/// The actions that size a pot backwards from what is wanted.
struct SizeActions {
    QAction* fit = nullptr;
    QAction* cover = nullptr;
    QAction* bones = nullptr;
    QAction* lowMeat = nullptr;
};

/// The sizes of a pot: a button for each action with the field that it asks beside it, and below
/// them in words what was done, or why it cannot be.
class SizePanel final : public QWidget {
    Q_OBJECT
public:
    SizePanel(const SizeActions& actions, QWidget* parent);
    /// `keepingDays`: the days that are offered until others are typed.
    void show(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue,
              quantity::MeasureSystem measures, int keepingDays);
    using QWidget::show;
    [[nodiscard]] int days() const;
    [[nodiscard]] QString cut() const; ///< catalogue id
    [[nodiscard]] quantity::Mass bones() const;

    /// What an action did; empty text takes the words away.
    void say(const QString& sentence);
    /// Why it did nothing; `field` is the place of the Problem.
    void refuse(const QString& sentence, const QString& field);

private:
    QWidget* makeCover(QPushButton* cover);
    QWidget* makeBones(QPushButton* bones);
    void fillCuts(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue);
    void suitCut();

    QSpinBox* m_days;
    QComboBox* m_cut;
    MassEdit* m_mass;
    FindingMark* m_mark;
    QLabel* m_words;
    PotId m_pot;
    QList<kitchen::CutInPot> m_cuts;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
