#pragma once

#include "ui/shared/family_screen.h"

class QListView;
class QPushButton;
class QScrollArea;
class QTimeEdit;

namespace ladlework::ui {

class BalancePanel;
class CookingLine;
class PotDrawing;
class PotEditor;
class PotLibraryModel;
class EmptyState;
class Section;
class SideBySide;
class WhoPanel;

/// The pot library and the pot builder: change a cut, the water or the lid, and at once see what
/// comes out.
class PotScreen final : public FamilyScreen {
    Q_OBJECT
public:
    PotScreen(const ScreenContext& context, QWidget* parent);

    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

protected:
    void refresh(bool sameFamily) override;

private:
    QWidget* makeLibrary();
    QScrollArea* makeBuilder();
    QScrollArea* makeAnswer();
    void makeActions();
    void showChosen();
    void reckon(const kitchen::Pot& draft);
    void save();
    void startNew();
    void copyForFamily();
    void makeLowMeat();
    void removeChosen();
    void addPot(kitchen::Pot pot, const QString& sentence);
    [[nodiscard]] const kitchen::Pot* chosen() const;

    PotLibraryModel* m_model;
    QListView* m_list;
    SideBySide* m_work;
    QScrollArea* m_builder;
    QScrollArea* m_answer;
    EmptyState* m_empty;
    Section* m_pot;
    QWidget* m_shared; ///< what is said about a pot of the practice
    Section* m_out;
    PotEditor* m_editor;
    PotDrawing* m_drawing;
    CookingLine* m_line;
    QTimeEdit* m_start;
    BalancePanel* m_balance;
    WhoPanel* m_who;
    QPushButton* m_lowMeat;
    PotId m_added;
};

} // namespace ladlework::ui
