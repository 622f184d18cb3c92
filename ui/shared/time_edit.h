#pragma once

#include "ui/shared/quantity_edit.h"

#include <QTime>

namespace ladlework::ui {

/// A time of day as people type it (see parseStartTime()); empty while it is not told.
class TimeEdit final : public QuantityEdit {
    Q_OBJECT
public:
    using QuantityEdit::QuantityEdit;

    void setTime(QTime time);
    /// Invalid for an empty field.
    [[nodiscard]] QTime time() const { return m_time; }

protected:
    QString read(const QString& text) override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool differs() const override { return m_time != m_set; }
    void settle() override { m_set = m_time; }
    void takeBack() override { m_time = m_set; }

private:
    QTime m_time;
    QTime m_set;
};

} // namespace ladlework::ui
