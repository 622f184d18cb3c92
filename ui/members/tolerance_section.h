#pragma once

#include "casebook/casebook.h"
#include "ui/members/tolerance_model.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QPushButton;
class QTableView;

namespace ladlework::ui {

class DayEdit;
class SubjectPicker;
class TextField;

/// How a member takes what: the notes so far, and a line to add one.
class ToleranceSection final : public QWidget {
    Q_OBJECT
public:
    ToleranceSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book, const casebook::Standing& standing);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

private:
    QWidget* makeEntryLine();
    void suitVerdict();
    void add();
    void clearEntryLine();
    void removeSelected();

    const ScreenContext& m_context;
    people::Member m_member;
    QDate m_today;
    ToleranceModel* m_model;
    QTableView* m_table;
    SubjectPicker* m_subject;
    QComboBox* m_verdict;
    QCheckBox* m_allergy;
    TextField* m_reason;
    DayEdit* m_tryAgain;
    QPushButton* m_remove;
};

} // namespace ladlework::ui
