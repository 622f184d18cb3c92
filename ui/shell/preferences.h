#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace ladlework::ui {

/// What this computer remembers of the window (not of the practice): kept in QSettings.
class Preferences {
public:
    enum class Theme { Follow, Light, Dark };

    [[nodiscard]] Theme theme() const;
    void setTheme(Theme theme);
    /// Steps of text size above (or below) the desktop's; -2 to 6.
    [[nodiscard]] int textSteps() const;
    void setTextSteps(int steps);
    static constexpr int fewestTextSteps = -2;
    static constexpr int mostTextSteps = 6;

    /// The workbooks opened last, latest first, as long as their files are there.
    [[nodiscard]] QStringList recentWorkbooks() const;
    void rememberWorkbook(const QString& path);

    [[nodiscard]] QByteArray bytes(const QString& key) const;
    void setBytes(const QString& key, const QByteArray& bytes);
};

} // namespace ladlework::ui
