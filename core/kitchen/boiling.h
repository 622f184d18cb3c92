#pragma once

#include "quantity/length.h"
#include "quantity/temperature.h"

namespace ladlework::kitchen {

/// The pressure of the ICAO standard atmosphere in pascals at an altitude above sea level, valid
/// from -500 m to 6,000 m (clamped outside). Source: ICAO Doc 7488/3 (1993).
double standardPressurePa(quantity::Length altitude);

/// The temperature at which water boils at that altitude, by the IAPWS-IF97 saturation line
/// (region 4 backward equation). Source: IAPWS R7-97(2012), equation 31.
quantity::Temperature boilingPoint(quantity::Length altitude);

/// The temperature at which water boils under a pressure in pascals, 611 Pa to 22 MPa: the same
/// equation.
quantity::Temperature saturationTemperature(double pascals);

/// The saturation pressure of water in pascals, 0-100 °C: IAPWS R7-97(2012), equation 30.
double saturationPressurePa(quantity::Temperature temperature);

} // namespace ladlework::kitchen
