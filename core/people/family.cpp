#include "people/family.h"

#include "foundation/language_scope.h"
#include "foundation/name.h"

#include <QCoreApplication>

namespace ladlework::people {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Family)
};

constexpr double leastAltitudeM = -500;
constexpr double mostAltitudeM = 6000;
constexpr double mostRoomL = 200;
constexpr double mostMeatKg = 20;
constexpr int mostCookingsAWeek = 42; // six a day

/// True also keeps a not-a-number out.
bool within(double value, double least, double most) {
    return value >= least && value <= most;
}

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Outcome checkKitchen(const Family& family) {
    if (!within(family.altitude.toMetres(), leastAltitudeM, mostAltitudeM))
        return bad(Words::tr("The altitude of the kitchen must lie between 500 m below and 6,000 m "
                             "above sea level (1,640 ft below, 19,685 ft above)."),
                   QStringLiteral("altitude"));
    if (!within(family.fridgeRoom.toLitres(), 0, mostRoomL))
        return bad(
            Words::tr("The refrigerator room for stock must be 0 to 200 litres (211 quarts)."),
            QStringLiteral("fridgeRoom"));
    if (!within(family.freezerRoom.toLitres(), 0, mostRoomL))
        return bad(Words::tr("The freezer room for stock must be 0 to 200 litres (211 quarts)."),
                   QStringLiteral("freezerRoom"));
    if (!within(family.meatPerDay.toGrams() / quantity::units::gramsPerKilogram, 0, mostMeatKg))
        return bad(Words::tr("The cooked meat eaten a day must be 0 to 20 kg (44 lb)."),
                   QStringLiteral("meatPerDay"));
    if (family.mostOfOneAnimal < 0 || family.mostOfOneAnimal > mostCookingsAWeek)
        return bad(Words::tr("Cookings of one animal a week must be 0 to %1; 0 sets no limit.")
                       .arg(mostCookingsAWeek),
                   QStringLiteral("mostOfOneAnimal"));
    return {};
}
} // namespace

Outcome check(const Family& family, QDate today) {
    if (const Result<Name> name = Name::from(family.name, Words::tr("family")); !name)
        return bad(name.error().sentence, QStringLiteral("name"));
    if (!family.zone.isValid())
        return bad(Words::tr("The time zone of the family is not known; choose one of the list."),
                   QStringLiteral("zone"));
    if (!family.since.isValid())
        return bad(Words::tr("Enter the day on which the family was taken on."),
                   QStringLiteral("since"));
    if (family.since > today)
        return bad(
            Words::tr("The day on which the family was taken on lies in the future; enter today "
                      "or an earlier day."),
            QStringLiteral("since"));
    if (!isShippedLanguage(family.handoutLanguage))
        return bad(Words::tr("The pages for this family cannot be written in \"%1\"; choose one "
                             "of the languages of the list.")
                       .arg(family.handoutLanguage),
                   QStringLiteral("handoutLanguage"));
    return checkKitchen(family);
}

QString statusId(Family::Status status) {
    switch (status) {
    case Family::Status::Active:
        return QStringLiteral("active");
    case Family::Status::Resting:
        return QStringLiteral("resting");
    case Family::Status::Finished:
        return QStringLiteral("finished");
    }
    return {};
}

std::optional<Family::Status> statusFromId(QStringView id) {
    for (Family::Status status :
         {Family::Status::Active, Family::Status::Resting, Family::Status::Finished})
        if (id == statusId(status))
            return status;
    return std::nullopt;
}

} // namespace ladlework::people
