#include "ui/shared/easing_words.h"

#include "intake/easing.h"
#include "ui/shared/day_text.h"

#include <QCoreApplication>
#include <QLocale>

namespace ladlework::ui {

namespace {

struct EasingText {
    Q_DECLARE_TR_FUNCTIONS(EasingWords)
};

QString amount(quantity::Volume volume, quantity::MeasureSystem measures) {
    return volume > quantity::Volume{} ? quantity::printVolume(volume, measures)
                                       : EasingText::tr("nothing");
}

} // namespace

QString easingWords(const intake::Target& target, const intake::Ladder& ladder,
                    quantity::MeasureSystem measures) {
    constexpr int mostNamed = 4;
    const QDate end = intake::easingEnds(target, ladder);
    if (!end.isValid())
        return {};
    QStringList steps;
    for (QDate day = target.easeOffFrom; day <= end; day = day.addDays(target.easeEveryDays))
        if (const auto eased = intake::easedAmount(target, ladder, day))
            steps.append(amount(*eased, measures));
    steps.removeDuplicates();
    const QLocale locale;
    const QString last = steps.isEmpty() ? QString() : steps.takeLast();
    if (steps.size() > mostNamed)
        steps = steps.first(mostNamed) << QStringLiteral("...");
    const QString from = printDay(target.easeOffFrom, locale);
    if (steps.isEmpty())
        return EasingText::tr("From %1 on: %2 a day.").arg(from, last);
    const QString every = target.easeEveryDays == 1
                              ? EasingText::tr("every day")
                              : EasingText::tr("every %1 days").arg(target.easeEveryDays);
    return EasingText::tr("A rung less %1 from %2: %3, down to %4 by %5.")
        .arg(every, from, steps.join(QStringLiteral(", ")), last, printDay(end, locale));
}

QString climbState(const casebook::Standing& standing) {
    if (standing.replay.state == intake::LadderState::Stopped)
        return intake::stateName(intake::LadderState::Stopped);
    if (standing.easedToday)
        return intake::stateName(intake::LadderState::EasingOff);
    if (standing.replay.state == intake::LadderState::EasingOff)
        return EasingText::tr("at target, held long enough");
    return intake::stateName(standing.replay.state);
}

} // namespace ladlework::ui
