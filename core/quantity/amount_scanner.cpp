#include "quantity/amount_scanner.h"

#include <QLocale>
#include <QRegularExpression>
#include <optional>

namespace ladlework::quantity {

namespace {

constexpr QChar fractionSlash{0x2044};

/// "1½" as "1 1/2 ": single spaces, and every fraction with a plain slash.
QString plainText(const QString& text) {
    QString plain;
    for (const QChar character : text) {
        if (character.decompositionTag() == QChar::Fraction)
            plain += QLatin1Char(' ') + character.decomposition() + QLatin1Char(' ');
        else
            plain += character;
    }
    plain.replace(fractionSlash, QLatin1Char('/'));
    plain.replace(QChar(0x2212), QLatin1Char('-'));
    return plain.simplified();
}

struct NumberRead {
    double value = 0.0;
    qsizetype length = 0;
};

std::optional<double> toNumber(const QString& digits) {
    bool understood = false;
    const double value = QLocale::c().toDouble(digits, &understood);
    return understood ? std::optional(value) : std::nullopt;
}

/// "3/4", "1 1/2", "1-1/2" at the start of the text; nothing when there is none, or when the
/// fraction behind a whole number is not below one.
std::optional<NumberRead> readFraction(const QString& text) {
    static const QRegularExpression pattern(
        QStringLiteral("^(?:([0-9]+)(?: |[-\u2010\u2011\u2013] ?))?([0-9]+) ?/ ?([0-9]+)"));
    const QRegularExpressionMatch match = pattern.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const double whole = toNumber(match.captured(1)).value_or(0.0);
    const std::optional<double> numerator = toNumber(match.captured(2));
    const std::optional<double> denominator = toNumber(match.captured(3));
    if (!numerator || !denominator || *denominator <= 0.0)
        return std::nullopt;
    if (match.hasCaptured(1) && *numerator >= *denominator)
        return std::nullopt;
    return NumberRead{whole + *numerator / *denominator, match.capturedLength()};
}

/// "5,200" or "5,200.5" at the start of the text.
std::optional<NumberRead> readThousands(const QString& text) {
    static const QRegularExpression pattern(
        QStringLiteral("^[1-9][0-9]{0,2}(?:,[0-9]{3})+(?:\\.[0-9]+)?(?![0-9])"));
    const QRegularExpressionMatch match = pattern.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    QString digits = match.captured();
    digits.remove(QLatin1Char(','));
    const std::optional<double> value = toNumber(digits);
    return value ? std::optional(NumberRead{*value, match.capturedLength()}) : std::nullopt;
}

/// "12", "1.5", "1,5" or ".5" at the start of the text.
std::optional<NumberRead> readDecimal(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("^(?:[0-9]+(?:[.,][0-9]+)?|\\.[0-9]+)"));
    const QRegularExpressionMatch match = pattern.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    QString digits = match.captured();
    digits.replace(QLatin1Char(','), QLatin1Char('.'));
    const std::optional<double> value = toNumber(digits);
    return value ? std::optional(NumberRead{*value, match.capturedLength()}) : std::nullopt;
}

tl::expected<NumberRead, AmountFault> readNumber(const QString& text, CommaBeforeThree comma) {
    if (const std::optional<NumberRead> fraction = readFraction(text))
        return *fraction;
    if (const std::optional<NumberRead> thousands = readThousands(text)) {
        if (comma == CommaBeforeThree::Refused)
            return tl::unexpected(AmountFault::EitherComma);
        return *thousands;
    }
    if (const std::optional<NumberRead> decimal = readDecimal(text))
        return *decimal;
    return tl::unexpected(AmountFault::NotANumber);
}

/// How far the unit reaches: to the next digit, or to a point before one (" .5").
qsizetype unitLength(const QString& text) {
    static const QRegularExpression nextNumber(QStringLiteral("[0-9]|(?<= )\\.[0-9]"));
    const qsizetype at = text.indexOf(nextNumber);
    return at < 0 ? text.size() : at;
}

/// True for "-", "/", "..": what stands between numbers that make no sense together.
bool isOnlyMarks(const QString& unit) {
    static const QRegularExpression marks(QStringLiteral("^[-\u2010-\u2015./ ]+$"));
    return marks.match(unit).hasMatch();
}

/// The unit without what joins it to the next part.
QString withoutJoint(QString unit) {
    static const QRegularExpression joint(QStringLiteral("(?:\\s*[,+&]|\\s+and|\\s+plus)\\s*$"),
                                          QRegularExpression::CaseInsensitiveOption);
    return unit.remove(joint).trimmed();
}

} // namespace

tl::expected<QList<AmountPart>, AmountFault> scanAmount(const QString& text,
                                                        CommaBeforeThree comma) {
    QString rest = plainText(text);
    if (rest.isEmpty())
        return tl::unexpected(AmountFault::Blank);
    if (rest.startsWith(QLatin1Char('-')))
        return tl::unexpected(AmountFault::Negative);
    QList<AmountPart> parts;
    while (!rest.isEmpty()) {
        const tl::expected<NumberRead, AmountFault> number = readNumber(rest, comma);
        if (!number)
            return tl::unexpected(number.error());
        rest = rest.sliced(number->length);
        const qsizetype length = unitLength(rest);
        const bool last = length == rest.size();
        QString unit = rest.first(length).trimmed();
        if (!last)
            unit = withoutJoint(std::move(unit));
        rest = rest.sliced(length);
        if (last && unit == QLatin1String("."))
            unit.clear(); // the point that ends a sentence
        if ((unit.isEmpty() && !last) || isOnlyMarks(unit))
            return tl::unexpected(AmountFault::NotANumber);
        parts.append({number->value, std::move(unit)});
    }
    return parts;
}

} // namespace ladlework::quantity
