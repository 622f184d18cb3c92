#include "ui/pot/item_picker.h"

#include <QCompleter>
#include <QLineEdit>
#include <QTimer>

namespace ladlework::ui {

ItemPicker::ItemPicker(const QString& placeholder, QWidget* parent) : QComboBox(parent) {
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int characters = 14;
    setMinimumContentsLength(characters);
    completer()->setFilterMode(Qt::MatchContains);
    completer()->setCompletionMode(QCompleter::PopupCompletion);
    completer()->setCaseSensitivity(Qt::CaseInsensitive);
    lineEdit()->setPlaceholderText(placeholder);
    setAccessibleName(placeholder);
    clearPick();
}

void ItemPicker::fill(const QList<Item>& items) {
    for (const Item& item : items)
        addItem(item.name, item.id);
    clearPick();
}

QString ItemPicker::id() const {
    const QString typed = currentText().trimmed();
    const int row = findText(typed, Qt::MatchFixedString);
    if (row >= 0 || typed.isEmpty())
        return row < 0 ? QString() : itemData(row).toString();
    // A part of a name is enough when only one name holds it.
    const int first = findText(typed, Qt::MatchContains);
    if (first < 0)
        return {};
    for (int other = first + 1; other < count(); ++other)
        if (itemText(other).contains(typed, Qt::CaseInsensitive))
            return {};
    return itemData(first).toString();
}

void ItemPicker::clearPick() {
    const auto clear = [this] {
        setCurrentIndex(-1);
        clearEditText();
    };
    clear();
    // The list of completions hands Enter to the line first and writes its own pick into it after.
    QTimer::singleShot(0, this, clear);
}

} // namespace ladlework::ui
