#include "ui/shared/altitude_edit.h"

#include <QLocale>

#include <algorithm>

namespace ladlework::ui {

namespace {

bool isBareNumber(const QString& text) {
    return !text.isEmpty() && std::ranges::all_of(text, [](QChar letter) {
        return letter.isDigit() || letter == u'.' || letter == u',' || letter.isSpace();
    });
}

} // namespace

void AltitudeEdit::setValue(quantity::Length value, quantity::MeasureSystem system) {
    m_value = value;
    m_set = value;
    m_system = system;
    showValue();
}

QString AltitudeEdit::read(const QString& text) {
    const bool metric = m_system == quantity::MeasureSystem::Metric;
    QString withUnit = text.trimmed();
    if (isBareNumber(withUnit))
        withUnit += metric ? QStringLiteral(" m") : QStringLiteral(" ft");
    const Result<quantity::Length> result = quantity::parseLength(withUnit, m_system);
    if (!result)
        return result.error().sentence;
    m_value = *result;
    return {};
}

QString AltitudeEdit::words() const {
    const bool metric = m_system == quantity::MeasureSystem::Metric;
    const double height = metric ? m_value.toMetres() : m_value.toFeet();
    const QString number = QLocale().toString(height, 'f', 0);
    return metric ? tr("%1 m").arg(number) : tr("%1 ft").arg(number);
}

} // namespace ladlework::ui
