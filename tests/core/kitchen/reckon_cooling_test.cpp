#include "kitchen/reckon_cooling.h"

#include "foundation/json_reader.h"

#include <gtest/gtest.h>

#include <QJsonArray>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
const QByteArray round = R"({"volume_ml": 6000,
    "container": {"shape": "cylinder", "diameter_cm": 26, "fill_depth_cm": 10, "covered": false,
                  "material": "steel"},
    "start_c": 95,
    "stages": [{"place": "ice-bath", "ambient_c": 1, "minutes": 45, "stirred": true},
               {"place": "refrigerator", "ambient_c": 3, "minutes": 0, "stirred": false}]})";

const QByteArray tray = R"({"volume_ml": 4000,
    "container": {"shape": "tray", "length_cm": 30, "width_cm": 24, "fill_depth_cm": 3,
                  "covered": false, "material": "steel"},
    "start_c": 95,
    "stages": [{"place": "refrigerator", "ambient_c": 3, "minutes": 0, "stirred": false}]})";

QJsonObject object(const QByteArray& json) {
    const Result<QJsonObject> read = parseJsonObject(json);
    if (!read)
        throw std::runtime_error(toLine(read.error()).toStdString());
    return *read;
}

QJsonObject reckoned(const QByteArray& json) {
    const Result<QJsonObject> out = reckonCooling(object(json));
    if (!out)
        throw std::runtime_error(toLine(out.error()).toStdString());
    return *out;
}

QByteArray changed(QByteArray json, const char* from, const char* to) {
    if (!json.contains(from))
        throw std::runtime_error(from);
    return json.replace(from, to);
}

double number(const QJsonObject& json, const char* key) {
    const QJsonValue value = json.value(QLatin1String(key));
    EXPECT_TRUE(value.isDouble()) << key;
    return value.toDouble();
}
} // namespace

TEST(ReckonCoolingTest, GivesExactlyTheKeysOfTheHelp) {
    const QStringList expected{QStringLiteral("curve"),         QStringLiteral("fewest_containers"),
                               QStringLiteral("findings"),      QStringLiteral("min_57c_to_21c"),
                               QStringLiteral("min_57c_to_5c"), QStringLiteral("passes")};
    for (const QByteArray& json : {round, tray}) {
        const QJsonObject out = reckoned(json);
        EXPECT_EQ(out.keys(), expected);
        EXPECT_TRUE(out.value(QStringLiteral("passes")).isBool());
        const QJsonArray curve = out.value(QStringLiteral("curve")).toArray();
        ASSERT_GT(curve.size(), 10);
        ASSERT_LE(curve.size(), 300);
        for (const QJsonValue& point : curve)
            ASSERT_EQ(point.toArray().size(), 3);
        EXPECT_DOUBLE_EQ(curve.first().toArray().at(0).toDouble(), 0);
        EXPECT_DOUBLE_EQ(curve.first().toArray().at(1).toDouble(), 95);
        EXPECT_DOUBLE_EQ(curve.first().toArray().at(2).toDouble(), 95);
        const QJsonObject shared = out.value(QStringLiteral("fewest_containers")).toObject();
        EXPECT_EQ(shared.keys(),
                  (QStringList{QStringLiteral("count"), QStringLiteral("depth_cm")}));
        EXPECT_GT(number(out, "min_57c_to_5c"), number(out, "min_57c_to_21c"));
    }
}

// 4 L at 3 cm in trays of 30 by 24 cm (2.16 L each) are at least two.
TEST(ReckonCoolingTest, AllTheStockIsSharedOutAndOneContainerIsLookedAt) {
    const QJsonObject out = reckoned(tray);
    EXPECT_TRUE(out.value(QStringLiteral("passes")).toBool());
    const QJsonObject shared = out.value(QStringLiteral("fewest_containers")).toObject();
    EXPECT_EQ(number(shared, "count"), 2);
    EXPECT_NEAR(number(shared, "depth_cm"), 4000.0 / 2 / (30 * 24), 1e-9);
    // More stock than the container: the times are still those of the one that is full.
    const QJsonObject more = reckoned(changed(tray, "4000", "9000"));
    EXPECT_EQ(number(more, "min_57c_to_5c"), number(out, "min_57c_to_5c"));
    const auto saysSeveral = [](const QJsonObject& result) {
        const QJsonArray findings = result.value(QStringLiteral("findings")).toArray();
        return std::ranges::any_of(findings, [](const QJsonValue& finding) {
            return finding[QStringLiteral("code")] == QStringLiteral("one-of-several");
        });
    };
    EXPECT_TRUE(saysSeveral(more));
    // Less stock than its fill: the depth is what the volume gives.
    const QJsonObject less = reckoned(changed(tray, "4000", "1000"));
    EXPECT_LT(number(less, "min_57c_to_5c"), number(out, "min_57c_to_5c"));
    const QJsonObject one = less.value(QStringLiteral("fewest_containers")).toObject();
    EXPECT_EQ(number(one, "count"), 1);
    EXPECT_NEAR(number(one, "depth_cm"), 1000.0 / (30 * 24), 1e-9);
    EXPECT_FALSE(saysSeveral(less));
}

