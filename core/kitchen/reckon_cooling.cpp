#include "kitchen/reckon_cooling.h"

#include "foundation/finding_json.h"
#include "foundation/json_reader.h"
#include "kitchen/cooling.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QLocale>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(ReckonCooling)
};

// Bounds against slips of the pen; check() of a container holds the same widths.
constexpr double mostMl = 100000;
constexpr double narrowestCm = 3;
constexpr double widestCm = 100;
constexpr double deepestCm = 80;
constexpr double coldestStockC = 0;
constexpr double hottestStockC = 105;
constexpr double coldestPlaceC = -30;
constexpr double hottestPlaceC = 50;
constexpr double longestMinutes = 7.0 * 24 * 60;

/// All there is to cool, and the container of it that is looked at.
struct ToCool {
    quantity::Volume total;
    CoolingInput one;
};

double positive(JsonReader& reader, const QString& key, double most) {
    const double value = reader.number(key, 0, most);
    if (!reader.failed() && value <= 0)
        reader.fail(key, Say::tr("This must be more than zero."));
    return value;
}

Container readContainer(JsonReader& reader) {
    Container container;
    reader.readObject(QStringLiteral("container"), [&container](JsonReader& inner) {
        const auto width = [&inner](const QString& key) {
            return quantity::Length::fromCentimetres(inner.number(key, narrowestCm, widestCm));
        };
        const QString shapeKey = QStringLiteral("shape");
        const auto shape = containerShapeFromId(inner.text(shapeKey));
        if (!shape)
            inner.fail(shapeKey, Say::tr("This must be cylinder or tray."));
        container.name = Say::tr("container");
        container.shape = shape.value_or(Container::Shape::Cylinder);
        // What does not belong to the shape is never asked for, and so refused.
        if (container.shape == Container::Shape::Tray) {
            container.across = width(QStringLiteral("length_cm"));
            container.width = width(QStringLiteral("width_cm"));
        } else {
            container.across = width(QStringLiteral("diameter_cm"));
        }
        container.height = quantity::Length::fromCentimetres(
            positive(inner, QStringLiteral("fill_depth_cm"), deepestCm));
        container.covered = inner.flag(QStringLiteral("covered"));
        const QString materialKey = QStringLiteral("material");
        const auto material = containerMaterialFromId(inner.text(materialKey));
        if (!material)
            inner.fail(materialKey, Say::tr("This must be steel, glass or plastic."));
        container.material = material.value_or(Container::Material::Steel);
    });
    return container;
}

std::vector<CoolingStage> readStages(JsonReader& reader) {
    const QString key = QStringLiteral("stages");
    std::vector<CoolingStage> stages;
    reader.readEach(key, [&stages](JsonReader& inner) {
        CoolingStage stage;
        const QString placeKey = QStringLiteral("place");
        const auto place = coolingPlaceFromId(inner.text(placeKey));
        if (!place)
            inner.fail(placeKey, Say::tr("This must be counter, refrigerator or ice-bath."));
        stage.place = place.value_or(CoolingStage::Place::Refrigerator);
        stage.ambient = quantity::Temperature::fromCelsius(
            inner.number(QStringLiteral("ambient_c"), coldestPlaceC, hottestPlaceC));
        stage.time = quantity::Duration::fromMinutes(
            inner.number(QStringLiteral("minutes"), 0, longestMinutes));
        stage.stirred = inner.flag(QStringLiteral("stirred"));
        stages.push_back(stage);
    });
    if (!reader.failed() && stages.empty())
        reader.fail(key, Say::tr("The stock stands nowhere; add at least one stage."));
    return stages;
}

Result<ToCool> readInput(const QJsonObject& object) {
    JsonReader reader(object, {});
    ToCool input;
    input.total =
        quantity::Volume::fromMillilitres(positive(reader, QStringLiteral("volume_ml"), mostMl));
    input.one.container = readContainer(reader);
    input.one.start = quantity::Temperature::fromCelsius(
        reader.number(QStringLiteral("start_c"), coldestStockC, hottestStockC));
    input.one.stages = readStages(reader);
    if (const Outcome done = reader.finish(); !done)
        return passOn(done);
    input.one.volume = std::min(input.total, input.one.container.capacity());
    return input;
}

/// The verdict is that of one full container: what does not fit into it is said.
Finding oneOfSeveral(const ToCool& input) {
    Finding finding;
    finding.code = QStringLiteral("one-of-several");
    finding.severity = Finding::Severity::Note;
    finding.text = Say::tr("Filled so deep, one container holds %1 mL of the %2 mL; times and "
                           "verdict are of one, and the rest needs more of them.")
                       .arg(QLocale().toString(input.one.volume.toMillilitres(), 'f', 0),
                            QLocale().toString(input.total.toMillilitres(), 'f', 0));
    finding.field = QStringLiteral("volume");
    finding.value = input.total.toMillilitres();
    finding.limit = input.one.volume.toMillilitres();
    finding.unit = QStringLiteral("mL");
    return finding;
}

QJsonValue minutes(const std::optional<quantity::Duration>& duration) {
    return duration ? QJsonValue(duration->toMinutes()) : QJsonValue();
}

QJsonArray toJson(const std::vector<CoolingPoint>& curve) {
    QJsonArray array;
    for (const CoolingPoint& point : curve)
        array.append(
            QJsonArray{point.at.toMinutes(), point.core.toCelsius(), point.surface.toCelsius()});
    return array;
}

QJsonValue toJson(const std::optional<SharedOut>& shared) {
    if (!shared)
        return {};
    return QJsonObject{{QStringLiteral("depth_cm"), shared->depth.toCentimetres()},
                       {QStringLiteral("count"), shared->count}};
}
} // namespace

Result<QJsonObject> reckonCooling(const QJsonObject& input) {
    const Result<ToCool> read = readInput(input);
    if (!read)
        return passOn(read);
    Cooling cooling = cool(read->one);
    if (read->total > read->one.volume)
        cooling.findings.append(oneOfSeveral(*read));
    return QJsonObject{
        {QStringLiteral("min_57c_to_21c"), minutes(cooling.toMiddle)},
        {QStringLiteral("min_57c_to_5c"), minutes(cooling.toEnd)},
        {QStringLiteral("passes"), cooling.passes},
        {QStringLiteral("curve"), toJson(cooling.curve)},
        {QStringLiteral("fewest_containers"), toJson(fewestContainers(read->total, read->one))},
        {QStringLiteral("findings"), findingsJson(cooling.findings)}};
}

} // namespace ladlework::kitchen
