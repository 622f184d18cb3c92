#include "foundation/whole_file.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace ladlework;

namespace {
class WholeFileTest : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const char* name) const {
        return m_folder.filePath(QString::fromLatin1(name));
    }
    [[nodiscard]] QByteArray bytesOf(const QString& file) const {
        QFile read(file);
        return read.open(QIODevice::ReadOnly) ? read.readAll() : QByteArray();
    }
    [[nodiscard]] QStringList files() const {
        return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
    }
    void put(const QString& file, const QByteArray& bytes) const {
        QFile write(file);
        ASSERT_TRUE(write.open(QIODevice::WriteOnly));
        write.write(bytes);
    }
    QTemporaryDir m_folder;
};

constexpr QFileDevice::Permissions others = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup |
                                            QFile::ReadOther | QFile::WriteOther | QFile::ExeOther;
} // namespace

TEST_F(WholeFileTest, isForItsOwnerAlone) {
    ASSERT_TRUE(writeWhole("one", path("a")));
    EXPECT_EQ(bytesOf(path("a")), QByteArray("one"));
    EXPECT_EQ(QFile::permissions(path("a")) & others, QFile::Permissions());
    ASSERT_TRUE(QFile::setPermissions(path("a"), QFile::ReadOwner | QFile::WriteOwner | others));
    ASSERT_TRUE(writeWhole("two", path("a")));
    EXPECT_EQ(bytesOf(path("a")), QByteArray("two"));
    EXPECT_EQ(QFile::permissions(path("a")) & others, QFile::Permissions()) << "also the new one";
    EXPECT_EQ(files(), QStringList(QStringLiteral("a")));
}

TEST_F(WholeFileTest, neverReplacesADatabase) {
    const QByteArray database("SQLite format 3\0rest", 20);
    put(path("workbook"), database);
    ASSERT_TRUE(QFile::link(path("workbook"), path("link.ics")));
    for (const QString& target : {path("workbook"), path("link.ics")}) {
        const Outcome outcome = writeWhole("mine", target);
        ASSERT_FALSE(outcome);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::Refused);
        EXPECT_EQ(outcome.error().place, target);
        EXPECT_EQ(bytesOf(target), database);
    }
}

TEST_F(WholeFileTest, leavesNothingBehindWhenItCannotWrite) {
    EXPECT_FALSE(writeWhole("x", path("no-such-folder/a")));
    EXPECT_FALSE(writeWhole("x", m_folder.path()));
    if (QFile::exists(QStringLiteral("/dev/full"))) {
        EXPECT_FALSE(writeWhole("x", QStringLiteral("/dev/full")));
    }
    EXPECT_TRUE(files().isEmpty());
}