TEST(ReckonCoolingTest, NullWhereItIsNeverReached) {
    const QJsonObject out = reckoned(changed(tray, "\"ambient_c\": 3", "\"ambient_c\": 30"));
    EXPECT_TRUE(out.value(QStringLiteral("min_57c_to_21c")).isNull());
    EXPECT_TRUE(out.value(QStringLiteral("min_57c_to_5c")).isNull());
    EXPECT_TRUE(out.value(QStringLiteral("fewest_containers")).isNull());
    EXPECT_FALSE(out.value(QStringLiteral("passes")).toBool());
    EXPECT_FALSE(out.value(QStringLiteral("findings")).toArray().isEmpty());
    const QJsonObject cool = reckoned(changed(tray, "\"ambient_c\": 3", "\"ambient_c\": 12"));
    EXPECT_TRUE(cool.value(QStringLiteral("min_57c_to_21c")).isDouble());
    EXPECT_TRUE(cool.value(QStringLiteral("min_57c_to_5c")).isNull());
}

TEST(ReckonCoolingTest, NamesThePathOfWhatIsWrong) {
    struct Bad {
        const char* place;
        QByteArray json;
    };
    const QList<Bad> cases{
        {"volume_ml", changed(round, "\"volume_ml\": 6000,", "")},
        {"volume_ml", changed(round, "6000", "0")},
        {"volume_ml", changed(round, "6000", "-1")},
        {"volume_ml", changed(round, "6000", "\"much\"")},
        {"volume_ml", changed(round, "6000", "1e9")},
        {"volume_l", changed(round, "\"volume_ml\"", "\"volume_l\": 6, \"volume_ml\"")},
        {"container", changed(round, "\"container\": {", "\"container\": 1, \"box\": {")},
        {"container.shape", changed(round, "\"cylinder\"", "\"ball\"")},
        {"container.shape", changed(round, "\"shape\": \"cylinder\",", "")},
        {"container.diameter_cm", changed(round, "26", "0")},
        {"container.diameter_cm", changed(round, "26", "null")},
        {"container.diameter_cm", changed(tray, "\"length_cm\"",
                                          "\"diameter_cm\": 20, "
                                          "\"length_cm\"")},
        {"container.length_cm", changed(round, "\"diameter_cm\"",
                                        "\"length_cm\": 20, "
                                        "\"diameter_cm\"")},
        {"container.width_cm", changed(tray, "\"width_cm\": 24, ", "")},
        {"container.width_cm", changed(tray, "24", "2")},
        {"container.fill_depth_cm",
         changed(round, "\"fill_depth_cm\": 10", "\"fill_depth_cm\": 0")},
        {"container.fill_depth_cm",
         changed(round, "\"fill_depth_cm\": 10", "\"fill_depth_cm\": 81")},
        {"container.covered", changed(round, "\"covered\": false", "\"covered\": 0")},
        {"container.material", changed(round, "\"steel\"", "\"wood\"")},
        {"start_c", changed(round, "95", "106")},
        {"start_c", changed(round, "95", "-1")},
        {"start_c", changed(round, "95", "true")},
        {"stages", changed(tray,
                           "[{\"place\": \"refrigerator\", \"ambient_c\": 3, \"minutes\": 0, "
                           "\"stirred\": false}]",
                           "[]")},
        {"stages[0].place", changed(round, "\"ice-bath\"", "\"cellar\"")},
        {"stages[0].ambient_c", changed(round, "\"ambient_c\": 1", "\"ambient_c\": 51")},
        {"stages[0].minutes", changed(round, "45", "-45")},
        {"stages[1].stirred", changed(round, "\"stirred\": false", "\"stirred\": null")},
        {"stages[1].minutes", changed(round, ", \"minutes\": 0", "")},
        {"stages[1].fan",
         changed(round, "\"stirred\": false", "\"stirred\": false, \"fan\": true")},
    };
    for (const Bad& bad : cases) {
        const auto out = reckonCooling(object(bad.json));
        ASSERT_FALSE(out) << bad.place;
        EXPECT_EQ(out.error().kind, Problem::Kind::BadInput);
        EXPECT_EQ(out.error().place.toStdString(), bad.place);
        EXPECT_FALSE(out.error().sentence.isEmpty());
    }
}

} // namespace ladlework::kitchen
