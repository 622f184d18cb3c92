#include "ui/shell/appearance.h"

#include "ui/paint/theme.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QMenu>
#include <QVariant>

#include <cmath>

namespace ladlework::ui {

namespace {

constexpr char desktopFontProperty[] = "ladleworkDesktopFont";
constexpr double textStep = 1.125;

Scheme schemeFor(Preferences::Theme theme) {
    switch (theme) {
    case Preferences::Theme::Light:
        return Scheme::Light;
    case Preferences::Theme::Dark:
        return Scheme::Dark;
    case Preferences::Theme::Follow:
        break;
    }
    return desktopScheme();
}

QFont textFont(const QFont& desktop, int steps) {
    QFont font = desktop;
    const double scale = std::pow(textStep, steps);
    if (desktop.pointSizeF() > 0)
        font.setPointSizeF(desktop.pointSizeF() * scale);
    else
        font.setPixelSize(static_cast<int>(std::lround(desktop.pixelSize() * scale)));
    return font;
}

} // namespace

void applyAppearance(const Preferences& preferences) {
    if (!qApp->property(desktopFontProperty).isValid())
        qApp->setProperty(desktopFontProperty, QApplication::font());
    const QFont desktop = qApp->property(desktopFontProperty).value<QFont>();
    QApplication::setFont(textFont(desktop, preferences.textSteps()));
    applyTheme(*qApp, schemeFor(preferences.theme()));
}

Appearance::Appearance(Preferences& preferences, QObject* parent)
    : QObject(parent), m_preferences(preferences), m_themes(new QActionGroup(this)),
      m_larger(new QAction(tr("&Larger text"), this)),
      m_smaller(new QAction(tr("&Smaller text"), this)),
      m_usual(new QAction(tr("&Usual text size"), this)) {
    m_larger->setShortcuts({QKeySequence(QKeySequence::ZoomIn), QKeySequence(tr("Ctrl+="))});
    m_smaller->setShortcut(QKeySequence(QKeySequence::ZoomOut));
    m_usual->setShortcut(QKeySequence(tr("Ctrl+0")));
    connect(m_larger, &QAction::triggered, this,
            [this] { setTextSteps(m_preferences.textSteps() + 1); });
    connect(m_smaller, &QAction::triggered, this,
            [this] { setTextSteps(m_preferences.textSteps() - 1); });
    connect(m_usual, &QAction::triggered, this, [this] { setTextSteps(0); });
}

void Appearance::addTo(QMenu& menu) {
    addThemes(*menu.addMenu(tr("&Theme")));
    menu.addAction(m_larger);
    menu.addAction(m_smaller);
    menu.addAction(m_usual);
}

void Appearance::addThemes(QMenu& menu) {
    const QList<std::pair<Preferences::Theme, QString>> themes{
        {Preferences::Theme::Follow, tr("&As the desktop")},
        {Preferences::Theme::Light, tr("&Light")},
        {Preferences::Theme::Dark, tr("&Dark")},
    };
    for (const auto& [theme, text] : themes) {
        QAction* action = menu.addAction(text);
        action->setCheckable(true);
        action->setActionGroup(m_themes);
        action->setChecked(theme == m_preferences.theme());
        connect(action, &QAction::triggered, this, [this, chosen = theme] { setTheme(chosen); });
    }
}

void Appearance::setTheme(Preferences::Theme theme) {
    m_preferences.setTheme(theme);
    applyAppearance(m_preferences);
    Q_EMIT changed();
}

void Appearance::setTextSteps(int steps) {
    m_preferences.setTextSteps(steps);
    applyAppearance(m_preferences);
    Q_EMIT changed();
}

} // namespace ladlework::ui
