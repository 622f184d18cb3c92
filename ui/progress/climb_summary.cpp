#include "ui/progress/climb_page.h"
#include "ui/shared/asked_amount.h"
#include "ui/shared/day_text.h"
#include "ui/shared/easing_words.h"

#include <QLocale>

namespace ladlework::ui {

namespace {

QString stoppedWords(const casebook::Standing& standing, quantity::MeasureSystem measures) {
    return (standing.goesOn
                ? ClimbPage::tr("%1's ladder is stopped on rung %2 of %3 (%4). Nothing is asked "
                                "today; it goes on tomorrow by your decision.")
                : ClimbPage::tr("%1's ladder is stopped on rung %2 of %3 (%4). Nothing is asked "
                                "until you let it go on."))
        .arg(standing.member.name)
        .arg(standing.replay.rung + 1)
        .arg(standing.ladder->rungs.size())
        .arg(quantity::printVolume(standing.ladder->rungs.at(standing.replay.rung), measures));
}

QString rungWords(const casebook::Standing& standing, quantity::MeasureSystem measures) {
    return ClimbPage::tr("%1 is %2, on rung %3 of %4: %5 a day.")
        .arg(standing.member.name, climbState(standing))
        .arg(standing.replay.rung + 1)
        .arg(standing.ladder->rungs.size())
        .arg(quantity::printVolume(standing.ladder->rungs.at(standing.replay.rung), measures));
}

QString easedWords(const casebook::Standing& standing, quantity::MeasureSystem measures) {
    return ClimbPage::tr("%1 is easing off: %2 is asked today, the ladder stands on %3.")
        .arg(standing.member.name, amountWords(standing.askedToday, measures),
             quantity::printVolume(standing.ladder->rungs.at(standing.replay.rung), measures));
}

QString atTargetWords(const casebook::Standing& standing) {
    const int days = standing.replay.daysAtTarget;
    const int wanted = standing.ladder->rules.holdTargetDays;
    QString words = days == 1 ? ClimbPage::tr("One good day at target so far")
                              : ClimbPage::tr("%1 good days at target so far").arg(days);
    words += days >= wanted ? ClimbPage::tr(": held as long as was meant (%1).").arg(wanted)
                            : ClimbPage::tr(", %1 are meant.").arg(wanted);
    return words;
}

QString projectionWords(const intake::TargetDate& date) {
    const QLocale locale;
    return ClimbPage::tr("The target may be reached about %1 (the fan: between %2 and %3, four "
                         "times in five).")
        .arg(printDay(date.median, locale), printShortDay(date.p10, locale),
             printShortDay(date.p90, locale));
}

} // namespace

QString climbSummary(const casebook::Casebook& book, const casebook::Standing& standing) {
    if (!standing.ladder)
        return ClimbPage::tr("Under 6 months there is no ladder. Refer to the child's own "
                             "clinician.");
    const intake::LadderReplay& replay = standing.replay;
    const quantity::MeasureSystem measures = book.records().family.measures;
    if (replay.state == intake::LadderState::Stopped)
        return stoppedWords(standing, measures);
    QStringList sentences{standing.easedToday ? easedWords(standing, measures)
                                              : rungWords(standing, measures)};
    const bool top = replay.rung + 1 == standing.ladder->rungs.size();
    if (top)
        sentences.append(atTargetWords(standing));
    else if (!standing.easedToday)
        sentences.append(ClimbPage::tr("Good days towards the next rung: %1 of %2.")
                             .arg(replay.goodDays)
                             .arg(standing.ladder->rules.daysToAdvance));
    if (standing.targetDate && !top && !standing.easedToday)
        sentences.append(projectionWords(*standing.targetDate));
    if (standing.target)
        if (const QString eased = easingWords(*standing.target, *standing.ladder, measures);
            !eased.isEmpty())
            sentences.append(eased);
    return sentences.join(u' ');
}

} // namespace ladlework::ui
