#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"
#include "ui/shared/section.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace ladlework::ui {

class ProblemLine;
class TextField;

/// After a stop: the practitioner's recorded decision to go on, from which rung and why. On the day
/// of the stop itself it counts from tomorrow, and can be changed or taken back until then.
class ResumePanel final : public QWidget {
    Q_OBJECT
public:
    ResumePanel(const ScreenContext& context, QWidget* parent);
    /// Visible only while the member's ladder is stopped.
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    using QWidget::show;
    void takeFocus();

private:
    void goOn();
    void takeBack();
    void showPending(const casebook::Standing& standing, quantity::MeasureSystem measures);

    const ScreenContext& m_context;
    people::Member m_member;
    QDate m_day; ///< from which a decision made now counts
    std::optional<intake::Decision> m_pending;
    QComboBox* m_rung;
    TextField* m_reason;
    QLabel* m_when;
    ProblemLine* m_problem;
    QPushButton* m_goOn;
    QPushButton* m_takeBack;
};

} // namespace ladlework::ui
