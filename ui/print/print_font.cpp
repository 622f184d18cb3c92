#include "ui/print/print_font.h"

#include <QCoreApplication>
#include <QFontDatabase>
#include <QVariant>
#include <stdexcept>

namespace ladlework::ui {

namespace {

constexpr double ordinaryPoints = 10.5;
constexpr double smallerPoints = 9.7;
constexpr double largePoints = 16.0;

/// The bundled files: letters of Latin, Greek and Cyrillic, then Hebrew and Arabic.
QStringList fontFiles() {
    return {QStringLiteral(":/fonts/Lato-Regular.ttf"),
            QStringLiteral(":/fonts/Lato-Bold.ttf"),
            QStringLiteral(":/fonts/Lato-Italic.ttf"),
            QStringLiteral(":/fonts/NotoSansHebrew-Regular.ttf"),
            QStringLiteral(":/fonts/NotoSansHebrew-Bold.ttf"),
            QStringLiteral(":/fonts/NotoSansArabic-Regular.ttf"),
            QStringLiteral(":/fonts/NotoSansArabic-Bold.ttf")};
}

/// The application remembers the families that the bundled files gave, so that they are read once.
/// A letter that none of them has is looked for in the fonts of the system.
QStringList printFamilies() {
    QCoreApplication* application = QCoreApplication::instance();
    constexpr const char* key = "ladlework.printFamilies";
    const QVariant known = application->property(key);
    if (known.isValid())
        return known.toStringList();
    QStringList families;
    for (const QString& file : fontFiles()) {
        const QStringList given =
            QFontDatabase::applicationFontFamilies(QFontDatabase::addApplicationFont(file));
        if (given.isEmpty())
            throw std::logic_error("a bundled print font cannot be read");
        if (!families.contains(given.first()))
            families << given.first();
    }
    application->setProperty(key, families);
    return families;
}

QFont printFont(double points, bool bold = false, bool italic = false) {
    QFont font(printFamilies());
    font.setPixelSize(qRound(points * unitsPerPoint));
    font.setWeight(bold ? QFont::Bold : QFont::Normal);
    font.setItalic(italic);
    // The lines must break at the same words on paper and on any screen.
    font.setHintingPreference(QFont::PreferNoHinting);
    // A trace of spacing switches ligatures off: their letters could not be searched or copied
    // from the PDF.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.4);
    return font;
}

PrintStyle tightened(PrintStyle style) {
    style.lineSpacing = 1.2;
    style.blockGap = 0.5 * style.bodySize;
    style.cellY = 0.6 * style.cellY;
    style.paddingY = 0.75 * style.paddingY;
    style.handwriting = 18 * unitsPerPoint;
    return style;
}

} // namespace

PrintStyle printStyle(bool largePrint, Spacing spacing) {
    const bool smaller = spacing == Spacing::Tightest && !largePrint;
    const double size = largePrint ? largePoints : smaller ? smallerPoints : ordinaryPoints;
    const double quietSize = largePrint ? 14.0 : smaller ? 8.0 : 8.5;
    PrintStyle style;
    style.body = printFont(size);
    style.strong = printFont(size, true);
    style.quiet = printFont(quietSize);
    style.label = printFont(quietSize);
    style.tableHead = printFont(largePrint ? size : 9.0, true);
    style.heading = printFont(largePrint ? 18.0 : 11.5, true);
    style.cardTitle = printFont(largePrint ? 21.0 : 15.0, true);
    style.coverTitle = printFont(largePrint ? 32.0 : 27.0, true);
    style.footer = printFont(largePrint ? 12.0 : 8.5);
    style.bodySize = size * unitsPerPoint;
    style.paddingX = 14 * unitsPerPoint;
    style.paddingY = 12 * unitsPerPoint;
    style.blockGap = 0.75 * style.bodySize;
    style.cardGap = 16 * unitsPerPoint;
    style.cellX = 4 * unitsPerPoint;
    style.cellY = (largePrint ? 5 : 4) * unitsPerPoint;
    style.hairline = 0.5 * unitsPerPoint;
    style.rule = 1.0 * unitsPerPoint;
    style.tickBox = 0.95 * style.bodySize;
    style.handwriting = 22 * unitsPerPoint;
    return spacing == Spacing::Usual ? style : tightened(style);
}

PrintStyle labelStyle(double points) {
    PrintStyle style;
    style.body = printFont(points);
    style.strong = printFont(points, true);
    style.heading = printFont(1.15 * points, true);
    style.bodySize = points * unitsPerPoint;
    style.hairline = 0.5 * unitsPerPoint;
    style.tickBox = 0.85 * style.bodySize;
    return style;
}

} // namespace ladlework::ui
