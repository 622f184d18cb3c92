#pragma once

#include <QString>
#include <optional>

class QWidget;

namespace ladlework::ui {

/// What a screen asks of the person in front of it. Passed in, so that a test can answer.
class Desk {
public:
    Desk() = default;
    Desk(const Desk&) = delete;
    Desk& operator=(const Desk&) = delete;
    virtual ~Desk() = default;

    /// A file to write; nothing when the person thinks better of it.
    virtual std::optional<QString> fileToSave(QWidget* parent, const QString& title,
                                              const QString& suggested, const QString& filter) = 0;
    /// A file to read.
    virtual std::optional<QString> fileToOpen(QWidget* parent, const QString& title,
                                              const QString& filter) = 0;
    /// Only for what cannot be undone.
    virtual bool confirm(QWidget* parent, const QString& question, const QString& yes) = 0;
    /// Something went wrong: the sentence of a Problem.
    virtual void tell(QWidget* parent, const QString& sentence) = 0;
};

} // namespace ladlework::ui
