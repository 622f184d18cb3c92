#pragma once

#include "ui/shared/family_screen.h"

class QListView;
class QPushButton;
class QStackedWidget;

namespace ladlework::ui {

class DayEdit;
class EmptyState;
class NoteEdit;
class NoteListModel;
class Section;

/// Visit notes: what was seen and said, what was agreed, when to look again.
class NotesScreen final : public FamilyScreen {
    Q_OBJECT
public:
    NotesScreen(const ScreenContext& context, QWidget* parent);
    [[nodiscard]] QWidget* firstField() override;
    void showField(const QString& field) override;

protected:
    void refresh(bool sameFamily) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* makeEditor();
    void makeActions();
    void showChosen();
    void startNew();
    void giveUpNew();
    void save();
    void saveNew();
    void removeChosen();
    [[nodiscard]] const casebook::VisitNote* chosen() const;
    /// Stores the note's review day on the family too, so that it is asked for in time.
    Outcome keepReview(store::Action& action, QDate reviewOn) const;

    NoteListModel* m_model = nullptr;
    QListView* m_list = nullptr;
    QStackedWidget* m_pages = nullptr;
    Section* m_section = nullptr;
    DayEdit* m_day = nullptr;
    DayEdit* m_review = nullptr;
    NoteEdit* m_text = nullptr;
    NoteEdit* m_agreed = nullptr;
    QPushButton* m_remove = nullptr;
    EmptyState* m_empty = nullptr;
    bool m_new = false;
    NoteId m_added;
};

} // namespace ladlework::ui
