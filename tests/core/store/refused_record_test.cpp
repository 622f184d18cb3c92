#include "core/store/record_offers.h"

#include <limits>

namespace ladlework::store {
namespace {

using quantity::Duration;
using quantity::Length;
using quantity::Mass;
using quantity::Volume;

const QDate tomorrow = testToday.addDays(1);
constexpr auto badInput = Problem::Kind::BadInput;

const double notANumber = std::numeric_limits<double>::quiet_NaN();
const double endless = std::numeric_limits<double>::infinity();

const std::vector<BadRecord> badPeople{
    {"FamilyWithoutName", badInput, "name", "name",
     family([](auto& record) { record.name = QStringLiteral(" \n "); })},
    {"FamilyFromTomorrow", badInput, "since", "future",
     family([](auto& record) { record.since = tomorrow; })},
    {"FamilyWithoutDay", badInput, "since", "day",
     family([](auto& record) { record.since = QDate(); })},
    {"FamilyInNoZone", badInput, "zone", "time zone",
     family([](auto& record) { record.zone = QTimeZone("Nowhere/Land"); })},
    {"FamilyInTheStratosphere", badInput, "altitude", "altitude",
     family([](auto& record) { record.altitude = Length::fromMetres(6001); })},
    {"FamilyWithNegativeFridge", badInput, "fridgeRoom", "refrigerator",
     family([](auto& record) { record.fridgeRoom = Volume::fromMillilitres(-1); })},
    {"FamilyWithEndlessFreezer", badInput, "freezerRoom", "freezer",
     family([](auto& record) { record.freezerRoom = Volume::fromMillilitres(endless); })},
    {"FamilyEatingNotANumber", badInput, "meatPerDay", "meat",
     family([](auto& record) { record.meatPerDay = Mass::fromGrams(notANumber); })},
    {"FamilyWithoutLanguage", badInput, "handoutLanguage", "language",
     family([](auto& record) { record.handoutLanguage.clear(); })},
    {"MemberWithoutName", badInput, "name", "name",
     member([](auto& record) { record.name.clear(); })},
    {"MemberBornTomorrow", badInput, "birth", "future",
     member([](auto& record) { record.birth = tomorrow; })},
    {"MemberNeverBorn", badInput, "birth", "birth",
     member([](auto& record) { record.birth = QDate(); })},
    {"MemberOlderThanAnyone", badInput, "birth", "120 years",
     member([](auto& record) { record.birth = QDate(1904, 3, 14); })},
    {"MemberWithBandButNoReason", badInput, "bandOverride", "reason",
     member([](auto& record) { record.bandOverride->reason = QStringLiteral(" "); })},
    {"MemberOfNoFamily", Problem::Kind::NotFound, "family", "family",
     member([](auto& record) { record.family = FamilyId{999}; })},
    {"MemberInNoPhase", Problem::Kind::NotFound, "phase", "phase",
     member([](auto& record) { record.phase = PhaseId{999}; })},
    {"NoteAboutNothing", badInput, "subject", "ingredient",
     tolerance([](auto& record) { record.subject.id = QStringLiteral(" "); })},
    {"NoteFromTomorrow", badInput, "noted", "day",
     tolerance([](auto& record) { record.noted = tomorrow; })},
    {"NoteWithoutReason", badInput, "reason", "reason",
     tolerance([](auto& record) { record.reason.clear(); })},
    {"RetryOfAnAllergy", badInput, "verdict", "allergy",
     tolerance([](auto& record) { record.allergy = true; })},
    {"RetryWithoutDay", badInput, "tryAgainOn", "day",
     tolerance([](auto& record) { record.tryAgainOn.reset(); })},
    {"RetryBeforeTheNote", badInput, "tryAgainOn", "after",
     tolerance([](auto& record) { record.tryAgainOn = record.noted; })},
    {"NoteOfNobody", Problem::Kind::NotFound, "member", "member",
     tolerance([](auto& record) { record.member = {}; })},
    {"UnknownCaution", badInput, "kind", "caution",
     caution([](auto& record) { record.kind = QStringLiteral("bad-temper"); })},
    {"NegativeSodiumLimit", badInput, "sodiumLimitMg", "sodium",
     caution([](auto& record) { record.sodiumLimitMg = -1; })},
    {"SodiumLimitElsewhere", badInput, "sodiumLimitMg", "sodium",
     caution([](auto& record) { record.kind = QStringLiteral("kidney"); })},
    {"RetryOfNobody", Problem::Kind::NotFound, "member", "member",
     retry([](auto& record) { record.member = MemberId{999}; })},
    {"RetryWithoutSteps", badInput, "steps", "steps",
     retry([](auto& record) { record.steps.clear(); })},
    {"RetryGoingDown", badInput, "steps[1]", "less",
     retry([](auto& record) { record.steps[1] = Volume::fromDrops(1); })},
    {"RetryFromNoDay", badInput, "start", "day",
     retry([](auto& record) { record.start = QDate(); })},
    {"RetryClosedTomorrow", badInput, "closed", "future",
     retry([](auto& record) { record.closed = tomorrow; })},
    {"RetryOfWhatNothingKeepsOut", Problem::Kind::Refused, "subject", "tolerance note",
     openRetry([](Action&, Workbook&, const Stored&) {})},
    {"RetryOfARecordedAllergy", Problem::Kind::Refused, "subject", "clinician",
     openRetry([](Action& action, Workbook& workbook, const Stored& stored) {
         people::ToleranceNote note = sampleTolerance(stored.member);
         note.subject = {people::Subject::Kind::Animal, QStringLiteral("beef")};
         note.verdict = people::ToleranceNote::Verdict::Avoid;
         note.tryAgainOn.reset();
         note.allergy = true;
         EXPECT_TRUE(workbook.families().addTolerance(action, note));
     })},
    {"ObservationOfNobody", Problem::Kind::NotFound, "member", "member",
     observation([](auto& record) { record.member = {}; })},
    {"ObservationOfTomorrow", badInput, "day", "future",
     observation([](auto& record) { record.day = tomorrow; })},
    {"ObservationOfNothing", badInput, "kind", "observed",
     observation([](auto& record) { record.kind = QStringLiteral(" "); })},
    {"WeightOfAWhale", badInput, "value", "400 kg", observation([](auto& record) {
         record.kind = people::weightKind();
         record.unit = QStringLiteral("kg");
         record.value = 9000;
     })},
    {"ObservationNotANumber", badInput, "value", "number",
     observation([](auto& record) { record.value = notANumber; })},
    {"SymptomWithoutName", badInput, "name", "name",
     symptom([](auto& record) { record.name = QStringLiteral(" "); })},
    {"SymptomOfTheListAlready", Problem::Kind::Refused, "name", "already",
     symptom([](auto& record) { record.name = intake::shippedSymptoms().first().name.toUpper(); })},
    {"TemplateWithoutName", badInput, "name", "name",
     ladderTemplate([](auto& record) { record.name.clear(); })},
    {"TemplateWithoutRungs", badInput, "rungs", "rung",
     ladderTemplate([](auto& record) { record.rungs.clear(); })},
    {"TemplateOfATakenName", Problem::Kind::Refused, "name", "already",
     ladderTemplate([](auto& record) { record.name = QStringLiteral("very  SLOW"); })},
    {"HouseRulesOfMixedStrengths", badInput, "moderateTo", "strengths",
     houseRules([](auto& record) { record.mildTo = 9; })},
};

const std::vector<BadRecord> badKitchens{
    {"PriceOfTheUnknown", badInput, "item", "griffin-wing", price("griffin-wing", 3)},
    {"PriceOfNothing", badInput, "price", "price", price("onion", 0)},
    {"PriceBelowNothing", badInput, "price", "price", price("chicken-leg", -3)},
    {"PriceOfACathedral", badInput, "price", "1,000,000", price("salt", 1.1e6)},
    {"PriceNotANumber", badInput, "price", "price", price("salt", notANumber)},
    {"ContainerWithoutName", badInput, "name", "name",
     container([](auto& record) { record.name.clear(); })},
    {"FlatContainer", badInput, "height", "height",
     container([](auto& record) { record.height = Length(); })},
    {"TrayWithoutWidth", badInput, "width", "wid",
     container([](auto& record) { record.width = Length(); })},
    {"ContainerOfNoFamily", Problem::Kind::NotFound, "family", "family",
     container([](auto& record) { record.family = {}; })},
    {"PotCoolingInAnotherKitchen", Problem::Kind::Refused, "coolIn", "another kitchen",
     pot([](auto& record, const Stored& stored) { record.coolIn = stored.otherContainer; })},
    {"PotCoolingInNoContainer", Problem::Kind::NotFound, "coolIn", "container",
     pot([](auto& record, auto&) { record.coolIn = ContainerId{999}; })},
    {"PracticePotCoolingInAKitchen", Problem::Kind::Refused, "coolIn", "another kitchen",
     pot([](auto& record, const Stored& stored) {
         record.family = {};
         record.vessel = {};
         record.coolIn = stored.container;
     })},
    {"BatchInAnotherKitchen", Problem::Kind::Refused, "vessel", "another kitchen",
     batch([](auto& record, const Stored& stored) { record.cooked.vessel = stored.otherVessel; })},
    {"BatchInNoVessel", Problem::Kind::NotFound, "vessel", "vessel",
     batch([](auto& record, auto&) { record.cooked.vessel = VesselId{999}; })},
    {"DryBatch", badInput, "cooked.water", "water",
     batch([](auto& record, auto&) { record.cooked.water = Volume(); })},
    {"BatchForAFortnight", badInput, "cooked.simmer", "days",
     batch([](auto& record, auto&) { record.cooked.simmer = Duration::fromHours(24 * 14); })},
    {"VesselWithoutName", badInput, "name", "name",
     vessel([](auto& record) { record.name.clear(); })},
    {"NarrowVessel", badInput, "diameter", "width",
     vessel([](auto& record) { record.diameter = Length::fromCentimetres(-20); })},
    {"VesselOfNoHeight", badInput, "height", "height",
     vessel([](auto& record) { record.height = Length(); })},
    {"VesselThatDriesOut", badInput, "evaporationFactor", "evaporation",
     vessel([](auto& record) { record.evaporationFactor = 5.1; })},
    {"VesselOfNoFamily", Problem::Kind::NotFound, "family", "family",
     vessel([](auto& record) { record.family = {}; })},
    {"PotWithoutBones", badInput, "cuts", "no bones",
     pot([](auto& record, auto&) { record.cuts.clear(); })},
    {"PotOfUnknownCut", badInput, "cuts[1].cut", "griffin-wing",
     pot([](auto& record, auto&) { record.cuts[1].cut = QStringLiteral("griffin-wing"); })},
    {"PotOfUnknownExtra", badInput, "extras[0].item", "moonbeam",
     pot([](auto& record, auto&) { record.extras[0].item = QStringLiteral("moonbeam"); })},
    {"PotOfNegativeMeat", badInput, "cuts[0].mass", "mass",
     pot([](auto& record, auto&) { record.cuts[0].mass = Mass::fromGrams(-1); })},
    {"PotOfWeightlessOnion", badInput, "extras[0].mass", "mass",
     pot([](auto& record, auto&) { record.extras[0].mass = Mass(); })},
    {"DryPot", badInput, "water", "water",
     pot([](auto& record, auto&) { record.water = Volume(); })},
    {"PotOfNegativeSalt", badInput, "salt", "salt",
     pot([](auto& record, auto&) { record.salt = Mass::fromGrams(-0.1); })},
    {"PotForAFortnight", badInput, "simmer", "days",
     pot([](auto& record, auto&) { record.simmer = Duration::fromHours(24 * 14); })},
    {"PotWithoutName", badInput, "name", "name",
     pot([](auto& record, auto&) { record.name.clear(); })},
    {"PotInAnotherKitchen", Problem::Kind::Refused, "vessel", "another kitchen",
     pot([](auto& record, const Stored& stored) { record.vessel = stored.otherVessel; })},
    {"PotInNoVessel", Problem::Kind::NotFound, "vessel", "vessel",
     pot([](auto& record, auto&) { record.vessel = VesselId{999}; })},
    {"BatchFromTomorrow", badInput, "day", "future",
     batch([](auto& record, auto&) { record.day = tomorrow; })},
    {"BatchOfNoDay", badInput, "day", "day",
     batch([](auto& record, auto&) { record.day = QDate(); })},
    {"BatchOfNegativeYield", badInput, "yield", "yield",
     batch([](auto& record, auto&) { record.yield = Volume::fromMillilitres(-5); })},
    {"BatchOfNoPot", Problem::Kind::NotFound, "pot", "pot",
     batch([](auto& record, auto&) { record.pot = {}; })},
    {"BatchOfAnotherFamilysPot", Problem::Kind::Refused, "pot", "another family",
     batch([](auto& record, const Stored& stored) { record.pot = stored.otherPot; })},
    {"LotOfNothing", badInput, "volume", "amount",
     lot([](auto& record) { record.volume = Volume(); })},
    {"LotSpoiltBeforeStored", badInput, "useBy", "use-by",
     lot([](auto& record) { record.useBy = record.stored.addDays(-1); })},
    {"LotOfNoBatch", Problem::Kind::NotFound, "batch", "batch",
     lot([](auto& record) { record.batch = BatchId{999}; })},
    {"PlanOfNoWeek", badInput, "start", "week",
     plan([](auto& record, auto&) { record.start = QDate(); })},
    {"CookingOutsideTheWeek", badInput, "placements[0].day", "outside this week",
     plan([](auto& record, auto&) { record.placements[0].day = QDate(2024, 3, 25); })},
    {"CookingOfAnotherFamilysPot", Problem::Kind::Refused, "pot", "another family",
     plan([](auto& record, const Stored& stored) { record.placements[0].pot = stored.otherPot; })},
    {"LockedDayOutsideTheWeek", badInput, "lockedDays[0]", "locked day",
     plan([](auto& record, auto&) { record.lockedDays[0] = QDate(2024, 3, 25); })},
    {"HoursOfNoLength", badInput, "hours[0].hours[1].length", "Free time",
     plan([](auto& record, auto&) { record.hours[0].hours[1].length = Duration(); })},
    {"WordlessExtra", badInput, "extras[1].text", "shopping list",
     plan([](auto& record, auto&) { record.extras[1].text = QStringLiteral(" "); })},
    {"LessThanNothingAtHome", badInput, "atHome[0].mass", "at home",
     plan([](auto& record, auto&) { record.atHome[0].mass = Mass::fromGrams(-1); })},
    {"UsualHoursOfNoDay", badInput, "usualHours[1].weekday", "day of the week",
     usualHours([](auto& hours, auto&) { hours[1].weekday = 8; })},
    {"UsualHoursOfNoFamily", Problem::Kind::NotFound, "family", "family",
     usualHours([](auto&, auto& owner) { owner = FamilyId{999}; })},
    {"KeptWeekWithoutPots", badInput, "placements", "without a pot",
     weekTemplate([](auto& record, auto&) { record.placements.clear(); })},
    {"KeptWeekOfAnotherFamilysPot", Problem::Kind::Refused, "pot", "another family",
     weekTemplate(
         [](auto& record, const Stored& stored) { record.placements[0].pot = stored.otherPot; })},
    {"KeptWeekOfNoFamily", Problem::Kind::NotFound, "family", "family",
     weekTemplate([](auto& record, auto&) { record.family = {}; })},
    {"PagesWithoutCautions", badInput, "sections", "cautions",
     pages([](auto& record) { record.sections.removeAt(6); })},
    {"PagesWithoutName", badInput, "name", "name",
     pages([](auto& record) { record.name.clear(); })},
    {"LabelsOverTheEdge", badInput, "columns", "right edge",
     labels([](auto& record) { record.leftMm = 30; })},
    {"PlanOfNoFamily", Problem::Kind::NotFound, "family", "family",
     plan([](auto& record, auto&) { record.family = FamilyId{999}; })},
};

const std::vector<BadRecord> badClimbs{
    {"TargetOfNothing", badInput, "low", "target",
     target([](auto& record) { record.low = Volume(); })},
    {"TargetUpsideDown", badInput, "high", "high",
     target([](auto& record) { record.high = Volume::fromCups(1); })},
    {"TargetHeldForNoDay", badInput, "holdDays", "days",
     target([](auto& record) { record.holdDays = 0; })},
    {"TargetEasedTooSlowly", badInput, "easeEveryDays", "days",
     target([](auto& record) { record.easeEveryDays = 91; })},
    {"TargetEasedUpwards", badInput, "easeTo", "low end",
     target([](auto& record) { record.easeTo = record.high; })},
    {"TargetFromNoDay", badInput, "from", "day",
     target([](auto& record) { record.from = QDate(); })},
    {"LadderWithoutRungs", badInput, "rungs", "rung",
     ladder([](auto& record) { record.rungs.clear(); })},
    {"LadderGoingDown", badInput, "rungs[1]", "more than",
     ladder([](auto& record) { record.rungs[1] = Volume::fromDrops(1); })},
    {"LadderFromNoDay", badInput, "from", "day",
     ladder([](auto& record) { record.from = QDate(); })},
    {"LadderOfMixedStrengths", badInput, "moderateTo", "strengths",
     ladder([](auto& record) { record.rules.mildTo = 9; })},
    {"DecisionWithoutReason", badInput, "reason", "reason",
     decision([](auto& record) { record.reason = QStringLiteral("  "); })},
    {"DecisionAfterTomorrow", badInput, "day", "too far ahead",
     decision([](auto& record) { record.day = tomorrow.addDays(1); })},
    {"DecisionOfNoDay", badInput, "day", "day",
     decision([](auto& record) { record.day = QDate(); })},
    {"DecisionBelowTheLadder", badInput, "resumeAtRung", "rung",
     decision([](auto& record) { record.resumeAtRung = -1; })},
    {"SecondDecisionOfTheDay", Problem::Kind::Refused, "day", "already",
     decision([](auto& record) { record.day = QDate(2024, 2, 2); })},
    {"DrunkLessThanNothing", badInput, "drunk", "amount",
     entry([](auto& record, auto&) { record.drunk = Volume::fromMillilitres(-1); })},
    {"DrunkLikeAWhale", badInput, "drunk", "6 litres",
     entry([](auto& record, auto&) { record.drunk = Volume::fromLitres(6.1); })},
    {"DrunkNotANumber", badInput, "drunk", "amount",
     entry([](auto& record, auto&) { record.drunk = Volume::fromMillilitres(notANumber); })},
    {"DrunkTomorrow", badInput, "day", "future",
     entry([](auto& record, auto&) { record.day = tomorrow; })},
    {"DrunkFromAnotherFamilysPot", Problem::Kind::Refused, "pot", "another family",
     entry([](auto& record, const Stored& stored) { record.pot = stored.otherPot; })},
    {"DrunkFromAnotherFamilysJar", Problem::Kind::NotFound, "lot", "container",
     entry([](auto& record, const Stored& stored) { record.lot = stored.otherLot; })},
    {"DrunkByNobody", Problem::Kind::NotFound, "member", "member",
     entry([](auto& record, auto&) { record.member = MemberId{999}; })},
    {"ReactionWithoutSymptom", badInput, "symptom", "felt",
     reaction([](auto& record) { record.symptom = QStringLiteral(" "); })},
    {"ReactionOfEleven", badInput, "strength", "0 to 10",
     reaction([](auto& record) { record.strength = 11; })},
    {"ReactionBelowZero", badInput, "strength", "0 to 10",
     reaction([](auto& record) { record.strength = -1; })},
    {"ReactionOfTomorrow", badInput, "day", "future",
     reaction([](auto& record) { record.day = tomorrow; })},
    {"EmptyVisitNote", badInput, "text", "empty",
     note([](auto& record) { record.text = QStringLiteral("\n"); })},
    {"VisitTomorrow", badInput, "day", "future", note([](auto& record) { record.day = tomorrow; })},
    {"VisitOfNoFamily", Problem::Kind::NotFound, "family", "family",
     note([](auto& record) { record.family = {}; })},
};

class RefusedRecordTest : public StoreFixture, public ::testing::WithParamInterface<BadRecord> {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        const auto fill = [this](Action& action, Workbook& workbook) -> Outcome {
            m_stored.phase = workbook.practice().phases().first().id;
            m_stored.family = workbook.families().addFamily(action, sampleFamily()).value();
            fillFamily(action, workbook, m_stored.family, m_stored.member, m_stored.vessel,
                       m_stored.container, m_stored.pot, m_stored.lot);
            m_stored.batch = workbook.pots().batches(m_stored.family).first().id;
            m_stored.otherFamily = workbook.families().addFamily(action, sampleFamily()).value();
            fillFamily(action, workbook, m_stored.otherFamily, m_stored.otherMember,
                       m_stored.otherVessel, m_stored.otherContainer, m_stored.otherPot,
                       m_stored.otherLot);
            return {};
        };
        m_workbook = Workbook::create(workbookPath(), m_clock, fill).value();
    }

