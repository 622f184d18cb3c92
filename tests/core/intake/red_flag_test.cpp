#include "intake/red_flags.h"

#include <QSet>

#include <algorithm>
#include <gtest/gtest.h>

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

} // namespace
} // namespace ladlework::intake
