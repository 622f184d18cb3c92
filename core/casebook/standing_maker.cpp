#include "casebook/standing_maker.h"

#include "casebook/rung_findings.h"
#include "foundation/day_words.h"
#include "intake/easing.h"
#include "intake/red_flags.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Standing)
};

/// The latest record in force on a day: the latest `from`, then the one stored last.
template <class Record>
const Record* latestInForce(const QList<Record>& records, MemberId member, QDate day) {
    const Record* latest = nullptr;
    for (const Record& record : records) {
        if (record.member != member || record.from > day)
            continue;
        if (latest == nullptr ||
            std::pair(record.from, record.id.value) >= std::pair(latest->from, latest->id.value))
            latest = &record;
    }
    return latest;
}

QList<people::ToleranceNote> latestTolerances(const FamilyRecords& records, MemberId member) {
    QList<people::ToleranceNote> own = records.tolerances;
    own.removeIf([member](const people::ToleranceNote& note) { return note.member != member; });
    QList<people::ToleranceNote> latest;
    for (const people::ToleranceNote& note : std::as_const(own)) {
        const auto same = std::ranges::find(latest, note.subject, &people::ToleranceNote::subject);
        if (same == latest.end())
            latest.append(note);
        else if (std::pair(note.noted, note.id.value) >= std::pair(same->noted, same->id.value))
            *same = note;
    }
    // A plain note written later must not take the Stop of an allergy from the pots.
    for (people::ToleranceNote& note : latest)
        note.allergy = people::allergyStands(own, note.subject);
    return latest;
}

Finding underSixMonths(const QString& name) {
    Finding finding;
    finding.severity = Finding::Severity::Stop;
    finding.code = QStringLiteral("under-six-months");
    finding.text = Words::tr("%1 is an %2: no amounts and no ladder here. Refer to the "
                             "clinician who looks after the baby.")
                       .arg(name, ageBandName(AgeBand::InfantUnderSixMonths));
    finding.source =
        Words::tr("WHO guideline 2023 on complementary feeding: foods beside milk start "
                  "at about 6 months (published)");
    finding.field = QStringLiteral("birth");
    return finding;
}

Finding stoppedLadder(const Standing& standing, const Stop& stop) {
    Finding finding;
    finding.severity = Finding::Severity::Stop;
    finding.code = QStringLiteral("ladder-stopped");
    finding.field = QStringLiteral("decision");
    const QString since = dayInWords(stop.day.day);
    finding.text = standing.goesOn
                       ? Words::tr("%1: the ladder is stopped since %2. It goes on tomorrow by "
                                   "your recorded decision.")
                             .arg(standing.member.name, since)
                       : Words::tr("%1: the ladder is stopped since %2. It goes on only by your "
                                   "recorded decision.")
                             .arg(standing.member.name, since);
    finding.why = intake::explain(stop.day, stop.rules);
    return finding;
}

/// An allergy that bars nothing, while no note of the member names an allergy.
Finding unnamedAllergy(const QString& name) {
    Finding finding;
    finding.severity = Finding::Severity::Caution;
    finding.code = QStringLiteral("allergy-bars-nothing");
    finding.text = Words::tr("%1: the allergy recorded keeps nothing out of any pot yet; write a "
                             "tolerance note for what it is.")
                       .arg(name);
    finding.field = QStringLiteral("tolerances");
    return finding;
}

void addCautions(Standing& standing) {
    for (const people::Caution& caution : standing.cautions)
        standing.findings.append(people::findingFor(caution, standing.member.name));
    if (std::ranges::any_of(standing.cautions, people::isUnnamedAllergy) &&
        std::ranges::none_of(standing.tolerances, &people::ToleranceNote::allergy))
        standing.findings.append(unnamedAllergy(standing.member.name));
}

/// What the series of the weight says, with the name of the member.
void addWeight(Standing& standing, const FamilyRecords& records, QDate today) {
    QList<people::Observation> own = records.observations;
    own.removeIf([&standing](const people::Observation& observation) {
        return observation.member != standing.member.id;
    });
    for (Finding finding : people::weightFindings(own, standing.band != AgeBand::Adult, today)) {
        finding.text = Words::tr("%1: %2").arg(standing.member.name, finding.text);
        standing.findings.append(finding);
    }
}

