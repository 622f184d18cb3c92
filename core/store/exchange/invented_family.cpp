#include "exchange/invented_family.h"
#include "exchange/invented_follow_up.h"

#include "intake/ladder_machine.h"
#include "intake/red_flags.h"
#include "people/caution.h"
#include "week/week_plan.h"

#include <QStringList>
#include <utility>

namespace ladlework::exchange {

namespace {

using quantity::Volume;

constexpr int daysAYear = 365;
/// Days of the climb for which the machine is asked anew each day; later the target is drunk.
constexpr int climbDaysMost = 200;
/// Lots are kept for the last weeks only: older ones are long gone.
constexpr int lotDays = 28;

const QStringList& firstNames() {
    static const QStringList names =
        QStringLiteral(
            "Abel Ada Amon Anouk Arlo Asta Benno Brisa Calla Cato Dagny Dario Edda Elio Enzo Esme "
            "Faro Freya Gita Hale Hedda Ilse Imre Ines Jory Juno Kaia Kilian Lark Leif Lotta Marek "
            "Mina Nadja Niko Odin Oona Orla Pax Petra Quill Rafe Rhea Runa Silas Sol Tamsin Theo "
            "Tove "
            "Ulla Vera Viggo Wilma Xenia Yara Yves Zelda Zeno")
            .split(QLatin1Char(' '));
    return names;
}

const QStringList& familyNames() {
    static const QStringList names =
        QStringLiteral(
            "Alderby Amberlo Ashgrove Barrowin Birkhall Brandelo Calloway Corvane Dellmoor "
            "Drayholt "
            "Eastrand Elverton Fairlock Fennimar Garrowby Glenhart Harrowell Hazelby Inglemar "
            "Ivorsen "
            "Jesmonde Kestring Kirrelow Larkmoor Lindqvale Marlowen Merrivane Northam Oakenby "
            "Osterhall Penhallow Quarrick Ravensby Rosmoor Saltmar Sorrelby Thornfell Tolliver "
            "Underhay Valdemoor Westerlo Wyndham-Oak Yarrowby Zellmoor")
            .split(QLatin1Char(' '));
    return names;
}

/// Makes up one family, step by step; each step uses what the earlier ones made.
class Inventor {
public:
    Inventor(Chance& chance, const InventedGround& ground) : m_chance(chance), m_ground(ground) {}

    casebook::FamilyRecords invent() {
        m_records.pots = m_ground.practicePots;
        inventHead();
        inventVessels();
        inventMembers();
        for (const people::Member& member : std::as_const(m_records.members))
            inventClimb(member);
        inventCooking();
        inventWeeks();
        inventNotes();
        inventFollowUp(m_chance, m_ground, m_records);
        inventHours();
        return std::move(m_records);
    }

private:
    [[nodiscard]] QDate yesterday() const { return m_ground.today.addDays(-1); }

    void inventHead() {
        people::Family& family = m_records.family;
        family.name = m_chance.oneOf(familyNames());
        if (m_chance.happens(0.15))
            family.name += QLatin1Char('-') + m_chance.oneOf(familyNames());
        family.contact =
            QStringLiteral("555-01%1").arg(m_chance.whole(0, 99), 2, 10, QLatin1Char('0'));
        family.since = m_ground.today.addDays(-m_ground.years * daysAYear - m_chance.whole(0, 20));
        family.measures = m_chance.happens(0.8) ? quantity::MeasureSystem::UsCustomary
                                                : quantity::MeasureSystem::Metric;
        family.altitude = quantity::Length::fromMetres(m_chance.whole(0, 2200));
        family.fridgeRoom = Volume::fromQuarts(m_chance.whole(3, 12));
        family.freezerRoom = Volume::fromQuarts(m_chance.whole(0, 20));
        family.meatPerDay = quantity::Mass::fromGrams(m_chance.whole(20, 90) * 10);
        family.reviewOn = m_ground.today.addDays(m_chance.whole(-5, 40));
    }

    void inventVessels() {
        kitchen::Vessel vessel;
        vessel.id = VesselId{1};
        vessel.name = QStringLiteral("Stock pot");
        vessel.diameter = quantity::Length::fromCentimetres(m_chance.whole(20, 34));
        vessel.height = quantity::Length::fromCentimetres(m_chance.whole(14, 24));
        m_records.vessels.append(vessel);
        for (kitchen::Container container : kitchen::usualContainers()) {
            container.id = ContainerId{m_records.containers.size() + 1};
            m_records.containers.append(container);
        }
    }

