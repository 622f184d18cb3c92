#include "handout/cards.h"
#include "handout/pot_steps.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

/// The findings of a pot that the cook must read besides every Stop.
constexpr std::array cooksFindings{u"small-bones", u"salt-for-infant", u"fish-keep-cold"};

/// The pot as brewed for this family, with the names of this handout in its sentences.
kitchen::Brewed brewedFor(const PageContext& context, const kitchen::Pot& pot) {
    kitchen::BrewInput input = context.casebook().brewInput(pot);
    const std::vector<casebook::Standing>& standings = context.casebook().standings();
    for (std::size_t index = 0; index < input.drinkers.size(); ++index)
        input.drinkers[index].name = context.called(standings[index]);
    return kitchen::brew(input, context.casebook().catalogue());
}

quantity::Volume millilitres(double value) {
    return quantity::Volume::fromMillilitres(std::max(0.0, value));
}

QString expectedStock(const PageContext& context, const kitchen::Range& stockMl) {
    const QString best = context.print(millilitres(stockMl.best));
    const QString low = context.print(millilitres(stockMl.low));
    const QString high = context.print(millilitres(stockMl.high));
    return low == high ? Words::tr("about %1").arg(best)
                       : Words::tr("about %1 (%2 to %3)").arg(best, low, high);
}

Facts factsOf(const PageContext& context, const kitchen::Pot& pot, const kitchen::BrewInput& input,
              const kitchen::Brewed& brewed) {
    Facts facts;
    const int fridgeDays = context.practice().fridgeDays;
    for (const week::Placement& cooking : context.cookingsOf(pot.id)) {
        const QString day = PageContext::weekday(cooking.day);
        facts.pairs.append(
            {Words::tr("Cook on"),
             cooking.start.isValid()
                 ? Words::tr("%1, start at %2").arg(day, context.print(cooking.start))
                 : day});
        facts.pairs.append({Words::tr("Drink or freeze by"),
                            PageContext::weekday(cooking.day.addDays(fridgeDays))});
    }
    if (!input.vessel.name.isEmpty())
        facts.pairs.append({Words::tr("In"), input.vessel.name});
    facts.pairs.append({Words::tr("Simmer for"), quantity::printDuration(pot.simmer)});
    facts.pairs.append({Words::tr("Stock to expect"), expectedStock(context, brewed.stockMl)});
    if (brewed.meatLeftG.best >= 1)
        facts.pairs.append(
            {Words::tr("Meat for the table"),
             Words::tr("about %1")
                 .arg(context.print(quantity::Mass::fromGrams(brewed.meatLeftG.best)))});
    return facts;
}

QStringList notFor(const PageContext& context, const kitchen::Pot& pot) {
    QStringList lines;
    for (const casebook::Standing& standing : context.casebook().standings()) {
        const kitchen::WhoMay verdict = context.casebook().whoMay(standing, pot);
        if (verdict.may)
            continue;
        const QString name = context.called(standing);
        if (isTooYoung(standing))
            lines.append(Words::tr("Not for %1, who is under 6 months.").arg(name));
        else
            lines.append(verdict.why.isEmpty()
                             ? Words::tr("Not for %1.").arg(name)
                             : Words::tr("Not for %1: %2.").arg(name, verdict.why));
    }
    return lines;
}

void addStraining(Card& card, const kitchen::Brewed& brewed) {
    Lines lines;
    lines.items.append(
        Words::tr("Strain out: %1.").arg(strainedNames(brewed, true).join(QStringLiteral("; "))));
    const QStringList left = strainedNames(brewed, false);
    if (!left.isEmpty())
        lines.items.append(Words::tr("Leave in: %1.").arg(left.join(QStringLiteral("; "))));
    card.blocks.append(lines);
}

void addWarnings(Card& card, const kitchen::Brewed& brewed) {
    for (const Finding& finding : brewed.findings) {
        const bool ofAMember = finding.field.startsWith(QLatin1String("members["));
        const bool stop = finding.severity == Finding::Severity::Stop && !ofAMember;
        const bool cooks = std::ranges::any_of(cooksFindings, [&finding](const char16_t* code) {
            return finding.code == QStringView(code);
        });
        if (stop || cooks)
            card.blocks.append(
                Warning{stop ? Words::tr("Stop") : Words::tr("Caution"), finding.text});
    }
}
} // namespace

Card potCard(const PageContext& context, const kitchen::Pot& pot) {
    const kitchen::Brewed brewed = brewedFor(context, pot);
    Card card;
    card.kind = Card::Kind::Pot;
    card.title = pot.name;
    card.startsPage = true;
    card.blocks.append(factsOf(context, pot, context.casebook().brewInput(pot), brewed));
    const QStringList barred = notFor(context, pot);
    if (!barred.isEmpty())
        card.blocks.append(Lines{Lines::Sign::Dot, barred});
    card.blocks.append(Heading{Words::tr("You need")});
    card.blocks.append(Lines{Lines::Sign::TickBox, ingredientLines(context, pot)});
    card.blocks.append(Heading{Words::tr("Steps")});
    for (const Table& table : stepTables(context, pot, brewed))
        card.blocks.append(table);
    addStraining(card, brewed);
    addWarnings(card, brewed);
    if (!pot.note.trimmed().isEmpty())
        card.blocks.append(Paragraph{pot.note.trimmed()});
    card.blocks.append(Paragraph{
        Words::tr("The amounts are a best guess. Write down how much stock you got: ________"),
        true});
    return card;
}

} // namespace ladlework::handout
