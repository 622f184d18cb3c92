#include "ui/shared/character_width.h"

#include <QEvent>
#include <QWidget>

namespace ladlework::ui {

CharacterWidth::CharacterWidth(QWidget& widget, int characters, bool exactly)
    : QObject(&widget), m_widget(widget), m_characters(characters), m_exactly(exactly) {}

void CharacterWidth::hold(QWidget& widget, int characters) {
    keep(widget, characters, true);
}

void CharacterWidth::atLeast(QWidget& widget, int characters) {
    keep(widget, characters, false);
}

void CharacterWidth::keep(QWidget& widget, int characters, bool exactly) {
    auto* keeper = new CharacterWidth(widget, characters, exactly);
    widget.installEventFilter(keeper);
    keeper->apply();
}

bool CharacterWidth::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FontChange)
        apply();
    return QObject::eventFilter(watched, event);
}

void CharacterWidth::apply() {
    const int width = m_characters * m_widget.fontMetrics().averageCharWidth();
    if (m_exactly)
        m_widget.setFixedWidth(width);
    else
        m_widget.setMinimumWidth(width);
}

} // namespace ladlework::ui
