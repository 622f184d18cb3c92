#include "ui/walk/keyboard_hands.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QKeySequence>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>
#include <stdexcept>

namespace ladlework::ui {

namespace {

constexpr int mostTabs = 150;

/// What the window does a moment later (moving the focus, laying out) is done before the next key,
/// as it would be between two keys of a person.
void settle() {
    constexpr int rounds = 5;
    for (int round = 0; round < rounds; ++round) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
}

/// The words of the label whose buddy a field is.
QString buddyWords(const QWidget& window, const QWidget* field) {
    for (const QLabel* label : window.findChildren<QLabel*>())
        if (label->buddy() == field)
            return QString(label->text()).remove(u'&');
    return {};
}

} // namespace

KeyboardHands::KeyboardHands(QWidget& window) : m_window(window) {
    window.show();
    window.activateWindow();
    if (!QTest::qWaitForWindowActive(&window))
        throw std::runtime_error("the window does not get the keyboard");
}

QWidget* KeyboardHands::focused() const {
    settle();
    QWidget* focus = QApplication::focusWidget();
    return focus != nullptr ? focus : &m_window;
}

void KeyboardHands::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QTest::keyClick(focused(), key, modifiers);
    settle();
}

void KeyboardHands::press(const QKeySequence& keys) {
    QTest::keySequence(focused(), keys);
    settle();
}

void KeyboardHands::type(const QString& text) {
    QWidget* field = focused();
    if (auto* line = qobject_cast<QLineEdit*>(field))
        line->selectAll();
    else if (auto* page = qobject_cast<QPlainTextEdit*>(field))
        page->selectAll();
    QTest::keyClicks(field, text);
    settle();
}

QString KeyboardHands::focusName() const {
    const QWidget* field = focused();
    if (!field->accessibleName().isEmpty())
        return field->accessibleName();
    if (const auto* button = qobject_cast<const QAbstractButton*>(field))
        return QString(button->text()).remove(u'&');
    // The line of an editable box of choices goes by the name of the box.
    if (const auto* box = qobject_cast<const QComboBox*>(field->parentWidget()))
        return box->accessibleName().isEmpty() ? buddyWords(m_window, box) : box->accessibleName();
    return buddyWords(m_window, field);
}

bool KeyboardHands::tabTo(const QString& name) {
    for (int tabs = 0; tabs < mostTabs; ++tabs) {
        if (focusName() == name)
            return true;
        press(Qt::Key_Tab);
    }
    return false;
}

} // namespace ladlework::ui