void addFindings(Standing& standing, const FamilyRecords& records, const MemberLog& log,
                 const std::optional<Stop>& stop) {
    Findings& findings = standing.findings;
    if (standing.band == AgeBand::InfantUnderSixMonths)
        findings.append(underSixMonths(standing.member.name));
    if (stop) {
        findings.append(stoppedLadder(standing, *stop));
        for (const intake::Reaction& reaction : log.reactions) {
            if (reaction.redFlag && reaction.day == stop->day.day)
                findings += intake::redFlagFindings(reaction.symptom, standing.band,
                                                    records.practice.emergencyNumber);
        }
    }
    if (standing.target && standing.band != AgeBand::InfantUnderSixMonths)
        findings += intake::reviewTarget(*standing.target, standing.band);
    findings += rungFindings(standing, records.family.measures);
    addCautions(standing);
}

/// Yesterday, or today once something of today is known: a day that is not over must not count as
/// a gap before it had a chance.
QDate lastReplayed(const MemberLog& log, QDate today) {
    return log.touches(today) ? today : today.addDays(-1);
}

/// Replays the ladder in force; from where the log has led when that is known.
intake::LadderReplay replayed(const intake::Ladder& ladder, const MemberLog& log, bool stopped,
                              QDate until) {
    intake::ReplayStart start{stopped};
    if (log.soFar && log.soFar->lastLogged.isValid())
        start.after = log.soFar->state;
    return intake::replay(ladder, intake::logDays(log.entries, log.reactions, ladder.from),
                          decisionsFor(ladder, log), until, start);
}

/// Fills in what a ladder that goes on asks.
void addAmounts(Standing& standing, const intake::Ladder& ladder, QDate until, QDate today) {
    const intake::LadderReplay& replay = standing.replay;
    const quantity::Volume asked = !replay.days.isEmpty() && replay.days.last().day == today
                                       ? replay.days.last().asked
                                       : ladder.rungs.value(replay.rung);
    const intake::Target* target = standing.target ? &*standing.target : nullptr;
    standing.askedToday = easedOff(asked, target, ladder, today);
    standing.targetDate = intake::projectTargetDate(replay, ladder, until);
}

/// Fills in where the ladder stands; returns the stop while it is stopped.
std::optional<Stop> climb(Standing& standing, const MemberLog& log, QDate today) {
    const intake::Ladder* ladder = log.ladderOn(today);
    if (ladder == nullptr)
        return std::nullopt;
    const bool goesOn = log.soFar && log.soFar->lastLogged.isValid();
    const std::optional<Stop> before =
        goesOn ? earlierStop(log) : stopBefore(log, ladder - log.ladders.constData());
    standing.ladder = *ladder;
    const QDate until = lastReplayed(log, today);
    standing.replay = replayed(*ladder, log, before.has_value(), until);
    const intake::LadderReplay& replay = standing.replay;
    if (replay.state == intake::LadderState::Stopped) {
        const std::optional<Stop> fresh = newStop(replay, *ladder);
        const std::optional<Stop> stop = fresh ? fresh : before;
        standing.stoppedSince = stop->day.day;
        const auto next =
            std::ranges::find(log.decisions, today.addDays(1), &intake::Decision::day);
        if (next != log.decisions.end())
            standing.goesOn = *next;
        return stop;
    }
    if (standing.target)
        standing.easedToday = intake::easedAmount(*standing.target, *ladder, today);
    if (!log.soFar)
        addAmounts(standing, *ladder, until, today);
    return std::nullopt;
}
} // namespace

const intake::Ladder* MemberLog::ladderOn(QDate day) const {
    const intake::Ladder* found = nullptr;
    for (const intake::Ladder& ladder : ladders) {
        if (ladder.from <= day)
            found = &ladder;
    }
    return found;
}

bool MemberLog::touches(QDate day) const {
    const auto isOn = [day](const auto& record) {
        return record.day == day;
    };
    return std::ranges::any_of(entries, isOn) || std::ranges::any_of(reactions, isOn) ||
           std::ranges::any_of(decisions, isOn) || (soFar && soFar->lastLogged == day);
}

