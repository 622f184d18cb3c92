#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QListWidget;
class QPushButton;
class QSpinBox;

namespace ladlework::ui {

class ProblemLine;
class TextField;

/// Conditions of a member that call for care, each with the sentence that prints on the pages.
class CautionSection final : public QWidget {
    Q_OBJECT
public:
    CautionSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void add();
    void clearEntryLine();
    void removeSelected();
    void fitList();
    void suitKind();

    const ScreenContext& m_context;
    people::Member m_member;
    QList<people::Caution> m_cautions;
    QListWidget* m_list;
    QComboBox* m_kind;
    TextField* m_detail;
    QSpinBox* m_sodium;
    QPushButton* m_remove;
    ProblemLine* m_problem;
};

} // namespace ladlework::ui
