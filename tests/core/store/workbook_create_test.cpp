#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

#include <QDir>
#include <QProcess>
#include <QSqlDatabase>
#include <stdexcept>

namespace ladlework::store {
namespace {

class WorkbookCreateTest : public StoreFixture {
protected:
    [[nodiscard]] QStringList files() const {
        return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden);
    }

    /// What the sqlite3 program prints for a statement.
    QByteArray shell(const QString& sql) const {
        QProcess program;
        program.start(QStringLiteral("sqlite3"),
                      {QStringLiteral("-readonly"), workbookPath(), sql});
        EXPECT_TRUE(program.waitForFinished()) << "the sqlite3 program is needed";
        EXPECT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
        return program.readAllStandardOutput().trimmed();
    }
};

TEST_F(WorkbookCreateTest, ANewFileIsTheOwnersAloneAndTheOnlyOne) {
    const std::unique_ptr<Workbook> workbook = make();
    ASSERT_TRUE(workbook);
    EXPECT_EQ(workbook->path(), QFileInfo(workbookPath()).canonicalFilePath());
    EXPECT_TRUE(workbook->readOnlyReason().isEmpty());
    EXPECT_EQ(QFile::permissions(workbookPath()) & ~QFile::Permissions(0xF000),
              QFile::ReadUser | QFile::WriteUser);
    EXPECT_EQ(files(), QStringList({QStringLiteral("practice.ladlework"),
                                    QStringLiteral("practice.ladlework.lock")}));
}

TEST_F(WorkbookCreateTest, ClosingLeavesTheFileAloneAndNoConnection) {
    make();
    EXPECT_EQ(files(), QStringList({QStringLiteral("practice.ladlework")}));
    EXPECT_TRUE(QSqlDatabase::connectionNames().isEmpty());
}

TEST_F(WorkbookCreateTest, TheShippedPhasesAndTheHouseRulesAreThere) {
    const std::unique_ptr<Workbook> workbook = make();
    const QList<people::Phase> phases = workbook->practice().phases();
    ASSERT_EQ(phases.size(), 3);
    EXPECT_EQ(phases.at(0).name, QStringLiteral("Opening"));
    EXPECT_EQ(phases.at(1).name, QStringLiteral("Widening"));
    EXPECT_EQ(phases.at(2).name, QStringLiteral("Settled"));
    EXPECT_EQ(phases.at(0).rules, (kitchen::PhaseRules{true, true, true, false, false}));
    EXPECT_TRUE(phases.at(2).rules.boneBroth);
    EXPECT_EQ(all(workbook->practice().practice()), all(people::Practice()));
    EXPECT_EQ(workbook->practice().houseRules(), intake::LadderRules());
    QStringList symptoms;
    for (const intake::Symptom& symptom : workbook->practice().symptoms())
        symptoms.append(symptom.name);
    QStringList shipped;
    for (const intake::Symptom& symptom : intake::shippedSymptoms())
        shipped.append(symptom.name);
    EXPECT_EQ(symptoms, shipped);
    EXPECT_FALSE(symptoms.isEmpty());
    EXPECT_TRUE(workbook->practice().ladderTemplates().isEmpty());
    EXPECT_TRUE(workbook->practice().prices().isEmpty());
    EXPECT_TRUE(workbook->verify().isEmpty());
}

TEST_F(WorkbookCreateTest, WhatFillWritesIsThereAndIsNoHistory) {
    const auto made =
        Workbook::create(workbookPath(), m_clock, [](Action& action, Workbook& workbook) {
            return outcome(workbook.families().addFamily(action, sampleFamily()));
        });
    ASSERT_TRUE(made);
    EXPECT_EQ((*made)->families().families().size(), 1);
    EXPECT_TRUE((*made)->history().latest(5).isEmpty());
    EXPECT_FALSE((*made)->undo());
}

TEST_F(WorkbookCreateTest, AnExistingFileIsRefusedAndKept) {
    write(workbookPath(), "something dear");
    const auto made = Workbook::create(workbookPath(), m_clock);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(bytesOf(workbookPath()), QByteArray("something dear"));
    EXPECT_EQ(files(), QStringList({QStringLiteral("practice.ladlework")}));
}

TEST_F(WorkbookCreateTest, AFileThatAppearsMeanwhileIsNotReplaced) {
    const auto made = Workbook::create(workbookPath(), m_clock, [this](Action&, Workbook&) {
        write(workbookPath(), "was faster");
        return Outcome();
    });
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(bytesOf(workbookPath()), QByteArray("was faster"));
    EXPECT_EQ(files(), QStringList({QStringLiteral("practice.ladlework")}));
}

TEST_F(WorkbookCreateTest, AProblemOrAnExceptionInFillLeavesNoFile) {
    const auto refused =
        Workbook::create(workbookPath(), m_clock, [](Action&, Workbook&) -> Outcome {
            return problem(Problem::Kind::BadInput, QStringLiteral("No good."));
        });
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().sentence, QStringLiteral("No good."));
    EXPECT_FALSE(Workbook::create(workbookPath(), m_clock, [](Action&, Workbook&) -> Outcome {
        throw std::runtime_error("broken");
    }));
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(WorkbookCreateTest, AFolderThatIsNotThereIsUnavailable) {
    const auto made = Workbook::create(pathOf(QStringLiteral("no/such/place.ladlework")), m_clock);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().kind, Problem::Kind::Unavailable);
    EXPECT_TRUE(made.error().sentence.contains(QStringLiteral("folder")));
}

