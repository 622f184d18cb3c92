#include "foundation/json_reader.h"

#include <functional>

#include <gtest/gtest.h>

namespace ladlework {
namespace {

JsonReader readerOf(const char* json, const QString& path = {}) {
    const Result<QJsonObject> object = parseJsonObject(json);
    EXPECT_TRUE(object.has_value()) << json;
    return {object.value_or(QJsonObject()), path};
}

TEST(JsonReaderTest, ReadsEveryKindOfValue) {
    JsonReader reader = readerOf(R"({"name":"Ann","raw":true,"mass_g":1.5,"count":3,
        "day":"2024-02-29","list":[1,2],"inner":{"a":1},"none":null})");
    EXPECT_EQ(reader.text(QStringLiteral("name")), QStringLiteral("Ann"));
    EXPECT_TRUE(reader.flag(QStringLiteral("raw")));
    EXPECT_EQ(reader.number(QStringLiteral("mass_g"), 0, 10), 1.5);
    EXPECT_EQ(reader.integer(QStringLiteral("count"), 0, 10), 3);
    EXPECT_EQ(reader.day(QStringLiteral("day")), QDate(2024, 2, 29));
    EXPECT_EQ(reader.array(QStringLiteral("list")).size(), 2);
    EXPECT_EQ(reader.object(QStringLiteral("inner")).size(), 1);
    EXPECT_TRUE(reader.has(QStringLiteral("none")));
    EXPECT_FALSE(reader.has(QStringLiteral("other")));
    EXPECT_FALSE(reader.failed());
}

TEST(JsonReaderTest, TakesTheEndsOfARange) {
    JsonReader reader = readerOf(R"({"a":0,"b":10,"c":-1,"d":1})");
    EXPECT_EQ(reader.number(QStringLiteral("a"), 0, 10), 0.0);
    EXPECT_EQ(reader.number(QStringLiteral("b"), 0, 10), 10.0);
    EXPECT_EQ(reader.integer(QStringLiteral("c"), -1, 1), -1);
    EXPECT_EQ(reader.integer(QStringLiteral("d"), -1, 1), 1);
    EXPECT_TRUE(reader.finish().has_value());
}

struct WrongCase {
    const char* json;
    std::function<void(JsonReader&)> read;
};

void readText(JsonReader& r) {
    r.text(QStringLiteral("k"));
}
void readFlag(JsonReader& r) {
    r.flag(QStringLiteral("k"));
}
void readNumber(JsonReader& r) {
    r.number(QStringLiteral("k"), -10, 10);
}
void readInteger(JsonReader& r) {
    r.integer(QStringLiteral("k"), -10, 10);
}
void readDay(JsonReader& r) {
    r.day(QStringLiteral("k"));
}
void readArray(JsonReader& r) {
    r.array(QStringLiteral("k"));
}
void readObject(JsonReader& r) {
    r.object(QStringLiteral("k"));
}
void readOptionalText(JsonReader& r) {
    r.optionalText(QStringLiteral("k"));
}
void readOptionalNumber(JsonReader& r) {
    r.optionalNumber(QStringLiteral("k"), -10, 10);
}
void readOptionalInteger(JsonReader& r) {
    r.optionalInteger(QStringLiteral("k"), -10, 10);
}
void readFlagOr(JsonReader& r) {
    r.flagOr(QStringLiteral("k"), true);
}
void readOptionalTexts(JsonReader& r) {
    r.optionalTexts(QStringLiteral("k"));
}

TEST(JsonReaderTest, RefusesMissingKeysWrongTypesAndWrongRanges) {
    const WrongCase cases[] = {
        {R"({})", readText},
        {R"({})", readFlag},
        {R"({})", readNumber},
        {R"({})", readInteger},
        {R"({})", readDay},
        {R"({})", readArray},
        {R"({})", readObject},
        {R"({"K":"other case"})", readText},
        {R"({"k":1})", readText},
        {R"({"k":null})", readText},
        {R"({"k":"true"})", readFlag},
        {R"({"k":1})", readFlag},
        {R"({"k":"1"})", readNumber},
        {R"({"k":true})", readNumber},
        {R"({"k":10.0001})", readNumber},
        {R"({"k":-10.0001})", readNumber},
        {R"({"k":1e999})", readNumber},
        {R"({"k":1.5})", readInteger},
        {R"({"k":11})", readInteger},
        {R"({"k":1e30})", readInteger},
        {R"({"k":"3"})", readInteger},
        {R"({"k":20240229})", readDay},
        {R"({"k":"2023-02-29"})", readDay},
        {R"({"k":"2024-2-9"})", readDay},
        {R"({"k":"29.02.2024"})", readDay},
        {R"({"k":"2024-02-29T00:00"})", readDay},
        {R"({"k":"12024-02-29"})", readDay},
        {R"({"k":""})", readDay},
        {R"({"k":{}})", readArray},
        {R"({"k":[]})", readObject},
        {R"({"k":null})", readOptionalText},
        {R"({"k":11})", readOptionalNumber},
        {R"({"k":1.5})", readOptionalInteger},
        {R"({"k":"no"})", readFlagOr},
        {R"({"k":"one"})", readOptionalTexts},
    };
    for (const WrongCase& c : cases) {
        SCOPED_TRACE(c.json);
        const Result<QJsonObject> object = parseJsonObject(c.json);
        if (!object)
            continue; // 1e999 may be refused by the parser already
        JsonReader reader(*object, {});
        c.read(reader);
        EXPECT_TRUE(reader.failed());
        const Outcome outcome = reader.finish();
        ASSERT_FALSE(outcome.has_value());
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_EQ(outcome.error().place, QStringLiteral("k"));
        EXPECT_FALSE(outcome.error().sentence.isEmpty());
    }
}

TEST(JsonReaderTest, SaysTheRangeThatWouldDo) {
    JsonReader reader = readerOf(R"({"altitude_m":-5000})");
    reader.number(QStringLiteral("altitude_m"), -500, 9000.5);
    EXPECT_EQ(toLine(reader.finish().error()),
              QStringLiteral("altitude_m: This must be a number from -500 to 9000.5."));
}

TEST(JsonReaderTest, GivesNothingForAbsentOptionalKeys) {
    JsonReader reader = readerOf("{}");
    const QString key = QStringLiteral("k");
    EXPECT_EQ(reader.optionalText(key), std::nullopt);
    EXPECT_EQ(reader.optionalNumber(key, 0, 1), std::nullopt);
    EXPECT_EQ(reader.optionalInteger(key, 0, 1), std::nullopt);
    EXPECT_TRUE(reader.flagOr(key, true));
    EXPECT_FALSE(reader.flagOr(key, false));
    EXPECT_EQ(reader.optionalTexts(key), QStringList());
    EXPECT_TRUE(reader.finish().has_value());
}

TEST(JsonReaderTest, ReadsPresentOptionalKeys) {
    JsonReader reader = readerOf(R"({"a":"x","b":0.5,"c":1,"d":false,"e":["y","z"]})");
    EXPECT_EQ(reader.optionalText(QStringLiteral("a")), QStringLiteral("x"));
    EXPECT_EQ(reader.optionalNumber(QStringLiteral("b"), 0, 1), 0.5);
    EXPECT_EQ(reader.optionalInteger(QStringLiteral("c"), 0, 1), 1);
    EXPECT_FALSE(reader.flagOr(QStringLiteral("d"), true));
    EXPECT_EQ(reader.optionalTexts(QStringLiteral("e")),
              (QStringList{QStringLiteral("y"), QStringLiteral("z")}));
    EXPECT_TRUE(reader.finish().has_value());
}

TEST(JsonReaderTest, NamesThePathOfEveryPlace) {
    const JsonReader top = readerOf("{}");
    EXPECT_EQ(top.pathOf(QStringLiteral("altitude_m")), QStringLiteral("altitude_m"));
    EXPECT_EQ(top.pathOf(QStringLiteral("cuts"), 1), QStringLiteral("cuts[1]"));
    const JsonReader inner = readerOf("{}", top.pathOf(QStringLiteral("cuts"), 1));
    EXPECT_EQ(inner.pathOf(QStringLiteral("mass_g")), QStringLiteral("cuts[1].mass_g"));

    JsonReader texts = readerOf(R"({"may_not":["fish",7]})", QStringLiteral("members[0]"));
    EXPECT_EQ(texts.optionalTexts(QStringLiteral("may_not")), QStringList());
    EXPECT_EQ(texts.finish().error().place, QStringLiteral("members[0].may_not[1]"));
}

TEST(JsonReaderTest, KeepsTheFirstProblemAndReadsDefaultsAfterIt) {
    JsonReader reader = readerOf(R"({"a":1,"b":"x","c":true,"d":4,"e":5,"f":[1],"g":{"h":1},
        "i":"2024-01-01","j":["z"],"unknown":0})");
    EXPECT_EQ(reader.text(QStringLiteral("a")), QString());
    EXPECT_EQ(reader.text(QStringLiteral("b")), QString());
    EXPECT_FALSE(reader.flag(QStringLiteral("c")));
    EXPECT_EQ(reader.number(QStringLiteral("d"), 0, 10), 0.0);
    EXPECT_EQ(reader.integer(QStringLiteral("e"), 0, 10), 0);
    EXPECT_EQ(reader.array(QStringLiteral("f")), QJsonArray());
    EXPECT_EQ(reader.object(QStringLiteral("g")), QJsonObject());
    EXPECT_FALSE(reader.day(QStringLiteral("i")).isValid());
    EXPECT_EQ(reader.optionalTexts(QStringLiteral("j")), QStringList());
    EXPECT_FALSE(reader.optionalText(QStringLiteral("b")).has_value());
    EXPECT_FALSE(reader.optionalNumber(QStringLiteral("d"), 0, 10).has_value());
    EXPECT_FALSE(reader.optionalInteger(QStringLiteral("e"), 0, 10).has_value());
    EXPECT_TRUE(reader.flagOr(QStringLiteral("c"), true));
    reader.fail(QStringLiteral("z"), QStringLiteral("Later."));
    EXPECT_EQ(reader.finish().error().place, QStringLiteral("a"));
}

