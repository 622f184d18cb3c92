#include "ui/paint/theme.h"

#include <QApplication>
#include <QFile>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QHash>
#include <QStringList>
#include <QStyleFactory>
#include <QVariant>
#include <QWidget>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace ladlework::ui {

namespace {

constexpr char desktopPaletteProperty[] = "ladleworkDesktopPalette";

constexpr double titleScale = 1.5;
constexpr double sectionScale = 1.15;
/// How far a control's edge is from the paper towards the quiet ink: 3:1 against the paper.
constexpr double edgeShare = 0.72;
constexpr double washShare = 0.35;
constexpr double faintShare = 0.75;
constexpr double deepShare = 0.15;

QColor rgb(QRgb value) {
    return QColor::fromRgb(value);
}

/// `share` of `over` laid on `under`.
QColor blend(const QColor& under, const QColor& over, double share) {
    const auto mix = [share](int a, int b) {
        return static_cast<int>(std::lround(a + (b - a) * share));
    };
    return {mix(under.red(), over.red()), mix(under.green(), over.green()),
            mix(under.blue(), over.blue())};
}

bool isDark(const QPalette& palette) {
    constexpr int middle = 127;
    const QColor paper = palette.color(QPalette::Window);
    const QColor text = palette.color(QPalette::WindowText);
    // A widget that lets its parent shine through has no paper of its own.
    return paper.alpha() == 255 ? paper.lightness() < text.lightness() : text.lightness() > middle;
}

/// Text on the primary colour.
QColor onBay(const Colours& c, Scheme scheme) {
    return scheme == Scheme::Light ? c.raised : c.page;
}

QPalette paletteOf(const Colours& c, Scheme scheme) {
    QPalette palette;
    palette.setColor(QPalette::Window, c.page);
    palette.setColor(QPalette::WindowText, c.ink);
    palette.setColor(QPalette::Base, c.raised);
    palette.setColor(QPalette::AlternateBase, c.page);
    palette.setColor(QPalette::Text, c.ink);
    palette.setColor(QPalette::PlaceholderText, c.quietInk);
    palette.setColor(QPalette::Button, c.raised);
    palette.setColor(QPalette::ButtonText, c.ink);
    palette.setColor(QPalette::BrightText, c.beet);
    palette.setColor(QPalette::ToolTipBase, c.raised);
    palette.setColor(QPalette::ToolTipText, c.ink);
    palette.setColor(QPalette::Highlight, c.bay);
    palette.setColor(QPalette::HighlightedText, onBay(c, scheme));
    palette.setColor(QPalette::Link, c.bay);
    palette.setColor(QPalette::LinkVisited, c.bay);
    palette.setColor(QPalette::Light, c.raised);
    palette.setColor(QPalette::Midlight, c.rule);
    palette.setColor(QPalette::Mid, c.rule);
    palette.setColor(QPalette::Dark, blend(c.page, c.quietInk, edgeShare));
    palette.setColor(QPalette::Shadow, c.ink);
    const QColor faint = blend(c.page, c.quietInk, faintShare);
    for (const QPalette::ColorRole role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, faint);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, c.rule);
    palette.setColor(QPalette::Disabled, QPalette::HighlightedText, c.ink);
    return palette;
}

QHash<QString, QString> sheetWords(const Colours& c, Scheme scheme, const QFont& font) {
    const double stepSize = QFontMetricsF(font).height() / 2.0;
    const int line = std::max(1, static_cast<int>(std::lround(stepSize / 10.0)));
    const auto pixels = [stepSize](double share) {
        return static_cast<int>(std::lround(stepSize * share));
    };
    // A focused border is one line thicker; its padding one line less, so that nothing moves.
    const auto focused = [&](double share) {
        return QString::number(pixels(share) - line);
    };
    QHash<QString, QString> words{
        {QStringLiteral("page"), c.page.name()},
        {QStringLiteral("raised"), c.raised.name()},
        {QStringLiteral("ink"), c.ink.name()},
        {QStringLiteral("quietInk"), c.quietInk.name()},
        {QStringLiteral("rule"), c.rule.name()},
        {QStringLiteral("bay"), c.bay.name()},
        {QStringLiteral("copper"), c.copper.name()},
        {QStringLiteral("beet"), c.beet.name()},
        {QStringLiteral("slate"), c.slate.name()},
        {QStringLiteral("onBay"), onBay(c, scheme).name()},
        {QStringLiteral("bayDeep"), blend(c.bay, c.ink, deepShare).name()},
        {QStringLiteral("edge"), blend(c.page, c.quietInk, edgeShare).name()},
        {QStringLiteral("wash"), blend(c.raised, c.rule, washShare).name()},
        {QStringLiteral("faint"), blend(c.page, c.quietInk, faintShare).name()},
        {QStringLiteral("scheme"),
         scheme == Scheme::Light ? QStringLiteral("light") : QStringLiteral("dark")},
        {QStringLiteral("line"), QString::number(line)},
        {QStringLiteral("thick"), QString::number(2 * line)},
        {QStringLiteral("bold"), QString::number(3 * line)},
        {QStringLiteral("quarterFocused"), focused(0.5)},
        {QStringLiteral("eighthFocused"), focused(0.3)},
        {QStringLiteral("stepFocused"), focused(1.4)},
        {QStringLiteral("boxFocused"), QString::number(pixels(1.6) - 2 * line)},
        {QStringLiteral("roundBox"), QString::number(pixels(1.6) / 2 + line)},
    };
    const QHash<QString, double> sizes{
        {QStringLiteral("eighth"), 0.3},    {QStringLiteral("quarter"), 0.5},
        {QStringLiteral("half"), 0.7},      {QStringLiteral("threeQuarter"), 1.0},
        {QStringLiteral("step"), 1.4},      {QStringLiteral("double"), 2.4},
        {QStringLiteral("radius"), 0.35},   {QStringLiteral("arrow"), 1.0},
        {QStringLiteral("box"), 1.6},       {QStringLiteral("bar"), 1.2},
        {QStringLiteral("barRadius"), 0.4},
    };
    for (auto size = sizes.cbegin(); size != sizes.cend(); ++size)
        words.insert(size.key(), QString::number(pixels(size.value())));
    return words;
}

