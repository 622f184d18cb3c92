#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"

#include <QWidget>
#include <memory>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace ladlework::ui {

class ProblemLine;
class RetryForm;
class RetryModel;

/// A member's retries: the plans, the form that makes one, and the line that records how one went,
/// which writes the tolerance note.
class RetrySection final : public QWidget {
    Q_OBJECT
public:
    RetrySection(const ScreenContext& context, QWidget* parent);
    void show(std::shared_ptr<const casebook::Casebook> casebook,
              const casebook::Standing& standing);
    using QWidget::show;
    /// Opens the form for a new plan; refused in words when something is in the way of a retry.
    void plan(const people::Subject& subject);
    [[nodiscard]] QWidget* firstField() const;

private:
    QWidget* makeOutcomeLine();
    void showParts();
    void editChosen();
    void removeChosen();
    void recordOutcome();
    Outcome write(store::Action& action, const people::RetryPlan& plan) const;
    [[nodiscard]] const people::RetryPlan* chosen() const;
    [[nodiscard]] people::RetryPlan newPlan(const people::Subject& subject) const;

    const ScreenContext& m_context;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    people::Member m_member;
    RetryModel* m_model;
    QTableView* m_table;
    QLabel* m_empty;
    RetryForm* m_form;
    ProblemLine* m_problem;
    QPushButton* m_edit;
    QPushButton* m_remove;
    QComboBox* m_outcome;
    QLineEdit* m_seen;
    QPushButton* m_record;
    QWidget* m_outcomeLine;
};

} // namespace ladlework::ui
