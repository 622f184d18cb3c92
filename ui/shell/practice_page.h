#pragma once

#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QSpinBox;
class QTableView;

namespace ladlework::ui {

class LadderHouseSection;
class NoteEdit;
class PhasesModel;
class ProblemLine;
class Section;
class SymptomsSection;
class TextField;

/// The practice: its letterhead, its house rules, its phases, the rules of its ladders and
/// its list of reactions. Every change is made at once.
class PracticePage final : public QWidget {
    Q_OBJECT
public:
    PracticePage(const ScreenContext& context, QWidget* parent);
    /// Shows what the workbook holds.
    void refresh();

protected:
    void showEvent(QShowEvent* event) override;

private:
    [[nodiscard]] Section* makeLetterhead();
    [[nodiscard]] Section* makeRules();
    [[nodiscard]] Section* makePhases();
    void fillChoices();
    void connectFields();
    void save(const QString& sentence);

    const ScreenContext& m_context;
    TextField* m_name;
    TextField* m_practitioner;
    NoteEdit* m_contact;
    TextField* m_emergency;
    QComboBox* m_measures;
    QComboBox* m_paper;
    QComboBox* m_zone;
    QSpinBox* m_fridgeDays;
    QSpinBox* m_spill;
    TextField* m_currency;
    PhasesModel* m_phases;
    QTableView* m_phaseView;
    ProblemLine* m_problem;
    ProblemLine* m_phaseProblem;
    LadderHouseSection* m_ladders;
    SymptomsSection* m_symptoms;
};

} // namespace ladlework::ui
