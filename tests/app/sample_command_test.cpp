#include "app/program.h"

#include <QFile>
#include <QJsonArray>

namespace ladlework::app {
namespace {

using SampleCommandTest = ProgramTest;

TEST_F(SampleCommandTest, WritesAPrivateWorkbookThatVerifiesClean) {
    const Ran made = run({QStringLiteral("sample"), QStringLiteral("s.ladlework")});
    ASSERT_EQ(made.status, 0) << made.complaint.constData();
    EXPECT_GE(made.json().value(QStringLiteral("families")).toInt(), 6);
    EXPECT_EQ(QFile::permissions(folder.filePath(QStringLiteral("s.ladlework"))) &
                  (QFile::ReadGroup | QFile::WriteGroup | QFile::ReadOther | QFile::WriteOther),
              QFile::Permissions());
    const Ran verified = run({QStringLiteral("verify"), QStringLiteral("s.ladlework")});
    EXPECT_EQ(verified.status, 0) << verified.complaint.constData();
    EXPECT_TRUE(verified.json().value(QStringLiteral("findings")).isArray());
    EXPECT_TRUE(verified.json().value(QStringLiteral("findings")).toArray().isEmpty());
    EXPECT_EQ(files(), QStringList(QStringLiteral("s.ladlework"))) << "nothing is left beside it";
}

TEST_F(SampleCommandTest, RefusesAFileThatIsThere) {
    write(QStringLiteral("mine"), "mine");
    EXPECT_TRUE(run({QStringLiteral("sample"), QStringLiteral("mine")})
                    .refused({QStringLiteral("mine"), QStringLiteral("there already")}));
    EXPECT_EQ(bytesOf(QStringLiteral("mine")), QByteArray("mine"));
}

TEST_F(SampleCommandTest, WritesAnInventedPractice) {
    const Ran made =
        run({QStringLiteral("sample"), QStringLiteral("big"), QStringLiteral("--families"),
             QStringLiteral("5"), QStringLiteral("--years"), QStringLiteral("1"),
             QStringLiteral("--seed"), QStringLiteral("9")});
    ASSERT_EQ(made.status, 0) << made.complaint.constData();
    EXPECT_EQ(made.json().value(QStringLiteral("families")).toInt(), 5);
    EXPECT_EQ(run({QStringLiteral("verify"), QStringLiteral("big")}).status, 0);
}

TEST_F(SampleCommandTest, VerifyFindsADamagedFile) {
    ASSERT_EQ(run({QStringLiteral("sample"), QStringLiteral("s")}).status, 0);
    QByteArray bytes = bytesOf(QStringLiteral("s"));
    // A stretch in the middle of the tables, well behind the head of the file.
    for (qsizetype at = bytes.size() / 2; at < bytes.size() / 2 + 8192; ++at)
        bytes[at] = char(0x5a);
    write(QStringLiteral("s"), bytes);
    const Ran verified = run({QStringLiteral("verify"), QStringLiteral("s")});
    EXPECT_EQ(verified.status, 2);
    EXPECT_TRUE(verified.complaint.contains("s: ")) << verified.complaint.constData();
    EXPECT_EQ(verified.complaint.count('\n'), 1);
}

} // namespace
} // namespace ladlework::app
