#pragma once

#include "quantity/measure.h"
#include "ui/shared/quantity_edit.h"

namespace ladlework::ui {

/// How each quantity is read from and printed to text; one specialisation a quantity.
template <class Quantity>
struct KitchenText;

template <>
struct KitchenText<quantity::Volume> {
    static Result<quantity::Volume> parse(const QString& text, quantity::MeasureSystem system,
                                          const QString& shown) {
        return quantity::parseVolume(text, system, shown);
    }
    static QString print(quantity::Volume value, quantity::MeasureSystem system) {
        return quantity::printVolume(value, system);
    }
};
template <>
struct KitchenText<quantity::Mass> {
    static Result<quantity::Mass> parse(const QString& text, quantity::MeasureSystem system,
                                        const QString& shown) {
        return quantity::parseMass(text, system, shown);
    }
    static QString print(quantity::Mass value, quantity::MeasureSystem system) {
        return quantity::printMass(value, system);
    }
};
template <>
struct KitchenText<quantity::Duration> {
    static Result<quantity::Duration> parse(const QString& text, quantity::MeasureSystem,
                                            const QString& shown) {
        return quantity::parseDuration(text, shown);
    }
    static QString print(quantity::Duration value, quantity::MeasureSystem) {
        return quantity::printDuration(value);
    }
};
template <>
struct KitchenText<quantity::Length> {
    static Result<quantity::Length> parse(const QString& text, quantity::MeasureSystem system,
                                          const QString& shown) {
        return quantity::parseLength(text, system, shown);
    }
    static QString print(quantity::Length value, quantity::MeasureSystem system) {
        return quantity::printLength(value, system);
    }
};

template <>
struct KitchenText<quantity::Temperature> {
    static Result<quantity::Temperature> parse(const QString& text, quantity::MeasureSystem system,
                                               const QString& shown) {
        return quantity::parseTemperature(text, system, shown);
    }
    static QString print(quantity::Temperature value, quantity::MeasureSystem system) {
        return quantity::printTemperature(value, system);
    }
};

/// The height of a place above the sea: a bare number is feet or metres.
struct AltitudeText {
    static Result<quantity::Length> parse(const QString& text, quantity::MeasureSystem system,
                                          const QString& shown) {
        return quantity::parseAltitude(text, system, shown);
    }
    static QString print(quantity::Length value, quantity::MeasureSystem system) {
        return quantity::printAltitude(value, system);
    }
};

/// An edit of one quantity; the same for every screen. `Text` says how it is read and printed.
template <class Quantity, class Text = KitchenText<Quantity>>
class AmountEdit final : public QuantityEdit {
public:
    using QuantityEdit::QuantityEdit;

    /// The last value that could be read.
    [[nodiscard]] Quantity value() const { return m_value; }
    void setValue(Quantity value, quantity::MeasureSystem system) {
        m_value = value;
        m_set = value;
        m_system = system;
        showValue();
    }

protected:
    QString read(const QString& text) override {
        const Result<Quantity> result = Text::parse(text, m_system, shown());
        if (!result)
            return result.error().sentence;
        m_value = *result;
        return {};
    }
    [[nodiscard]] QString words() const override { return Text::print(m_value, m_system); }
    [[nodiscard]] bool differs() const override { return m_value != m_set; }
    void settle() override { m_set = m_value; }
    void takeBack() override { m_value = m_set; }

private:
    Quantity m_value;
    Quantity m_set;
    quantity::MeasureSystem m_system = quantity::MeasureSystem::UsCustomary;
};

using VolumeEdit = AmountEdit<quantity::Volume>;
using MassEdit = AmountEdit<quantity::Mass>;
using DurationEdit = AmountEdit<quantity::Duration>;
using LengthEdit = AmountEdit<quantity::Length>;
using TemperatureEdit = AmountEdit<quantity::Temperature>;
using AltitudeEdit = AmountEdit<quantity::Length, AltitudeText>;

} // namespace ladlework::ui
