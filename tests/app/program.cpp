#include "app/program.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QProcess>

namespace ladlework::app {

namespace {
/// Long enough for a debug build under a sanitizer on a busy machine.
constexpr int patienceMs = 120'000;
} // namespace

QJsonObject Ran::json() const {
    return QJsonDocument::fromJson(output).object();
}

::testing::AssertionResult Ran::refused(const QStringList& parts) const {
    const QString said = QString::fromUtf8(complaint);
    const auto result = [&](const char* what) {
        return ::testing::AssertionFailure()
               << what << "; status " << status << ", stderr: " << complaint.constData()
               << ", stdout: " << output.left(200).constData();
    };
    if (status != 2)
        return result("not refused");
    if (!output.isEmpty())
        return result("something was written to standard output");
    if (said.count(QLatin1Char('\n')) != 1 || !said.endsWith(QLatin1Char('\n')))
        return result("not one line");
    for (const QString& part : parts)
        if (!said.contains(part))
            return result("a part is missing") << ", missing: " << qPrintable(part);
    return ::testing::AssertionSuccess();
}

Ran ProgramTest::run(const QStringList& arguments) const {
    QProcess process;
    process.setWorkingDirectory(folder.path());
    process.start(QStringLiteral(LADLEWORK_PROGRAM), arguments);
    EXPECT_TRUE(process.waitForFinished(patienceMs));
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

void ProgramTest::write(const QString& name, const QByteArray& bytes) const {
    QFile file(folder.filePath(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

QByteArray ProgramTest::bytesOf(const QString& name) const {
    QFile file(folder.filePath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

bool ProgramTest::exists(const QString& name) const {
    return QFile::exists(folder.filePath(name));
}

QStringList ProgramTest::files() const {
    return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
}

} // namespace ladlework::app
