#include "week/outlook_findings.h"

#include "foundation/language_scope.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Outlook)
};
using quantity::Volume;

/// What is less than this is rounding and no amount that a kitchen could miss (a drop is 0.05 mL).
constexpr double noticeableMl = 0.01;

QString printed(double ml, const OutlookInput& input) {
    return quantity::printVolume(Volume::fromMillilitres(ml), input.measures);
}

QString dayName(const OutlookInput& input, int day) {
    return wordsLocale().dayName(input.start.addDays(day).dayOfWeek());
}

Finding caution(const QString& code, double valueMl, double limitMl, const QString& field) {
    Finding finding;
    finding.severity = Finding::Severity::Caution;
    finding.code = code;
    finding.value = valueMl;
    finding.limit = limitMl;
    finding.unit = QStringLiteral("mL");
    finding.field = field;
    return finding;
}

std::size_t at(qsizetype index) {
    return static_cast<std::size_t>(index);
}

void addShortDays(Findings& findings, const OutlookInput& input, const Outlook& outlook,
                  const OutlookTrace& trace) {
    for (int day = 0; day < input.days; ++day) {
        const double missing = outlook.days[day].shortBy.toMillilitres();
        if (missing < noticeableMl)
            continue;
        QStringList who;
        for (qsizetype member = 0; member < input.demands.size(); ++member) {
            const double ml = trace.shortBy[at(day)][at(member)];
            if (ml >= noticeableMl)
                who.append(Words::tr("%1 %2").arg(input.demands[member].name, printed(ml, input)));
        }
        Finding finding =
            caution(QStringLiteral("week-short"), missing, outlook.days[day].wanted.toMillilitres(),
                    QStringLiteral("day:%1").arg(day));
        finding.text =
            Words::tr("%1 runs short by %2 (%3). Cook more before it or on it.")
                .arg(dayName(input, day), printed(missing, input), who.join(QStringLiteral(", ")));
        finding.why = Words::tr("The amounts hold %1 % for what is spilt or left in the jar.")
                          .arg(qRound(input.spill * 100));
        findings.append(finding);
    }
}

/// The names of what this member may drink in the whole horizon.
QStringList choicesOf(const OutlookInput& input, const Demand& demand) {
    QStringList names;
    for (const Source& source : input.sources) {
        if (source.may.contains(demand.member) && source.readyDay < input.days &&
            source.lastDay >= std::max(0, source.readyDay) && !names.contains(source.name))
            names.append(source.name);
    }
    return names;
}

/// What stood at the end of a day on which this member was short: it was not for them.
QStringList forOthersOnly(const OutlookInput& input, const OutlookTrace& trace, qsizetype member) {
    QStringList names;
    for (std::size_t day = 0; day < trace.shortBy.size(); ++day) {
        if (trace.shortBy[day][at(member)] < noticeableMl)
            continue;
        for (qsizetype index = 0; index < input.sources.size(); ++index) {
            const Source& source = input.sources[index];
            if (trace.leftAfter[day][at(index)] >= noticeableMl &&
                !source.may.contains(input.demands[member].member) && !names.contains(source.name))
                names.append(source.name);
        }
    }
    return names;
}

double shortInAll(const OutlookTrace& trace, qsizetype member) {
    double ml = 0;
    for (const std::vector<double>& day : trace.shortBy)
        ml += day[at(member)];
    return ml;
}

double wantedInAll(const OutlookInput& input, const Demand& demand) {
    double ml = 0;
    for (int day = 0; day < input.days; ++day)
        ml += std::max(0.0, demand.perDay.value(day).toMillilitres()) * (1.0 + input.spill);
    return ml;
}

void addChoices(Findings& findings, const OutlookInput& input, const OutlookTrace& trace) {
    for (qsizetype member = 0; member < input.demands.size(); ++member) {
        const double missing = shortInAll(trace, member);
        if (missing < noticeableMl)
            continue;
        const Demand& demand = input.demands[member];
        const QStringList choices = choicesOf(input, demand);
        const QStringList others = forOthersOnly(input, trace, member);
        if (others.isEmpty())
            continue;
        const QString rest = others.join(QStringLiteral("; "));
        Finding finding =
            caution(choices.isEmpty() ? QStringLiteral("nothing-to-drink")
                                      : QStringLiteral("may-not-drink-rest"),
                    missing, wantedInAll(input, demand), QStringLiteral("tolerances"));
        finding.text =
            choices.isEmpty()
                ? Words::tr("%1 may drink none of the stock of this week (%2). Plan a pot that "
                            "%1 may have.")
                      .arg(demand.name, rest)
                : Words::tr("Only this may be drunk by %1: %2. What is left over (%3) may not.")
                      .arg(demand.name, choices.join(QStringLiteral("; ")), rest);
        findings.append(finding);
    }
}

void addSpoilt(Findings& findings, const OutlookInput& input, const OutlookTrace& trace) {
    for (qsizetype index = 0; index < input.sources.size(); ++index) {
        const double ml = trace.spoilt[at(index)];
        if (ml < noticeableMl)
            continue;
        const Source& source = input.sources[index];
        Finding finding = caution(QStringLiteral("week-spoilt"), ml, source.volume.toMillilitres(),
                                  QStringLiteral("source:%1").arg(index));
        finding.text =
            source.lastDay < 0
                ? Words::tr("%1 of %2 is past its last good day. Do not drink it.")
                      .arg(printed(ml, input), source.name)
                : Words::tr("%1 of %2 is left after %3, its last good day. Freeze it fresh, cook "
                            "less, or cook it later.")
                      .arg(printed(ml, input), source.name, dayName(input, source.lastDay));
        findings.append(finding);
    }
}

void addRoom(Findings& findings, const OutlookInput& input, const Outlook& outlook) {
    for (int day = 0; day < input.days; ++day) {
        const double fridge = outlook.days[day].inFridge.toMillilitres();
        const double fridgeRoom = input.fridgeRoom.toMillilitres();
        if (fridge > fridgeRoom + noticeableMl) {
            Finding finding = caution(QStringLiteral("fridge-full"), fridge, fridgeRoom,
                                      QStringLiteral("day:%1").arg(day));
            finding.text =
                Words::tr("%1 ends with %2 in the refrigerator, which has room for %3. "
                          "Freeze some or cook less at a time.")
                    .arg(dayName(input, day), printed(fridge, input), printed(fridgeRoom, input));
            findings.append(finding);
        }
        const double freezer = outlook.days[day].inFreezer.toMillilitres();
        const double freezerRoom = input.freezerRoom.toMillilitres();
        if (freezer > freezerRoom + noticeableMl) {
            Finding finding = caution(QStringLiteral("freezer-full"), freezer, freezerRoom,
                                      QStringLiteral("day:%1").arg(day));
            finding.text =
                Words::tr("%1 ends with %2 in the freezer, which has room for %3. Use "
                          "the frozen stock first.")
                    .arg(dayName(input, day), printed(freezer, input), printed(freezerRoom, input));
            findings.append(finding);
        }
    }
}
} // namespace

Findings outlookFindings(const OutlookInput& input, const Outlook& outlook,
                         const OutlookTrace& trace) {
    Findings findings;
    addShortDays(findings, input, outlook, trace);
    addChoices(findings, input, trace);
    addSpoilt(findings, input, trace);
    addRoom(findings, input, outlook);
    return findings;
}

} // namespace ladlework::week