// The outside reader: SQLite's own shell, another program built from the same library.
TEST_F(WorkbookCreateTest, TheSqliteShellReadsItAndFindsItSound) {
    std::unique_ptr<Workbook> workbook = make();
    doIt(*workbook, [&](Action& action) -> Outcome {
        const FamilyId family = workbook->families().addFamily(action, sampleFamily()).value();
        const MemberId member =
            workbook->families().addMember(action, sampleMember(family, {})).value();
        EXPECT_TRUE(workbook->climbs().addLadder(action, sampleLadder(member)));
        return outcome(workbook->log().addEntry(action, sampleEntry(member, {}, {})));
    });
    workbook.reset();
    EXPECT_EQ(shell(QStringLiteral("PRAGMA integrity_check")), "ok");
    EXPECT_EQ(shell(QStringLiteral("PRAGMA foreign_key_check")), "");
    EXPECT_EQ(shell(QStringLiteral("PRAGMA journal_mode")), "delete");
    EXPECT_EQ(
        shell(QStringLiteral("SELECT printf('%x', application_id) FROM pragma_application_id")),
        "4c64576b");
    EXPECT_EQ(shell(QStringLiteral("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' "
                                   "AND strict = 0 AND name NOT LIKE 'sqlite%'")),
              "0");
    EXPECT_EQ(shell(QStringLiteral("SELECT day, entered_at_utc FROM intake_entry")),
              "2024-03-12|2024-03-13T06:07:08.901Z");
    EXPECT_EQ(shell(QStringLiteral("SELECT name FROM family")), "Ødegård-Łoś 😀");
}

TEST_F(WorkbookCreateTest, WhatWasRemovedIsOverwrittenInTheFileOnceItsHistoryIsGone) {
    std::unique_ptr<Workbook> workbook = make();
    doIt(*workbook, [&](Action& action) {
        people::Family family = sampleFamily();
        family.remarks = QStringLiteral("a secret that is to go");
        return outcome(workbook->families().addFamily(action, family));
    });
    EXPECT_TRUE(bytesOf(workbookPath()).contains("a secret that is to go"));
    ASSERT_TRUE(workbook->undo());
    doIt(*workbook, [&](Action& action) {
        return workbook->practice().setPractice(action, samplePractice());
    });
    EXPECT_FALSE(bytesOf(workbookPath()).contains("a secret that is to go"));
}

} // namespace
} // namespace ladlework::store
