#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QLabel;

namespace ladlework::ui {

class LadderForm;
class Section;
class TargetForm;

/// A member's target and ladder; under 6 months the word that there is none.
class ClimbSection final : public QWidget {
    Q_OBJECT
public:
    ClimbSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    using QWidget::show;
    [[nodiscard]] QWidget* field(const QString& name) const;

private:
    Section* m_targetSection;
    QLabel* m_refer;
    TargetForm* m_target;
    Section* m_ladderSection;
    LadderForm* m_ladder;
};

} // namespace ladlework::ui
