#include "ui/pot/price_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace ladlework::ui {

using quantity::Mass;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Price)
};

bool inPounds(const Prices& prices) {
    return prices.measures == quantity::MeasureSystem::UsCustomary;
}

double poundsPerKilogram() {
    return Mass::fromKilograms(1).toPounds();
}

} // namespace

QString printMoney(double amount, const Prices& prices) {
    return prices.currency + QLocale().toString(amount, 'f', 2);
}

QString printPrice(double perKilogram, const Prices& prices) {
    return inPounds(prices)
               ? Words::tr("%1/lb").arg(printMoney(perKilogram / poundsPerKilogram(), prices))
               : Words::tr("%1/kg").arg(printMoney(perKilogram, prices));
}

Result<double> parsePrice(const QString& text, const Prices& prices) {
    const auto refused = [&prices] {
        return problem(Problem::Kind::BadInput,
                       inPounds(prices) ? Words::tr("Write what a pound costs, such as 2.49.")
                                        : Words::tr("Write what a kilogram costs, such as 5.49."));
    };
    QString plain = text.simplified();
    if (!prices.currency.isEmpty())
        plain.remove(prices.currency);
    static const QRegularExpression pattern(
        QStringLiteral("^\\s*([0-9]+(?:[.,][0-9]{1,2})?|[.,][0-9]{1,2})\\s*"
                       "(?:(?:/|a|per)\\s*(lb|pound|kg|kilogram|kilo))?\\s*$"),
        QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch match = pattern.match(plain);
    if (!match.hasMatch())
        return refused();
    const double number = QLocale::c().toDouble(match.captured(1).replace(u',', u'.'));
    if (!(number > 0))
        return refused();
    const QString unit = match.captured(2).toLower();
    const bool perPound = unit.isEmpty() ? inPounds(prices) : !unit.startsWith(u'k');
    return perPound ? number * poundsPerKilogram() : number;
}

} // namespace ladlework::ui