TEST(JsonReaderTest, TakesOverAProblemOfAnInnerReader) {
    JsonReader reader = readerOf("{}");
    reader.fail(Problem{Problem::Kind::Refused, QStringLiteral("No."), {}, QStringLiteral("x.y")});
    EXPECT_TRUE(reader.failed());
    EXPECT_EQ(reader.finish().error().kind, Problem::Kind::Refused);
    EXPECT_EQ(reader.finish().error().place, QStringLiteral("x.y"));
}

TEST(JsonReaderTest, RefusesKeysThatWereNeverAskedFor) {
    JsonReader reader = readerOf(R"({"mass_g":1,"mas_g":2})", QStringLiteral("cuts[0]"));
    EXPECT_EQ(reader.number(QStringLiteral("mass_g"), 0, 5), 1.0);
    EXPECT_FALSE(reader.failed());
    const Outcome outcome = reader.finish();
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
    EXPECT_EQ(outcome.error().place, QStringLiteral("cuts[0].mas_g"));
}

TEST(JsonReaderTest, ParsesAnObjectOnly) {
    EXPECT_TRUE(parseJsonObject("{}").has_value());
    EXPECT_TRUE(parseJsonObject(" {\"a\": 1}\n").has_value());
    const std::pair<QByteArray, QString> cases[] = {
        {"[]", QStringLiteral("offset 0")},
        {"", {}},
        {"{\"a\":1,}", {}},
        {"{\"a\":NaN}", {}},
        {"{'a':1}", {}},
        {"{\"a\":1} x", {}},
        {"{\"a\":\"\xff\"}", {}},
    };
    for (const auto& [json, place] : cases) {
        SCOPED_TRACE(json.toStdString());
        const Result<QJsonObject> object = parseJsonObject(json);
        ASSERT_FALSE(object.has_value());
        EXPECT_EQ(object.error().kind, Problem::Kind::BadInput);
        EXPECT_TRUE(object.error().place.startsWith(QStringLiteral("offset ")));
        if (!place.isEmpty()) {
            EXPECT_EQ(object.error().place, place);
        }
    }
}

