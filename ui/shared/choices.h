#pragma once

#include <QList>
#include <QString>
#include <QVariant>

class QComboBox;

namespace ladlework::ui {

/// One line of a combo box.
struct Choice {
    QString words;
    QVariant value;
};

/// Fills a combo box and chooses the line of `value`, else the first. Says nothing, and leaves a
/// box that already holds these lines as it is, so that an open list does not close under the hand.
void setChoices(QComboBox& box, const QList<Choice>& choices, const QVariant& value);

} // namespace ladlework::ui
