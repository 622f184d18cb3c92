#include "people/practice.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::people {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Practice)
};

constexpr int leastFridgeDays = 2;
constexpr int mostFridgeDays = 4;

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}
} // namespace

Outcome check(const Practice& practice) {
    if (!practice.zone.isValid())
        return bad(Words::tr("The time zone of the practice is not known; choose one of the list."),
                   QStringLiteral("zone"));
    if (practice.fridgeDays < leastFridgeDays || practice.fridgeDays > mostFridgeDays)
        return bad(Words::tr("The days a lot keeps in the refrigerator must be 2, 3 or 4: the "
                             "published storage charts allow no more."),
                   QStringLiteral("fridgeDays"));
    if (!(practice.spill >= 0 && practice.spill <= 1))
        return bad(Words::tr("The share added for spills must lie between 0 % and 100 %."),
                   QStringLiteral("spill"));
    const QString number = practice.emergencyNumber.trimmed();
    if (!number.isEmpty() &&
        std::ranges::none_of(number, [](QChar letter) { return letter.isDigit(); }))
        return bad(Words::tr("The emergency number has no digit in it; enter the number to dial."),
                   QStringLiteral("emergencyNumber"));
    return {};
}

} // namespace ladlework::people
