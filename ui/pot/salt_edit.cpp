#include "ui/pot/salt_edit.h"

#include <algorithm>

namespace ladlework::ui {

using quantity::Mass;
using quantity::MeasureSystem;
using quantity::Volume;

namespace {

bool isBareNumber(const QString& text) {
    return std::ranges::none_of(text, [](QChar c) { return c.isLetter(); });
}

} // namespace

SaltEdit::SaltEdit(Mass teaspoon, QWidget* parent) : QuantityEdit(parent), m_teaspoon(teaspoon) {}

void SaltEdit::setValue(Mass salt, MeasureSystem system) {
    m_value = salt;
    m_set = salt;
    m_system = system;
    showValue();
}

QString SaltEdit::read(const QString& text) {
    const QString plain = text.trimmed();
    if (plain.compare(tr("none"), Qt::CaseInsensitive) == 0) {
        m_value = {};
        return {};
    }
    const bool spoons = m_system == MeasureSystem::UsCustomary && isBareNumber(plain);
    if (!spoons)
        if (const Result<Mass> mass = quantity::parseMass(plain, m_system)) {
            m_value = *mass;
            return {};
        }
    // A bare number is of the spoons that were shown, or of teaspoons.
    const QString spoon = shown().isEmpty() || shown() == tr("none") ? tr("1 tsp") : shown();
    const Result<Volume> volume = quantity::parseVolume(plain, m_system, spoon);
    if (!volume || plain.isEmpty())
        return tr("Write the salt like \"1 tsp\" or \"6 g\", or \"none\".");
    m_value = m_teaspoon * (*volume / Volume::fromTeaspoons(1));
    return {};
}

QString SaltEdit::words() const {
    if (m_value <= Mass{})
        return tr("none");
    return m_system == MeasureSystem::UsCustomary
               ? quantity::printVolume(Volume::fromTeaspoons(m_value / m_teaspoon), m_system)
               : quantity::printMass(m_value, m_system);
}

} // namespace ladlework::ui
