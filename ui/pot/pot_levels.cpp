#include "ui/pot/pot_levels.h"

#include <algorithm>
#include <numbers>

namespace ladlework::ui {

using quantity::Length;
using quantity::Volume;

PotLevels::PotLevels(const kitchen::Vessel& vessel, const kitchen::Brewed& brewed)
    : m_height(vessel.height), m_diameter(vessel.diameter), m_bones(brewed.bonesVolume),
      m_covered(brewed.covered) {
    const double radius = m_diameter.toCentimetres() / 2;
    m_areaCm2 = std::max(1.0, std::numbers::pi * radius * radius);
}

Length PotLevels::heightOf(Volume volume) const {
    return std::min(m_height, Length::fromCentimetres(volume.toMillilitres() / m_areaCm2));
}

Length PotLevels::bones() const {
    return heightOf(m_bones + m_covered);
}

Length PotLevels::surface(Volume water) const {
    // Below the top of the bones the water only fills the room between them.
    if (water < m_covered && m_covered > Volume{})
        return heightOf((m_bones + m_covered) * (water / m_covered));
    return heightOf(m_bones + water);
}

Volume PotLevels::water(Length surface) const {
    const Volume below =
        Volume::fromMillilitres(std::max(0.0, surface.toCentimetres()) * m_areaCm2);
    const Volume packed = m_bones + m_covered;
    if (below < packed && packed > Volume{})
        return m_covered * (below / packed);
    return below - m_bones;
}

} // namespace ladlework::ui
