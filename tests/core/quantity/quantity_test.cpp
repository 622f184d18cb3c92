#include "quantity/duration.h"
#include "quantity/length.h"
#include "quantity/mass.h"
#include "quantity/volume.h"

#include <type_traits>

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

// Exact sizes by NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B. The tolerance is the
// rounding of double precision only: a few units in the sixteenth digit.

TEST(QuantityTest, HoldsTheExactVolumesOfNist) {
    EXPECT_DOUBLE_EQ(Volume::fromTeaspoons(1).toMillilitres(), 4.92892159375);
    EXPECT_DOUBLE_EQ(Volume::fromTablespoons(1).toMillilitres(), 14.78676478125);
    EXPECT_DOUBLE_EQ(Volume::fromFluidOunces(1).toMillilitres(), 29.5735295625);
    EXPECT_DOUBLE_EQ(Volume::fromCups(1).toMillilitres(), 236.5882365);
    EXPECT_DOUBLE_EQ(Volume::fromPints(1).toMillilitres(), 473.176473);
    EXPECT_DOUBLE_EQ(Volume::fromQuarts(1).toMillilitres(), 946.352946);
    EXPECT_DOUBLE_EQ(Volume::fromGallons(1).toMillilitres(), 3785.411784);
    EXPECT_DOUBLE_EQ(Volume::fromLitres(1).toMillilitres(), 1000.0);
    // The gallon is 231 cubic inches, the inch 2.54 cm: both by definition.
    const double inch = Length::fromInches(1).toCentimetres();
    EXPECT_DOUBLE_EQ(Volume::fromGallons(1).toMillilitres(), 231 * inch * inch * inch);
    // Twenty drops to the millilitre: common practice.
    EXPECT_DOUBLE_EQ(Volume::fromDrops(20).toMillilitres(), 1.0);
}

TEST(QuantityTest, HoldsTheExactMassesOfNist) {
    EXPECT_DOUBLE_EQ(Mass::fromPounds(1).toGrams(), 453.59237);
    EXPECT_DOUBLE_EQ(Mass::fromOunces(1).toGrams(), 28.349523125);
    EXPECT_DOUBLE_EQ(Mass::fromKilograms(1).toGrams(), 1000.0);
}

TEST(QuantityTest, HoldsTheExactLengthsOfNist) {
    EXPECT_DOUBLE_EQ(Length::fromInches(1).toCentimetres(), 2.54);
    EXPECT_DOUBLE_EQ(Length::fromFeet(1).toCentimetres(), 30.48);
    EXPECT_DOUBLE_EQ(Length::fromMetres(1).toCentimetres(), 100.0);
}

/// The approximate household sizes of the NIST kitchen page and 21 CFR 101.9(b)(5)(viii): equal
/// after rounding as they round, that is to about two digits (1.5 %).
TEST(QuantityTest, IsNearTheHouseholdSizesOfLabels) {
    EXPECT_NEAR(Volume::fromTeaspoons(1).toMillilitres(), 5, 5 * 0.015);
    EXPECT_NEAR(Volume::fromTablespoons(1).toMillilitres(), 15, 15 * 0.015);
    EXPECT_NEAR(Volume::fromFluidOunces(1).toMillilitres(), 30, 30 * 0.015);
    EXPECT_NEAR(Volume::fromCups(1).toMillilitres(), 240, 240 * 0.015);
    EXPECT_NEAR(Volume::fromPints(1).toMillilitres(), 480, 480 * 0.015);
    EXPECT_NEAR(Volume::fromQuarts(1).toMillilitres(), 950, 950 * 0.015);
    EXPECT_NEAR(Volume::fromGallons(1).toMillilitres(), 3840, 3840 * 0.015);
    EXPECT_NEAR(Mass::fromOunces(1).toGrams(), 28, 28 * 0.015);
    EXPECT_NEAR(Mass::fromPounds(1).toGrams(), 454, 454 * 0.015);
}

TEST(QuantityTest, ReadsBackWhatWasEntered) {
    for (const double amount : {0.0, 0.3, 1.0, 7.25, 1234.5}) {
        EXPECT_DOUBLE_EQ(Volume::fromMillilitres(amount).toMillilitres(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromLitres(amount).toLitres(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromDrops(amount).toDrops(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromTeaspoons(amount).toTeaspoons(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromTablespoons(amount).toTablespoons(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromFluidOunces(amount).toFluidOunces(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromCups(amount).toCups(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromPints(amount).toPints(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromQuarts(amount).toQuarts(), amount);
        EXPECT_DOUBLE_EQ(Volume::fromGallons(amount).toGallons(), amount);
        EXPECT_DOUBLE_EQ(Mass::fromGrams(amount).toGrams(), amount);
        EXPECT_DOUBLE_EQ(Mass::fromKilograms(amount).toKilograms(), amount);
        EXPECT_DOUBLE_EQ(Mass::fromOunces(amount).toOunces(), amount);
        EXPECT_DOUBLE_EQ(Mass::fromPounds(amount).toPounds(), amount);
        EXPECT_DOUBLE_EQ(Duration::fromMinutes(amount).toMinutes(), amount);
        EXPECT_DOUBLE_EQ(Duration::fromHours(amount).toHours(), amount);
        EXPECT_DOUBLE_EQ(Length::fromCentimetres(amount).toCentimetres(), amount);
        EXPECT_DOUBLE_EQ(Length::fromMetres(amount).toMetres(), amount);
        EXPECT_DOUBLE_EQ(Length::fromInches(amount).toInches(), amount);
        EXPECT_DOUBLE_EQ(Length::fromFeet(amount).toFeet(), amount);
    }
    EXPECT_DOUBLE_EQ(Duration::fromHours(2.5).toMinutes(), 150.0);
}

TEST(QuantityTest, Reckons) {
    const Volume two = Volume::fromMillilitres(2);
    const Volume three = Volume::fromMillilitres(3);
    EXPECT_EQ((two + three).toMillilitres(), 5.0);
    EXPECT_EQ((two - three).toMillilitres(), -1.0);
    EXPECT_EQ((two * 4).toMillilitres(), 8.0);
    EXPECT_EQ((4 * two).toMillilitres(), 8.0);
    EXPECT_EQ((three / 2).toMillilitres(), 1.5);
    EXPECT_EQ(three / two, 1.5);
    Volume sum = two;
    sum += three;
    EXPECT_EQ(sum.toMillilitres(), 5.0);
    sum -= two;
    EXPECT_EQ(sum, three);
    EXPECT_LT(two, three);
    EXPECT_EQ(Volume().toMillilitres(), 0.0);
    static_assert(Volume::fromCups(4) == Volume::fromQuarts(1));
}

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};

TEST(QuantityTest, KeepsKindsApart) {
    EXPECT_TRUE((Addable<Mass, Mass>));
    EXPECT_FALSE((Addable<Mass, Volume>));
    EXPECT_FALSE((std::is_convertible_v<double, Mass>));
    EXPECT_FALSE((std::is_constructible_v<Mass, double>));
    EXPECT_FALSE((std::is_convertible_v<Mass, Volume>));
}

} // namespace
} // namespace ladlework::quantity
