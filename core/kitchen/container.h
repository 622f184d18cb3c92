#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "quantity/length.h"
#include "quantity/volume.h"

#include <QString>
#include <optional>
#include <vector>

namespace ladlework::kitchen {

/// What stock is cooled and kept in: a dish, a jar, a pot.
struct Container {
    enum class Shape { Cylinder, Tray };
    enum class Material { Steel, Glass, Plastic };

    ContainerId id;
    FamilyId family;
    QString name; ///< "the roasting tray", "quart jar"
    Shape shape = Shape::Cylinder;
    quantity::Length across; ///< inside: diameter of a cylinder, length of a tray
    quantity::Length width;  ///< inside, of a tray; 0 for a cylinder
    quantity::Length height; ///< inside
    Material material = Material::Steel;
    bool covered = false; ///< while it cools

    /// Square metres of its floor.
    [[nodiscard]] double floorSquareMetres() const;
    /// Brim-full.
    [[nodiscard]] quantity::Volume capacity() const;
    friend bool operator==(const Container&, const Container&) = default;
};

/// Name non-blank; across 3-100 cm; width of a tray 3-100 cm, of a cylinder 0; height 2-80 cm. The
/// place of the Problem is the field.
Outcome check(const Container& container);

/// What kitchens usually have (resources/reference/containers.csv), ids not stored; the first is
/// what is taken when nothing is chosen. Broken resources are a broken invariant (throws).
const std::vector<Container>& usualContainers();

QString containerShapeId(Container::Shape shape); ///< "cylinder", "tray"
std::optional<Container::Shape> containerShapeFromId(QStringView id);
QString containerMaterialId(Container::Material material); ///< "steel", "glass", "plastic"
std::optional<Container::Material> containerMaterialFromId(QStringView id);

} // namespace ladlework::kitchen
