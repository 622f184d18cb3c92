#include "calendar/entries.h"
#include "calendar/planned_cookings.h"
#include "casebook/cooking_steps.h"
#include "kitchen/keeping_figures.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::calendar {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Calendar)
};
using casebook::CookingStep;

QString figureId(const char* id) {
    return QString::fromLatin1(id);
}

quantity::Duration within(const char* id) {
    return quantity::Duration::fromHours(kitchen::KeepingFigures::shipped().count(figureId(id)));
}

/// The entries of one cooking.
class CookingEntries {
public:
    CookingEntries(const EntryMaker& maker, const PlannedCooking& planned)
        : m_maker(maker), m_planned(planned), m_pot(*planned.pot),
          m_placement(planned.cooking.placement),
          m_brewed(kitchen::brew(maker.casebook().brewInput(m_pot), maker.casebook().catalogue())),
          m_steps(casebook::cookingSteps(m_pot, m_brewed, maker.measures())) {}

    [[nodiscard]] QList<Entry> all() const {
        if (!m_placement.start.isValid())
            return {m_maker.wholeDay(key("cook"), m_placement.day, cookTitle(), details())};
        QList<Entry> entries{cooking()};
        for (qsizetype index = 0; index < m_steps.size(); ++index) {
            if (m_steps[index].kind != CookingStep::Kind::PutIn)
                entries.append(stepEntry(index));
        }
        entries.append(coolingCheck("cool-middle", "cool-middle-within"));
        entries.append(refrigerating());
        entries.append(coolingCheck("cool-end", "cool-end-within"));
        return entries;
    }

private:
    [[nodiscard]] QString key(const char* part) const {
        return QStringLiteral("%1/%2").arg(m_planned.key, QString::fromLatin1(part));
    }
    [[nodiscard]] QDateTime momentAt(quantity::Duration at) const {
        return casebook::momentOfStep(m_placement, at, m_maker.zone());
    }
    /// The limits count from turning off, which is earlier and so stricter than from the moment
    /// when the stock has fallen to where they begin.
    [[nodiscard]] QDateTime momentAfter(quantity::Duration afterHeat) const {
        return momentAt(m_pot.simmer + afterHeat);
    }
    [[nodiscard]] QString clock(const QDateTime& moment) const {
        return m_maker.clock(moment, m_placement.day);
    }
    [[nodiscard]] QString temperature(const char* id) const {
        return m_maker.print(kitchen::KeepingFigures::shipped().temperature(figureId(id)));
    }
    [[nodiscard]] QString cookTitle() const { return Words::tr("Cook %1").arg(m_pot.name); }

    [[nodiscard]] Entry cooking() const {
        Entry entry = m_maker.timed(key("cook"), momentAt({}), momentAt(m_pot.simmer),
                                    m_maker.options().aheadOfCooking, cookTitle(), details());
        entry.busy = true;
        return entry;
    }

    [[nodiscard]] Entry stepEntry(qsizetype index) const {
        const CookingStep& step = m_steps[index];
        const bool last = step.kind == CookingStep::Kind::HeatOff;
        const QString title = last ? Words::tr("%1: turn off the heat and strain").arg(m_pot.name)
                                   : Words::tr("%1: add %2").arg(m_pot.name, step.what);
        QStringList lines{step.text};
        if (last)
            lines += strainingLines();
        const QByteArray part = last ? QByteArray("off") : "add-" + QByteArray::number(index);
        return m_maker.reminder(key(part.constData()), momentAt(step.at), title, lines);
    }

    [[nodiscard]] Entry coolingCheck(const char* figure, const char* limit) const {
        const QDateTime latest = momentAfter(within(limit));
        return m_maker.limit(
            key(figure), latest,
            Words::tr("%1: is it down to %2?").arg(m_pot.name, temperature(figure)),
            {Words::tr("The stock must be down to %1 by %2. If it is not cooled in time, throw it "
                       "out.")
                 .arg(temperature(figure), clock(latest))});
    }

    [[nodiscard]] Entry refrigerating() const {
        const QDateTime latest = momentAfter(within("fridge-within"));
        return m_maker.limit(
            key("fridge"), latest,
            Words::tr("%1: into the refrigerator by %2").arg(m_pot.name, clock(latest)),
            {hotDayLine(), Words::tr("In shallow containers, never in the deep pot.")});
    }

