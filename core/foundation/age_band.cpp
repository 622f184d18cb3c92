#include "foundation/age_band.h"

#include <QCoreApplication>
#include <array>

namespace ladlework {

namespace {
constexpr int startingSolidsMonth = 6;
constexpr int monthsAYear = 12;
constexpr int adultYear = 13;

constexpr std::array bands{AgeBand::InfantUnderSixMonths, AgeBand::InfantStartingSolids,
                           AgeBand::Child, AgeBand::Adult};
} // namespace

int monthsBetween(QDate birth, QDate day) {
    if (!birth.isValid() || !day.isValid() || birth > day)
        return 0;
    int months = (day.year() - birth.year()) * monthsAYear + day.month() - birth.month();
    if (day.day() < birth.day())
        --months;
    return months;
}

std::optional<AgeBand> ageBandOn(QDate birth, QDate day) {
    if (!birth.isValid() || !day.isValid() || birth > day)
        return std::nullopt;
    const int months = monthsBetween(birth, day);
    if (months < startingSolidsMonth)
        return AgeBand::InfantUnderSixMonths;
    if (months < monthsAYear)
        return AgeBand::InfantStartingSolids;
    return months < adultYear * monthsAYear ? AgeBand::Child : AgeBand::Adult;
}

QString ageBandId(AgeBand band) {
    switch (band) {
    case AgeBand::InfantUnderSixMonths:
        return QStringLiteral("infant-under-6-months");
    case AgeBand::InfantStartingSolids:
        return QStringLiteral("infant-starting-solids");
    case AgeBand::Child:
        return QStringLiteral("child");
    case AgeBand::Adult:
        return QStringLiteral("adult");
    }
    return {};
}

std::optional<AgeBand> ageBandFromId(QStringView id) {
    for (AgeBand band : bands)
        if (id == ageBandId(band))
            return band;
    return std::nullopt;
}

QString ageBandName(AgeBand band) {
    switch (band) {
    case AgeBand::InfantUnderSixMonths:
        return QCoreApplication::translate("AgeBand", "infant under 6 months");
    case AgeBand::InfantStartingSolids:
        return QCoreApplication::translate("AgeBand", "infant starting solids");
    case AgeBand::Child:
        return QCoreApplication::translate("AgeBand", "child");
    case AgeBand::Adult:
        return QCoreApplication::translate("AgeBand", "adult");
    }
    return {};
}

} // namespace ladlework