TEST(JsonReaderTest, NamesTheOffsetOfBrokenJson) {
    const Result<QJsonObject> object = parseJsonObject("{\"a\": nul}");
    ASSERT_FALSE(object.has_value());
    const int offset = object.error().place.section(QLatin1Char(' '), 1).toInt();
    EXPECT_GE(offset, 6);
    EXPECT_LE(offset, 10);
}

TEST(JsonReaderTest, ReadsObjectsAndListsOfThemUpToTheFirstThatIsWrong) {
    JsonReader reader = readerOf(R"({"inner":{"a":1},"list":[{"a":1},{"a":null},{"a":"x"},{}]})");
    double inner = 0;
    reader.readObject(QStringLiteral("inner"),
                      [&](JsonReader& read) { inner = read.number(QStringLiteral("a"), 0, 9); });
    EXPECT_EQ(inner, 1);
    EXPECT_EQ(reader.keys(), QStringList({QStringLiteral("inner"), QStringLiteral("list")}));
    int calls = 0;
    reader.readEach(QStringLiteral("list"), [&](JsonReader& read) {
        ++calls;
        if (!read.isNull(QStringLiteral("a")))
            read.number(QStringLiteral("a"), 0, 9);
    });
    EXPECT_EQ(calls, 3);
    const Outcome done = reader.finish();
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().place, QStringLiteral("list[2].a"));
}

TEST(JsonReaderTest, WantsObjectsWhereObjectsAreRead) {
    const auto ignore = [](JsonReader& /*inner*/) {
    };
    JsonReader one = readerOf(R"({"inner":7})");
    one.readObject(QStringLiteral("inner"), ignore);
    EXPECT_EQ(one.finish().error().place, QStringLiteral("inner"));
    JsonReader list = readerOf(R"({"list":[{},7]})");
    list.readEach(QStringLiteral("list"), ignore);
    EXPECT_EQ(list.finish().error().place, QStringLiteral("list[1]"));
    JsonReader unknown = readerOf(R"({"inner":{"b":1}})");
    unknown.readObject(QStringLiteral("inner"), ignore);
    EXPECT_EQ(unknown.finish().error().place, QStringLiteral("inner.b"));
}

} // namespace
} // namespace ladlework
