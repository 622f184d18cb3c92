#pragma once

#include "ui/shared/quantity_edit.h"

#include <QDate>

namespace ladlework::ui {

/// A day, typed or stepped with the up and down keys (a week with Page Up and Page Down): "2 Nov",
/// "11/2" (the order of the desktop's locale), "2026-11-02", "today", "yesterday", "tomorrow",
/// "mon" (the last Monday, or the next one where only days to come are asked for). A day without a
/// year is the one nearest to today inside the range. A null day may be allowed.
class DayEdit final : public QuantityEdit {
    Q_OBJECT
public:
    explicit DayEdit(QWidget* parent = nullptr);

    void setToday(QDate today) { m_today = today; }
    void setRange(QDate first, QDate last);
    void setMayBeEmpty(bool may) { m_mayBeEmpty = may; }
    void setDay(QDate day);
    [[nodiscard]] QDate day() const { return m_day; }

protected:
    QString read(const QString& text) override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool differs() const override { return m_day != m_set; }
    void settle() override { m_set = m_day; }
    void takeBack() override { m_day = m_set; }
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] bool isInRange(QDate day) const;
    [[nodiscard]] QString outOfRange() const;
    void stepBy(int days);

    QDate m_day;
    QDate m_set;
    QDate m_today;
    QDate m_first;
    QDate m_last;
    bool m_mayBeEmpty = false;
};

} // namespace ladlework::ui
