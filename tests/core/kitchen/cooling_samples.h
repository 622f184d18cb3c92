#pragma once

#include "kitchen/cooling.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace ladlework::kitchen::samples {

inline quantity::Temperature celsius(double number) {
    return quantity::Temperature::fromCelsius(number);
}

inline quantity::Length centimetres(double number) {
    return quantity::Length::fromCentimetres(number);
}

inline CoolingStage refrigerator(double ambientC = 3) {
    return {CoolingStage::Place::Refrigerator, celsius(ambientC), {}, false};
}

/// A steel cylinder.
inline Container potOf(double diameterCm, double heightCm, bool covered = false) {
    Container container;
    container.name = QStringLiteral("pot");
    container.across = centimetres(diameterCm);
    container.height = centimetres(heightCm);
    container.covered = covered;
    return container;
}

/// A steel pan of 12 by 10 inches.
inline Container pan(double heightCm) {
    Container container;
    container.name = QStringLiteral("pan");
    container.shape = Container::Shape::Tray;
    container.across = quantity::Length::fromInches(12);
    container.width = quantity::Length::fromInches(10);
    container.height = centimetres(heightCm);
    return container;
}

/// A full container of stock just off the boil, in a refrigerator at 3 °C (37 °F).
inline CoolingInput full(const Container& container) {
    return {container.capacity(), container, celsius(95), {refrigerator()}};
}

inline const Finding* findingOf(const Cooling& cooling, QStringView code) {
    const auto place = std::ranges::find(cooling.findings, code, &Finding::code);
    return place == cooling.findings.end() ? nullptr : &*place;
}

} // namespace ladlework::kitchen::samples
