#pragma once

#include <QComboBox>
#include <QList>
#include <QString>

namespace ladlework::ui {

/// Finds one thing of a list by typing a part of its name.
class ItemPicker final : public QComboBox {
    Q_OBJECT
public:
    ItemPicker(const QString& placeholder, QWidget* parent);

    struct Item {
        QString name;
        QString id;
    };
    void fill(const QList<Item>& items);
    /// The id of what is picked, by its name or by a part that only one name holds; empty while the
    /// text names nothing of the list.
    [[nodiscard]] QString id() const;
    void clearPick();
};

} // namespace ladlework::ui
