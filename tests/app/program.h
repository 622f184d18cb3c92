#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ladlework::app {

/// What a run of the program left behind.
struct Ran {
    int status = -1;
    QByteArray output;
    QByteArray complaint;

    /// The output as a JSON object; empty when it is none.
    [[nodiscard]] QJsonObject json() const;
    /// True for status 2, no output, and one line on standard error that holds all of `parts`.
    [[nodiscard]] ::testing::AssertionResult refused(const QStringList& parts) const;
};

/// A folder to work in and the program to run in it.
class ProgramTest : public ::testing::Test {
protected:
    /// Runs the program in the folder and waits for it.
    Ran run(const QStringList& arguments) const;
    void write(const QString& name, const QByteArray& bytes) const;
    [[nodiscard]] QByteArray bytesOf(const QString& name) const;
    [[nodiscard]] bool exists(const QString& name) const;
    /// Names of all files in the folder.
    [[nodiscard]] QStringList files() const;

    QTemporaryDir folder;
};

} // namespace ladlework::app
