#include "ui/shared/screen_context.h"

#include "ui/shared/scripted_desk.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <stdexcept>

namespace ladlework::ui {

class ScreenContextTest : public ::testing::Test {
protected:
    void SetUp() override {
        Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
        ASSERT_TRUE(catalogue) << toLine(catalogue.error()).toStdString();
        m_catalogue = std::make_unique<kitchen::Catalogue>(*std::move(catalogue));
        auto workbook =
            store::Workbook::create(m_folder.filePath(QStringLiteral("test.ladlework")), m_clock);
        ASSERT_TRUE(workbook) << toLine(workbook.error()).toStdString();
        m_workbook = *std::move(workbook);
    }

    [[nodiscard]] ScreenContext context() { return {*m_workbook, *m_catalogue, m_clock, m_desk}; }
    static people::Family someone(const QString& name) {
        people::Family family;
        family.name = name;
        family.since = QDate(2026, 11, 1);
        return family;
    }

    QTemporaryDir m_folder;
    FixedClock m_clock{QDateTime(QDate(2026, 11, 4), QTime(15, 0), Qt::UTC)};
    ScriptedDesk m_desk;
    std::unique_ptr<kitchen::Catalogue> m_catalogue;
    std::unique_ptr<store::Workbook> m_workbook;
};

TEST_F(ScreenContextTest, aGoodActionIsDoneAndSaysNothing) {
    const bool done = context().act(
        nullptr, QStringLiteral("Took on the Hale family"), [&](store::Action& action) -> Outcome {
            const auto id =
                m_workbook->families().addFamily(action, someone(QStringLiteral("Hale")));
            if (!id)
                return passOn(id);
            return {};
        });
    EXPECT_TRUE(done);
    EXPECT_TRUE(m_desk.told.isEmpty());
    EXPECT_EQ(m_workbook->families().families().size(), 1);
}

TEST_F(ScreenContextTest, aProblemIsToldInItsOwnSentence) {
    const bool done =
        context().act(nullptr, QStringLiteral("Took on a family"), [&](store::Action&) -> Outcome {
            return problem(Problem::Kind::BadInput, QStringLiteral("The name is missing."));
        });
    EXPECT_FALSE(done);
    EXPECT_EQ(m_desk.told, QStringList{QStringLiteral("The name is missing.")});
}

TEST_F(ScreenContextTest, aBrokenInvariantIsCaughtAndNothingIsHalfSaved) {
    const bool done = context().act(
        nullptr, QStringLiteral("Took on a family"), [&](store::Action& action) -> Outcome {
            (void)m_workbook->families().addFamily(action, someone(QStringLiteral("Hale")));
            throw std::logic_error("the floor gave way");
        });
    EXPECT_FALSE(done);
    ASSERT_EQ(m_desk.told.size(), 1);
    EXPECT_FALSE(m_desk.told.first().isEmpty());
    EXPECT_TRUE(m_workbook->families().families().isEmpty());
}

} // namespace ladlework::ui
