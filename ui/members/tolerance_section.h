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
class ProblemLine;
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

Q_SIGNALS:
    /// A retry of the chosen note's subject is to be planned.
    void retryWanted(const ladlework::people::Subject& subject);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* makeEntryLine();
    void suitVerdict();
    void add();
    void clearEntryLine();
    void removeSelected();
    void changeSelected();
    void suitButtons();
    void unfold(bool unfolded);
    [[nodiscard]] Outcome mayStand(const people::ToleranceNote& note) const;

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
    QPushButton* m_change;
    QPushButton* m_retry;
    ProblemLine* m_problem;
    QList<people::ToleranceNote> m_notes;
    QList<people::Caution> m_cautions;
};

} // namespace ladlework::ui
