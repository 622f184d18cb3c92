#include "ui/families/practice_today.h"

#include "ui/families/attention_reader.h"
#include "ui/shared/workbook_fixture.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

namespace ladlework::ui {

class PracticeTodayTest : public WorkbookFixture {
protected:
    static QStringList visibleTexts(const QWidget& widget) {
        QStringList texts;
        for (const QLabel* label : widget.findChildren<QLabel*>()) {
            if (label->isVisible())
                texts << label->text();
        }
        return texts;
    }
};

TEST_F(PracticeTodayTest, anEmptyPracticeSaysWhatIsNext) {
    const AttentionReader reader(*m_context, nullptr);
    PracticeToday page(*m_context, reader, nullptr);
    page.show();
    const QSignalSpy wanted(&page, &PracticeToday::newFamilyWanted);
    for (auto* button : page.findChildren<QPushButton*>()) {
        if (button->isVisible() && button->text() == QStringLiteral("Take on your first family"))
            button->click();
    }
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(PracticeTodayTest, needsReviewsAndCookingsOfAllFamilies) {
    const FamilyId ash = addFamily(QStringLiteral("Ash"));
    addLadder(addMember(ash, QStringLiteral("Ana")));
    addFamily(QStringLiteral("Birch"), people::Family::Status::Active, m_today.addDays(2));
    addFamily(QStringLiteral("Cedar"), people::Family::Status::Active, m_today.addDays(8));
    addFamily(QStringLiteral("Dogwood"), people::Family::Status::Finished, m_today.addDays(2));
    AttentionReader reader(*m_context, nullptr);
    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));

    const QList<Need> now = needsNow(reader);
    ASSERT_EQ(now.size(), 1);
    EXPECT_EQ(now.first().family, ash);
    EXPECT_EQ(now.first().severity, Finding::Severity::Caution);
    EXPECT_EQ(now.first().screen, QStringLiteral("log"));
    const QList<Need> reviews = reviewsToCome(reader, m_today);
    ASSERT_EQ(reviews.size(), 1) << "within seven days, and not of a finished family";
    EXPECT_EQ(reviews.first().familyName, QStringLiteral("Birch"));
    EXPECT_EQ(reviews.first().when, QStringLiteral("Fri 6 Nov"));
    EXPECT_TRUE(cookingsToRecord(reader).isEmpty());

    PracticeToday page(*m_context, reader, nullptr);
    page.resize(1000, 600);
    page.show();
    const QStringList texts = visibleTexts(page);
    EXPECT_TRUE(texts.contains(QStringLiteral("Wednesday 4 November")));
    EXPECT_TRUE(texts.contains(QStringLiteral("4 families, 1 needs you")))
        << texts.join(u'|').toStdString();
    EXPECT_TRUE(
        texts.contains(QStringLiteral("Every planned cooking of the last week has its batch.")));
}

} // namespace ladlework::ui
