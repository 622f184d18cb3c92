#include "core/casebook/hand_made_family.h"
#include "core/handout/handout_reader.h"
#include "handout/family_handout.h"
#include "intake/red_flags.h"
#include "kitchen/brew.h"
#include "kitchen/keeping.h"
#include "kitchen/keeping_figures.h"
#include "week/week_findings.h"
#include "week/week_solver.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <memory>

// Every number on the pages comes out of the model: what is printed here is gathered from the
// records, the computations and the tables of figures, each in its own way, and nothing else may
// stand on a page.

using namespace ladlework;
using namespace hand_made;
using namespace handout_reader;

namespace {

QStringList numbersIn(const QString& text) {
    static const QRegularExpression number(
        QStringLiteral("[0-9]+(?:[.:][0-9]+)*[\u00bc\u00bd\u00be\u2153\u2154\u215b]?|"
                       "[\u00bc\u00bd\u00be\u2153\u2154\u215b]"));
    QStringList found;
    for (auto at = number.globalMatch(text); at.hasNext();)
        found << at.next().captured();
    return found;
}

class TracedNumbersTest : public ::testing::TestWithParam<quantity::MeasureSystem> {
protected:
    TracedNumbersTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        records.family.measures = GetParam();
        book = std::make_unique<casebook::Casebook>(records, catalogue, today);
        traceLadders();
        traceDays();
        for (const week::Placement& placement : records.weeks.first().placements)
            tracePot(*book->pot(placement.pot), placement);
        traceFigures();
        traceWords();
    }

    void trace(const QString& text) {
        for (const QString& number : numbersIn(text))
            known << number;
    }
    void trace(quantity::Volume volume) { trace(quantity::printVolume(volume, GetParam())); }
    void trace(quantity::Mass mass) { trace(quantity::printMass(mass, GetParam())); }
    void traceMl(double millilitres) { trace(ml(millilitres)); }

    void traceLadders() {
        for (const intake::Ladder& ladder : records.ladders) {
            for (const quantity::Volume rung : ladder.rungs)
                trace(rung);
            for (const quantity::Volume amount : book->plannedAmounts(ladder.member, monday, 7))
                trace(amount);
            for (int step = 1; step <= ladder.rungs.size(); ++step)
                known << QString::number(step);
            const intake::LadderRules& rules = ladder.rules;
            for (const int number :
                 {rules.daysToAdvance, rules.mildTo, rules.mildTo + 1, rules.moderateTo,
                  rules.moderateTo + 1, rules.strongTo, rules.strongTo + 1, rules.rungsBack,
                  rules.holdDays, rules.moderateWindowDays, rules.staleDays,
                  qRound(rules.goodShare * 100), 0, 10})
                known << QString::number(number);
        }
    }
    void traceDays() {
        for (int day = 0; day < 7; ++day)
            known << QString::number(monday.addDays(day).day());
        known << QString::number(monday.year());
        trace(monday.toString(QStringLiteral("yyyy MM dd")));
    }
    void tracePot(const kitchen::Pot& pot, const week::Placement& cooking) {
        const kitchen::Brewed brewed = kitchen::brew(book->brewInput(pot), catalogue);
        for (const double stock : {brewed.stockMl.low, brewed.stockMl.best, brewed.stockMl.high})
            traceMl(stock);
        trace(quantity::Mass::fromGrams(brewed.meatLeftG.best));
        trace(pot.water);
        trace(pot.salt);
        // USDA SR28 02047: a teaspoon of table salt is 6 g.
        trace(quantity::Volume::fromTeaspoons(pot.salt.toGrams() / 6));
        for (const kitchen::CutInPot& cut : pot.cuts)
            trace(cut.mass);
        for (const kitchen::ExtraInPot& extra : pot.extras) {
            trace(extra.mass);
            const double pieces = extra.mass / catalogue.extra(extra.item)->piece;
            known << QString::number(qRound(pieces));
        }
        trace(quantity::printDuration(pot.simmer));
        const bool us = GetParam() == quantity::MeasureSystem::UsCustomary;
        for (const kitchen::Addition& addition : brewed.additions)
            trace(cooking.start.addSecs(qRound(addition.at.toMinutes() * 60))
                      .toString(us ? QStringLiteral("h:mm AP") : QStringLiteral("HH:mm")));
        for (const auto place : {kitchen::Lot::Place::Fridge, kitchen::Lot::Place::Freezer}) {
            const QDate last = kitchen::useBy(place, cooking.day, records.practice.fridgeDays);
            known << QString::number(last.day()) << QString::number(last.year());
        }
        for (const Finding& finding : brewed.findings)
            trace(finding.text);
    }
    /// Each value of the table of keeping, and its temperatures and lengths in both measures.
    void traceFigures() {
        QFile table(QStringLiteral(LADLEWORK_SOURCE_DIR "/resources/reference/keeping.csv"));
        ASSERT_TRUE(table.open(QIODevice::ReadOnly));
        for (const QByteArray& line : table.readAll().split('\n'))
            for (const QByteArray& cell : line.split(',')) {
                bool isNumber = false;
                const double value = cell.toDouble(&isNumber);
                if (!isNumber)
                    continue;
                known << QString::number(value) << QString::number(qRound(value * 9 / 5 + 32))
                      << QString::number(qRound((value - 32) * 5 / 9));
                const auto length = quantity::Length::fromCentimetres(value);
                trace(quantity::printLength(length, GetParam()));
                trace(quantity::printLength(quantity::Length::fromInches(value), GetParam()));
            }
        known << QString::number(records.practice.fridgeDays);
        trace(kitchen::KeepingFigures::shipped().sources().join(QLatin1Char(' ')));
    }
    void traceWords() {
        trace(records.practice.emergencyNumber);
        trace(records.practice.contact);
        for (const intake::SymptomKind& kind : intake::symptomKinds()) {
            trace(kind.name);
            trace(kind.advice);
        }
        for (const people::Caution& caution : records.cautions)
            trace(people::findingFor(caution, QString()).text);
        const casebook::WeekAhead ahead = book->weekAhead(records.weeks.first());
        const week::WeekSolution solution = week::serveSettled(ahead.problem);
        for (const Finding& finding :
             week::weekFindings(ahead.problem, solution, ahead.start, GetParam()))
            trace(finding.text);
        known << QStringLiteral("6"); // "under 6 months", the age band (domain.md)
    }

    kitchen::Catalogue catalogue;
    casebook::FamilyRecords records;
    std::unique_ptr<casebook::Casebook> book;
    QSet<QString> known;
};

} // namespace

TEST_P(TracedNumbersTest, nothingStandsOnAPageThatTheModelDoesNotSay) {
    HandoutOptions options;
    options.week = monday;
    for (casebook::HandoutSection& section : options.sections)
        section.shown = section.part != casebook::HandoutPart::Shopping; // see ShoppingTest
    int numbers = 0;
    for (const Card& card : familyHandout(*book, options).cards)
        for (const QString& line : plainLines(card))
            for (const QString& number : numbersIn(line)) {
                ++numbers;
                EXPECT_TRUE(known.contains(number))
                    << qPrintable(number) << " in " << qPrintable(line);
            }
    EXPECT_GT(numbers, 200);
}

INSTANTIATE_TEST_SUITE_P(Measures, TracedNumbersTest,
                         ::testing::Values(quantity::MeasureSystem::UsCustomary,
                                           quantity::MeasureSystem::Metric));