    void inventMembers() {
        const int adults = m_chance.happens(0.3) ? 1 : 2;
        const int children = m_chance.happens(0.35) ? 0 : m_chance.whole(1, 3);
        for (int index = 0; index < adults; ++index)
            inventMember(m_chance.whole(22 * daysAYear, 72 * daysAYear));
        for (int index = 0; index < children; ++index)
            inventMember(m_chance.whole(3 * 30, 12 * daysAYear));
    }

    void inventMember(int ageDays) {
        people::Member member;
        member.id = MemberId{m_records.members.size() + 1};
        const QString first = m_chance.oneOf(firstNames());
        member.name = first + QLatin1Char(' ') + m_records.family.name;
        member.birth = m_ground.today.addDays(-ageDays);
        member.phase = m_chance.oneOf(m_ground.phases).id;
        m_records.members.append(member);
        if (m_chance.happens(0.2)) {
            people::Caution caution;
            caution.member = member.id;
            caution.kind = m_chance.oneOf(people::cautionKinds()).id;
            m_records.cautions.append(caution);
        }
        const int notes = m_chance.whole(0, 3);
        for (int index = 0; index < notes; ++index)
            inventTolerance(member.id);
    }

    void inventTolerance(MemberId member) {
        static const QStringList animals =
            QStringLiteral("chicken turkey beef lamb pork fish").split(QLatin1Char(' '));
        using Verdict = people::ToleranceNote::Verdict;
        static const QList<Verdict> verdicts{Verdict::Fine, Verdict::Fine, Verdict::SmallAmounts,
                                             Verdict::Avoid, Verdict::TryAgainOn};
        people::ToleranceNote note;
        note.member = member;
        note.subject.id = m_chance.oneOf(animals);
        note.verdict = m_chance.oneOf(verdicts);
        note.noted = m_ground.today.addDays(-m_chance.whole(1, m_ground.years * daysAYear));
        if (note.verdict != Verdict::Fine)
            note.reason = QStringLiteral("As the family told it");
        if (note.verdict == Verdict::TryAgainOn)
            note.tryAgainOn = m_ground.today.addDays(m_chance.whole(1, 60));
        m_records.tolerances.append(note);
    }

    void inventClimb(const people::Member& member) {
        const auto usual = intake::usualTarget(people::bandOf(member, m_ground.today));
        if (!usual)
            return; // under 6 months: no ladder
        const QDate first = std::max(m_records.family.since.addDays(m_chance.whole(3, 30)),
                                     member.birth.addMonths(6));
        if (first >= m_ground.today)
            return;
        intake::Target target = *usual;
        target.member = member.id;
        target.from = first;
        m_records.targets.append(target);
        static const QList<Volume> starts{Volume::fromDrops(2), Volume::fromTeaspoons(1),
                                          Volume::fromTablespoons(1)};
        intake::Ladder ladder;
        ladder.member = member.id;
        ladder.from = first;
        ladder.rungs =
            intake::designRungs(m_chance.oneOf(starts), target.low, m_records.family.measures)
                .value();
        m_records.ladders.append(ladder);
        climb(ladder);
    }

    /// Lives each day: asks the machine while the climb goes on, then drinks the last rung.
    void climb(const intake::Ladder& ladder) {
        QList<intake::LogDay> log;
        int rung = 0;
        int awayUntil = 0;
        const auto days = static_cast<int>(ladder.from.daysTo(m_ground.today));
        for (int index = 0; index < days; ++index) {
            if (m_chance.happens(0.003))
                awayUntil = index + m_chance.whole(3, 14);
            if (index < awayUntil || m_chance.happens(0.05))
                continue;
            const bool climbing = index < climbDaysMost && rung + 1 < ladder.rungs.size();
            log = climbing ? log : QList<intake::LogDay>();
            const intake::LogDay day = liveDay(ladder, rung, ladder.from.addDays(index));
            if (!climbing)
                continue;
            log.append(day);
            rung = intake::replay(ladder, log, {}, day.day).rung;
        }
    }

    intake::LogDay liveDay(const intake::Ladder& ladder, int rung, QDate day) {
        const double share = m_chance.happens(0.05)   ? 0.0
                             : m_chance.happens(0.06) ? 0.5
                                                      : 0.95 + 0.2 * m_chance.share();
        intake::LogDay lived{day, ladder.rungs[rung] * share, std::nullopt, false};
        const bool two = lived.drunk > Volume::fromCups(1);
        for (int drink = 0; drink < (two ? 2 : 1); ++drink) {
            intake::IntakeEntry entry;
            entry.member = ladder.member;
            entry.day = day;
            entry.drunk = lived.drunk / (two ? 2.0 : 1.0);
            entry.pot = m_chance.oneOf(m_ground.practicePots).id;
            m_records.entries.append(entry);
        }
        if (m_chance.happens(0.04))
            lived.worstReaction = react(ladder.member, day);
        return lived;
    }

