#include "ui/shared/day_edit.h"

#include "ui/shared/day_text.h"

#include <QKeyEvent>

namespace ladlework::ui {

namespace {
constexpr int daysAWeek = 7;
}

DayEdit::DayEdit(QWidget* parent) : QuantityEdit(parent) {}

void DayEdit::setRange(QDate first, QDate last) {
    m_first = first;
    m_last = last;
}

void DayEdit::setDay(QDate day) {
    m_day = day;
    m_set = day;
    showValue();
}

QString DayEdit::read(const QString& text) {
    if (text.trimmed().isEmpty()) {
        if (!m_mayBeEmpty)
            return tr("A day is needed here. Write it like \"2 Nov\" or \"today\".");
        m_day = {};
        return {};
    }
    const Result<QDate> result = parseDay(text, m_today, {m_first, m_last}, locale());
    if (!result)
        return result.error().sentence;
    if (!isInRange(*result))
        return outOfRange();
    m_day = *result;
    return {};
}

QString DayEdit::words() const {
    return m_day.isNull() ? QString() : printDay(m_day, locale());
}

void DayEdit::keyPressEvent(QKeyEvent* event) {
    if (event->modifiers() != Qt::NoModifier && event->modifiers() != Qt::KeypadModifier) {
        QuantityEdit::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Up:
        stepBy(1);
        return;
    case Qt::Key_Down:
        stepBy(-1);
        return;
    case Qt::Key_PageUp:
        stepBy(daysAWeek);
        return;
    case Qt::Key_PageDown:
        stepBy(-daysAWeek);
        return;
    default:
        QuantityEdit::keyPressEvent(event);
    }
}

bool DayEdit::isInRange(QDate day) const {
    return DayRange{m_first, m_last}.holds(day);
}

QString DayEdit::outOfRange() const {
    if (m_last.isNull())
        return tr("The day must be %1 or later.").arg(printDay(m_first, locale()));
    if (m_first.isNull())
        return tr("The day must be %1 or earlier.").arg(printDay(m_last, locale()));
    return tr("The day must lie between %1 and %2.")
        .arg(printDay(m_first, locale()), printDay(m_last, locale()));
}

void DayEdit::stepBy(int days) {
    const QDate day = m_day.isNull() ? m_today : m_day.addDays(days);
    if (!day.isValid() || !isInRange(day))
        return;
    m_day = day;
    showEdited();
}

} // namespace ladlework::ui
