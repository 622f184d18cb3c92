#include "exchange/invented_practice.h"

#include "exchange/invented_family.h"
#include "exchange/practice_text.h"
#include "exchange/records_store.h"
#include "store/workbook.h"

#include <QCoreApplication>

namespace ladlework::exchange {

namespace {

constexpr int mostFamilies = 2000;
constexpr int mostYears = 30;

Outcome check(const InventedSize& size) {
    if (size.families < 1 || size.families > mostFamilies)
        return problem(Problem::Kind::BadInput,
                       QCoreApplication::translate("InventedPractice",
                                                   "The number of families must be 1 to %1.")
                           .arg(mostFamilies));
    if (size.years < 1 || size.years > mostYears)
        return problem(
            Problem::Kind::BadInput,
            QCoreApplication::translate("InventedPractice", "The number of years must be 1 to %1.")
                .arg(mostYears));
    return {};
}

/// The letterhead and the pots are those of the sample; the families are made up.
Outcome fill(store::Action& action, store::Workbook& workbook, const InventedSize& size,
             const kitchen::Catalogue& catalogue, const Clock& clock) {
    auto text = readPracticeText(QStringLiteral(":/sample"), workbook.practice().phases(),
                                 catalogue, clock, Dates::MovedToThisWeek);
    if (!text)
        return passOn(text);
    text->families.clear();
    Result<StoredIds> ids = storeHouse(action, workbook, *text);
    if (!ids)
        return passOn(ids);

    // The family's zone is UTC; its "today" is what the repositories hold entries against.
    const InventedGround ground{clock.today(QTimeZone::utc()), size.years, text->phases,
                                text->pots};
    Chance chance(size.seed);
    for (int family = 0; family < size.families; ++family) {
        const auto stored = storeFamily(action, workbook, inventFamily(chance, ground), *ids);
        if (!stored)
            return passOn(stored);
    }
    return {};
}

} // namespace

Result<std::unique_ptr<store::Workbook>> createInventedPractice(const QString& path,
                                                                const InventedSize& size,
                                                                const kitchen::Catalogue& catalogue,
                                                                const Clock& clock) {
    if (const Outcome fits = check(size); !fits)
        return tl::unexpected<Problem>(fits.error());
    return store::Workbook::create(path, clock,
                                   [&](store::Action& action, store::Workbook& workbook) {
                                       return fill(action, workbook, size, catalogue, clock);
                                   });
}

} // namespace ladlework::exchange
