#pragma once

#include "foundation/clock.h"
#include "store/database.h"
#include "store/workbook.h"

#include <QCryptographicHash>
#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace ladlework::store {

/// Noon UTC on Friday, 15 March 2024: all days in these tests are seen from here.
inline const QDateTime testNow(QDate(2024, 3, 15), QTime(12, 0), Qt::UTC);
inline const QDate testToday = testNow.date();

/// A folder of its own for each test, a clock that stands still, and a workbook in it.
class StoreFixture : public ::testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

    [[nodiscard]] QString pathOf(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] QString workbookPath() const {
        return pathOf(QStringLiteral("practice.ladlework"));
    }

    std::unique_ptr<Workbook> make(const QString& path = {}) {
        Result<std::unique_ptr<Workbook>> made =
            Workbook::create(path.isEmpty() ? workbookPath() : path, m_clock);
        EXPECT_TRUE(made) << made.error().sentence.toStdString()
                          << made.error().detail.toStdString();
        return made ? std::move(*made) : nullptr;
    }

    std::unique_ptr<Workbook> reopen() {
        Result<std::unique_ptr<Workbook>> opened = Workbook::open(workbookPath(), m_clock);
        EXPECT_TRUE(opened) << opened.error().sentence.toStdString()
                            << opened.error().detail.toStdString();
        return opened ? std::move(*opened) : nullptr;
    }

    static QByteArray bytesOf(const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }

    static void write(const QString& path, const QByteArray& bytes) {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }

    QTemporaryDir m_folder;
    FixedClock m_clock{testNow};
};

/// Every row of every table but the history, in order, with every value quoted as SQL.
QByteArray logicalDump(const QString& path);

/// Does one action and expects it to be done.
inline void doIt(Workbook& workbook, const std::function<Outcome(Action&)>& work,
                 const QString& sentence = QStringLiteral("Did something")) {
    const Outcome done = workbook.act(sentence, work);
    ASSERT_TRUE(done) << done.error().sentence.toStdString() << " "
                      << done.error().detail.toStdString();
}

/// A result without its value, for actions that do not need it.
template <class Value>
Outcome outcome(const Result<Value>& result) {
    return result ? Outcome() : Outcome(passOn(result));
}

/// Does one action that adds a record, expects it to be done, and gives the id.
template <class Id>
Id added(Workbook& workbook, const std::function<Result<Id>(Action&)>& add) {
    Id id;
    doIt(workbook, [&](Action& action) -> Outcome {
        const Result<Id> result = add(action);
        if (!result)
            return passOn(result);
        id = *result;
        return {};
    });
    return id;
}

} // namespace ladlework::store
