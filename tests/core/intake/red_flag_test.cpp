#include "intake/felt_items.h"
#include "intake/red_flags.h"

#include <QSet>

#include <algorithm>
#include <gtest/gtest.h>
#include <initializer_list>
#include <string>

namespace ladlework::intake {
namespace {

bool says(const Findings& findings, const char* code, const char* words) {
    return std::ranges::any_of(findings, [&](const Finding& finding) {
        return finding.code == QLatin1String(code) &&
               finding.text.contains(QLatin1String(words), Qt::CaseInsensitive);
    });
}

TEST(RedFlagTest, listsEachSymptomOnceWithItsSource) {
    QSet<QString> ids;
    bool ordinarySeen = false;
    for (const SymptomKind& kind : symptomKinds()) {
        EXPECT_FALSE(ids.contains(kind.id)) << qPrintable(kind.id);
        ids.insert(kind.id);
        EXPECT_FALSE(kind.name.isEmpty());
        EXPECT_FALSE(kind.source.isEmpty());
        EXPECT_EQ(kind.redFlag, !kind.advice.isEmpty()) << qPrintable(kind.id);
        EXPECT_FALSE(kind.redFlag && ordinarySeen) << "red flags stand first";
        ordinarySeen = ordinarySeen || !kind.redFlag;
    }
    for (const char* id : {"loose-stool", "bloating", "headache", "rash", "poor-sleep"})
        EXPECT_TRUE(ids.contains(QLatin1String(id))) << id;
}

TEST(RedFlagTest, carriesThePublishedSigns) {
    // NIAID/FAAN 2006 and WAO 2020: skin, breathing, low blood pressure (fainting), gut. American
    // Academy of Pediatrics 2019: six wet diapers, dry mouth, sunken soft spot, sleepiness.
    const Findings infant = redFlagFindings(QStringLiteral("blood"), AgeBand::InfantStartingSolids,
                                            QStringLiteral("911"));
    for (const char* sign : {"hives", "breathing", "swelling", "vomiting", "fainting"})
        EXPECT_TRUE(says(infant, "red-flag-anaphylaxis", sign)) << sign;
    for (const char* sign :
         {"six wet diapers", "parched mouth", "soft spot", "sleepy", "sunken eyes"})
        EXPECT_TRUE(says(infant, "red-flag-dehydration", sign)) << sign;
    for (const char* id : {"blood", "fainting", "weight-loss"}) {
        const auto kind = std::ranges::find(symptomKinds(), QLatin1String(id), &SymptomKind::id);
        ASSERT_NE(kind, symptomKinds().end());
        EXPECT_TRUE(kind->redFlag);
    }
}

TEST(RedFlagTest, namesTheNumberFirst) {
    for (const char* symptom :
         {"blood", "Blood in stool or vomit, or black stool", "something else"}) {
        const Findings findings =
            redFlagFindings(QString::fromLatin1(symptom), AgeBand::Adult, QStringLiteral(" 112 "));
        ASSERT_FALSE(findings.isEmpty());
        EXPECT_EQ(findings[0].code.toStdString(), "red-flag-call");
        EXPECT_TRUE(findings[0].text.contains(QStringLiteral("Call 112 at once")));
        EXPECT_TRUE(std::ranges::all_of(findings, [](const Finding& finding) {
            return finding.severity == Finding::Severity::Stop;
        }));
        EXPECT_FALSE(hasCode(findings, u"red-flag-dehydration"));
    }
    EXPECT_TRUE(redFlagFindings({}, AgeBand::Adult, QStringLiteral("  "))[0].text.contains(
        QStringLiteral("Call the local emergency number")));
}

TEST(RedFlagTest, saysWhatToDoForASymptomItKnows) {
    EXPECT_TRUE(says(redFlagFindings(QStringLiteral("FAINTING"), AgeBand::Adult, {}), "red-flag-do",
                     "Lay the person down"));
    EXPECT_FALSE(
        hasCode(redFlagFindings(QStringLiteral("headache"), AgeBand::Adult, {}), u"red-flag-do"));
}

TEST(RedFlagTest, knowsEverydayWords) {
    // The signs are those of NIAID/FAAN 2006, WAO 2020 and the American Academy of Pediatrics 2019;
    // the words are how a parent would type them.
    struct Case {
        const char* typed;
        const char* id; ///< null: no red flag
    };
    for (const Case& one :
         std::initializer_list<Case>{{"wheezing", "trouble-breathing"},
                                     {"a bit of WHEEZE after lunch", "trouble-breathing"},
                                     {"short of breath", "trouble-breathing"},
                                     {"can't breathe", "trouble-breathing"},
                                     {"can\xE2\x80\x99t breathe well", "trouble-breathing"},
                                     {"Trouble  breathing", "trouble-breathing"},
                                     {"trouble-breathing", "trouble-breathing"},
                                     {"swollen lips", "throat-or-tongue-swelling"},
                                     {"swelling of the tongue", "throat-or-tongue-swelling"},
                                     {"her face is swollen", "throat-or-tongue-swelling"},
                                     {"throat swelling", "throat-or-tongue-swelling"},
                                     {"faint", "fainting"},
                                     {"she fainted", "fainting"},
                                     {"passed out", "fainting"},
                                     {"collapsed", "fainting"},
                                     {"went limp", "fainting"},
                                     {"unconscious", "fainting"},
                                     {"blood in stool", "blood"},
                                     {"blood in the vomit", "blood"},
                                     {"black stool", "blood"},
                                     {"hives all over", "hives-all-over"},
                                     {"Hives, all over!", "hives-all-over"},
                                     {"keeps vomiting", "repeated-vomiting"},
                                     {"hives and wheezing", "trouble-breathing"},
                                     {"hives", nullptr},
                                     {"vomited", nullptr},
                                     {"vomited once", nullptr},
                                     {"flushed face", nullptr},
                                     {"swollen belly", nullptr},
                                     {"limping", nullptr},
                                     {"blood pressure up", nullptr},
                                     {"dark stool", nullptr},
                                     {"the", nullptr},
                                     {"", nullptr}}) {
        SCOPED_TRACE(one.typed);
        const SymptomKind* kind = redFlagIn(QString::fromUtf8(one.typed));
        EXPECT_EQ(kind ? kind->id.toStdString() : std::string(), one.id ? one.id : "");
    }
}

TEST(RedFlagTest, takesEachOfTheListForWhatItIs) {
    for (const SymptomKind& kind : symptomKinds()) {
        EXPECT_EQ(redFlagIn(kind.name), kind.redFlag ? &kind : nullptr) << qPrintable(kind.name);
        EXPECT_TRUE(kind.redFlag || kind.also.isEmpty()) << qPrintable(kind.id);
        for (const QString& form : kind.also) {
            EXPECT_EQ(form, form.toLower().simplified());
            EXPECT_EQ(redFlagIn(form), &kind) << qPrintable(form);
        }
    }
}

TEST(RedFlagTest, saysWhatToDoForEverydayWords) {
    EXPECT_TRUE(says(redFlagFindings(QStringLiteral("passed out"), AgeBand::Adult, {}),
                     "red-flag-do", "Lay the person down"));
}

TEST(RedFlagTest, reactionsArePartedWhereAStrengthStands) {
    const QStringList known{QStringLiteral("Stool type 6, loose")};
    const QList<std::pair<QString, QStringList>> cases{
        {QStringLiteral("hives 3, trouble breathing 6"),
         {QStringLiteral("hives 3"), QStringLiteral("trouble breathing 6")}},
        {QStringLiteral("hives 3; wheezing 2"),
         {QStringLiteral("hives 3"), QStringLiteral("wheezing 2")}},
        {QStringLiteral("hives: 3 and wheezing"),
         {QStringLiteral("hives: 3"), QStringLiteral("wheezing")}},
        {QStringLiteral("hives 3 at 14:30 for 2 h, and wheezing 2; nausea 1"),
         {QStringLiteral("hives 3 at 14:30 for 2 h"), QStringLiteral("wheezing 2"),
          QStringLiteral("nausea 1")}},
        {QStringLiteral("ache for 1 h and 20 min"), {QStringLiteral("ache for 1 h and 20 min")}},
        {QStringLiteral("Trouble breathing, wheeze or noisy breathing 4"),
         {QStringLiteral("Trouble breathing, wheeze or noisy breathing 4")}},
        {QStringLiteral("stool type 6, loose 3, hives 2"),
         {QStringLiteral("stool type 6, loose 3"), QStringLiteral("hives 2")}},
        {QStringLiteral("sore and tired 3"), {QStringLiteral("sore and tired 3")}},
        {QStringLiteral("  "), {}}};
    for (const auto& [typed, items] : cases)
        EXPECT_EQ(feltItems(typed, known), items) << qPrintable(typed);
}

} // namespace
} // namespace ladlework::intake
