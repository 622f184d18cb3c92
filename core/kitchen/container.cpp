#include "kitchen/container.h"

#include "foundation/name.h"
#include "foundation/reference_table.h"
#include "kitchen/id_words.h"

#include <QCoreApplication>
#include <array>
#include <numbers>
#include <stdexcept>
#include <utility>

namespace ladlework::kitchen {

namespace {
constexpr std::array shapeWords{std::pair{Container::Shape::Cylinder, "cylinder"},
                                std::pair{Container::Shape::Tray, "tray"}};
constexpr std::array materialWords{std::pair{Container::Material::Steel, "steel"},
                                   std::pair{Container::Material::Glass, "glass"},
                                   std::pair{Container::Material::Plastic, "plastic"}};

// Bounds against slips of the pen, not against large kitchens.
constexpr quantity::Length narrowest = quantity::Length::fromCentimetres(3);
constexpr quantity::Length widest = quantity::Length::fromCentimetres(100);
constexpr quantity::Length lowest = quantity::Length::fromCentimetres(2);
constexpr quantity::Length highest = quantity::Length::fromCentimetres(80);

/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(Container)
};

tl::unexpected<Problem> bad(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::BadInput, sentence, place);
}

/// Written so that a not-a-number is outside.
bool within(quantity::Length value, quantity::Length least, quantity::Length most) {
    return value >= least && value <= most;
}

template <class Value>
Value known(const std::optional<Value>& value) {
    if (!value)
        throw std::runtime_error("containers.csv: unknown shape or material");
    return *value;
}

Container containerOf(const ReferenceTable::Row& row) {
    const auto centimetres = [&row](const QString& column) {
        return quantity::Length::fromCentimetres(row.number(column));
    };
    Container container;
    container.name = QCoreApplication::translate(
        "Container", row.text(QStringLiteral("name")).toUtf8().constData());
    container.shape = known(containerShapeFromId(row.text(QStringLiteral("shape"))));
    container.across = centimetres(QStringLiteral("across_cm"));
    container.width = centimetres(QStringLiteral("width_cm"));
    container.height = centimetres(QStringLiteral("height_cm"));
    container.material = known(containerMaterialFromId(row.text(QStringLiteral("material"))));
    container.covered = row.flag(QStringLiteral("covered"));
    if (const Outcome sound = check(container); !sound)
        throw std::runtime_error("containers.csv: " + toLine(sound.error()).toStdString());
    return container;
}
} // namespace

double Container::floorSquareMetres() const {
    if (shape == Shape::Tray)
        return across.toMetres() * width.toMetres();
    return std::numbers::pi / 4.0 * across.toMetres() * across.toMetres();
}

quantity::Volume Container::capacity() const {
    constexpr double litresPerCubicMetre = 1000.0;
    return quantity::Volume::fromLitres(floorSquareMetres() * height.toMetres() *
                                        litresPerCubicMetre);
}

Outcome check(const Container& container) {
    const Result<Name> name = Name::from(container.name, Say::tr("container"));
    if (!name)
        return bad(name.error().sentence, QStringLiteral("name"));
    const bool isTray = container.shape == Container::Shape::Tray;
    if (!within(container.across, narrowest, widest))
        return bad(isTray ? Say::tr("The inside length of a tray must be 3 to 100 cm.")
                          : Say::tr("The inside width of a round container must be 3 to 100 cm."),
                   QStringLiteral("across"));
    if (isTray && !within(container.width, narrowest, widest))
        return bad(Say::tr("The inside width of a tray must be 3 to 100 cm."),
                   QStringLiteral("width"));
    if (!isTray && container.width != quantity::Length())
        return bad(Say::tr("A round container has one width only; leave the second out."),
                   QStringLiteral("width"));
    if (!within(container.height, lowest, highest))
        return bad(Say::tr("The inside height of a container must be 2 to 80 cm."),
                   QStringLiteral("height"));
    return {};
}

const std::vector<Container>& usualContainers() {
    static const std::vector<Container> containers = [] {
        const ReferenceTable table =
            valueOrThrow(ReferenceTable::load(QStringLiteral("containers")));
        std::vector<Container> read;
        for (qsizetype index = 0; index < table.size(); ++index)
            read.push_back(containerOf(table.row(index)));
        if (read.empty())
            throw std::runtime_error("containers.csv holds no container");
        return read;
    }();
    return containers;
}

QString containerShapeId(Container::Shape shape) {
    return wordOf(shapeWords, shape);
}

std::optional<Container::Shape> containerShapeFromId(QStringView id) {
    return valueOf<Container::Shape>(shapeWords, id);
}

QString containerMaterialId(Container::Material material) {
    return wordOf(materialWords, material);
}

std::optional<Container::Material> containerMaterialFromId(QStringView id) {
    return valueOf<Container::Material>(materialWords, id);
}

} // namespace ladlework::kitchen
