#pragma once

#include "casebook/handout_template.h"

#include <QKeySequence>
#include <QWidget>

class QAction;
class QLabel;
class QLineEdit;
class QListView;
class QPlainTextEdit;
class QTimer;

namespace ladlework::ui {

class HandoutPartsModel;

/// What is printed and in which order, and the practitioner's own words for the part chosen.
class HandoutPartsPanel final : public QWidget {
    Q_OBJECT
public:
    explicit HandoutPartsPanel(QWidget* parent = nullptr);

    /// Says nothing; the part chosen stays chosen where it can.
    void setSections(const QList<casebook::HandoutSection>& sections);
    [[nodiscard]] QList<casebook::HandoutSection> sections() const;
    [[nodiscard]] QListView* list() const { return m_list; }
    /// Move up, move down, add and remove a page of own words: for the screen to add.
    [[nodiscard]] QList<QAction*> steps() const;

Q_SIGNALS:
    /// At once for boxes and order, when the typing rests for words.
    void sectionsChanged();

private:
    QAction* makeAction(const QString& text, const QString& tip, const QKeySequence& keys);
    QWidget* makeWords();
    void moveChosen(int places);
    void addPage();
    void removePage();
    void follow();
    /// Takes over what was typed and has not rested yet, as the words of this row.
    void settle(int row);
    void takeWords(int row);
    [[nodiscard]] int chosenRow() const;

    HandoutPartsModel* m_model;
    QListView* m_list;
    QLabel* m_titleLabel;
    QLineEdit* m_title;
    QLabel* m_wordsLabel;
    QPlainTextEdit* m_words;
    QTimer* m_typing;
    QAction* m_up;
    QAction* m_down;
    QAction* m_add;
    QAction* m_remove;
};

} // namespace ladlework::ui
