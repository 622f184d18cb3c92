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
class LadderRulesPanel;
class Section;
class TextField;

/// A member's target and ladder: the daily range, how long it is held, the start, the rungs, and
/// the rules of the ladder machine.
class ClimbSection final : public QWidget {
    Q_OBJECT
public:
    ClimbSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    using QWidget::show;
    [[nodiscard]] QWidget* field(const QString& name) const;

private:
    void makeTarget(QFormLayout& form);
    void makeLadder(QFormLayout& form);
    void showTarget();
    void showLadder();
    void holdWhileStopped();
    void takeUsualTarget();
    void saveTarget();
    void layOutRungs();
    void saveRungs();
    void saveRules();
    void startAfresh();
    void storeLadder(intake::Ladder ladder, bool afresh, const QString& sentence);
    [[nodiscard]] bool isStopped() const;
    [[nodiscard]] QString rungsText(const QList<quantity::Volume>& rungs) const;

    const ScreenContext& m_context;
    std::optional<casebook::Standing> m_standing;
    QDate m_today;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;

    Section* m_section;
    QWidget* m_body;
    QLabel* m_refer;
    VolumeEdit* m_low;
    VolumeEdit* m_high;
    QSpinBox* m_holdDays;
    DayEdit* m_easeOff;
    QPushButton* m_usual;
    VolumeEdit* m_start;
    TextField* m_rungs;
    QLabel* m_where;
    QLabel* m_rungsLabel = nullptr;
    QLabel* m_rulesLabel = nullptr;
    QPushButton* m_layOut;
    QPushButton* m_afresh;
    LadderRulesPanel* m_rules;
};

} // namespace ladlework::ui
