#include "ui/shell/preferences.h"

#include <QFileInfo>
#include <QSettings>

#include <algorithm>

namespace ladlework::ui {

namespace {

constexpr int mostRecent = 8;

QSettings settings() {
    return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("ladlework"),
                     QStringLiteral("window"));
}

} // namespace

Preferences::Theme Preferences::theme() const {
    const QString name = settings().value(QStringLiteral("theme")).toString();
    if (name == u"light")
        return Theme::Light;
    return name == u"dark" ? Theme::Dark : Theme::Follow;
}

void Preferences::setTheme(Theme theme) {
    const QString name = theme == Theme::Light  ? QStringLiteral("light")
                         : theme == Theme::Dark ? QStringLiteral("dark")
                                                : QStringLiteral("follow");
    settings().setValue(QStringLiteral("theme"), name);
}

int Preferences::textSteps() const {
    return std::clamp(settings().value(QStringLiteral("textSteps"), 0).toInt(), fewestTextSteps,
                      mostTextSteps);
}

void Preferences::setTextSteps(int steps) {
    settings().setValue(QStringLiteral("textSteps"),
                        std::clamp(steps, fewestTextSteps, mostTextSteps));
}

QStringList Preferences::recentWorkbooks() const {
    QStringList paths = settings().value(QStringLiteral("recent")).toStringList();
    paths.removeIf([](const QString& path) { return !QFileInfo::exists(path); });
    return paths;
}

void Preferences::rememberWorkbook(const QString& path) {
    const QString absolute = QFileInfo(path).absoluteFilePath();
    QStringList paths = recentWorkbooks();
    paths.removeAll(absolute);
    paths.prepend(absolute);
    settings().setValue(QStringLiteral("recent"), paths.mid(0, mostRecent));
}

QByteArray Preferences::bytes(const QString& key) const {
    return settings().value(key).toByteArray();
}

void Preferences::setBytes(const QString& key, const QByteArray& bytes) {
    settings().setValue(key, bytes);
}

} // namespace ladlework::ui
