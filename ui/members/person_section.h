#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"
#include "ui/shared/section.h"

class QComboBox;
class QLabel;

namespace ladlework::ui {

class DayEdit;
class NoteEdit;
class PhaseChange;
class ProblemLine;
class TextField;

/// Who a member is: name, birth, age band and the practitioner's own band, phase, remarks.
class PersonSection final : public QWidget {
    Q_OBJECT
public:
    PersonSection(const ScreenContext& context, QWidget* parent);
    void show(std::shared_ptr<const casebook::Casebook> casebook,
              const casebook::Standing& standing);
    using QWidget::show;
    /// The input that a finding's field names; nullptr when it is not here.
    [[nodiscard]] QWidget* field(const QString& name) const;

private:
    void lay();
    void connectEdits();
    void showBand();
    void save(const QString& sentence, people::Member changed);
    void saveBand();
    void choosePhase();
    void savePhase();
    void showPhase();

    const ScreenContext& m_context;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    people::Member m_member;
    QDate m_today;
    TextField* m_name;
    DayEdit* m_birth;
    QLabel* m_age;
    QComboBox* m_band;
    TextField* m_bandReason;
    QComboBox* m_phase;
    PhaseChange* m_phaseChange;
    ProblemLine* m_problem;
    NoteEdit* m_remarks;
};

} // namespace ladlework::ui