    int react(MemberId member, QDate day) {
        intake::Reaction reaction;
        reaction.member = member;
        reaction.day = day;
        const auto& kinds = intake::symptomKinds();
        do
            reaction.symptom = m_chance.oneOf(kinds).name;
        while (isRedFlag(reaction.symptom));
        reaction.strength = m_chance.happens(0.8) ? m_chance.whole(1, 2) : m_chance.whole(3, 7);
        m_records.reactions.append(reaction);
        return reaction.strength;
    }

    static bool isRedFlag(const QString& symptom) {
        const auto& kinds = intake::symptomKinds();
        return std::any_of(kinds.begin(), kinds.end(), [&symptom](const auto& kind) {
            return kind.redFlag && kind.name == symptom;
        });
    }

    void inventCooking() {
        for (QDate day = m_records.family.since.addDays(3); day <= yesterday();
             day = day.addDays(m_chance.whole(3, 6))) {
            kitchen::Batch batch;
            batch.id = BatchId{m_records.batches.size() + 1};
            const kitchen::Pot& pot = m_chance.oneOf(m_ground.practicePots);
            batch.pot = pot.id;
            batch.day = day;
            batch.cooked = kitchen::asPlanned(pot, &m_records.vessels.first());
            if (m_chance.happens(0.8))
                batch.yield = Volume::fromCups(7 + m_chance.whole(0, 16) / 4.0);
            m_records.batches.append(batch);
            if (day >= m_ground.today.addDays(-lotDays))
                inventLots(batch);
        }
    }

    void inventLots(const kitchen::Batch& batch) {
        for (int jar = 1; jar <= 2; ++jar) {
            kitchen::Lot lot;
            lot.id = LotId{m_records.lots.size() + 1};
            lot.batch = batch.id;
            lot.container = QStringLiteral("jar %1").arg(jar);
            lot.volume = Volume::fromCups(4);
            lot.place = jar == 1 ? kitchen::Lot::Place::Fridge : kitchen::Lot::Place::Freezer;
            lot.stored = batch.day;
            lot.useBy = batch.day.addDays(jar == 1 ? 3 : 80);
            if (lot.useBy < m_ground.today)
                lot.goneOn = lot.useBy;
            m_records.lots.append(lot);
        }
    }

    /// A long day at the weekend and one to three shorter stretches on working days.
    void inventHours() {
        constexpr int saturday = 6;
        const auto free = [this](QTime from, int least, int most, int pots) {
            return week::FreeHours{from, quantity::Duration::fromHours(m_chance.whole(least, most)),
                                   pots};
        };
        m_records.usualHours.append({m_chance.whole(saturday, saturday + 1),
                                     free(QTime(9, 0), 6, 10, m_chance.whole(1, 3))});
        const int evenings = m_chance.whole(1, 3);
        for (int weekday = 1; weekday <= evenings; ++weekday)
            m_records.usualHours.append(
                {weekday + m_chance.whole(0, 2), free(QTime(15, 30), 4, 6, 1)});
        if (m_chance.happens(0.1))
            m_records.family.handoutLanguage = QStringLiteral("es");
    }

    void inventWeeks() {
        const QDate monday = week::weekStart(m_ground.today);
        for (int back = 0; back < 4; ++back) {
            week::WeekPlan plan;
            plan.start = monday.addDays(-week::daysAWeek * back);
            for (const int day : {m_chance.whole(0, 3), m_chance.whole(4, 6)})
                plan.placements.append({plan.start.addDays(day),
                                        m_chance.oneOf(m_ground.practicePots).id, QTime(10, 0)});
            m_records.weeks.append(plan);
        }
    }

    void inventNotes() {
        static const QStringList texts{
            QStringLiteral("Log read through together; amounts stay."),
            QStringLiteral("A rung back after a bad night, then on."),
            QStringLiteral("Stock set firm this time. Less water next week."),
            QStringLiteral("Away for some days; picked up where they left off."),
            QStringLiteral("The meat piles up. Feet and backs for a while.")};
        for (QDate day = m_records.family.since; day <= yesterday();
             day = day.addDays(m_chance.whole(14, 45))) {
            casebook::VisitNote note;
            note.day = day;
            note.text = m_chance.oneOf(texts);
            m_records.notes.append(note);
        }
    }

    Chance& m_chance;
    const InventedGround& m_ground;
    casebook::FamilyRecords m_records;
};

} // namespace

casebook::FamilyRecords inventFamily(Chance& chance, const InventedGround& ground) {
    return Inventor(chance, ground).invent();
}

} // namespace ladlework::exchange
