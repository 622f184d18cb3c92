#pragma once

#include "kitchen/brew.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <ostream>

namespace ladlework::kitchen::samples {

/// The shipped catalogue, read once for a test program.
inline const Catalogue& catalogue() {
    static const Catalogue loaded = [] {
        Result<Catalogue> result = Catalogue::load();
        if (!result)
            throw std::runtime_error(toLine(result.error()).toStdString());
        return *std::move(result);
    }();
    return loaded;
}

inline CutInPot cut(const QString& id, double grams, bool raw = true) {
    return {id, quantity::Mass::fromGrams(grams), raw};
}

inline ExtraInPot extra(const QString& id, double grams) {
    return {id, quantity::Mass::fromGrams(grams)};
}

/// Two kilograms of chicken legs and backs in a pot of 28 by 22 cm, in the middle of the water
/// band, with two onions: nothing to find fault with.
inline BrewInput chickenPot() {
    BrewInput input;
    input.pot.name = QStringLiteral("chicken stock");
    input.pot.cuts = {cut(QStringLiteral("chicken-leg"), 1500),
                      cut(QStringLiteral("chicken-back"), 500)};
    input.pot.extras = {extra(QStringLiteral("onion"), 220)};
    input.pot.water = quantity::Volume::fromMillilitres(2600);
    input.pot.salt = quantity::Mass::fromGrams(8);
    input.pot.simmer = quantity::Duration::fromHours(2.5);
    input.vessel.name = QStringLiteral("enamel pot");
    input.vessel.diameter = quantity::Length::fromCentimetres(28);
    input.vessel.height = quantity::Length::fromCentimetres(22);
    return input;
}

inline BrewInput beefPot() {
    BrewInput input = chickenPot();
    input.pot.name = QStringLiteral("beef stock");
    input.pot.cuts = {cut(QStringLiteral("beef-shank"), 1500),
                      cut(QStringLiteral("beef-knuckle"), 500)};
    input.pot.water = quantity::Volume::fromMillilitres(3500);
    input.pot.simmer = quantity::Duration::fromHours(5);
    return input;
}

inline BrewInput fishPot() {
    BrewInput input = chickenPot();
    input.pot.name = QStringLiteral("fish stock");
    input.pot.cuts = {cut(QStringLiteral("fish-head"), 1000),
                      cut(QStringLiteral("fish-frame"), 1000)};
    input.pot.simmer = quantity::Duration::fromHours(1.25);
    return input;
}

inline Drinker drinker(const QString& name, AgeBand band, double millilitresPerDay) {
    Drinker who;
    who.name = name;
    who.band = band;
    who.perDay = quantity::Volume::fromMillilitres(millilitresPerDay);
    return who;
}

inline const Finding* findingOf(const Brewed& brewed, const QString& code) {
    const auto place = std::ranges::find(brewed.findings, code, &Finding::code);
    return place == brewed.findings.end() ? nullptr : &*place;
}

} // namespace ladlework::kitchen::samples
