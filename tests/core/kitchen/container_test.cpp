#include "kitchen/container.h"

#include "kitchen/cooling_way.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>

namespace ladlework::kitchen {

namespace {
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

quantity::Length centimetres(double number) {
    return quantity::Length::fromCentimetres(number);
}

Container tray() {
    Container container;
    container.name = QStringLiteral("the roasting tray");
    container.shape = Container::Shape::Tray;
    container.across = centimetres(40);
    container.width = centimetres(30);
    container.height = centimetres(5);
    return container;
}

Container jar() {
    Container container;
    container.name = QStringLiteral("jar");
    container.across = centimetres(10);
    container.height = centimetres(20);
    container.material = Container::Material::Glass;
    return container;
}

struct Fault {
    const char* place;
    std::function<void(Container&)> make;
};
} // namespace

// 40 x 30 cm = 0.12 m2, 5 cm high: 6 L. A circle of 10 cm: 25 pi cm2, 20 cm high: 1570.796 mL.
TEST(ContainerTest, SizesAreThoseOfBoxAndCylinder) {
    EXPECT_NEAR(tray().floorSquareMetres(), 0.12, 1e-12);
    EXPECT_NEAR(tray().capacity().toLitres(), 6.0, 1e-9);
    EXPECT_NEAR(jar().floorSquareMetres(), 0.007853981633974483, 1e-12);
    EXPECT_NEAR(jar().capacity().toMillilitres(), 1570.796326794897, 1e-6);
}

TEST(ContainerTest, AcceptsOrdinaryOnes) {
    EXPECT_TRUE(check(tray()));
    EXPECT_TRUE(check(jar()));
    ASSERT_FALSE(usualContainers().empty());
    for (const Container& usual : usualContainers()) {
        EXPECT_TRUE(check(usual)) << usual.name.toStdString();
        EXPECT_FALSE(usual.id.isStored());
    }
}

TEST(ContainerTest, NamesTheFieldAtFault) {
    const std::vector<Fault> faults{
        {"name",
         [](Container& one) {
             one.name = QStringLiteral(" \n ");
         }},
        {"across",
         [](Container& one) {
             one.across = centimetres(2.9);
         }},
        {"across",
         [](Container& one) {
             one.across = centimetres(101);
         }},
        {"across",
         [](Container& one) {
             one.across = centimetres(notANumber);
         }},
        {"width",
         [](Container& one) {
             one.width = centimetres(0);
         }},
        {"width",
         [](Container& one) {
             one.width = centimetres(notANumber);
         }},
        {"width",
         [](Container& one) {
             one.shape = Container::Shape::Cylinder;
         }},
        {"height",
         [](Container& one) {
             one.height = centimetres(1.9);
         }},
        {"height",
         [](Container& one) {
             one.height = centimetres(81);
         }},
        {"height",
         [](Container& one) {
             one.height = centimetres(-5);
         }},
        {"height",
         [](Container& one) {
             one.height = centimetres(notANumber);
         }},
    };
    for (const Fault& fault : faults) {
        Container container = tray();
        fault.make(container);
        const Outcome outcome = check(container);
        ASSERT_FALSE(outcome) << fault.place;
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_EQ(outcome.error().place.toStdString(), fault.place);
        EXPECT_FALSE(outcome.error().sentence.isEmpty());
    }
}

// NIST Handbook 44, Appendix C: a US quart is 946.353 mL.
TEST(ContainerTest, UsualOnesAreTheSizesTheyAreCalled) {
    const auto named = [](const QString& name) {
        for (const Container& usual : usualContainers())
            if (usual.name == name)
                return usual;
        throw std::runtime_error(name.toStdString());
    };
    EXPECT_NEAR(named(QStringLiteral("quart glass jar")).capacity().toMillilitres(), 946.353, 20);
    EXPECT_NEAR(named(QStringLiteral("1 L plastic box")).capacity().toLitres(), 1.0, 0.1);
    const Container dish = named(QStringLiteral("9-by-13-inch glass dish"));
    EXPECT_NEAR(dish.across.toInches(), 13, 0.1);
    EXPECT_NEAR(dish.width.toInches(), 9, 0.1);
}

TEST(ContainerTest, WordsComeBack) {
    for (const auto shape : {Container::Shape::Cylinder, Container::Shape::Tray})
        EXPECT_EQ(containerShapeFromId(containerShapeId(shape)), shape);
    for (const auto material :
         {Container::Material::Steel, Container::Material::Glass, Container::Material::Plastic})
        EXPECT_EQ(containerMaterialFromId(containerMaterialId(material)), material);
    for (const auto way : {CoolingWay::Refrigerator, CoolingWay::IceBath, CoolingWay::Counter}) {
        EXPECT_EQ(coolingWayFromId(coolingWayId(way)), way);
        EXPECT_FALSE(coolingWayName(way).isEmpty());
    }
    EXPECT_FALSE(containerShapeFromId(u"Tray"));
    EXPECT_FALSE(containerMaterialFromId(u"wood"));
    EXPECT_FALSE(coolingWayFromId(u""));
}

} // namespace ladlework::kitchen
