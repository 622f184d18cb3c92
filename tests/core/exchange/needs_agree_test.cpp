// Whole practices: what the list of families shows is the same from excerpts as from the records.
#include "core/exchange/exchange_ground.h"
#include "exchange/invented_practice.h"
#include "exchange/sample_practice.h"
#include "store/workbook.h"

namespace ladlework::exchange {
namespace {

class NeedsAgreeTest : public ExchangeGround {
protected:
    /// Holds both ways against each other on a day, and counts what was found.
    void compare(store::Workbook& workbook) {
        const QHash<FamilyId, casebook::FamilyExcerpt> excerpts = workbook.excerpts();
        for (const people::Family& family : workbook.families().families()) {
            const QDate today = clock.today(family.zone);
            const casebook::FamilyNeeds whole = casebook::needsOf(
                casebook::Casebook(workbook.records(family.id).value(), catalogue, today));
            const auto needs = casebook::needsOf(excerpts.value(family.id), catalogue, today);
            ++(needs ? m_told : m_silent);
            if (needs) {
                ASSERT_EQ(*needs, whole)
                    << qPrintable(family.name) << " " << qPrintable(today.toString(Qt::ISODate));
            }
            m_found += whole.attention.size();
            m_open += whole.openCookings.size();
            for (const Finding& finding : whole.attention)
                m_codes.insert(finding.code);
        }
    }

    void compareOnLaterDays(store::Workbook& workbook) {
        const QDateTime now = clock.nowUtc();
        // At noon, and late in the evening, when it is another day in some zones.
        for (const int hours : {0, 4, 7, 20, 48, 120, 400, 9000}) {
            clock.set(now.addSecs(qint64{hours} * 3600));
            compare(workbook);
        }
        clock.set(now);
    }

    qsizetype m_told = 0;
    qsizetype m_silent = 0;
    qsizetype m_found = 0;
    qsizetype m_open = 0;
    QSet<QString> m_codes;
};

TEST_F(NeedsAgreeTest, InTheSample) {
    const auto made = createSamplePractice(path("a"), catalogue, clock);
    ASSERT_TRUE(made) << qPrintable(toLine(made.error()));
    compareOnLaterDays(**made);
    EXPECT_EQ(m_silent, 0);
    EXPECT_GT(m_found, 0);
    EXPECT_GT(m_open, 0);
}

TEST_F(NeedsAgreeTest, InInventedPractices) {
    for (const quint64 seed : {1U, 2U, 3U}) {
        const QString file = folder.filePath(QStringLiteral("seed%1").arg(seed));
        const auto made = createInventedPractice(file, {6, 1, seed}, catalogue, clock);
        ASSERT_TRUE(made) << qPrintable(toLine(made.error()));
        compareOnLaterDays(**made);
    }
    EXPECT_EQ(m_silent, 0);
    EXPECT_GT(m_open, 0);
    for (const char* code : {"no-entry", "review-due", "stock-past-use", "target-held"})
        EXPECT_TRUE(m_codes.contains(QString::fromLatin1(code))) << code;
}

} // namespace
} // namespace ladlework::exchange
