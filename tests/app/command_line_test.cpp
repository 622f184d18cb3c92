#include "app/program.h"

namespace ladlework::app {
namespace {

using CommandLineTest = ProgramTest;

TEST_F(CommandLineTest, HelpListsOnlyWhatIsThere) {
    const Ran help = run({QStringLiteral("--help")});
    EXPECT_EQ(help.status, 0);
    EXPECT_TRUE(help.complaint.isEmpty());
    for (const char* command : {"sample", "reckon", "handout", "import", "export", "verify"}) {
        const QByteArray usage = QByteArray("ladlework ").append(command);
        EXPECT_TRUE(help.output.contains(usage)) << command;
        const Ran own = run({QString::fromLatin1(command), QStringLiteral("--help")});
        EXPECT_EQ(own.status, 0) << command;
        EXPECT_TRUE(own.output.startsWith(QByteArray("Usage: ").append(usage))) << command;
    }
    for (const char* missing : {"restore", "backup"})
        EXPECT_FALSE(help.output.contains(missing)) << missing;
}

TEST_F(CommandLineTest, TellsItsVersion) {
    const Ran version = run({QStringLiteral("--version")});
    EXPECT_EQ(version.status, 0);
    EXPECT_EQ(version.output, QByteArray("Ladlework " LADLEWORK_VERSION "\n"));
}

TEST_F(CommandLineTest, RefusesWhatItDoesNotKnow) {
    const QList<std::pair<QStringList, QString>> cases{
        {{QStringLiteral("--bogus")}, QStringLiteral("--bogus")},
        {{QStringLiteral("no-such-file.ladlework")}, QStringLiteral("no-such-file.ladlework")},
        {{QStringLiteral("restore"), QStringLiteral("x")}, QStringLiteral("reckon, handout")},
        {{QStringLiteral("backup")}, QStringLiteral("the commands are sample")},
        {{QStringLiteral("sample"), QString()}, QStringLiteral("empty")},
        {{QStringLiteral("verify"), QStringLiteral(".")}, QStringLiteral("folder")},
        {{QStringLiteral("sample")}, QStringLiteral("Usage: ladlework sample")},
        {{QStringLiteral("sample"), QStringLiteral("a"), QStringLiteral("b")}, QStringLiteral("b")},
        {{QStringLiteral("verify"), QStringLiteral("x"), QStringLiteral("--deep")},
         QStringLiteral("deep")},
        {{QStringLiteral("verify"), QStringLiteral("gone.ladlework")},
         QStringLiteral("gone.ladlework")},
        {{QStringLiteral("import"), QStringLiteral("x")}, QStringLiteral("--family")},
        {{QStringLiteral("import"), QStringLiteral("x"), QStringLiteral("--family")},
         QStringLiteral("family")},
        {{QStringLiteral("sample"), QStringLiteral("a"), QStringLiteral("--families"),
          QStringLiteral("none")},
         QStringLiteral("--families")},
        {{QStringLiteral("sample"), QStringLiteral("a"), QStringLiteral("--years"),
          QStringLiteral("2")},
         QStringLiteral("--families")},
        {{QStringLiteral("sample"), QStringLiteral("a"), QStringLiteral("--families"),
          QStringLiteral("2"), QStringLiteral("--families"), QStringLiteral("3")},
         QStringLiteral("twice")},
        {{QStringLiteral("sample"), QStringLiteral("no/such/folder/x")},
         QStringLiteral("no/such/folder/x")},
    };
    for (const auto& [arguments, part] : cases)
        EXPECT_TRUE(run(arguments).refused({part})) << qPrintable(arguments.join(QLatin1Char(' ')));
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(CommandLineTest, RefusesFilesOfOtherKindsAndLeavesThemAlone) {
    const QByteArray text("This is no workbook.");
    write(QStringLiteral("letter.txt"), text);
    EXPECT_TRUE(run({QStringLiteral("verify"), QStringLiteral("letter.txt")})
                    .refused({QStringLiteral("letter.txt")}));
    EXPECT_EQ(bytesOf(QStringLiteral("letter.txt")), text);
    EXPECT_EQ(files(), QStringList(QStringLiteral("letter.txt")));
}

} // namespace
} // namespace ladlework::app
