#include "people/practice.h"

#include "kitchen/keeping_figures.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::people {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Practice)
};

int keepingDays(const QString& id) {
    return kitchen::KeepingFigures::shipped().count(id);
}

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Outcome checkLogo(const QByteArray& logo) {
    constexpr qsizetype mostBytes = 1024 * 1024;
    // ISO/IEC 15948 (PNG), 5.2: the eight bytes that every PNG file begins with.
    static const QByteArray signature = QByteArrayLiteral("\x89PNG\r\n\x1a\n");
    if (logo.isEmpty())
        return {};
    if (!logo.startsWith(signature))
        return bad(Words::tr("The logo is not a PNG picture; choose a file that is one."),
                   QStringLiteral("logo"));
    if (logo.size() > mostBytes)
        return bad(Words::tr("The logo is larger than 1 MiB; make the picture smaller first."),
                   QStringLiteral("logo"));
    return {};
}
} // namespace

int leastFridgeDays() {
    return keepingDays(QStringLiteral("broth-fridge-most"));
}

int usualFridgeDays() {
    return keepingDays(QStringLiteral("soup-fridge-least"));
}

int mostFridgeDays() {
    return keepingDays(QStringLiteral("soup-fridge-most"));
}

Outcome check(const Practice& practice) {
    if (!practice.zone.isValid())
        return bad(Words::tr("The time zone of the practice is not known; choose one of the list."),
                   QStringLiteral("zone"));
    if (practice.fridgeDays < leastFridgeDays() || practice.fridgeDays > mostFridgeDays())
        return bad(Words::tr("The days a lot keeps in the refrigerator must be %1 to %2: the "
                             "published storage charts allow no more.")
                       .arg(leastFridgeDays())
                       .arg(mostFridgeDays()),
                   QStringLiteral("fridgeDays"));
    if (!(practice.spill >= 0 && practice.spill <= 1))
        return bad(Words::tr("The share added for spills must lie between 0 % and 100 %."),
                   QStringLiteral("spill"));
    const QString number = practice.emergencyNumber.trimmed();
    if (!number.isEmpty() &&
        std::ranges::none_of(number, [](QChar letter) { return letter.isDigit(); }))
        return bad(Words::tr("The emergency number has no digit in it; enter the number to dial."),
                   QStringLiteral("emergencyNumber"));
    constexpr qsizetype longestCurrency = 5;
    if (practice.currency.size() > longestCurrency ||
        std::ranges::any_of(practice.currency, [](QChar letter) { return letter.isDigit(); }))
        return bad(Words::tr("The currency is a sign or a short word without digits, such as $."),
                   QStringLiteral("currency"));
    return checkLogo(practice.logo);
}

} // namespace ladlework::people
