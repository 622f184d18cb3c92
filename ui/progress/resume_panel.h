#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"
#include "ui/shared/section.h"

class QComboBox;

namespace ladlework::ui {

class TextField;

/// After a stop: the practitioner's recorded decision to go on, from which rung and why.
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

    const ScreenContext& m_context;
    people::Member m_member;
    QDate m_today;
    QComboBox* m_rung;
    TextField* m_reason;
};

} // namespace ladlework::ui
