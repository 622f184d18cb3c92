#include "people/member.h"

#include "foundation/name.h"

#include <QCoreApplication>

namespace ladlework::people {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Member)
};

constexpr int mostYears = 120;

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Outcome checkBirth(QDate birth, QDate today) {
    const QString field = QStringLiteral("birth");
    if (!birth.isValid())
        return bad(Words::tr("Enter the date of birth: it decides the age band."), field);
    if (birth > today)
        return bad(
            Words::tr("The date of birth lies in the future; enter today or an earlier day."),
            field);
    if (birth < today.addYears(-mostYears))
        return bad(Words::tr("The date of birth lies more than 120 years back; check the year."),
                   field);
    return {};
}

Outcome checkOverride(const Member& member, QDate today) {
    if (!member.bandOverride)
        return {};
    const QString field = QStringLiteral("bandOverride");
    if (ageBandOn(member.birth, today) == AgeBand::InfantUnderSixMonths)
        return bad(
            Words::tr("Under 6 months the age band cannot be set by hand: there is no ladder "
                      "for so young an infant."),
            field);
    if (member.bandOverride->reason.trimmed().isEmpty())
        return bad(Words::tr("An age band set by hand needs a reason; enter why."), field);
    return {};
}
} // namespace

Outcome check(const Member& member, QDate today) {
    if (const Result<Name> name = Name::from(member.name, Words::tr("member")); !name)
        return bad(name.error().sentence, QStringLiteral("name"));
    if (const Outcome birth = checkBirth(member.birth, today); !birth)
        return birth;
    return checkOverride(member, today);
}

AgeBand bandOf(const Member& member, QDate day) {
    const AgeBand byAge = ageBandOn(member.birth, day).value_or(AgeBand::InfantUnderSixMonths);
    if (byAge == AgeBand::InfantUnderSixMonths || !member.bandOverride)
        return byAge;
    return member.bandOverride->band;
}

} // namespace ladlework::people
