#pragma once

#include "handout/family_handout.h"
#include "ui/handout/printing.h"
#include "ui/shared/family_screen.h"

#include <QHash>

class QLabel;
class QPushButton;

namespace ladlework::ui {

class GivenPanel;
class HandoutOptionsPanel;
class PagesPreview;

/// Preview, print, PDF, and the handouts already given.
class HandoutScreen final : public FamilyScreen {
    Q_OBJECT
public:
    HandoutScreen(const ScreenContext& context, QWidget* parent);

    [[nodiscard]] QWidget* firstField() override;
    /// Prints in another way than with the system's dialog.
    void setPrinting(PrintPages printing) { m_printing = std::move(printing); }

    // What the actions do.
    void savePdf();
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
    void makeActions();
    QWidget* makeSide();
    QWidget* makePages();
    void optionsChanged();
    void showPages(bool keepPlace);
    void followShown();
    [[nodiscard]] handout::HandoutOptions firstOptions() const;
    [[nodiscard]] QString suggestedFile(const QString& title) const;
    /// The file chosen and written; false when there is none.
    bool saveTo(const QByteArray& pdf, const QString& title);
    bool record(const QByteArray& pdf);

    HandoutOptionsPanel* m_options;
    GivenPanel* m_given;
    PagesPreview* m_preview;
    QLabel* m_where;
    QLabel* m_remark;
    QWidget* m_givenBar;
    QLabel* m_givenWords;
    QAction* m_save = nullptr;
    QAction* m_print = nullptr;
    QAction* m_give = nullptr;
    QAction* m_record = nullptr;
    handout::Document m_document;
    /// What was chosen for each family this time, so that going to another loses nothing.
    QHash<FamilyId, handout::HandoutOptions> m_chosen;
    std::optional<HandoutId> m_shown; ///< the handout shown as it was given
    PrintPages m_printing = printWithDialog;
};

} // namespace ladlework::ui
