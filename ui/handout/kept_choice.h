#pragma once

#include <QList>
#include <QString>
#include <QWidget>

class QAction;
class QComboBox;
class QLabel;
class QLineEdit;

namespace ladlework::ui {

/// What the practice keeps under names, to choose from: a box with the names, the usual one first,
/// and a menu to keep, rename and remove. A name is typed below the box, without a dialog.
class KeptChoice final : public QWidget {
    Q_OBJECT
public:
    struct Item {
        qint64 id = 0; ///< 0 or below: a usual one, which is not kept
        QString name;
        friend bool operator==(const Item&, const Item&) = default;
    };
    /// How the things are called in the menu and for a screen reader.
    struct WordsFor {
        QString label; ///< before the box, with its mnemonic
        QString save;  ///< empty: changes are kept at once
        QString keepAs;
        QString rename;
        QString remove;
        QString nameLabel;
    };

    explicit KeptChoice(const WordsFor& words, QWidget* parent = nullptr);

    /// Shows these and chooses the one of `id`; says nothing.
    void setItems(const QList<Item>& items, qint64 id);
    [[nodiscard]] qint64 current() const;
    /// A mark beside the name: what is shown differs from what is kept.
    void setChanged(bool changed);
    /// False in a workbook that cannot be written.
    void setMayChange(bool may);
    /// The entries of the menu, for the screen to add to its own actions.
    [[nodiscard]] QList<QAction*> entries() const;

    void askForNewName();
    void askForRename();

Q_SIGNALS:
    void chosen(qint64 id);
    void saveWanted();
    void keepAsWanted(const QString& name);
    void renameWanted(const QString& name);
    void removeWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum class Asked { Nothing, NewName, Rename };

    void ask(Asked what, const QString& name);
    void takeName();
    void follow();

    QComboBox* m_box;
    QWidget* m_nameRow;
    QLineEdit* m_name;
    QLabel* m_changed;
    QAction* m_save = nullptr;
    QAction* m_keepAs;
    QAction* m_rename;
    QAction* m_remove;
    QList<Item> m_items;
    Asked m_asked = Asked::Nothing;
    bool m_mayChange = true;
};

} // namespace ladlework::ui
