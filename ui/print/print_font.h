#pragma once

#include <QFont>

namespace ladlework::ui {

/// Pages are laid out in units of a tenth of a point (720 to the inch), so that every size of
/// type is a whole number of units and the same page comes out on any device.
inline constexpr double unitsPerPoint = 10.0;
inline constexpr int unitsPerInch = 720;

/// The fonts and measures of a printed page, in page units.
struct PrintStyle {
    QFont body;
    QFont strong;
    QFont quiet; ///< small print
    QFont label; ///< above the value of a fact
    QFont tableHead;
    QFont heading;
    QFont cardTitle;
    QFont coverTitle;
    QFont footer;
    double bodySize = 0;
    double lineSpacing = 1.32; ///< from line to line, as a multiple of the size
    double paddingX = 0;       ///< inside the frame of a card
    double paddingY = 0;
    double blockGap = 0; ///< between two blocks of a card
    double cardGap = 0;  ///< between two cards
    double cellX = 0;    ///< beside the text of a table cell, each side
    double cellY = 0;    ///< above and below it
    double hairline = 0;
    double rule = 0;        ///< under titles and table heads
    double tickBox = 0;     ///< the side of a box to tick
    double handwriting = 0; ///< the height of a line to write on
};

/// How close a card is set: as usual, with less air, or (not in large print) a little smaller too.
enum class Spacing { Usual, Tight, Tightest };

/// The style of ordinary (10.5 pt) or large print (16 pt). Makes the bundled font known to the
/// application the first time; needs a QGuiApplication.
PrintStyle printStyle(bool largePrint, Spacing spacing = Spacing::Usual);

/// The style of a label whose lines are this many points: body, strong, heading and tickBox alone.
PrintStyle labelStyle(double points);

} // namespace ladlework::ui
