#include "handout/family_handout.h"

#include "core/casebook/hand_made_family.h"
#include "core/handout/handout_reader.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;
using namespace handout_reader;

namespace {
class FamilyHandoutTest : public ::testing::Test {
protected:
    FamilyHandoutTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Document made(HandoutOptions options = {}) const {
        options.week = monday;
        return familyHandout(Casebook(records, catalogue, today), options);
    }
    [[nodiscard]] QString printed(quantity::Volume volume) const {
        return quantity::printVolume(volume, records.family.measures);
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};

bool holds(const QString& text, const QString& words) {
    return text.contains(words);
}
} // namespace

TEST_F(FamilyHandoutTest, hasAllItsPagesInOrder) {
    const Document document = made();
    QList<Card::Kind> kinds;
    for (const Card& card : document.cards)
        kinds.append(card.kind);
    EXPECT_EQ(kinds, (QList<Card::Kind>{Card::Kind::Cover, Card::Kind::Week, Card::Kind::Pot,
                                        Card::Kind::Pot, Card::Kind::Ladder, Card::Kind::Ladder,
                                        Card::Kind::Ladder, Card::Kind::Shopping,
                                        Card::Kind::Keeping, Card::Kind::Cautions}));
    EXPECT_EQ(document.author, QStringLiteral("Harbour Street Practice"));
    EXPECT_EQ(document.printedOn, QStringLiteral("4 November 2026"));
    EXPECT_TRUE(document.footer.contains(QStringLiteral("2 November 2026")));
}

TEST_F(FamilyHandoutTest, theCoverSaysWhoDrinksWhatAndWhomToCall) {
    const QString cover = textOf(cardsOf(made(), Card::Kind::Cover).first());
    EXPECT_TRUE(holds(cover, QStringLiteral("Harbour Street Practice\nInes Moreau\n555 0142")));
    EXPECT_TRUE(holds(cover, QStringLiteral("Emergency: 911")));
    EXPECT_TRUE(holds(cover, QStringLiteral("Ines Moreau: 555 0142, info@harbour.example")));
    EXPECT_TRUE(holds(cover, QStringLiteral("Ana: %1 on Monday. When all goes well, %2 by Sunday.")
                                 .arg(printed(ml(60)), printed(ml(240)))))
        << qPrintable(cover);
    EXPECT_TRUE(holds(cover, QStringLiteral("Not from: Beef shank"))) << qPrintable(cover);
    EXPECT_TRUE(holds(cover, QStringLiteral("Mia: no stock for now.")));
    EXPECT_TRUE(holds(cover, QStringLiteral("Not for Leo, who is under 6 months.")));
}

TEST_F(FamilyHandoutTest, theGridHoldsTheAmountsOfTheModel) {
    const Casebook book(records, catalogue, today);
    const Card card = cardsOf(made(), Card::Kind::Week).first();
    const Table table = tableOf(card);
    ASSERT_EQ(table.header.size(), 8);
    EXPECT_EQ(table.header[1], QStringLiteral("Mon 2"));
    EXPECT_EQ(table.weights.size(), 8);
    QStringList expected{QStringLiteral("Ana")};
    for (const quantity::Volume amount : book.plannedAmounts(ana, monday, 7))
        expected.append(printed(amount));
    EXPECT_EQ(rowOf(table, QStringLiteral("Ana")), expected);
    const QStringList stove = rowOf(table, QStringLiteral("On the stove"));
    ASSERT_EQ(stove.size(), 8);
    EXPECT_EQ(stove[1], QStringLiteral("Chicken legs, 9:00 AM"));
    EXPECT_EQ(stove[4], QStringLiteral("Beef shank, 5:30 PM"));
    EXPECT_TRUE(rowOf(table, QStringLiteral("Leo")).isEmpty());
}

TEST_F(FamilyHandoutTest, aPotCardHoldsWhatTheBrewReckons) {
    const Casebook book(records, catalogue, today);
    const kitchen::Brewed brewed = kitchen::brew(book.brewInput(*book.pot(legs)), catalogue);
    const Card card = cardTitled(made(), Card::Kind::Pot, QStringLiteral("Chicken legs"));
    const QString text = textOf(card);
    EXPECT_TRUE(holds(
        text, QStringLiteral("Stock to expect: about %1").arg(printed(ml(brewed.stockMl.best)))))
        << qPrintable(text);
    EXPECT_TRUE(holds(text, QStringLiteral("Cook on: Monday 2 November, start at 9:00 AM")));
    // Cooked on Monday, three days in the refrigerator.
    EXPECT_TRUE(holds(text, QStringLiteral("Drink or freeze by: Thursday 5 November")));
    EXPECT_TRUE(holds(text, QStringLiteral("In: the big enamel pot")));
    EXPECT_TRUE(holds(text, QStringLiteral("chicken legs: 3 lb")));
    EXPECT_TRUE(holds(text, QStringLiteral("water: 3 quarts")));
    EXPECT_TRUE(holds(text, QStringLiteral("onion: 2 x medium onion")));
    // USDA SR28 02047: a teaspoon of table salt is 6 g.
    EXPECT_TRUE(holds(text, QStringLiteral("1 tsp of fine table salt")));
    EXPECT_TRUE(holds(text, QStringLiteral("Not for Leo, who is under 6 months.")));
    EXPECT_FALSE(holds(text, QStringLiteral("Not for Ana")));
}

TEST_F(FamilyHandoutTest, stepsHaveTheClockTimesOfTheAdditions) {
    const Casebook book(records, catalogue, today);
    const kitchen::Brewed brewed = kitchen::brew(book.brewInput(*book.pot(legs)), catalogue);
    const Table table =
        tableOf(cardTitled(made(), Card::Kind::Pot, QStringLiteral("Chicken legs")));
    ASSERT_EQ(table.header, (QStringList{QStringLiteral("Step"), QStringLiteral("Monday")}));
    // The pot starts at 9:00 and simmers 2 h 30 min; the onion goes in 90 minutes before the end.
    ASSERT_GE(table.rows.size(), 3);
    EXPECT_EQ(table.rows.first()[1].text, QStringLiteral("9:00 AM"));
    EXPECT_TRUE(table.rows.first()[0].text.contains(QStringLiteral("chicken legs")));
    EXPECT_EQ(table.rows.last()[1].text, QStringLiteral("11:30 AM"));
    EXPECT_TRUE(table.rows.last()[0].text.contains(QStringLiteral("garlic")));
    for (const kitchen::Addition& addition : brewed.additions) {
        if (addition.what == kitchen::Addition::What::Water)
            continue;
        const QString clock = QTime(9, 0)
                                  .addSecs(static_cast<int>(addition.at.toMinutes() * 60))
                                  .toString(QStringLiteral("h:mm AP"));
        bool found = false;
        for (const QList<Cell>& row : table.rows)
            found = found || (row[0].text.contains(addition.name) && row[1].text == clock);
        EXPECT_TRUE(found) << qPrintable(addition.name) << " at " << qPrintable(clock);
    }
}

TEST_F(FamilyHandoutTest, aPotPastMidnightAndOneWithoutAStartTellTheTime) {
    records.weeks.first().placements = {{monday, shank, QTime(22, 0)},
                                        {monday.addDays(2), shank, QTime()}};
    const Table table = tableOf(cardTitled(made(), Card::Kind::Pot, QStringLiteral("Beef shank")));
    ASSERT_EQ(table.header.size(), 3);
    EXPECT_EQ(table.rows.last()[1].text, QStringLiteral("3:00 AM, next day"));
    EXPECT_EQ(table.rows.first()[2].text, QStringLiteral("start"));
    EXPECT_EQ(table.rows.last()[2].text, QStringLiteral("after 5 h"));
}

TEST_F(FamilyHandoutTest, whatIsStrainedFollowsThePhaseOfThoseWhoDrink) {
    // Ben's opening phase strains the onion out of the legs; Ana alone drinks the shank.
    const Document document = made();
    const QString legsText =
        textOf(cardTitled(document, Card::Kind::Pot, QStringLiteral("Chicken legs")));
    EXPECT_TRUE(legsText.contains(QStringLiteral("Strain out: meat and bones; onion")))
        << qPrintable(legsText);
    const QString shankText =
        textOf(cardTitled(document, Card::Kind::Pot, QStringLiteral("Beef shank")));
    EXPECT_TRUE(shankText.contains(QStringLiteral("Not for Ben: no beef")))
        << qPrintable(shankText);
    EXPECT_TRUE(shankText.contains(QStringLiteral("Leave in: onion")));
}

TEST_F(FamilyHandoutTest, aLadderCardHasADayToTickAndTheRules) {
    records.ladders.first().rules.holdDays = 4;
    const Card card = cardTitled(made(), Card::Kind::Ladder, QStringLiteral("Ana"));
    const Table table = tableOf(card);
    ASSERT_EQ(table.rows.size(), 7);
    EXPECT_EQ(table.rows[0][0].text, QStringLiteral("Monday 2 November"));
    EXPECT_EQ(table.rows[0][1].text, printed(ml(60)));
    EXPECT_TRUE(table.rows[0][2].tickBox);
    EXPECT_TRUE(table.rows[0][3].text.isEmpty());
    const QString text = textOf(card);
    EXPECT_TRUE(holds(text, QStringLiteral("Go up 1 step after 3 good days.")));
    EXPECT_TRUE(holds(text, QStringLiteral("90 % or more")));
    EXPECT_TRUE(holds(text, QStringLiteral("Felt 0 to 2: go on as planned.")));
    EXPECT_TRUE(holds(text, QStringLiteral("Felt 3 to 5: stay on the same step")));
    EXPECT_TRUE(
        holds(text, QStringLiteral("Felt 6 to 8: go back 1 step and stay there for 4 days.")));
    EXPECT_TRUE(holds(text, QStringLiteral("Felt 9 to 10, or any stop sign")));
    EXPECT_TRUE(holds(text, QStringLiteral("Emergency: 911")));
    for (const quantity::Volume rung : records.ladders.first().rungs)
        EXPECT_TRUE(holds(text, printed(rung)));
    EXPECT_TRUE(holds(text, QStringLiteral("%1 (this week starts here)").arg(printed(ml(60)))));
}

TEST_F(FamilyHandoutTest, aStoppedLadderGivesNoAmount) {
    const Card card = cardTitled(made(), Card::Kind::Ladder, QStringLiteral("Mia"));
    EXPECT_TRUE(tableOf(card).rows.isEmpty());
    const QString text = textOf(card);
    EXPECT_TRUE(text.contains(QStringLiteral("Stop: No stock for now.")));
    EXPECT_TRUE(text.contains(QStringLiteral("Emergency: 911")));
}

TEST_F(FamilyHandoutTest, shoppingIsMergedOverTheWeek) {
    records.weeks.first().placements.append({monday.addDays(5), legs, {}});
    const QString text = textOf(cardsOf(made(), Card::Kind::Shopping).first());
    EXPECT_TRUE(text.contains(QStringLiteral("chicken legs: 6 lb"))) << qPrintable(text);
    // 2 onions in each of three cookings.
    EXPECT_TRUE(text.contains(QStringLiteral("onion: 6 x medium onion"))) << qPrintable(text);
    EXPECT_TRUE(text.contains(QStringLiteral("Meat")));
    EXPECT_FALSE(text.contains(QStringLiteral("Fish\n")));
}

TEST_F(FamilyHandoutTest, cautionsDeferToTheClinician) {
    const QString text = textOf(cardsOf(made(), Card::Kind::Cautions).first());
    EXPECT_TRUE(text.contains(QStringLiteral("Mia, sodium restricted: Ask the treating clinician "
                                             "before")))
        << qPrintable(text);
    EXPECT_TRUE(text.contains(QStringLiteral("Ben does not have: beef.")));
    EXPECT_TRUE(text.contains(QStringLiteral("Trouble breathing")));
    EXPECT_TRUE(text.contains(QStringLiteral("Call 911 at once")));
    EXPECT_TRUE(text.contains(QStringLiteral("Emergency: 911")));
    EXPECT_TRUE(text.contains(QStringLiteral("Leo is under 6 months: no stock.")));
}

TEST_F(FamilyHandoutTest, withoutNamesNoNameIsOnAnyPage) {
    HandoutOptions options;
    options.names = Names::None;
    const Document document = made(options);
    const QString text = textOf(document) + document.title + document.footer;
    for (const people::Member& member : records.members)
        EXPECT_FALSE(text.contains(member.name.section(QLatin1Char(' '), 0, 0)))
            << qPrintable(member.name);
    EXPECT_FALSE(text.contains(QStringLiteral("Hartley")));
    EXPECT_TRUE(text.contains(QStringLiteral("Member 1")));
    options.names = Names::First;
    const Document first = made(options);
    const QString firstText = textOf(first) + first.title + first.footer;
    EXPECT_FALSE(firstText.contains(QStringLiteral("Hartley")));
    options.names = Names::Full;
    EXPECT_EQ(made(options).title, QStringLiteral("Hartley - week of 2 November 2026"));
}

TEST_F(FamilyHandoutTest, usesTheFamilysMeasuresAndPaper) {
    records.family.measures = quantity::MeasureSystem::Metric;
    records.family.paper = people::Paper::A4;
    HandoutOptions options;
    options.largePrint = true;
    ownWordsOf(options.sections, casebook::HandoutPart::Cover) =
        QStringLiteral("Well begun.\n\nSee you soon.");
    const Document document = made(options);
    EXPECT_EQ(document.paper, people::Paper::A4);
    EXPECT_TRUE(document.largePrint);
    const QString text = textOf(document);
    EXPECT_TRUE(text.contains(QStringLiteral("60 mL")));
    EXPECT_TRUE(text.contains(QStringLiteral("57 °C (135 °F)")));
    EXPECT_TRUE(text.contains(QStringLiteral("start at 09:00")));
    EXPECT_FALSE(text.contains(QStringLiteral(" cups")));
    EXPECT_TRUE(text.contains(QStringLiteral("Well begun.\nSee you soon.")));
    options.paper = people::Paper::Letter;
    EXPECT_EQ(made(options).paper, people::Paper::Letter);
}

TEST_F(FamilyHandoutTest, aWeekWithoutPotsStillGivesAmountsKeepingAndCautions) {
    records.weeks.clear();
    const Document document = made();
    EXPECT_TRUE(cardsOf(document, Card::Kind::Pot).isEmpty());
    EXPECT_TRUE(cardsOf(document, Card::Kind::Shopping).isEmpty());
    EXPECT_EQ(cardsOf(document, Card::Kind::Ladder).size(), 3);
    EXPECT_EQ(cardsOf(document, Card::Kind::Keeping).size(), 1);
    EXPECT_EQ(cardsOf(document, Card::Kind::Cautions).size(), 1);
    const QString week = textOf(cardsOf(document, Card::Kind::Week).first());
    EXPECT_TRUE(week.contains(QStringLiteral("No pots are planned")));
    EXPECT_FALSE(week.contains(QStringLiteral("runs short")));
}

TEST_F(FamilyHandoutTest, warnsOfAShortDayWithTheNamesOfThePages) {
    records.weeks.first().placements.removeFirst();
    const QString week = textOf(cardsOf(made(), Card::Kind::Week).first());
    EXPECT_TRUE(week.contains(QStringLiteral("Caution: Wednesday runs short by")))
        << qPrintable(week);
    EXPECT_FALSE(week.contains(QStringLiteral("Hartley")));
}

TEST_F(FamilyHandoutTest, aFamilyOfTwelveGetsItsPages) {
    const people::Member pattern = records.members.first();
    const intake::Ladder climb = records.ladders.first();
    records.members.clear();
    records.ladders.clear();
    for (int id = 1; id <= 12; ++id) {
        people::Member member = pattern;
        member.id = MemberId{id};
        member.name = QStringLiteral("N%1 Hartley").arg(id);
        records.members.append(member);
        intake::Ladder ladder = climb;
        ladder.id = LadderId{id};
        ladder.member = member.id;
        records.ladders.append(ladder);
    }
    const Document document = made();
    EXPECT_EQ(cardsOf(document, Card::Kind::Ladder).size(), 12);
    EXPECT_EQ(tableOf(cardsOf(document, Card::Kind::Week).first()).rows.size(), 13);
    EXPECT_EQ(document.footer, QStringLiteral("N1, N2, N3 and 9 more - week of 2 November 2026"));
}

TEST_F(FamilyHandoutTest, aPracticeWithoutANumberStillSaysWhomToCall) {
    records.practice.emergencyNumber.clear();
    records.practice.practitioner.clear();
    const QString text = textOf(cardsOf(made(), Card::Kind::Cautions).first());
    EXPECT_TRUE(text.contains(QStringLiteral("Emergency: your local emergency number")));
    EXPECT_TRUE(text.contains(QStringLiteral("Harbour Street Practice: 555 0142")));
}

TEST_F(FamilyHandoutTest, newTriesOfTheWeekArePrintedWhereTheyAreNeeded) {
    people::RetryPlan plan;
    plan.id = RetryPlanId{1};
    plan.member = ben; // no beef
    plan.subject = {people::Subject::Kind::Animal, QStringLiteral("beef")};
    plan.start = QDate(2026, 11, 4);
    plan.watchDays = 2;
    plan.steps = {ml(5), ml(15), ml(60)}; // 4, 7 and 10 November: two of them in this week
    records.retryPlans = {plan};
    const QString line = QStringLiteral("Wednesday 4 November: Ben tries %1 of stock with beef. "
                                        "Then watch for 2 days without it.")
                             .arg(printed(ml(5)));
    const QString week = textOf(cardsOf(made(), Card::Kind::Week).first());
    EXPECT_TRUE(holds(week, line)) << qPrintable(week);
    EXPECT_TRUE(holds(week, QStringLiteral("Saturday 7 November")));
    EXPECT_FALSE(holds(week, QStringLiteral("10 November")));
    const QString page = textOf(cardTitled(made(), Card::Kind::Ladder, QStringLiteral("Ben")));
    EXPECT_TRUE(holds(page, line));
    EXPECT_TRUE(holds(page, QStringLiteral("stop the new try and call us")));
    const QString anas = textOf(cardTitled(made(), Card::Kind::Ladder, QStringLiteral("Ana")));
    EXPECT_FALSE(holds(anas, QStringLiteral("new try")));
    const QString care = textOf(cardsOf(made(), Card::Kind::Cautions).first());
    EXPECT_TRUE(holds(care, QStringLiteral("beef (but for the new tries)"))) << qPrintable(care);
    // An allergy that was written down since takes it off the pages.
    people::ToleranceNote allergy;
    allergy.member = ben;
    allergy.subject = plan.subject;
    allergy.allergy = true;
    allergy.reason = QStringLiteral("hives");
    allergy.noted = today;
    records.tolerances.append(allergy);
    EXPECT_FALSE(holds(textOf(made()), QStringLiteral("new tries")));
    EXPECT_FALSE(holds(textOf(made()), QStringLiteral("Ben tries")));
}

TEST_F(FamilyHandoutTest, easingOffDoesNotAskToGoUp) {
    for (intake::Target& target : records.targets)
        if (target.member == ana) {
            target.easeOffFrom = monday;
            target.easeTo = ml(60);
        }
    if (std::ranges::none_of(records.targets, [](const auto& t) { return t.member == ana; })) {
        intake::Target target;
        target.member = ana;
        target.low = ml(240);
        target.high = ml(240);
        target.from = QDate(2026, 10, 1);
        target.easeOffFrom = monday;
        target.easeTo = ml(60);
        records.targets.append(target);
    }
    const QString page = textOf(cardTitled(made(), Card::Kind::Ladder, QStringLiteral("Ana")));
    EXPECT_TRUE(holds(page, QStringLiteral("Do not go up"))) << qPrintable(page);
    EXPECT_FALSE(holds(page, QStringLiteral("Go up 1 step")));
}

TEST_F(FamilyHandoutTest, aPracticeWithoutNameAndNumberPrintsNoEmptyLine) {
    records.practice.name.clear();
    records.practice.practitioner.clear();
    records.practice.contact.clear();
    const QString cover = textOf(cardsOf(made(), Card::Kind::Cover).first());
    EXPECT_TRUE(holds(cover, QStringLiteral("Emergency: 911")));
    EXPECT_FALSE(holds(cover, QStringLiteral("Your practice")));
    records.practice.name = QStringLiteral("Harbour Street Practice");
    EXPECT_TRUE(holds(textOf(cardsOf(made(), Card::Kind::Cover).first()),
                      QStringLiteral("Your practice: Harbour Street Practice")));
}
