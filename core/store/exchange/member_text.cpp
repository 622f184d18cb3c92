#include "exchange/family_text.h"
#include "exchange/follow_up_text.h"
#include "exchange/rules_text.h"

#include <QCoreApplication>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

PhaseId phaseNamed(TextReader& reader, const QString& key) {
    if (!reader.has(key))
        return {};
    const QString name = reader.text(key);
    for (const people::Phase& phase : reader.reading().phases)
        if (phase.name.compare(name, Qt::CaseInsensitive) == 0)
            return phase.id;
    reader.fail(key, say("There is no phase called \"%1\".").arg(name));
    return {};
}

void readTolerances(TextReader& reader, MemberId member, casebook::FamilyRecords& records) {
    reader.each(QStringLiteral("tolerances"), [&](TextReader& entry) {
        people::ToleranceNote note;
        note.member = member;
        note.subject = readSubject(entry);
        note.verdict = entry.word(QStringLiteral("verdict"), people::verdictFromId,
                                  QStringLiteral("fine, small-amounts, avoid, try-again-on"));
        note.allergy = entry.flagOr(QStringLiteral("allergy"), false);
        note.reason = entry.textOr(QStringLiteral("reason"), {});
        if (const QDate day = entry.shiftedDayOrNone(QStringLiteral("try_again_on")); day.isValid())
            note.tryAgainOn = day;
        note.noted = entry.shiftedDay(QStringLiteral("noted"));
        if (entry.reading().leavesOut(note.noted))
            return;
        entry.accept(people::check(note, entry.reading().today));
        records.tolerances.append(note);
    });
}

void readCautions(TextReader& reader, MemberId member, casebook::FamilyRecords& records) {
    reader.each(QStringLiteral("cautions"), [&](TextReader& entry) {
        people::Caution caution;
        caution.member = member;
        caution.kind = entry.text(QStringLiteral("kind"));
        caution.detail = entry.textOr(QStringLiteral("detail"), {});
        caution.sodiumLimitMg =
            entry.optionalNumber(QStringLiteral("sodium_limit_mg"), 1.0, 10'000.0);
        entry.accept(people::check(caution));
        records.cautions.append(caution);
    });
}

void readTargets(TextReader& reader, MemberId member, casebook::FamilyRecords& records) {
    reader.each(QStringLiteral("targets"), [&](TextReader& entry) {
        intake::Target target;
        target.member = member;
        target.from = entry.shiftedDay(QStringLiteral("from"));
        target.low = entry.volume(QStringLiteral("low"));
        target.high = entry.volume(QStringLiteral("high"));
        target.holdDays =
            entry.optionalInteger(QStringLiteral("hold_days"), 1, 730).value_or(target.holdDays);
        target.easeOffFrom = entry.shiftedDayOrNone(QStringLiteral("ease_off_from"));
        target.easeEveryDays = entry.optionalInteger(QStringLiteral("ease_every_days"), 1, 90)
                                   .value_or(target.easeEveryDays);
        target.easeTo = entry.volumeOr(QStringLiteral("ease_to"), target.easeTo);
        entry.accept(intake::check(target));
        records.targets.append(target);
    });
}

/// Either the rungs one by one under "rungs", or designed from "start" to "target".
QList<quantity::Volume> readRungs(TextReader& reader) {
    const QString key = QStringLiteral("rungs");
    const quantity::MeasureSystem measures = reader.reading().measures;
    QList<quantity::Volume> rungs;
    if (!reader.has(key)) {
        const quantity::Volume start = reader.volume(QStringLiteral("start"));
        const quantity::Volume low = reader.volume(QStringLiteral("target"));
        if (reader.failed())
            return rungs;
        const auto designed = intake::designRungs(start, low, measures);
        if (!designed)
            reader.fail(QStringLiteral("start"), designed.error().sentence);
        return designed.value_or(rungs);
    }
    return reader.volumes(key);
}

void readLadders(TextReader& reader, MemberId member, casebook::FamilyRecords& records) {
    reader.each(QStringLiteral("ladders"), [&](TextReader& entry) {
        intake::Ladder ladder;
        ladder.member = member;
        ladder.from = entry.shiftedDay(QStringLiteral("from"));
        ladder.rungs = readRungs(entry);
        ladder.rules = readRules(entry, QStringLiteral("rules"), entry.reading().houseRules);
        entry.accept(intake::check(ladder));
        records.ladders.append(ladder);
    });
}

void readDecisions(TextReader& reader, MemberId member, casebook::FamilyRecords& records) {
    reader.each(QStringLiteral("decisions"), [&](TextReader& entry) {
        intake::Decision decision;
        decision.member = member;
        decision.day = entry.shiftedDay(QStringLiteral("day"));
        decision.resumeAtRung = entry.integer(QStringLiteral("resume_at_rung"), 0, 1000);
        decision.reason = entry.text(QStringLiteral("reason"));
        if (entry.reading().leavesOut(decision.day))
            return;
        if (decision.day > entry.reading().today)
            entry.fail(QStringLiteral("day"), say("A decision cannot be of a day to come."));
        if (decision.reason.trimmed().isEmpty())
            entry.fail(QStringLiteral("reason"), say("A decision needs a reason."));
        records.decisions.append(decision);
    });
}

/// An infant under 6 months has no ladder: that is a rule of safety, not of taste.
void refuseInfantLadder(TextReader& reader, const people::Member& member) {
    const QString key = QStringLiteral("ladders");
    if (reader.has(key) && !reader.failed() &&
        people::bandOf(member, reader.reading().today) == AgeBand::InfantUnderSixMonths)
        reader.fail(key, say("A member under 6 months has no ladder; leave it out and refer."));
}

} // namespace

void readMembers(TextReader& reader, FamilyText& family) {
    casebook::FamilyRecords& records = family.records;
    reader.each(QStringLiteral("members"), [&](TextReader& entry) {
        people::Member member;
        member.id = MemberId{family.members.add(entry)};
        member.name = entry.text(QStringLiteral("name"));
        member.birth = entry.shiftedDay(QStringLiteral("birth"));
        member.phase = phaseNamed(entry, QStringLiteral("phase"));
        member.remarks = entry.textOr(QStringLiteral("remarks"), {});
        const QString override = QStringLiteral("band_override");
        if (entry.has(override)) {
            TextReader inner(entry.object(override), entry.pathOf(override), entry.reading());
            people::Member::BandOverride own;
            own.band = inner.word(QStringLiteral("band"), ageBandFromId,
                                  QStringLiteral("infant-starting-solids, child, adult"));
            own.reason = inner.text(QStringLiteral("reason"));
            if (const Outcome finished = inner.finish(); !finished)
                entry.fail(finished.error());
            member.bandOverride = own;
        }
        entry.accept(people::check(member, entry.reading().today));
        readTolerances(entry, member.id, records);
        readCautions(entry, member.id, records);
        readTargets(entry, member.id, records);
        readLadders(entry, member.id, records);
        refuseInfantLadder(entry, member);
        readDecisions(entry, member.id, records);
        readRetries(entry, member.id, records);
        readObservations(entry, member.id, records);
        records.members.append(member);
    });
}

} // namespace ladlework::exchange
