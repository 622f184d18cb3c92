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

    PotLibraryModel* m_model = nullptr;
    QListView* m_list = nullptr;
    SideBySide* m_work = nullptr;
    QScrollArea* m_builder = nullptr;
    QScrollArea* m_answer = nullptr;
    EmptyState* m_empty = nullptr;
    Section* m_pot = nullptr;
    QWidget* m_shared = nullptr; ///< what is said about a pot of the practice
    Section* m_out = nullptr;
    PotEditor* m_editor = nullptr;
    PotDrawing* m_drawing = nullptr;
    CookingLine* m_line = nullptr;
    QTimeEdit* m_start = nullptr;
    BalancePanel* m_balance = nullptr;
    WhoPanel* m_who = nullptr;
    QPushButton* m_lowMeat = nullptr;
    PotId m_added;
};

} // namespace ladlework::ui
