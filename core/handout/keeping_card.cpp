#include "handout/cards.h"
#include "kitchen/keeping_figures.h"

#include <QCoreApplication>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString figureId(const char* id) {
    return QString::fromLatin1(id);
}

/// The titles of publications stay; what is said of them is translated.
QStringList citedSources() {
    QStringList sources;
    for (const QString& source : kitchen::KeepingFigures::shipped().sources())
        sources.append(QCoreApplication::translate("Keeping", source.toUtf8().constData()));
    return sources;
}

/// The figures as they are printed for this family.
class Printed {
public:
    explicit Printed(const PageContext& context) : m_context(context) {}

    [[nodiscard]] QString temperature(const char* id) const {
        return m_context.print(m_figures.temperature(figureId(id)));
    }
    [[nodiscard]] QString depth(const char* id) const {
        return quantity::printLength(m_figures.length(figureId(id)), m_context.measures());
    }
    [[nodiscard]] int count(const char* id) const { return m_figures.count(figureId(id)); }
    [[nodiscard]] QString hours(const char* id) const {
        return Words::tr("%n hour(s)", nullptr, count(id));
    }
    [[nodiscard]] QString days(const char* least, const char* most) const {
        return Words::tr("%1 to %n day(s)", nullptr, count(most)).arg(count(least));
    }
    [[nodiscard]] QString months(const char* least, const char* most) const {
        return Words::tr("%1 to %n month(s)", nullptr, count(most)).arg(count(least));
    }

private:
    const PageContext& m_context;
    const kitchen::KeepingFigures& m_figures = kitchen::KeepingFigures::shipped();
};

void addCooling(Card& card, const Printed& printed) {
    card.blocks.append(Heading{Words::tr("Cool it fast")});
    Lines lines;
    lines.sign = Lines::Sign::Number;
    lines.items = {
        Words::tr("Take the pot off the heat and strain the stock."),
        Words::tr("Pour it into shallow pans, no more than %1 deep.")
            .arg(printed.depth("shallow-depth")),
        Words::tr("Set the pans in ice water and stir now and then."),
        Words::tr("It must drop from %1 to %2 within %3.")
            .arg(printed.temperature("cool-from"), printed.temperature("cool-middle"),
                 printed.hours("cool-middle-within")),
        Words::tr("It must be down to %1 within %2 in all.")
            .arg(printed.temperature("cool-end"), printed.hours("cool-end-within")),
        Words::tr("Put it in the fridge within %1. If the room is hotter than %2, within %3.")
            .arg(printed.hours("fridge-within"), printed.temperature("hot-day"),
                 printed.hours("hot-day-within"))};
    card.blocks.append(lines);
    card.blocks.append(Warning{
        Words::tr("Caution"),
        Words::tr("Do not put a deep pot of hot stock in the fridge. It can take a day (%1) "
                  "to cool, and that is too long. If the stock was not cooled in time, "
                  "throw it out.")
            .arg(printed.hours("deep-pot-hours"))});
}

QList<Cell> row(const QString& what, const QString& fridge, const QString& freezer) {
    return {{what, true, false}, {fridge, false, false}, {freezer, false, false}};
}

void addKeeping(Card& card, const PageContext& context, const Printed& printed) {
    const int fridgeDays = context.practice().fridgeDays;
    card.blocks.append(Heading{Words::tr("Keep it cold")});
    card.blocks.append(Paragraph{
        Words::tr("Keep the fridge at %1 or below. Write the day on each jar. Count from the day "
                  "you cooked.")
            .arg(printed.temperature("fridge-most"))});
    Table table;
    table.header = {Words::tr("What"), Words::tr("In the fridge"), Words::tr("In the freezer")};
    table.weights = {1.4, 1.0, 1.2};
    table.rows = {
        row(Words::tr("Stock"), Words::tr("%n day(s)", nullptr, fridgeDays),
            printed.months("stock-freezer-least", "stock-freezer-most")),
        row(Words::tr("Cooked meat"), printed.days("cooked-meat-least", "cooked-meat-most"),
            printed.months("cooked-meat-freezer-least", "cooked-meat-freezer-most")),
        row(Words::tr("Raw chicken and other birds"),
            printed.days("raw-poultry-least", "raw-poultry-most"), QString()),
        row(Words::tr("Other raw meat"), printed.days("raw-meat-least", "raw-meat-most"),
            QString()),
        row(Words::tr("Raw fish"), printed.days("raw-fish-least", "raw-fish-most"), QString())};
    card.blocks.append(table);
    card.blocks.append(Paragraph{
        Words::tr("Charts differ. One gives soup %1 in the fridge. An older one gives meat broth "
                  "%2. Your practice uses %n day(s).",
                  nullptr, fridgeDays)
            .arg(printed.days("soup-fridge-least", "soup-fridge-most"),
                 printed.days("broth-fridge-least", "broth-fridge-most")),
        true});
}

void addUseBy(Card& card, const PageContext& context) {
    Lines lines;
    for (const kitchen::Pot* pot : context.pots()) {
        for (const week::Placement& cooking : context.cookingsOf(pot->id))
            lines.items.append(
                Words::tr("%1, cooked on %2: drink or freeze by %3.")
                    .arg(isolated(pot->name), PageContext::weekday(cooking.day),
                         PageContext::weekday(cooking.day.addDays(context.practice().fridgeDays))));
    }
    if (lines.items.isEmpty())
        return;
    card.blocks.append(Heading{Words::tr("Use by")});
    card.blocks.append(lines);
}

void addFreezing(Card& card, const Printed& printed) {
    card.blocks.append(Heading{Words::tr("Freeze, thaw and heat")});
    Lines lines;
    lines.items = {
        Words::tr("Freeze what you will not drink in time. Do it on the day you cook."),
        Words::tr("Leave room at the top of the jar, for stock swells as it freezes."),
        Words::tr("Move it to the fridge the day before you need it. Never thaw it on the "
                  "counter. Drink it within %n day(s).",
                  nullptr, printed.count("thawed-stock")),
        Words::tr("Heat stock until it boils. Heat meat to %1 or more. Then let it cool until "
                  "it is safe to sip.")
            .arg(printed.temperature("reheat"))};
    card.blocks.append(lines);
}

void addLimits(Card& card) {
    card.blocks.append(Heading{Words::tr("Take note")});
    Lines lines;
    lines.items = {
        Words::tr("Keep raw fish cold until it goes in the pot. Fish that got warm can make you "
                  "ill, and cooking does not mend that."),
        Words::tr("Strain stock for a child through a fine sieve. Small bones can choke."),
        Words::tr("This is not home canning. Do not put up jars for the shelf with these steps. "
                  "Ask your local extension service how that is done."),
        Words::tr("Your local food safety rules go first if they are stricter.")};
    card.blocks.append(lines);
}
} // namespace

Card keepingCard(const PageContext& context) {
    const Printed printed(context);
    Card card;
    card.kind = Card::Kind::Keeping;
    card.title = Words::tr("Cool it and keep it");
    card.startsPage = true;
    addCooling(card, printed);
    addKeeping(card, context, printed);
    addUseBy(card, context);
    addFreezing(card, printed);
    addLimits(card);
    card.blocks.append(
        Paragraph{Words::tr("Sources: %1.").arg(citedSources().join(QStringLiteral("; "))), true});
    return card;
}

} // namespace ladlework::handout
