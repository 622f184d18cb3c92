#pragma once

#include "ui/shared/problem_line.h"

#include <QString>
#include <QWidget>

#include <stdexcept>

namespace ladlework::ui {

/// The part of a screen that a screen reader calls by this name. Throws when there is none, so that
/// a test cannot go on with the wrong thing.
template <class Part>
Part* byName(const QWidget& screen, const QString& name) {
    for (Part* part : screen.findChildren<Part*>())
        if (part->accessibleName() == name)
            return part;
    throw std::runtime_error("no part called " + name.toStdString());
}

/// The button with this text, its mnemonic left out.
template <class Button>
Button* byText(const QWidget& screen, const QString& text) {
    for (Button* button : screen.findChildren<Button*>())
        if (QString(button->text()).remove(u'&') == text)
            return button;
    throw std::runtime_error("no button " + text.toStdString());
}

/// The sentence in sight that says why something was not kept; empty when all was.
inline QString problemIn(const QWidget& screen) {
    for (const auto* line : screen.findChildren<ProblemLine*>())
        if (line->isVisible())
            return line->sentence();
    return {};
}

} // namespace ladlework::ui
