#include "people/practice.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::people {
namespace {

/// A file of so many bytes that begins as a PNG does.
QByteArray png(qsizetype size) {
    QByteArray bytes = QByteArray::fromHex("89504e470d0a1a0a").leftJustified(size, 'x');
    bytes.truncate(size);
    return bytes;
}

struct PracticeCase {
    const char* name;
    std::function<void(Practice&)> change;
    const char* field;
};

class PracticeTest : public ::testing::TestWithParam<PracticeCase> {};

TEST_P(PracticeTest, namesTheFieldAtFault) {
    Practice practice;
    GetParam().change(practice);
    const Outcome outcome = check(practice);
    const std::string field = GetParam().field;
    ASSERT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
    }
}

INSTANTIATE_TEST_SUITE_P(
    Fields, PracticeTest,
    ::testing::Values(
        PracticeCase{"asItShips", [](Practice&) {}, ""},
        PracticeCase{"unknownZone",
                     [](Practice& p) { p.zone = QTimeZone(QByteArrayLiteral("Moon/Base")); },
                     "zone"},
        PracticeCase{"oneFridgeDay", [](Practice& p) { p.fridgeDays = 1; }, "fridgeDays"},
        PracticeCase{"twoFridgeDays", [](Practice& p) { p.fridgeDays = 2; }, ""},
        PracticeCase{"fourFridgeDays", [](Practice& p) { p.fridgeDays = 4; }, ""},
        PracticeCase{"fiveFridgeDays", [](Practice& p) { p.fridgeDays = 5; }, "fridgeDays"},
        PracticeCase{"noSpill", [](Practice& p) { p.spill = 0; }, ""},
        PracticeCase{"negativeSpill", [](Practice& p) { p.spill = -0.01; }, "spill"},
        PracticeCase{"allSpilt", [](Practice& p) { p.spill = 1.01; }, "spill"},
        PracticeCase{"spillNotANumber",
                     [](Practice& p) { p.spill = std::numeric_limits<double>::quiet_NaN(); },
                     "spill"},
        PracticeCase{"number", [](Practice& p) { p.emergencyNumber = QStringLiteral("911"); }, ""},
        PracticeCase{"numberInWords",
                     [](Practice& p) { p.emergencyNumber = QStringLiteral("call an ambulance"); },
                     "emergencyNumber"},
        PracticeCase{"currency", [](Practice& p) { p.currency = QStringLiteral("$"); }, ""},
        PracticeCase{"priceAsCurrency", [](Practice& p) { p.currency = QStringLiteral("$4"); },
                     "currency"},
        PracticeCase{"longCurrency", [](Practice& p) { p.currency = QStringLiteral("dollars"); },
                     "currency"},
        // The signature is that of ISO/IEC 15948, 5.2: 137 80 78 71 13 10 26 10.
        PracticeCase{"logo", [](Practice& p) { p.logo = png(8); }, ""},
        PracticeCase{"largestLogo", [](Practice& p) { p.logo = png(1024 * 1024); }, ""},
        PracticeCase{"tooLargeLogo", [](Practice& p) { p.logo = png(1024 * 1024 + 1); }, "logo"},
        PracticeCase{"cutLogo", [](Practice& p) { p.logo = png(7); }, "logo"},
        PracticeCase{"anotherKindOfPicture",
                     [](Practice& p) { p.logo = QByteArrayLiteral("GIF89a..........."); }, "logo"}),
    [](const auto& named) { return std::string(named.param.name); });

} // namespace
} // namespace ladlework::people