std::optional<QDate> MemberLog::lastLogged() const {
    if (soFar)
        return soFar->lastLogged.isValid() ? std::optional(soFar->lastLogged) : std::nullopt;
    std::optional<QDate> last;
    for (const intake::IntakeEntry& entry : entries)
        last = last ? std::max(*last, entry.day) : entry.day;
    for (const intake::Reaction& reaction : reactions)
        last = last ? std::max(*last, reaction.day) : reaction.day;
    return last;
}

QList<intake::Ladder> inOrder(QList<intake::Ladder> ladders) {
    ladders.removeIf([](const intake::Ladder& ladder) { return ladder.rungs.isEmpty(); });
    std::ranges::stable_sort(ladders, {}, [](const intake::Ladder& ladder) {
        return std::pair(ladder.from, ladder.id.value);
    });
    return ladders;
}

MemberLog memberLog(const FamilyRecords& records, const people::Member& member, QDate today) {
    MemberLog log;
    const auto isOf = [&member](const auto& record) {
        return record.member == member.id;
    };
    std::ranges::copy_if(records.entries, std::back_inserter(log.entries), isOf);
    std::ranges::copy_if(records.reactions, std::back_inserter(log.reactions), isOf);
    std::ranges::copy_if(records.decisions, std::back_inserter(log.decisions), isOf);
    if (people::bandOf(member, today) == AgeBand::InfantUnderSixMonths)
        return log;
    std::ranges::copy_if(records.ladders, std::back_inserter(log.ladders), isOf);
    log.ladders = inOrder(std::move(log.ladders));
    return log;
}

const intake::Target* targetOn(const FamilyRecords& records, MemberId member, QDate day) {
    return latestInForce(records.targets, member, day);
}

quantity::Volume easedOff(quantity::Volume asked, const intake::Target* target,
                          const intake::Ladder& ladder, QDate day) {
    if (target == nullptr)
        return asked;
    // A member who had to step back is asked no more because the target eases off from higher up.
    return std::min(asked, intake::easedAmount(*target, ladder, day).value_or(asked));
}

QList<intake::Decision> decisionsFor(const intake::Ladder& ladder, const MemberLog& log) {
    QList<intake::Decision> decisions;
    std::ranges::copy_if(
        log.decisions, std::back_inserter(decisions),
        [&ladder](const intake::Decision& decision) { return decision.day >= ladder.from; });
    return decisions;
}

std::optional<Stop> newStop(const intake::LadderReplay& replay, const intake::Ladder& ladder) {
    if (replay.state != intake::LadderState::Stopped || !replay.end.stop)
        return std::nullopt;
    return Stop{*replay.end.stop, ladder.rules, ladder.id};
}

std::optional<Stop> stopBefore(const MemberLog& log, qsizetype index) {
    std::optional<Stop> stop;
    for (qsizetype earlier = 0; earlier < index; ++earlier) {
        const intake::Ladder& ladder = log.ladders[earlier];
        const QDate next = log.ladders[earlier + 1].from;
        const intake::LadderReplay replay =
            intake::replay(ladder, intake::logDays(log.entries, log.reactions, ladder.from),
                           decisionsFor(ladder, log), next.addDays(-1), {stop.has_value()});
        if (replay.state != intake::LadderState::Stopped ||
            std::ranges::find(log.decisions, next, &intake::Decision::day) != log.decisions.end())
            stop.reset();
        else if (const std::optional<Stop> fresh = newStop(replay, ladder))
            stop = fresh;
    }
    return stop;
}

Standing makeStanding(const FamilyRecords& records, const people::Member& member,
                      const MemberLog& log, QDate today) {
    Standing standing;
    standing.member = member;
    standing.band = people::bandOf(member, today);
    const auto phase = std::ranges::find(records.phases, member.phase, &people::Phase::id);
    if (phase != records.phases.end())
        standing.phase = *phase;
    if (const intake::Target* target = targetOn(records, member.id, today))
        standing.target = *target;
    standing.tolerances = latestTolerances(records, member.id);
    std::ranges::copy_if(records.cautions, std::back_inserter(standing.cautions),
                         [&member](const people::Caution& c) { return c.member == member.id; });
    standing.lastEntry = log.lastLogged();
    const std::optional<Stop> stop = climb(standing, log, today);
    addFindings(standing, records, log, stop);
    addWeight(standing, records, today);
    return standing;
}

} // namespace ladlework::casebook
