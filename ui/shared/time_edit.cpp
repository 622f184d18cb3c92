#include "ui/shared/time_edit.h"

#include "ui/shared/start_time.h"

namespace ladlework::ui {

void TimeEdit::setTime(QTime time) {
    m_time = time;
    m_set = time;
    showValue();
}

QString TimeEdit::read(const QString& text) {
    const Result<QTime> time = parseStartTime(text);
    if (!time)
        return time.error().sentence;
    m_time = *time;
    return {};
}

QString TimeEdit::words() const {
    return printStartTime(m_time);
}

} // namespace ladlework::ui
