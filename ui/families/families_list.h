#pragma once

#include "ui/families/families_model.h"

#include <QWidget>

class QLineEdit;
class QListView;
class QPushButton;

namespace ladlework::ui {

/// The slim list at the left: the way to everyone's day, a search, the families, and the way to a
/// new one and to the practice.
class FamiliesList final : public QWidget {
    Q_OBJECT
public:
    /// What else than a family can be in the middle of the window.
    enum class Place { Everyone, NewFamily, Practice };

    FamiliesList(const AttentionReader& reader, QWidget* parent);

    /// Marks a family as the one on screen. Unfolds to show it.
    void setCurrent(FamilyId family);
    /// Marks that no family is on screen but this.
    void setPlace(Place place);
    void focusSearch();
    /// Chooses the family `steps` places below (above when negative) the current one.
    void step(int steps);

Q_SIGNALS:
    void familyChosen(FamilyId family);
    void everyoneWanted();
    void newFamilyWanted();
    void practiceWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void check(const QPushButton* pressed);
    void onCurrentChanged(const QModelIndex& index);
    void toggleFold(const QModelIndex& index);
    bool onSearchKey(int key);
    bool onListKey(int key);
    /// The nearest row with a family from `row` on in the direction of `way`; -1 when there is
    /// none.
    [[nodiscard]] int familyRow(int row, int way) const;

    FamiliesModel* m_model;
    QPushButton* m_everyone;
    QPushButton* m_newFamily;
    QPushButton* m_practice;
    QLineEdit* m_search;
    QListView* m_view;
    bool m_silent = false; ///< while the list follows the window instead of leading it
};

} // namespace ladlework::ui