    static void fillFamily(Action& action, Workbook& workbook, FamilyId family, MemberId& member,
                           VesselId& vessel, ContainerId& container, PotId& pot, LotId& lot) {
        member = workbook.families().addMember(action, sampleMember(family, {})).value();
        vessel = workbook.families().addVessel(action, sampleVessel(family)).value();
        container = workbook.families().addContainer(action, sampleContainer(family)).value();
        pot = workbook.pots().addPot(action, samplePot(family, vessel, container)).value();
        const BatchId batch = workbook.pots().addBatch(action, sampleBatch(family, pot)).value();
        lot = workbook.pots().addLot(action, sampleLot(batch)).value();
        EXPECT_TRUE(workbook.climbs().addDecision(action, sampleDecision(member)));
    }

    Stored m_stored;
    std::unique_ptr<Workbook> m_workbook;
};

TEST_P(RefusedRecordTest, IsRefusedWithASentenceAndNothingIsWritten) {
    const BadRecord& bad = GetParam();
    const QByteArray before = bytesOf(workbookPath());
    // The good record before the bad one must go, too.
    const Outcome tried = m_workbook->act(QStringLiteral("Tried"), [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->notes().addNote(action, sampleNote(m_stored.family)));
        return bad.offer(action, *m_workbook, m_stored);
    });
    ASSERT_FALSE(tried);
    EXPECT_EQ(tried.error().kind, bad.kind);
    EXPECT_EQ(tried.error().place.toStdString(), bad.place);
    EXPECT_TRUE(tried.error().sentence.contains(QLatin1String(bad.phrase), Qt::CaseInsensitive))
        << tried.error().sentence.toStdString();
    EXPECT_TRUE(tried.error().sentence.endsWith(u'.'));
    EXPECT_EQ(bytesOf(workbookPath()), before);
    EXPECT_TRUE(m_workbook->history().latest(1).isEmpty());
}

const auto nameOfCase = [](const auto& info) {
    return std::string(info.param.name);
};
INSTANTIATE_TEST_SUITE_P(People, RefusedRecordTest, ::testing::ValuesIn(badPeople), nameOfCase);
INSTANTIATE_TEST_SUITE_P(Kitchen, RefusedRecordTest, ::testing::ValuesIn(badKitchens), nameOfCase);
INSTANTIATE_TEST_SUITE_P(Climb, RefusedRecordTest, ::testing::ValuesIn(badClimbs), nameOfCase);

} // namespace
} // namespace ladlework::store
