#include "core/casebook/hand_made_family.h"
#include "core/handout/handout_reader.h"
#include "handout/family_handout.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using casebook::HandoutPart;
using casebook::HandoutSection;
using namespace hand_made;
using namespace handout_reader;

namespace {
class HandoutSectionsTest : public ::testing::Test {
protected:
    HandoutSectionsTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Document made(const QList<HandoutSection>& sections) const {
        HandoutOptions options;
        options.week = monday;
        options.sections = sections;
        return familyHandout(casebook::Casebook(records, catalogue, today), options);
    }
    [[nodiscard]] static QList<Card::Kind> kindsOf(const Document& document) {
        QList<Card::Kind> kinds;
        for (const Card& card : document.cards)
            if (kinds.isEmpty() || kinds.last() != card.kind)
                kinds.append(card.kind);
        return kinds;
    }
    static HandoutSection shown(HandoutPart part, const QString& words = {}) {
        return {part, true, {}, words};
    }

    kitchen::Catalogue catalogue;
    casebook::FamilyRecords records;
};
} // namespace

TEST_F(HandoutSectionsTest, printsWhatIsShownInItsOrder) {
    const Document document = made({shown(HandoutPart::Cautions),
                                    shown(HandoutPart::Ladders),
                                    {HandoutPart::Pots, false, {}, {}},
                                    shown(HandoutPart::Week),
                                    shown(HandoutPart::Cover)});
    EXPECT_EQ(kindsOf(document), (QList<Card::Kind>{Card::Kind::Cautions, Card::Kind::Ladder,
                                                    Card::Kind::Week, Card::Kind::Cover}));
}

TEST_F(HandoutSectionsTest, cautionsStayWhereAPotOrALadderIs) {
    for (const HandoutPart part : {HandoutPart::Pots, HandoutPart::Ladders}) {
        const QList<HandoutSection> sections{shown(part), {HandoutPart::Cautions, false, {}, {}}};
        EXPECT_TRUE(needsCautions(sections));
        EXPECT_EQ(kindsOf(made(sections)).last(), Card::Kind::Cautions);
        EXPECT_EQ(kindsOf(made({shown(part)})).last(), Card::Kind::Cautions) << "not in the list";
    }
    const QList<HandoutSection> without{shown(HandoutPart::Shopping),
                                        {HandoutPart::Cautions, false, {}, {}},
                                        {HandoutPart::Pots, false, {}, {}}};
    EXPECT_FALSE(needsCautions(without));
    EXPECT_EQ(kindsOf(made(without)), QList<Card::Kind>{Card::Kind::Shopping});
    // Once is enough.
    const Document usual = made(casebook::usualSections());
    EXPECT_EQ(cardsOf(usual, Card::Kind::Cautions).size(), 1);
}

TEST_F(HandoutSectionsTest, ownTextStandsAboveItsPart) {
    const Document document =
        made({shown(HandoutPart::Pots, QStringLiteral("Use the small burner.\n- one\n- two")),
              shown(HandoutPart::Shopping, QStringLiteral("Ask for the feet."))});
    const Card& first = document.cards.first();
    ASSERT_EQ(first.kind, Card::Kind::Pot);
    EXPECT_TRUE(std::get<Paragraph>(first.blocks[0]) ==
                Paragraph{QStringLiteral("Use the small burner.")});
    EXPECT_TRUE(std::get<Lines>(first.blocks[1]) ==
                (Lines{Lines::Sign::Dot, {QStringLiteral("one"), QStringLiteral("two")}}));
    EXPECT_FALSE(textOf(document.cards[1]).contains(QStringLiteral("small burner")))
        << "above the first pot only";
    EXPECT_TRUE(textOf(cardsOf(document, Card::Kind::Shopping).first())
                    .startsWith(QStringLiteral("Shopping list\nAsk for the feet.")));
}

TEST_F(HandoutSectionsTest, pagesOfOwnWordsMayBeSeveralAndEmptyOnesAreNone) {
    const Document document =
        made({{HandoutPart::OwnWords, true, QStringLiteral("First"), QStringLiteral("a")},
              {HandoutPart::OwnWords, true, {}, QStringLiteral(" \n ")},
              {HandoutPart::OwnWords, true, {}, QStringLiteral("b")}});
    ASSERT_EQ(document.cards.size(), 2);
    EXPECT_EQ(document.cards[0].title, QStringLiteral("First"));
    EXPECT_EQ(textOf(document.cards[1]), QStringLiteral("b"));
    EXPECT_TRUE(document.cards[1].startsPage);
}

TEST_F(HandoutSectionsTest, theCoverHasTheLetterheadWithThePicture) {
    records.practice.logo = QByteArrayLiteral("\x89PNG and so on");
    const Card cover = made({shown(HandoutPart::Cover, QStringLiteral("Dear all,"))}).cards.first();
    const Letterhead expected{QStringLiteral("Harbour Street Practice"),
                              QStringLiteral("Ines Moreau"),
                              {QStringLiteral("555 0142"), QStringLiteral("info@harbour.example")},
                              records.practice.logo};
    EXPECT_TRUE(std::get<Letterhead>(cover.blocks[0]) == expected);
    EXPECT_TRUE(std::get<Paragraph>(cover.blocks[1]).text.startsWith(QStringLiteral("Week of")));
    EXPECT_EQ(std::get<Paragraph>(cover.blocks[2]).text, QStringLiteral("Dear all,"));
    records.practice = people::Practice();
    const Card nameless = made({shown(HandoutPart::Cover)}).cards.first();
    EXPECT_FALSE(std::holds_alternative<Letterhead>(nameless.blocks.first()));
}

TEST_F(HandoutSectionsTest, partsWithNothingToSayGiveNoCard) {
    records.weeks.clear();
    const Document document = made({shown(HandoutPart::Pots, QStringLiteral("words")),
                                    shown(HandoutPart::Shopping), shown(HandoutPart::JarLabels)});
    EXPECT_EQ(kindsOf(document), QList<Card::Kind>{Card::Kind::Cautions});
}
