#include "ui/shared/asked_amount.h"

#include "casebook/standing_maker.h"

#include <QCoreApplication>

namespace ladlework::ui {

namespace {

struct AskedWords {
    Q_DECLARE_TR_FUNCTIONS(AskedAmount)
};

constexpr int stoppedRule = 1;
constexpr int shortRule = 6;

} // namespace

bool beganStopped(const intake::LadderDay& day) {
    return day.decision == intake::LadderDecision::Stop && day.rule == stoppedRule;
}

quantity::Volume askedOn(const casebook::Casebook& book, const casebook::Standing& standing,
                         const intake::LadderDay& day) {
    if (beganStopped(day) || !standing.ladder)
        return {};
    return casebook::easedOff(day.asked,
                              casebook::targetOn(book.records(), standing.member.id, day.day),
                              *standing.ladder, day.day);
}

QString amountWords(quantity::Volume amount, quantity::MeasureSystem measures) {
    return amount > quantity::Volume{} ? quantity::printVolume(amount, measures)
                                       : AskedWords::tr("nothing");
}

QString whyWords(const casebook::Casebook& book, const casebook::Standing& standing,
                 const intake::LadderDay& day) {
    if (!standing.ladder)
        return {};
    const quantity::Volume asked = askedOn(book, standing, day);
    const bool eased = !beganStopped(day) && asked < day.asked;
    if (eased && day.rule == shortRule)
        return AskedWords::tr("Eased off by plan: %1 was asked, the rung is %2.")
            .arg(amountWords(asked, book.records().family.measures),
                 quantity::printVolume(day.asked, book.records().family.measures));
    return intake::explain(day, standing.ladder->rules);
}

} // namespace ladlework::ui
