#include "casebook/retry_steps.h"
#include "handout/cards.h"

#include <QCoreApplication>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString watchWords(int days) {
    if (days == 0)
        return {};
    return QLatin1Char(' ') + Words::tr("Then watch for %n day(s) without it.", nullptr, days);
}
} // namespace

QStringList retryLines(const PageContext& context, std::optional<MemberId> only) {
    const QDate monday = context.options().week;
    QStringList lines;
    for (const casebook::RetryStep& step :
         casebook::retrySteps(context.casebook(), monday, monday.addDays(week::daysAWeek - 1))) {
        if (only && step.plan->member != *only)
            continue;
        lines.append(Words::tr("%1: %2 tries %3 of stock with %4.%5")
                         .arg(PageContext::weekday(step.day), context.called(*step.standing),
                              context.print(step.amount), step.what,
                              watchWords(step.plan->watchDays)));
    }
    return lines;
}

} // namespace ladlework::handout
