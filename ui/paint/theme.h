#pragma once

#include "foundation/finding.h"

#include <QColor>
#include <QFont>
#include <QPalette>

class QApplication;
class QWidget;

namespace ladlework::ui {

/// The colours of the program by their role. Every text pair holds 4.5:1 (tested).
struct Colours {
    QColor page;
    QColor raised;
    QColor ink;
    QColor quietInk;
    QColor rule;
    QColor bay;    ///< primary, selection
    QColor copper; ///< caution
    QColor beet;   ///< stop
    QColor slate;  ///< note
};

enum class Scheme { Light, Dark };

/// The colours of a scheme.
const Colours& colours(Scheme scheme);
/// The scheme that a widget's palette is of.
Scheme schemeOf(const QWidget& widget);
/// The colours a widget should draw with.
const Colours& coloursOf(const QWidget& widget);
/// The colour of a severity in these colours.
QColor severityColour(const Colours& colours, Finding::Severity severity);

/// The desktop's own scheme, by its window and text colours.
Scheme desktopScheme();
/// Gives the application style, palette and style sheet of a scheme. Sizes follow its font.
void applyTheme(QApplication& application, Scheme scheme);

/// The widget's font with tabular figures when the font has them, for columns of numbers.
QFont figuresFont(const QFont& base);
/// Larger and bold, for the title of a screen; a step smaller for the title of a section.
QFont titleFont(const QFont& base);
QFont sectionFont(const QFont& base);

/// One step of spacing: about half the height of a line in the widget's font.
int step(const QWidget& widget);

} // namespace ladlework::ui
