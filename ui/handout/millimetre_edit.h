#pragma once

#include <QDoubleSpinBox>

namespace ladlework::ui {

/// A measure of a label sheet in millimetres. "4 in", "4\"" and "1 1/2 in" are taken too.
class MillimetreEdit final : public QDoubleSpinBox {
    Q_OBJECT
public:
    explicit MillimetreEdit(double most, QWidget* parent = nullptr);

    [[nodiscard]] double valueFromText(const QString& text) const override;
    [[nodiscard]] QString textFromValue(double value) const override;
    QValidator::State validate(QString& text, int& position) const override;
};

} // namespace ladlework::ui
