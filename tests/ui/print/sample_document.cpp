#include "ui/print/sample_document.h"

namespace ladlework::ui {

using namespace handout;

namespace {

const QStringList& days() {
    static const QStringList names{QStringLiteral("Monday"),    QStringLiteral("Tuesday"),
                                   QStringLiteral("Wednesday"), QStringLiteral("Thursday"),
                                   QStringLiteral("Friday"),    QStringLiteral("Saturday"),
                                   QStringLiteral("Sunday")};
    return names;
}

QString memberName(int i) {
    static const QStringList names{QStringLiteral("Ana"),    QStringLiteral("Bjorn"),
                                   QStringLiteral("Cecile"), QStringLiteral("Dagfinnur"),
                                   QStringLiteral("Efua"),   QStringLiteral("Fitzwilliam")};
    return names.at(i % names.size()) + QStringLiteral(" %1").arg(i + 1);
}

Card cover() {
    Card card{Card::Kind::Cover, QStringLiteral("Your week of 2 November 2026"), {}, false};
    card.blocks << Paragraph{QStringLiteral("For the Okonjo-Lindqvist family, from Harbour Lane "
                                            "Nutrition")}
                << Paragraph{QStringLiteral("Start small, write down what you notice, and call "
                                            "when something worries you. We will look at the "
                                            "pages together next time.")}
                << Facts{{{QStringLiteral("Your practitioner"), QStringLiteral("M. Oduya")},
                          {QStringLiteral("Call"), QStringLiteral("555 0134")},
                          {QStringLiteral("Next visit"), QStringLiteral("Monday 9 November")}}};
    return card;
}

Card week(int members) {
    Card card{Card::Kind::Week, QStringLiteral("The week at a glance"), {}, false};
    Table table;
    table.header << QStringLiteral("Who") << days();
    table.weights = {1.6, 1, 1, 1, 1, 1, 1, 1};
    for (int i = 0; i < members; ++i) {
        QList<Cell> row{Cell{memberName(i), true}};
        for (int day = 0; day < 7; ++day)
            row << Cell{QStringLiteral("%1½ cups").arg(day + 1), false, true};
        table.rows << row;
    }
    card.blocks << table
                << Paragraph{QStringLiteral("Amounts for the whole day, in as many cups as you "
                                            "like."),
                             true};
    return card;
}

Card pot(int i) {
    Card card{
        Card::Kind::Pot, QStringLiteral("Chicken legs and feet, pot %1").arg(i + 1), {}, false};
    card.blocks << Facts{{{QStringLiteral("Water"), QStringLiteral("3½ quarts")},
                          {QStringLiteral("Makes about"), QStringLiteral("2¾ quarts")},
                          {QStringLiteral("Simmer"), QStringLiteral("2 h 30 min")},
                          {QStringLiteral("Vessel"), QStringLiteral("the big enamel pot")}}}
                << Heading{QStringLiteral("What goes in")}
                << Lines{Lines::Sign::TickBox,
                         {QStringLiteral("3 lb 2 oz chicken legs"),
                          QStringLiteral("1 lb chicken feet"), QStringLiteral("2 onions"),
                          QStringLiteral("4 cloves of garlic, pressed, at the end")}}
                << Heading{QStringLiteral("When")};
    Table table{{QStringLiteral("Clock"), QStringLiteral("What to do")}, {}, {1, 4}};
    table.rows << QList<Cell>{{QStringLiteral("9:00 AM"), true},
                              {QStringLiteral("Cover the raw legs with cold water, bring slowly "
                                              "to a simmer and skim off the foam.")}}
               << QList<Cell>{{QStringLiteral("11:30 AM"), true},
                              {QStringLiteral("Heat off. Press in the garlic, strain through a "
                                              "fine sieve.")}};
    card.blocks << table
                << Lines{Lines::Sign::Number,
                         {QStringLiteral("Pour into shallow containers, no deeper than 2 inches."),
                          QStringLiteral("Into the refrigerator within 2 hours.")}};
    return card;
}

Card ladder(int i) {
    Card card{Card::Kind::Ladder, QStringLiteral("The climb of %1").arg(memberName(i)), {}, true};
    Table table{{QStringLiteral("Day"), QStringLiteral("Drink"), QStringLiteral("Done"),
                 QStringLiteral("What I noticed")},
                {},
                {1, 1, 0.6, 3}};
    for (const QString& day : days())
        table.rows << QList<Cell>{{day, true},
                                  {QStringLiteral("2 tbsp of rung %1").arg(i)},
                                  {QString(), false, true},
                                  {QString()}};
    card.blocks << table
                << Warning{QStringLiteral("Stop"),
                           QStringLiteral("Trouble breathing, swelling of the face or fainting: "
                                          "call 911 first, then us.")};
    return card;
}

Card keeping() {
    Card card{Card::Kind::Keeping, QStringLiteral("Cooling and keeping"), {}, false};
    card.blocks << Lines{Lines::Sign::Dot,
                         {QStringLiteral("From 135 °F to 70 °F within 2 hours, to 41 °F within 6."),
                          QStringLiteral("Drink within 3 days or freeze on the day of cooking.")}}
                << Warning{QStringLiteral("Caution"),
                           QStringLiteral("Home canning is not covered here.")}
                << Paragraph{QStringLiteral("FDA Food Code 2022, 3-501.14"), true};
    return card;
}

void addText(QStringList& texts, const QString& text) {
    if (!text.isEmpty())
        texts << text;
}

struct BlockTexts {
    QStringList& texts;
    void operator()(const Heading& block) const { addText(texts, block.text); }
    void operator()(const Paragraph& block) const { addText(texts, block.text); }
    void operator()(const Lines& block) const { texts << block.items; }
    void operator()(const Table& block) const {
        for (const QString& text : block.header)
            addText(texts, text);
        for (const QList<Cell>& row : block.rows)
            for (const Cell& cell : row)
                addText(texts, cell.text);
    }
    void operator()(const Warning& block) const { texts << block.word << block.text; }
    void operator()(const Facts& block) const {
        for (const auto& pair : block.pairs)
            texts << pair.first << pair.second;
    }
    void operator()(const Letterhead& block) const {
        addText(texts, block.practice);
        addText(texts, block.practitioner);
        texts << block.contact;
    }
    void operator()(const LabelSheet& block) const {
        for (const JarLabel& label : block.labels) {
            addText(texts, label.title);
            for (const Cell& line : label.lines)
                addText(texts, line.text);
        }
    }
};

} // namespace

Document sampleDocument(int members, int pots) {
    Document document;
    document.title = QStringLiteral("Okonjo-Lindqvist - week of 2 November 2026");
    document.author = QStringLiteral("Harbour Lane Nutrition");
    document.footer = QStringLiteral("Okonjo-Lindqvist, week of 2 November 2026");
    document.printedOn = QStringLiteral("30 October 2026");
    document.cards << cover() << week(members);
    for (int i = 0; i < pots; ++i)
        document.cards << pot(i);
    for (int i = 0; i < members; ++i)
        document.cards << ladder(i);
    document.cards << keeping();
    return document;
}

QStringList textsOf(const Document& document) {
    QStringList texts;
    for (const Card& card : document.cards) {
        addText(texts, card.title);
        for (const Block& block : card.blocks)
            std::visit(BlockTexts{texts}, block);
    }
    return texts;
}

} // namespace ladlework::ui
