#include "ui/shared/family_workbook.h"

#include <stdexcept>

namespace ladlework::ui {

namespace {

using quantity::Volume;

template <class Value>
Value must(Result<Value> result) {
    if (!result)
        throw std::runtime_error(toLine(result.error()).toStdString());
    return *std::move(result);
}

Outcome done(const auto& result) {
    if (!result)
        return passOn(result);
    return {};
}

kitchen::Pot potOf(FamilyId family, const QString& name, const QString& cut, double hours) {
    kitchen::Pot pot;
    pot.family = family;
    pot.name = name;
    pot.water = Volume::fromQuarts(3);
    pot.salt = quantity::Mass::fromGrams(12);
    pot.simmer = quantity::Duration::fromHours(hours);
    pot.cuts = {kitchen::CutInPot{cut, quantity::Mass::fromPounds(3), true}};
    pot.extras = {kitchen::ExtraInPot{QStringLiteral("onion"), quantity::Mass::fromGrams(220)}};
    return pot;
}

} // namespace

FamilyWorkbook::FamilyWorkbook()
    : m_catalogue(std::make_unique<kitchen::Catalogue>(must(kitchen::Catalogue::load()))),
      m_workbook(must(store::Workbook::create(file(QStringLiteral("test.ladlework")), m_clock))) {
    m_context =
        std::make_unique<ScreenContext>(ScreenContext{*m_workbook, *m_catalogue, m_clock, m_desk});
    const Outcome filled = m_workbook->act(QStringLiteral("Took on the Hale family"),
                                           [this](store::Action& action) { return fill(action); });
    if (!filled)
        throw std::runtime_error(toLine(filled.error()).toStdString());
}

Outcome FamilyWorkbook::fill(store::Action& action) {
    people::Family record;
    record.name = QStringLiteral("Hale");
    record.since = QDate(2026, 10, 1);
    const Result<FamilyId> added = m_workbook->families().addFamily(action, record);
    if (!added)
        return passOn(added);
    family = *added;
    if (Outcome bad = addMember(action, QStringLiteral("Ana Hale"), QDate(1988, 5, 1),
                                Volume::fromCups(4), false);
        !bad)
        return bad;
    if (Outcome bad = addMember(action, QStringLiteral("Bo Hale"), QDate(2018, 2, 1),
                                Volume::fromCups(2), false);
        !bad)
        return bad;
    if (Outcome bad = addMember(action, QStringLiteral("Cy Hale"), QDate(2021, 2, 1),
                                Volume::fromCups(1), true);
        !bad)
        return bad;
    return addPots(action);
}

Outcome FamilyWorkbook::addMember(store::Action& action, const QString& name, QDate birth,
                                  Volume amount, bool noPoultry) {
    people::Member member;
    member.family = family;
    member.name = name;
    member.birth = birth;
    const Result<MemberId> id = m_workbook->families().addMember(action, member);
    if (!id)
        return passOn(id);
    intake::Target target;
    target.member = *id;
    target.low = amount;
    target.high = amount;
    target.from = QDate(2026, 10, 1);
    if (const auto added = m_workbook->climbs().addTarget(action, target); !added)
        return passOn(added);
    intake::Ladder ladder;
    ladder.member = *id;
    ladder.from = QDate(2026, 10, 1);
    ladder.rungs = {amount};
    if (const auto added = m_workbook->climbs().addLadder(action, ladder); !added)
        return passOn(added);
    if (!noPoultry)
        return {};
    people::ToleranceNote note;
    note.member = *id;
    note.subject = {people::Subject::Kind::Animal, QStringLiteral("poultry")};
    note.reason = QStringLiteral("a rash in September");
    note.noted = QDate(2026, 10, 1);
    return done(m_workbook->families().addTolerance(action, note));
}

Outcome FamilyWorkbook::addPots(store::Action& action) {
    kitchen::Vessel vessel;
    vessel.family = family;
    vessel.name = QStringLiteral("the big pot");
    vessel.diameter = quantity::Length::fromCentimetres(28);
    vessel.height = quantity::Length::fromCentimetres(22);
    if (const auto added = m_workbook->families().addVessel(action, vessel); !added)
        return passOn(added);
    const auto first = m_workbook->pots().addPot(
        action, potOf(family, QStringLiteral("Chicken legs"), QStringLiteral("chicken-leg"), 2.5));
    if (!first)
        return passOn(first);
    chicken = *first;
    const auto second = m_workbook->pots().addPot(
        action, potOf(family, QStringLiteral("Beef shank"), QStringLiteral("beef-shank"), 5));
    if (!second)
        return passOn(second);
    beef = *second;
    return {};
}

std::shared_ptr<const casebook::Casebook> FamilyWorkbook::casebook() const {
    return std::make_shared<const casebook::Casebook>(must(m_workbook->records(family)),
                                                      *m_catalogue, today());
}

void FamilyWorkbook::attach(FamilyScreen& screen) {
    screen.setCasebook(casebook());
    QObject::connect(m_workbook.get(), &store::Workbook::changed, &screen,
                     [this, &screen] { screen.setCasebook(casebook()); });
}

void FamilyWorkbook::plan(QDate monday, const QList<week::Placement>& placements) {
    week::WeekPlan plan;
    plan.family = family;
    plan.start = monday;
    plan.placements = placements;
    const Outcome stored =
        m_workbook->act(QStringLiteral("Planned a week"), [&](store::Action& action) {
            return done(m_workbook->weeks().setPlan(action, plan));
        });
    if (!stored)
        throw std::runtime_error(toLine(stored.error()).toStdString());
}

} // namespace ladlework::ui
