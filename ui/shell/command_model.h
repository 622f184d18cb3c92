#pragma once

#include <QAbstractListModel>
#include <QList>

class QAction;

namespace ladlework::ui {

/// Actions that can be done now, by their words; a search keeps those that hold every word typed,
/// best first.
class CommandModel final : public QAbstractListModel {
    Q_OBJECT
public:
    /// An action and the menu it stands in ("View").
    struct Command {
        QAction* action = nullptr;
        QString place;
    };
    enum Role { ShortcutRole = Qt::UserRole, PlaceRole, TipRole };

    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

    /// Disabled, hidden, separating and textless actions are left out.
    void setCommands(const QList<Command>& commands);
    void setSearch(const QString& text);
    [[nodiscard]] QAction* action(int row) const { return m_shown[row].action; }

private:
    QList<Command> m_all;
    QList<Command> m_shown;
};

/// An action's text without mnemonic and ellipsis.
QString plainText(const QAction& action);

} // namespace ladlework::ui
