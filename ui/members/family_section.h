#pragma once

#include "casebook/casebook.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QSpinBox;

namespace ladlework::ui {

class DayEdit;
class NoteEdit;
class ProblemLine;
class TextField;

/// The family as a whole: contact, measures and paper, where its kitchen lies and what it can hold.
class FamilySection final : public QWidget {
    Q_OBJECT
public:
    FamilySection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book);
    using QWidget::show;
    [[nodiscard]] QWidget* field(const QString& name) const;

private:
    void fillChoices();
    void connectEdits();
    void showFields();
    void save();

    const ScreenContext& m_context;
    people::Family m_family;
    TextField* m_name;
    NoteEdit* m_contact;
    QComboBox* m_status;
    DayEdit* m_since;
    DayEdit* m_review;
    QComboBox* m_measures;
    QComboBox* m_paper;
    QComboBox* m_language; ///< of the printed pages
    QComboBox* m_zone;
    AltitudeEdit* m_altitude;
    VolumeEdit* m_fridge;
    VolumeEdit* m_freezer;
    MassEdit* m_meat;
    QSpinBox* m_mostOfOne;
    NoteEdit* m_remarks;
    ProblemLine* m_problem;
};

} // namespace ladlework::ui
