#include "handout/page_context.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};
} // namespace

PageContext::PageContext(const casebook::Casebook& casebook, HandoutOptions options)
    : m_casebook(casebook), m_options(std::move(options)), m_plan(casebook.plan(m_options.week)) {}

QString PageContext::called(MemberId member) const {
    return isolated(calledName(m_casebook, member, m_options.names));
}

QString PageContext::familyCalled() const {
    return isolated(casebook::calledFamily(m_casebook, m_options.names));
}

QString PageContext::weekday(QDate day) {
    //: A date format of Qt: dddd, d and MMMM stand for the weekday, the day and the month.
    return wordsLocale().toString(day, Words::tr("dddd d MMMM"));
}

QString PageContext::print(quantity::Volume volume) const {
    return quantity::printVolume(volume, measures());
}

QString PageContext::print(quantity::Mass mass) const {
    return quantity::printMass(mass, measures());
}

QString PageContext::print(QTime time) const {
    //: A time format of Qt; AP or ap stands for "AM" and "PM" in capital or small letters.
    const QString twelveHours = Words::tr("h:mm AP");
    return wordsLocale().toString(time, measures() == quantity::MeasureSystem::UsCustomary
                                            ? twelveHours
                                            : QStringLiteral("HH:mm"));
}

QString PageContext::print(quantity::Temperature temperature) const {
    using quantity::MeasureSystem;
    const MeasureSystem other =
        measures() == MeasureSystem::Metric ? MeasureSystem::UsCustomary : MeasureSystem::Metric;
    return QStringLiteral("%1 (%2)").arg(quantity::printTemperature(temperature, measures()),
                                         quantity::printTemperature(temperature, other));
}

QList<quantity::Volume> PageContext::amounts(MemberId member) const {
    return m_casebook.plannedAmounts(member, m_options.week, week::daysAWeek);
}

QList<week::Placement> PageContext::cookingsOf(PotId pot) const {
    QList<week::Placement> cookings;
    std::ranges::copy_if(m_plan.placements, std::back_inserter(cookings),
                         [pot](const week::Placement& placement) { return placement.pot == pot; });
    std::ranges::stable_sort(cookings, {}, [](const week::Placement& placement) {
        return std::pair(placement.day, placement.start);
    });
    return cookings;
}

QList<const kitchen::Pot*> PageContext::pots() const {
    QList<week::Placement> placements = m_plan.placements;
    std::ranges::stable_sort(placements, {}, [](const week::Placement& placement) {
        return std::pair(placement.day, placement.start);
    });
    QList<const kitchen::Pot*> pots;
    for (const week::Placement& placement : placements) {
        const kitchen::Pot* pot = m_casebook.pot(placement.pot);
        // A pot of cuts that this catalogue does not know cannot be reckoned or described.
        if (pot != nullptr && !pots.contains(pot) && kitchen::check(*pot, m_casebook.catalogue()))
            pots.append(pot);
    }
    return pots;
}

QString PageContext::emergencyNumber() const {
    const QString number = practice().emergencyNumber.trimmed();
    return number.isEmpty() ? Words::tr("your local emergency number") : number;
}

Facts PageContext::whomToCall() const {
    Facts facts;
    facts.pairs.append({Words::tr("Emergency"), emergencyNumber()});
    const QString who =
        practice().practitioner.isEmpty() ? practice().name : practice().practitioner;
    QStringList contact = practice().contact.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (QString& line : contact)
        line = line.trimmed();
    contact.removeAll(QString());
    // A practice without a name and a number has nothing to print here.
    const QString number = contact.join(QStringLiteral(", "));
    if (!number.isEmpty())
        facts.pairs.append({who.isEmpty() ? Words::tr("Your practice") : who, number});
    else if (!who.isEmpty())
        facts.pairs.append({Words::tr("Your practice"), who});
    return facts;
}

QString isolated(const QString& text) {
    const bool rightToLeft = std::ranges::any_of(text, [](QChar letter) {
        return letter.direction() == QChar::DirR || letter.direction() == QChar::DirAL;
    });
    constexpr QChar firstStrongIsolate(0x2068);
    constexpr QChar popIsolate(0x2069);
    return rightToLeft ? QString(firstStrongIsolate + text + popIsolate) : text;
}

bool isTooYoung(const casebook::Standing& standing) {
    return standing.band == AgeBand::InfantUnderSixMonths;
}

bool isStopped(const casebook::Standing& standing) {
    return standing.ladder && standing.replay.state == intake::LadderState::Stopped;
}

} // namespace ladlework::handout
