#pragma once

#include "ui/shared/screen_context.h"

#include <QWidget>

class QLineEdit;
class QTableView;

namespace ladlework::ui {

class ProblemLine;
class SymptomsModel;

/// The practice's list of reactions: names, order, red flags. The published red flags stand beside
/// it and cannot be taken out.
class SymptomsSection final : public QWidget {
    Q_OBJECT
public:
    SymptomsSection(const ScreenContext& context, QWidget* parent);
    void refresh();

private:
    QWidget* makeAddLine();
    void add();
    void move(int way);

    SymptomsModel* m_model;
    QTableView* m_table;
    QLineEdit* m_name;
    ProblemLine* m_problem;
};

} // namespace ladlework::ui
