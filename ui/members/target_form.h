#pragma once

#include "casebook/casebook.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QFormLayout;
class QLabel;
class QPushButton;
class QSpinBox;

namespace ladlework::ui {

class DayEdit;
class ProblemLine;

/// A member's daily target: its range, how long it is held, and the plan to ease off, with what
/// that asks when in words.
class TargetForm final : public QWidget {
    Q_OBJECT
public:
    TargetForm(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    using QWidget::show;
    /// "target", "easeOffFrom"; nullptr for another.
    [[nodiscard]] QWidget* field(const QString& name) const;

private:
    void makeRange(QFormLayout& form);
    void makeHold(QFormLayout& form);
    void makeEasing(QFormLayout& form);
    void showUsual();
    void showEasing();
    void takeUsual();
    void save();
    [[nodiscard]] intake::Target typed() const;
    [[nodiscard]] QString sentenceOf(const intake::Target& target) const;
    [[nodiscard]] bool isKeptInPlace(const intake::Target& target) const;
    Outcome write(store::Action& action, const intake::Target& target, bool inPlace) const;

    const ScreenContext& m_context;
    std::optional<casebook::Standing> m_standing;
    QDate m_today;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    VolumeEdit* m_low;
    VolumeEdit* m_high;
    QSpinBox* m_holdDays;
    DayEdit* m_easeOff;
    QSpinBox* m_easeEvery;
    VolumeEdit* m_easeTo;
    QLabel* m_easingWords;
    QPushButton* m_usual;
    ProblemLine* m_problem;
};

} // namespace ladlework::ui
