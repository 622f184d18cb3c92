#pragma once

#include "ui/shared/desk.h"

namespace ladlework::ui {

/// The desk of the real program: file and message dialogs.
class WidgetDesk final : public Desk {
public:
    std::optional<QString> fileToSave(QWidget* parent, const QString& title,
                                      const QString& suggested, const QString& filter) override;
    std::optional<QString> fileToOpen(QWidget* parent, const QString& title,
                                      const QString& filter) override;
    bool confirm(QWidget* parent, const QString& question, const QString& yes) override;
    void tell(QWidget* parent, const QString& sentence) override;
};

} // namespace ladlework::ui
