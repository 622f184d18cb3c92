#include "handout/family_handout.h"

#include "foundation/day_words.h"
#include "handout/cards.h"
#include "handout/page_language.h"

#include <QCoreApplication>
#include <algorithm>
#include <iterator>

namespace ladlework::handout {

namespace {
using casebook::HandoutPart;
using casebook::HandoutSection;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString titleOf(const PageContext& context) {
    const QString family = context.familyCalled();
    const QString start = dayInWords(context.options().week);
    return family.isEmpty() ? Words::tr("Week of %1").arg(start)
                            : Words::tr("%1 - week of %2").arg(family, start);
}

/// The cards of one part, without the practitioner's own words above it.
QList<Card> cardsOf(const PageContext& context, const HandoutSection& section) {
    QList<Card> cards;
    switch (section.part) {
    case HandoutPart::Cover:
        return {coverCard(context)};
    case HandoutPart::Week:
        return {weekCard(context)};
    case HandoutPart::Pots:
        for (const kitchen::Pot* pot : context.pots())
            cards.append(potCard(context, *pot));
        return cards;
    case HandoutPart::Ladders:
        for (const casebook::Standing& standing : context.casebook().standings())
            if (standing.ladder && !isTooYoung(standing))
                cards.append(ladderCard(context, standing));
        return cards;
    case HandoutPart::Shopping:
        if (!context.pots().isEmpty() || !context.plan().extras.isEmpty())
            cards.append(shoppingCard(context));
        return cards;
    case HandoutPart::Keeping:
        return {keepingCard(context)};
    case HandoutPart::Cautions:
        return {cautionsCard(context)};
    case HandoutPart::OwnWords:
        cards.append(ownWordsCard(section));
        if (cards.first().title.isEmpty() && cards.first().blocks.isEmpty())
            cards.clear();
        return cards;
    case HandoutPart::LogSheet:
        return {logSheetCard(context)};
    case HandoutPart::JarLabels:
        cards.append(jarLabelsCard(context));
        if (std::get<LabelSheet>(cards.first().blocks.first()).labels.isEmpty())
            cards.clear();
        return cards;
    }
    return cards;
}

/// On the cover they stand below the week, where a letter begins; elsewhere above all else. No
/// words fit on a label.
void addOwnWords(Card& card, const HandoutSection& section) {
    if (section.part == HandoutPart::OwnWords || section.part == HandoutPart::JarLabels)
        return;
    const QList<Block> blocks = ownWordsBlocks(section.words);
    qsizetype place = 0;
    if (section.part == HandoutPart::Cover)
        place = std::holds_alternative<Letterhead>(card.blocks.first()) ? 2 : 1;
    for (const Block& block : blocks)
        card.blocks.insert(place++, block);
}
} // namespace

bool needsCautions(const QList<HandoutSection>& sections) {
    return std::ranges::any_of(sections, [](const HandoutSection& section) {
        return section.shown &&
               (section.part == HandoutPart::Pots || section.part == HandoutPart::Ladders);
    });
}

QList<HandoutSection> printedSections(const QList<HandoutSection>& sections) {
    QList<HandoutSection> printed;
    std::ranges::copy_if(sections, std::back_inserter(printed), &HandoutSection::shown);
    const bool there =
        std::ranges::find(printed, HandoutPart::Cautions, &HandoutSection::part) != printed.end();
    if (!there && needsCautions(printed)) {
        const auto hidden =
            std::ranges::find(sections, HandoutPart::Cautions, &HandoutSection::part);
        printed.append(hidden == sections.end()
                           ? HandoutSection{HandoutPart::Cautions, true, {}, {}}
                           : *hidden);
    }
    return printed;
}

QString& ownWordsOf(QList<HandoutSection>& sections, HandoutPart part) {
    const auto found = std::ranges::find(sections, part, &HandoutSection::part);
    if (found != sections.end())
        return found->words;
    sections.append(HandoutSection{part, true, {}, {}});
    return sections.last().words;
}

namespace {
Document compose(const casebook::Casebook& casebook, const HandoutOptions& options,
                 const QString& language) {
    const PageContext context(casebook, options);
    Document document;
    document.language = language;
    document.title = titleOf(context);
    document.author = context.practice().name;
    document.footer = document.title;
    document.printedOn = dayInWords(casebook.today());
    document.paper = options.paper.value_or(casebook.records().family.paper);
    document.largePrint = options.largePrint;
    for (const HandoutSection& section : printedSections(options.sections)) {
        QList<Card> cards = cardsOf(context, section);
        if (!cards.isEmpty())
            addOwnWords(cards.first(), section);
        document.cards += cards;
    }
    return document;
}
} // namespace

Document familyHandout(const casebook::Casebook& casebook, const HandoutOptions& options) {
    const people::Family& family = casebook.records().family;
    const QString language = pageLanguage(options.language, family.handoutLanguage);
    const LanguageScope scope(language, pageLocale(language, family.measures));
    if (language == programLanguage())
        return compose(casebook, options, language);
    // The catalogue and the casebook hold words of the program's language: names of cuts, findings,
    // cautions. Made anew within the scope, they speak that of the page.
    const kitchen::Catalogue catalogue = valueOrThrow(kitchen::Catalogue::load());
    return compose(casebook::Casebook(casebook.records(), catalogue, casebook.today()), options,
                   language);
}

} // namespace ladlework::handout
