#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"
#include "store/store_error.h"

#include <random>

namespace ladlework::store {
namespace {

/// Files with random bytes written over them: whatever they are, opening, reading, checking,
/// writing and undoing end in an answer or a problem, and a file that is refused stays as it is.
class CorruptFileTest : public StoreFixture, public ::testing::WithParamInterface<unsigned> {
protected:
    QByteArray soundFile() {
        const auto fill = [](Action& action, Workbook& workbook) -> Outcome {
            const FamilyId family = workbook.families().addFamily(action, sampleFamily()).value();
            for (int count = 0; count < 4; ++count) {
                const MemberId member =
                    workbook.families().addMember(action, sampleMember(family, {})).value();
                EXPECT_TRUE(workbook.climbs().addLadder(action, sampleLadder(member)));
                for (int day = 0; day < 40; ++day)
                    EXPECT_TRUE(workbook.log().addEntry(action, sampleEntry(member, {}, {})));
            }
            return outcome(workbook.pots().addPot(action, samplePot(family, {})));
        };
        {
            const auto made = Workbook::create(workbookPath(), m_clock, fill);
            EXPECT_TRUE(made);
            doIt(**made, [&](Action& action) {
                return (*made)->practice().setPractice(action, samplePractice());
            });
        }
        return bytesOf(workbookPath());
    }

    /// Uses an opened workbook in every way; damage that shows only now is thrown as StoreError.
    static void use(Workbook& workbook) {
        (void)workbook.verify();
        (void)workbook.act(QStringLiteral("Tried"), [&](Action& action) {
            return outcome(workbook.families().addFamily(action, sampleFamily()));
        });
        (void)workbook.undo();
        (void)workbook.undo();
        try {
            for (const people::Family& family : workbook.families().families())
                (void)workbook.records(family.id);
            (void)workbook.history().latest(10);
        } catch (const StoreError& error) {
            EXPECT_EQ(error.toProblem().kind, Problem::Kind::Damaged) << error.what();
        }
    }
};

TEST_P(CorruptFileTest, EndsInAnAnswerOrAProblem) {
    const QByteArray sound = soundFile();
    std::mt19937 random(GetParam());
    int refused = 0;
    int opened = 0;
    for (int round = 0; round < 60; ++round) {
        QByteArray broken = sound;
        const int writes = std::uniform_int_distribution<int>(1, 12)(random);
        for (int count = 0; count < writes; ++count) {
            const auto at = std::uniform_int_distribution<qsizetype>(0, sound.size() - 1)(random);
            broken[at] = static_cast<char>(std::uniform_int_distribution<int>(0, 255)(random));
        }
        write(workbookPath(), broken);
        const auto workbook = Workbook::open(workbookPath(), m_clock);
        if (workbook) {
            ++opened;
            use(**workbook);
            continue;
        }
        ++refused;
        const Problem::Kind kind = workbook.error().kind;
        EXPECT_TRUE(kind == Problem::Kind::Damaged || kind == Problem::Kind::Foreign ||
                    kind == Problem::Kind::Newer)
            << workbook.error().detail.toStdString();
        EXPECT_EQ(bytesOf(workbookPath()), broken);
    }
    EXPECT_GT(refused, 5);
    EXPECT_GT(opened, 5);
}

INSTANTIATE_TEST_SUITE_P(Seeds, CorruptFileTest, ::testing::Values(3U, 1415U, 92653U));

} // namespace
} // namespace ladlework::store
