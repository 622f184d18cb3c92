#pragma once

#include "handout/family_handout.h"
#include "ui/shared/section.h"

class QCheckBox;
class QComboBox;

namespace ladlework::ui {

class WeekStepper;

/// How the pages are made: week, names, language, paper, large print. Each change speaks at once.
class HandoutOptionsPanel final : public QWidget {
    Q_OBJECT
public:
    explicit HandoutOptionsPanel(QWidget* parent = nullptr);

    /// Shows options; `paper` and `language` are what the family has when none is chosen. Says
    /// nothing.
    void setOptions(const handout::HandoutOptions& options, people::Paper paper,
                    const QString& language);
    /// Writes week, names, language, paper and large print into options.
    void takeInto(handout::HandoutOptions& options) const;
    void setToday(QDate today);
    [[nodiscard]] WeekStepper* stepper() const { return m_stepper; }

Q_SIGNALS:
    void optionsChanged();

private:
    QWidget* makeForm();

    WeekStepper* m_stepper;
    QComboBox* m_names;
    QComboBox* m_language;
    QComboBox* m_paper;
    QCheckBox* m_largePrint;
};

} // namespace ladlework::ui
