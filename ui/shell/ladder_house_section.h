#pragma once

#include "ui/shared/screen_context.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace ladlework::ui {

class LadderRulesPanel;
class ProblemLine;
class TemplatesModel;

/// What new ladders of the practice start with: the rules, and the templates of rungs it keeps.
class LadderHouseSection final : public QWidget {
    Q_OBJECT
public:
    LadderHouseSection(const ScreenContext& context, QWidget* parent);
    void refresh();

private:
    void saveRules();

    const ScreenContext& m_context;
    LadderRulesPanel* m_rules;
    ProblemLine* m_problem;
    TemplatesModel* m_model;
    QTableView* m_table;
    QLabel* m_empty;
};

} // namespace ladlework::ui
