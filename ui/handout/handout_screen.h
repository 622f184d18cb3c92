#pragma once

#include "handout/family_handout.h"
#include "ui/handout/kept_pages.h"
#include "ui/handout/printing.h"
#include "ui/shared/family_screen.h"

#include <QHash>

class QLabel;
class QPushButton;

namespace ladlework::ui {

class HandoutSide;
class PagesPreview;

/// Preview, print, PDF, and the handouts already given.
class HandoutScreen final : public FamilyScreen {
    Q_OBJECT
public:
    HandoutScreen(const ScreenContext& context, QWidget* parent);

    [[nodiscard]] QWidget* firstField() override;
    /// Prints in another way than with the system's dialog.
    void setPrinting(PrintPages printing) { m_printing = std::move(printing); }

    // What the actions do. Saving and printing go by the pages shown: the handout, the label sheets
    // while these are worked at, or a handout as it was given.
    void savePdf();
    void savePictures();
    /// Label sheets go on other paper: from pages that hold both, the labels are left out.
    void print();
    /// Saves the PDF and records it as given.
    void give();
    /// Records the pages as given without a file: after printing.
    void recordAsGiven();
    /// Shows a handout as it was given, until backToThisWeek().
    void openGiven();
    void saveGiven();
    void removeGiven();
    void backToThisWeek();

protected:
    void refresh(bool sameFamily) override;

private:
    /// What was chosen for a family this time.
    struct Chosen {
        handout::HandoutOptions options;
        HandoutTemplateId from; ///< the template that the parts come from; 0: the usual ones
    };

    void makeActions();
    QWidget* makePages();
    void connectTemplates();
    void connectLabels();
    void takeOptions();
    void takeParts();
    void takeLabels();
    void useTemplate(HandoutTemplateId id);
    void keepTemplate(const QString& name);
    void keepStock(const QString& name);
    [[nodiscard]] casebook::HandoutTemplate templateNow() const;
    [[nodiscard]] const casebook::HandoutTemplate* keptTemplate() const;
    [[nodiscard]] const casebook::LabelStock* keptStock() const;
    void showChoices();
    void showPages(bool keepPlace);
    void showRemarks();
    [[nodiscard]] QString labelsRemark() const;
    void followShown();
    [[nodiscard]] bool labelsInHand() const;
    [[nodiscard]] handout::Document documentNow() const;
    [[nodiscard]] Chosen firstChoice() const;
    bool record(const QByteArray& pdf);

    HandoutSide* m_side;
    PagesPreview* m_preview;
    QLabel* m_where;
    QWidget* m_givenBar;
    QLabel* m_givenWords;
    QAction* m_save = nullptr;
    QAction* m_pictures = nullptr;
    QAction* m_print = nullptr;
    QAction* m_give = nullptr;
    QAction* m_record = nullptr;
    KeptPages m_kept;
    handout::Document m_document;
    Chosen m_now;
    QHash<FamilyId, Chosen> m_chosen; ///< so that going to another family loses nothing
    std::optional<HandoutId> m_shown; ///< the handout shown as it was given
    PrintPages m_printing = printWithDialog;
};

} // namespace ladlework::ui
