#pragma once

#include "casebook/casebook.h"

#include <QWidget>

class QLabel;

namespace ladlework::ui {

class CalibrationDrawing;

/// What the family's measured batches have taught of the vessel that a pot is cooked in; where
/// there are none yet, how to come by them.
class CalibrationPanel final : public QWidget {
    Q_OBJECT
public:
    explicit CalibrationPanel(QWidget* parent);
    void show(const kitchen::Vessel& vessel, const casebook::Casebook& book);
    using QWidget::show;

private:
    [[nodiscard]] QString learnt(const kitchen::Calibration& calibration) const;

    QLabel* m_vessel;
    QLabel* m_words;
    CalibrationDrawing* m_drawing;
    QLabel* m_method;
};

} // namespace ladlework::ui