    [[nodiscard]] QString hotDayLine() const {
        const QDateTime sooner = momentAfter(within("hot-day-within"));
        return Words::tr("If the room is hotter than %1, by %2.")
            .arg(temperature("hot-day"), sooner.isValid() ? clock(sooner) : QString());
    }

    [[nodiscard]] QStringList strainingLines() const {
        QStringList lines{
            Words::tr("Strain out: %1.")
                .arg(casebook::strainedNames(m_brewed, true).join(QStringLiteral("; ")))};
        const QStringList left = casebook::strainedNames(m_brewed, false);
        if (!left.isEmpty())
            lines.append(Words::tr("Leave in: %1.").arg(left.join(QStringLiteral("; "))));
        return lines;
    }

    [[nodiscard]] QString timeOf(const CookingStep& step) const {
        if (m_placement.start.isValid())
            return clock(momentAt(step.at));
        return step.at == quantity::Duration()
                   ? Words::tr("Start")
                   : Words::tr("After %1").arg(quantity::printDuration(step.at));
    }

    [[nodiscard]] QStringList coolingLines() const {
        if (m_placement.start.isValid())
            return {Words::tr("Into the refrigerator by %1.")
                        .arg(clock(momentAfter(within("fridge-within"))))};
        return {Words::tr("Into the refrigerator within %1 of turning off the heat; if the room is "
                          "hotter than %2, within %3.")
                    .arg(quantity::printDuration(within("fridge-within")), temperature("hot-day"),
                         quantity::printDuration(within("hot-day-within"))),
                Words::tr("Down to %1 within %2, and to %3 within %4.")
                    .arg(temperature("cool-middle"),
                         quantity::printDuration(within("cool-middle-within")),
                         temperature("cool-end"),
                         quantity::printDuration(within("cool-end-within")))};
    }

    [[nodiscard]] QStringList notFor() const {
        QStringList lines;
        for (const casebook::Standing& standing : m_maker.casebook().standings()) {
            const kitchen::WhoMay verdict = m_maker.casebook().whoMay(standing, m_pot);
            if (verdict.may)
                continue;
            const QString name = m_maker.called(standing.member.id);
            lines.append(verdict.why.isEmpty()
                             ? Words::tr("Not for %1.").arg(name)
                             : Words::tr("Not for %1: %2.").arg(name, verdict.why));
        }
        return lines;
    }

    [[nodiscard]] QStringList details() const {
        QStringList lines;
        for (const CookingStep& step : m_steps)
            lines.append(Words::tr("%1: %2").arg(timeOf(step), step.text));
        lines += strainingLines() + coolingLines();
        lines.append(Words::tr("Stock to expect: about %1.")
                         .arg(m_maker.print(quantity::Volume::fromMillilitres(
                             std::max(0.0, m_brewed.stockMl.best)))));
        lines += notFor();
        if (const QString note = m_pot.note.trimmed(); !note.isEmpty())
            lines.append(note);
        return lines;
    }

    const EntryMaker& m_maker;
    const PlannedCooking& m_planned;
    const kitchen::Pot& m_pot;
    const week::Placement& m_placement;
    kitchen::Brewed m_brewed;
    QList<CookingStep> m_steps;
};

/// Told only while nothing of the cooking is stored: then its containers have days of their own.
bool hasLastDay(const EntryMaker& maker, const PlannedCooking& planned) {
    const kitchen::Batch* batch = planned.cooking.batch;
    return (maker.isAsked(planned.lastDay) || maker.isAsked(planned.cooking.placement.day)) &&
           (batch == nullptr || !isStored(*batch, maker.records()));
}
} // namespace

QList<Entry> cookingEntries(const EntryMaker& maker) {
    QList<Entry> entries;
    for (const PlannedCooking& planned : plannedCookings(maker.casebook())) {
        const QDate day = planned.cooking.placement.day;
        if (maker.isAsked(day))
            entries += CookingEntries(maker, planned).all();
        if (hasLastDay(maker, planned))
            entries.append(
                maker.wholeDay(planned.key + QStringLiteral("/last-day"), planned.lastDay,
                               Words::tr("Last day for %1").arg(planned.pot->name),
                               {Words::tr("Cooked on %1: drink it today, or freeze what is left.")
                                    .arg(EntryMaker::weekday(day))}));
    }
    return entries;
}

} // namespace ladlework::calendar
