#include "ui/handout/millimetre_edit.h"

#include "quantity/measure.h"

#include <QLocale>

namespace ladlework::ui {

namespace {

constexpr double millimetresPerCentimetre = 10;

/// Millimetres, or nothing when the text is no measure.
std::optional<double> millimetresIn(const QString& text) {
    const QString words = text.trimmed();
    bool isNumber = false;
    const double number =
        QLocale().toDouble(QString(words).remove(QStringLiteral("mm")).trimmed(), &isNumber);
    if (isNumber)
        return number;
    const bool hasUnit = words.endsWith(QStringLiteral("in")) || words.endsWith(QLatin1Char('"')) ||
                         words.endsWith(QStringLiteral("cm"));
    if (!hasUnit)
        return std::nullopt;
    const auto length =
        quantity::parseLength(QString(words).replace(QLatin1Char('"'), QStringLiteral(" in")),
                              quantity::MeasureSystem::Metric);
    return length ? std::optional(length->toCentimetres() * millimetresPerCentimetre)
                  : std::nullopt;
}

} // namespace

MillimetreEdit::MillimetreEdit(double most, QWidget* parent) : QDoubleSpinBox(parent) {
    setRange(0, most);
    setDecimals(2);
    setSingleStep(0.5);
    setKeyboardTracking(false);
    setToolTip(tr("In millimetres; \"4 in\" is taken too."));
}

double MillimetreEdit::valueFromText(const QString& text) const {
    return millimetresIn(text).value_or(value());
}

QString MillimetreEdit::textFromValue(double value) const {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return tr("%1 mm").arg(locale.toString(value, 'f', QLocale::FloatingPointShortest));
}

QValidator::State MillimetreEdit::validate(QString& text, int& /*position*/) const {
    const std::optional<double> measure = millimetresIn(text);
    if (!measure)
        return QValidator::Intermediate;
    return *measure >= minimum() && *measure <= maximum() ? QValidator::Acceptable
                                                          : QValidator::Intermediate;
}

} // namespace ladlework::ui