QString styleSheet(const Colours& c, Scheme scheme, const QFont& font) {
    QFile file(QStringLiteral(":/styles/ladlework.qss"));
    if (!file.open(QIODevice::ReadOnly))
        throw std::logic_error("the style sheet is missing from the program");
    QString sheet = QString::fromUtf8(file.readAll());
    const QHash<QString, QString> words = sheetWords(c, scheme, font);
    for (auto word = words.cbegin(); word != words.cend(); ++word) {
        const QString mark = u'@' + word.key() + u'@';
        sheet.replace(mark, word.value());
    }
    return sheet;
}

QFont scaled(const QFont& base, double scale) {
    QFont font = base;
    if (base.pointSizeF() > 0)
        font.setPointSizeF(base.pointSizeF() * scale);
    else
        font.setPixelSize(static_cast<int>(std::lround(base.pixelSize() * scale)));
    font.setWeight(QFont::DemiBold);
    return font;
}

bool hasTabularFigures(const QFont& font) {
    const QFontMetricsF metrics(font);
    const double zero = metrics.horizontalAdvance(u'0');
    for (char16_t digit = u'1'; digit <= u'9'; ++digit) {
        if (std::abs(metrics.horizontalAdvance(QChar(digit)) - zero) > 0.01)
            return false;
    }
    return true;
}

} // namespace

const Colours& colours(Scheme scheme) {
    static const Colours light{
        .page = rgb(0xFBF8F2),
        .raised = rgb(0xFFFFFF),
        .ink = rgb(0x2B2926),
        .quietInk = rgb(0x6A645B),
        .rule = rgb(0xE2DACC),
        .bay = rgb(0x2E5E4E),
        .copper = rgb(0x9A5420),
        .beet = rgb(0x8A2440),
        .slate = rgb(0x3D5A73),
    };
    static const Colours dark{
        .page = rgb(0x201F1C),
        .raised = rgb(0x2A2926),
        .ink = rgb(0xEDE8DF),
        .quietInk = rgb(0xB3ABA0),
        .rule = rgb(0x3B3833),
        .bay = rgb(0x7FB8A2),
        .copper = rgb(0xE0A268),
        .beet = rgb(0xEE8AA0),
        .slate = rgb(0x92B4D0),
    };
    return scheme == Scheme::Light ? light : dark;
}

Scheme schemeOf(const QWidget& widget) {
    return isDark(widget.palette()) ? Scheme::Dark : Scheme::Light;
}

const Colours& coloursOf(const QWidget& widget) {
    return colours(schemeOf(widget));
}

QColor severityColour(const Colours& colours, Finding::Severity severity) {
    switch (severity) {
    case Finding::Severity::Note:
        return colours.slate;
    case Finding::Severity::Caution:
        return colours.copper;
    case Finding::Severity::Stop:
        return colours.beet;
    }
    return colours.ink;
}

Scheme desktopScheme() {
    // Once a theme is applied the application's palette is ours; the desktop's was kept aside.
    const QVariant kept = qApp != nullptr ? qApp->property(desktopPaletteProperty) : QVariant();
    const QPalette palette = kept.isValid() ? kept.value<QPalette>() : QGuiApplication::palette();
    return isDark(palette) ? Scheme::Dark : Scheme::Light;
}

void applyTheme(QApplication& application, Scheme scheme) {
    if (!application.property(desktopPaletteProperty).isValid()) {
        application.setProperty(desktopPaletteProperty, QGuiApplication::palette());
        QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    }
    QApplication::setPalette(paletteOf(colours(scheme), scheme));
    application.setStyleSheet(styleSheet(colours(scheme), scheme, QApplication::font()));
}

QFont figuresFont(const QFont& base) {
    if (hasTabularFigures(base))
        return base;
    // Qt 6.4 cannot switch a font's own tabular figures on; a family that has them by nature can
    // stand in for a column of numbers.
    for (const QString& family :
         {QStringLiteral("Noto Sans"), QStringLiteral("Open Sans"),
          QStringLiteral("Liberation Sans"), QStringLiteral("DejaVu Sans")}) {
        if (!QFontDatabase::hasFamily(family))
            continue;
        QFont font = base;
        font.setFamilies({family});
        if (hasTabularFigures(font))
            return font;
    }
    return base;
}

QFont titleFont(const QFont& base) {
    return scaled(base, titleScale);
}

QFont sectionFont(const QFont& base) {
    return scaled(base, sectionScale);
}

int step(const QWidget& widget) {
    return std::max(1, static_cast<int>(std::lround(QFontMetricsF(widget.font()).height() / 2.0)));
}

} // namespace ladlework::ui
