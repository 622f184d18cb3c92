#pragma once

#include "ui/families/attention_reader.h"
#include "ui/shared/screen_context.h"
#include "ui/shell/family_controller.h"

#include <QWidget>

class QAction;
class QSplitter;
class QStackedWidget;

namespace ladlework::ui {

class EmptyState;
class FamiliesList;
class FamilyPane;
class HistoryPanel;
class NewFamilyPanel;
class PracticePage;
class PracticeToday;

/// An open workbook: the families at the left, one place in the middle, the history at the right.
/// In the one-family view everything that could show another family's name is out of sight.
class WorkbookView final : public QWidget {
    Q_OBJECT
public:
    /// Where one is in a workbook; survives that the view is made again.
    struct Whereabouts {
        FamilyId family;
        QString screen;
        bool oneFamily = false;
        bool listShown = true;
        bool historyShown = false;
    };

    WorkbookView(store::Workbook& workbook, const kitchen::Catalogue& catalogue, const Clock& clock,
                 Desk& desk, QWidget* parent);

    void showEveryone();
    void showNewFamily();
    void showPractice();
    void showFamily(FamilyId family, const QString& screen);
    void showScreen(const QString& screen);
    void findFamily();
    void nextFamily();
    void previousFamily();
    /// Removes the family on screen with all its records (it can be undone).
    void removeFamily();
    void setOneFamily(bool only);
    void setListShown(bool shown);
    void setHistoryShown(bool shown);
    /// Something of any family changed behind the list's back: an undo.
    void refreshAll();

    [[nodiscard]] Whereabouts whereabouts() const;
    void goTo(const Whereabouts& place);
    /// The family in the middle of the window; empty when something else is there.
    [[nodiscard]] QString familyName() const;
    [[nodiscard]] bool hasFamily() const { return m_family.current().isStored(); }
    [[nodiscard]] bool isOneFamily() const { return m_oneFamily; }
    [[nodiscard]] bool isHistoryShown() const;
    [[nodiscard]] bool isListShown() const { return m_listShown; }
    /// The actions of the screen that is shown.
    [[nodiscard]] QList<QAction*> screenActions() const;
    /// The actions that go to each screen.
    [[nodiscard]] QList<QAction*> goActions() const;
    [[nodiscard]] QSplitter& splitter() const { return *m_splitter; }

Q_SIGNALS:
    /// Another family, place or screen, or another view of it.
    void placeChanged();
    void broke(const QString& sentence);

private:
    /// What is being typed on a screen is kept for the family it was typed for, before another one
    /// comes up.
    void settleEdits();
    void build();
    void connectParts();
    void onWorkbookChanged();
    void onFamilyChanged();
    void showInMiddle(QWidget* place);

    ScreenContext m_context;
    FamilyController m_family;
    AttentionReader m_attention;
    QSplitter* m_splitter;
    FamiliesList* m_list;
    QStackedWidget* m_middle;
    PracticeToday* m_everyone;
    NewFamilyPanel* m_newFamily;
    PracticePage* m_practice;
    FamilyPane* m_pane;
    EmptyState* m_gone;
    HistoryPanel* m_history;
    bool m_oneFamily = false;
    bool m_listShown = true;
    bool m_historyShown = false;
};

} // namespace ladlework::ui
