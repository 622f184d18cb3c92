#pragma once

#include "quantity/measure.h"
#include "ui/shared/quantity_edit.h"

namespace ladlework::ui {

/// The height of a kitchen above the sea. Like a LengthEdit, but a bare number is feet or metres,
/// not inches or centimetres.
class AltitudeEdit final : public QuantityEdit {
    Q_OBJECT
public:
    using QuantityEdit::QuantityEdit;

    /// The last value that could be read.
    [[nodiscard]] quantity::Length value() const { return m_value; }
    void setValue(quantity::Length value, quantity::MeasureSystem system);

protected:
    QString read(const QString& text) override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool differs() const override { return m_value != m_set; }
    void settle() override { m_set = m_value; }
    void takeBack() override { m_value = m_set; }

private:
    quantity::Length m_value;
    quantity::Length m_set;
    quantity::MeasureSystem m_system = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
