#pragma once

#include "ui/pot/size_panel.h"
#include "ui/shared/family_screen.h"

class QScrollArea;
class QTimer;

namespace ladlework::ui {

class ComparisonPage;
class EmptyState;
class PotAnswer;
class PotEditor;
class PotLibrary;
class Section;

/// The pot library and the pot builder: change a cut, the water or the lid, and at once see what
/// comes out.
class PotScreen final : public FamilyScreen {
    Q_OBJECT
public:
    PotScreen(const ScreenContext& context, QWidget* parent);
    PotScreen(const PotScreen&) = delete;
    PotScreen& operator=(const PotScreen&) = delete;
    ~PotScreen() override;

    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

protected:
    void refresh(bool sameFamily) override;

private:
    void makeSizeActions();
    void makeLibrary();
    void makePageActions();
    QScrollArea* makeBuilder();
    void layOut();
    void letScroll(bool beside);
    void connectEditor();
    void connectAnswer();

    void showChosen();
    void reckon(const kitchen::Pot& draft);
    void settle();
    void save();
    void change(const kitchen::Pot& pot, const QString& sentence);
    void addPot(kitchen::Pot pot, const QString& sentence, bool toBeNamed);

    void startNew();
    void copyForFamily();
    void removeChosen();
    void fitToVessel();
    void coverDays();
    void useBones();
    void makeLowMeat();
    /// Keeps a pot that was sized, or says why there is none. `how`: "to the big pot".
    void keepSized(const Result<kitchen::Pot>& sized, const QString& how);
    void coolIn(const kitchen::Container& container);
    void coolBy(kitchen::CoolingWay way);
    void setPrice(const QString& item, std::optional<double> perKilogram);
    void compare();
    void leaveComparison();

    [[nodiscard]] const kitchen::Pot* chosen() const;
    [[nodiscard]] kitchen::BrewInput draftInput() const;

    SizeActions m_sizeActions;
    PotLibrary* m_library = nullptr;
    QScrollArea* m_work = nullptr;
    QScrollArea* m_builder = nullptr;
    QScrollArea* m_answerArea = nullptr;
    ComparisonPage* m_comparison = nullptr;
    EmptyState* m_empty = nullptr;
    Section* m_pot = nullptr;
    QWidget* m_shared = nullptr; ///< what is said about a pot of the practice
    PotEditor* m_editor = nullptr;
    PotAnswer* m_answer = nullptr;
    QTimer* m_quiet = nullptr; ///< what may wait until nothing moves
    Findings m_potFindings;
    Findings m_coolingFindings;
    PotId m_added;
    bool m_isComparing = false;
};

} // namespace ladlework::ui
