#include "exchange/sample_practice.h"

#include "exchange/practice_text.h"
#include "exchange/records_store.h"
#include "store/workbook.h"

namespace ladlework::exchange {

Result<std::unique_ptr<store::Workbook>>
createSamplePractice(const QString& path, const kitchen::Catalogue& catalogue, const Clock& clock) {
    const auto fill = [&](store::Action& action, store::Workbook& workbook) -> Outcome {
        const auto text = readPracticeText(QStringLiteral(":/sample"), workbook.practice().phases(),
                                           catalogue, clock, Dates::MovedToThisWeek);
        if (!text)
            return passOn(text);
        return storePractice(action, workbook, *text);
    };
    return store::Workbook::create(path, clock, fill);
}

} // namespace ladlework::exchange
