#include "kitchen/catalogue.h"

#include <QCoreApplication>
#include <array>
#include <stdexcept>
#include <utility>

namespace ladlework::kitchen {

namespace {
constexpr std::array classWords{std::pair{CookClass::Poultry, "poultry"},
                                std::pair{CookClass::LandAnimal, "land-animal"},
                                std::pair{CookClass::Fish, "fish"}};

constexpr std::array kindWords{
    std::pair{Extra::Kind::Vegetable, "vegetable"},
    std::pair{Extra::Kind::Garlic, "garlic"},
    std::pair{Extra::Kind::FreshHerb, "fresh-herb"},
    std::pair{Extra::Kind::DryHerb, "dry-herb"},
    std::pair{Extra::Kind::Peppercorns, "peppercorns"},
    std::pair{Extra::Kind::GroundPepper, "ground-pepper"},
    std::pair{Extra::Kind::Salt, "salt"},
    std::pair{Extra::Kind::Other, "other"},
};

template <class Value>
const Value* found(const std::vector<Value>& values, const QHash<QString, qsizetype>& index,
                   const QString& id) {
    const auto place = index.constFind(id);
    return place == index.cend() ? nullptr : &values.at(static_cast<size_t>(*place));
}
} // namespace

QString cookClassId(CookClass cookClass) {
    for (const auto& [value, word] : classWords)
        if (value == cookClass)
            return QLatin1String(word);
    throw std::logic_error("a cook class without a word");
}

QString extraKindId(Extra::Kind kind) {
    for (const auto& [value, word] : kindWords)
        if (value == kind)
            return QLatin1String(word);
    throw std::logic_error("a kind of extra without a word");
}

std::optional<Extra::Kind> extraKindFromId(QStringView id) {
    for (const auto& [value, word] : kindWords)
        if (id == QLatin1String(word))
            return value;
    return std::nullopt;
}

QString cited(const Provenance& provenance) {
    return QCoreApplication::translate("Catalogue", "%1 (%2)")
        .arg(provenance.source, provenance.basis);
}

const Animal* Catalogue::animal(const QString& id) const {
    return found(m_animals, m_animalIndex, id);
}

const Cut* Catalogue::cut(const QString& id) const {
    return found(m_cuts, m_cutIndex, id);
}

const Extra* Catalogue::extra(const QString& id) const {
    return found(m_extras, m_extraIndex, id);
}

const CookWindow& Catalogue::window(CookClass cookClass) const {
    return *m_windows.at(static_cast<size_t>(cookClass));
}

const CookWindow& Catalogue::window(const Cut& cut) const {
    return cut.bareBone ? *m_windows.back() : window(cut.cookClass);
}

const Figure& Catalogue::figure(const QString& id) const {
    const auto place = m_figures.constFind(id);
    if (place == m_figures.cend())
        throw std::logic_error("unknown figure " + id.toStdString());
    return *place;
}

bool Catalogue::covers(const QString& subjectId, const QString& cutOrExtraId) const {
    if (subjectId == cutOrExtraId)
        return true;
    if (const Extra* ingredient = extra(cutOrExtraId))
        return ingredient->countsAs.contains(subjectId);
    const Cut* known = cut(cutOrExtraId);
    if (known == nullptr)
        return false;
    if (subjectId == known->animal || animal(known->animal)->countsAs.contains(subjectId))
        return true;
    // The wider words: a class of land animals is no word that people use of an allergy.
    const CookClass wide = known->cookClass;
    return wide != CookClass::LandAnimal && subjectId == cookClassId(wide);
}

QString Catalogue::nameOf(const QString& id) const {
    if (const Animal* known = animal(id))
        return known->name;
    if (const Cut* known = cut(id))
        return known->name;
    if (const Extra* known = extra(id))
        return known->name;
    if (id == cookClassId(CookClass::Poultry))
        return QCoreApplication::translate("Catalogue", "poultry");
    if (id == cookClassId(CookClass::Fish))
        return QCoreApplication::translate("Catalogue", "fish");
    return id;
}

bool Catalogue::knowsSubject(const QString& subjectId) const {
    return animal(subjectId) != nullptr || cut(subjectId) != nullptr ||
           extra(subjectId) != nullptr || subjectId == cookClassId(CookClass::Poultry) ||
           subjectId == cookClassId(CookClass::Fish);
}

} // namespace ladlework::kitchen
