#pragma once

#include "casebook/casebook.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ladlework::ui {

class LadderRulesPanel;
class ProblemLine;
class RungStairs;
class TextField;

/// A member's ladder: laid out from a start or from a template of the practice, its rungs typed or
/// dragged, and the rules of the ladder machine.
class LadderForm final : public QWidget {
    Q_OBJECT
public:
    LadderForm(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    using QWidget::show;
    /// "ladder"; nullptr for another.
    [[nodiscard]] QWidget* field(const QString& name) const;

private:
    void makeStart(QFormLayout& form);
    void makeRungs(QFormLayout& form);
    void connectParts();
    void showLadder();
    void showNoLadder();
    void showTemplates();
    void holdWhileStopped();
    void layOut();
    void takeTemplate();
    void keepTemplate();
    void saveRungsText();
    void saveRungs(const QList<quantity::Volume>& rungs);
    void saveRules();
    void startAfresh();
    bool write(intake::Ladder ladder, bool afresh, const QString& sentence);
    [[nodiscard]] intake::Ladder ladderWith(const QList<quantity::Volume>& rungs) const;
    [[nodiscard]] Result<QList<quantity::Volume>> typedRungs() const;
    [[nodiscard]] bool isStopped() const;
    [[nodiscard]] QString rungsText(const QList<quantity::Volume>& rungs) const;
    [[nodiscard]] QString whereWords() const;

    const ScreenContext& m_context;
    std::optional<casebook::Standing> m_standing;
    QList<intake::LadderTemplate> m_kept;
    intake::LadderRules m_houseRules;
    QDate m_today;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    VolumeEdit* m_start;
    QPushButton* m_layOut;
    QComboBox* m_templates;
    QPushButton* m_afresh;
    QLabel* m_rungsLabel = nullptr;
    TextField* m_rungs;
    RungStairs* m_stairs;
    QWidget* m_keepLine = nullptr;
    QLineEdit* m_templateName;
    QLabel* m_where;
    QLabel* m_rulesLabel = nullptr;
    LadderRulesPanel* m_rules;
    ProblemLine* m_problem;
};

} // namespace ladlework::ui
