#pragma once

#include "foundation/result.h"
#include "quantity/measure.h"

#include <QHash>
#include <QString>

namespace ladlework::ui {

/// What the practice pays, as this family's measures say it.
struct Prices {
    QHash<QString, double> perKilogram; ///< by cut or extra id
    QString currency;                   ///< written before a price; may be empty
    quantity::MeasureSystem measures = quantity::MeasureSystem::UsCustomary;
};

/// "$2.49": an amount of money.
QString printMoney(double amount, const Prices& prices);
/// "$2.49/lb" or "€5.49/kg".
QString printPrice(double perKilogram, const Prices& prices);
/// Per kilogram from "2.49", "$2.49", "2,49/lb", "5.49 a kg"; a bare number is a pound's or a
/// kilogram's by the measures. BadInput for anything else and for what is not above zero.
Result<double> parsePrice(const QString& text, const Prices& prices);

} // namespace ladlework::ui
