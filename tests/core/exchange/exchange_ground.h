#pragma once

#include "foundation/clock.h"
#include "kitchen/catalogue.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ladlework::exchange {

/// A day to stand on, the shipped catalogue and a folder that goes away.
class ExchangeGround : public ::testing::Test {
protected:
    ExchangeGround() : catalogue(kitchen::Catalogue::load().value()) {}

    static QDateTime noonOf(QDate day) { return {day, QTime(18, 0), Qt::UTC}; }
    [[nodiscard]] QString path(const char* name) const {
        return folder.filePath(QString::fromLatin1(name));
    }

    QTemporaryDir folder;
    kitchen::Catalogue catalogue;
    /// A Wednesday; 18:00 UTC is the same day from Los Angeles to Dublin.
    FixedClock clock{noonOf(QDate(2026, 11, 25))};
};

} // namespace ladlework::exchange
