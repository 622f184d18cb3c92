#pragma once

#include "ui/shared/desk.h"

#include <QStringList>

namespace ladlework::ui {

/// A desk whose answers are set beforehand and that remembers what it was asked and told.
class ScriptedDesk final : public Desk {
public:
    std::optional<QString> fileToSave(QWidget* /*parent*/, const QString& title,
                                      const QString& suggested,
                                      const QString& /*filter*/) override {
        asked << title;
        lastSuggested = suggested;
        return fileAnswer;
    }
    std::optional<QString> fileToOpen(QWidget* /*parent*/, const QString& title,
                                      const QString& /*filter*/) override {
        asked << title;
        return fileAnswer;
    }
    bool confirm(QWidget* /*parent*/, const QString& question, const QString& /*yes*/) override {
        asked << question;
        return confirmAnswer;
    }
    void tell(QWidget* /*parent*/, const QString& sentence) override { told << sentence; }

    std::optional<QString> fileAnswer;
    bool confirmAnswer = true;
    QString lastSuggested;
    QStringList asked;
    QStringList told;
};

} // namespace ladlework::ui
