#pragma once

#include "kitchen/brew.h"

namespace ladlework::ui {

/// How high things stand in the vessel: the arithmetic between volumes and the height of the water
/// line, for the drawing and for dragging it. Heights are inside the vessel, from its floor.
class PotLevels {
public:
    PotLevels() = default;
    PotLevels(const kitchen::Vessel& vessel, const kitchen::Brewed& brewed);

    [[nodiscard]] quantity::Length height() const { return m_height; }
    [[nodiscard]] quantity::Length diameter() const { return m_diameter; }
    /// The top of the bones as they pack; at most the vessel's height.
    [[nodiscard]] quantity::Length bones() const;
    /// Where the surface stands for so much water; at most the vessel's height.
    [[nodiscard]] quantity::Length surface(quantity::Volume water) const;
    /// The water that brings the surface to a height: the inverse of surface().
    [[nodiscard]] quantity::Volume water(quantity::Length surface) const;

private:
    [[nodiscard]] quantity::Length heightOf(quantity::Volume volume) const;
    quantity::Length m_height;
    quantity::Length m_diameter;
    quantity::Volume m_bones;
    quantity::Volume m_covered;
    double m_areaCm2 = 1.0;
};

} // namespace ladlework::ui
