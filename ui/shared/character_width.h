#pragma once

#include <QObject>

class QWidget;

namespace ladlework::ui {

/// Keeps a widget as wide as so many characters of its font, also when the text size is changed.
class CharacterWidth final : public QObject {
    Q_OBJECT
public:
    /// Exactly so wide. Lives as long as the widget.
    static void hold(QWidget& widget, int characters);
    /// At least so wide.
    static void atLeast(QWidget& widget, int characters);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    CharacterWidth(QWidget& widget, int characters, bool exactly);
    static void keep(QWidget& widget, int characters, bool exactly);
    void apply();

    QWidget& m_widget;
    int m_characters;
    bool m_exactly;
};

} // namespace ladlework::ui
