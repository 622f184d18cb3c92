#include "ui/shared/choices.h"

#include <QComboBox>
#include <QSignalBlocker>

#include <algorithm>

namespace ladlework::ui {

namespace {

bool holds(const QComboBox& box, const QList<Choice>& choices) {
    if (box.count() != choices.size())
        return false;
    for (int row = 0; row < box.count(); ++row) {
        const Choice& choice = choices.at(row);
        if (box.itemText(row) != choice.words || box.itemData(row) != choice.value)
            return false;
    }
    return true;
}

} // namespace

void setChoices(QComboBox& box, const QList<Choice>& choices, const QVariant& value) {
    const QSignalBlocker blocker(box);
    if (!holds(box, choices)) {
        box.clear();
        for (const Choice& choice : choices)
            box.addItem(choice.words, choice.value);
    }
    box.setCurrentIndex(std::max(0, box.findData(value)));
}

} // namespace ladlework::ui
