#pragma once

#include "quantity/measure.h"
#include "ui/shared/quantity_edit.h"

namespace ladlework::ui {

/// Salt as a kitchen measures it: in spoons of fine table salt where the measures are US, in grams
/// where they are metric. Both are read in both: "1 tsp", "6 g"; a bare number is teaspoons or
/// grams; "none" and "0" are no salt.
class SaltEdit final : public QuantityEdit {
    Q_OBJECT
public:
    /// `teaspoon`: the mass of a teaspoon of fine table salt.
    SaltEdit(quantity::Mass teaspoon, QWidget* parent);

    [[nodiscard]] quantity::Mass value() const { return m_value; }
    void setValue(quantity::Mass salt, quantity::MeasureSystem system);

protected:
    QString read(const QString& text) override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool differs() const override { return m_value != m_set; }
    void settle() override { m_set = m_value; }
    void takeBack() override { m_value = m_set; }

private:
    quantity::Mass m_teaspoon;
    quantity::Mass m_value;
    quantity::Mass m_set;
    quantity::MeasureSystem m_system = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
