#pragma once

#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace ladlework::ui {

/// Takes on a family: a name is enough, the rest starts as the practice has it and can be changed
/// later on Members.
class NewFamilyPanel final : public QWidget {
    Q_OBJECT
public:
    NewFamilyPanel(const ScreenContext& context, QWidget* parent);

    /// Empties the panel for another family and puts the focus on the name.
    void startAfresh();

Q_SIGNALS:
    void familyMade(FamilyId family);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void takeOn();
    void followMeasures();
    [[nodiscard]] quantity::MeasureSystem measures() const;

    const ScreenContext& m_context;
    QLineEdit* m_name;
    QPlainTextEdit* m_contact;
    QComboBox* m_measures;
    QComboBox* m_paper;
    AltitudeEdit* m_altitude;
    QPushButton* m_takeOn;
};

} // namespace ladlework::ui
