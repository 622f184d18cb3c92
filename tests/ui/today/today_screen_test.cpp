#include "ui/today/today_screen.h"

#include "ui/shared/workbook_fixture.h"
#include "ui/today/member_line.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

namespace ladlework::ui {

class TodayScreenTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_family = addFamily(QStringLiteral("Hale"));
        m_screen = std::make_unique<TodayScreen>(*m_context, nullptr);
        m_screen->resize(1100, 600);
        m_screen->show();
    }

    void refresh() {
        auto records = m_workbook->records(m_family);
        ASSERT_TRUE(records);
        m_screen->setCasebook(
            std::make_shared<casebook::Casebook>(*std::move(records), *m_catalogue, m_today));
        QApplication::processEvents(); // new lines are shown by the event loop
    }
    [[nodiscard]] QStringList visibleTexts() const {
        QStringList texts;
        for (const QLabel* label : m_screen->findChildren<QLabel*>()) {
            if (label->isVisible())
                texts << label->text();
        }
        return texts;
    }
    [[nodiscard]] bool shows(const QString& text) const { return visibleTexts().contains(text); }
    QPushButton* button(const QString& text) const {
        for (auto* one : m_screen->findChildren<QPushButton*>()) {
            if (one->text() == text && one->isVisible())
                return one;
        }
        return nullptr;
    }

    FamilyId m_family;
    std::unique_ptr<TodayScreen> m_screen;
};

TEST_F(TodayScreenTest, aFamilyWithoutMembersSaysWhatIsNext) {
    refresh();
    const QSignalSpy wanted(m_screen.get(), &FamilyScreen::screenWanted);
    QPushButton* next = button(QStringLiteral("Add the first member"));
    ASSERT_NE(next, nullptr);
    EXPECT_EQ(m_screen->firstField(), next);
    next->click();
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("members"));
}

TEST_F(TodayScreenTest, saysWhatIsAskedDrunkAndWhy) {
    const MemberId ana = addMember(m_family, QStringLiteral("Ana"));
    addMember(m_family, QStringLiteral("Tom"));
    addLadder(ana);
    // Three good days make the next rung: two cups asked today.
    for (int back = 1; back <= 3; ++back)
        drink(ana, m_today.addDays(-back), quantity::Volume::fromCups(1));
    drink(ana, m_today, quantity::Volume::fromCups(0.5));
    drink(ana, m_today, quantity::Volume::fromCups(0.25));
    refresh();
    EXPECT_TRUE(shows(QStringLiteral("Ana")));
    EXPECT_TRUE(shows(QStringLiteral("2 cups"))) << visibleTexts().join(u'|').toStdString();
    EXPECT_TRUE(shows(QStringLiteral("¾ cup drunk so far")));
    EXPECT_TRUE(shows(QStringLiteral("Climbing")));
    EXPECT_TRUE(shows(QStringLiteral("No ladder yet"))) << "Tom";
    EXPECT_TRUE(shows(QStringLiteral("1 of 1 entered")));
    EXPECT_TRUE(shows(QStringLiteral("Wednesday 4 November")));
    const QStringList texts = visibleTexts();
    EXPECT_TRUE(std::ranges::any_of(texts, [](const QString& text) {
        return text.startsWith(QStringLiteral("Yesterday: A good day"));
    }));
    EXPECT_TRUE(std::ranges::any_of(texts, [](const QString& text) {
        return text.startsWith(QStringLiteral("Rung 2 of 3."));
    }));
}

TEST_F(TodayScreenTest, attentionIsItsFindingsAndTheyLeadOn) {
    addLadder(addMember(m_family, QStringLiteral("Ana")));
    refresh();
    ASSERT_TRUE(hasCode(m_screen->findings(), u"no-entry"));
    const QSignalSpy wanted(m_screen.get(), &FamilyScreen::screenWanted);
    m_screen->showField(m_screen->findings().first().field);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("log"));
}

TEST_F(TodayScreenTest, linesFollowTheMembers) {
    addMember(m_family, QStringLiteral("Ana"));
    addMember(m_family, QStringLiteral("Tom"));
    refresh();
    EXPECT_EQ(m_screen->findChildren<MemberLine*>().size(), 2);
    ASSERT_TRUE(m_workbook->undo());
    refresh();
    EXPECT_EQ(m_screen->findChildren<MemberLine*>().size(), 1);
}

TEST_F(TodayScreenTest, saysWhenANewTryIsToday) {
    const MemberId ana = addMember(m_family, QStringLiteral("Ana"));
    addLadder(ana);
    drink(ana, m_today.addDays(-1), quantity::Volume::fromCups(1));
    people::ToleranceNote note;
    note.member = ana;
    note.subject = {people::Subject::Kind::Animal, QStringLiteral("lamb")};
    note.reason = QStringLiteral("a rash");
    note.noted = m_today.addDays(-60);
    people::RetryPlan plan;
    plan.member = ana;
    plan.subject = note.subject;
    plan.start = m_today;
    plan.steps = {quantity::Volume::fromTeaspoons(1), quantity::Volume::fromTablespoons(1)};
    act([&](store::Action& action) -> Outcome {
        auto& families = m_workbook->families();
        if (const auto noted = families.addTolerance(action, note); !noted)
            return passOn(noted);
        const auto planned = families.addRetryPlan(action, plan);
        return planned ? Outcome{} : Outcome(passOn(planned));
    });
    refresh();
    EXPECT_TRUE(shows(QStringLiteral("Today a new try: 1 tsp of stock with lamb (step 1 of 2).")))
        << visibleTexts().join(u'|').toStdString();
    EXPECT_TRUE(hasCode(m_screen->findings(), u"retry-step-due"));
    const QSignalSpy wanted(m_screen.get(), &FamilyScreen::screenWanted);
    m_screen->showField(QStringLiteral("retryPlans"));
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("members"));
}

TEST_F(TodayScreenTest, saysWhatIsEasedOff) {
    const MemberId ana = addMember(m_family, QStringLiteral("Ana"));
    addLadder(ana); // 1, 2, 3 cups from ten days ago
    for (int back = 10; back >= 1; --back)
        drink(ana, m_today.addDays(-back), quantity::Volume::fromCups(3));
    intake::Target target;
    target.member = ana;
    target.low = quantity::Volume::fromCups(3);
    target.high = quantity::Volume::fromCups(4);
    target.from = m_today.addDays(-10);
    target.easeOffFrom = m_today;
    target.easeTo = quantity::Volume::fromCups(1);
    act([&](store::Action& action) -> Outcome {
        const auto added = m_workbook->climbs().addTarget(action, target);
        return added ? Outcome{} : Outcome(passOn(added));
    });
    refresh();
    EXPECT_TRUE(shows(QStringLiteral("2 cups"))) << visibleTexts().join(u'|').toStdString();
    EXPECT_TRUE(shows(QStringLiteral("Easing off")));
    const QStringList texts = visibleTexts();
    EXPECT_TRUE(std::ranges::any_of(texts, [](const QString& text) {
        return text.contains(QStringLiteral("A rung less every 7 days")) &&
               text.contains(QStringLiteral("down to 1 cup"));
    }));
}

} // namespace ladlework::ui
