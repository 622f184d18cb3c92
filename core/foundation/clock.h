#pragma once

#include <QDate>
#include <QDateTime>
#include <QTimeZone>

namespace ladlework {

/// The time, passed in so that a test can set the day.
class Clock {
public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;

    /// Now, in UTC.
    [[nodiscard]] virtual QDateTime nowUtc() const = 0;

    /// The local day in a time zone: the day an entry made now belongs to.
    [[nodiscard]] QDate today(const QTimeZone& zone) const {
        return nowUtc().toTimeZone(zone).date();
    }
};

/// The computer's clock.
class SystemClock final : public Clock {
public:
    [[nodiscard]] QDateTime nowUtc() const override;
};

/// A clock that stands where it is put.
class FixedClock final : public Clock {
public:
    explicit FixedClock(QDateTime utc) : m_utc(std::move(utc)) {}
    [[nodiscard]] QDateTime nowUtc() const override { return m_utc; }
    void set(QDateTime utc) { m_utc = std::move(utc); }

private:
    QDateTime m_utc;
};

} // namespace ladlework
