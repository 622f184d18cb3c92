#pragma once

#include "ui/shared/family_screen.h"

class QComboBox;
class QLabel;
class QScrollArea;
class QTabBar;
class QTableView;

namespace ladlework::ui {

class ClimbChart;
class ClimbDaysModel;
class ClimbLegend;
class EmptyState;
class ResumePanel;
class Section;

/// The climb of each member: the drawing, where it stands in words, and every day with its reason.
class ProgressScreen final : public FamilyScreen {
    Q_OBJECT
public:
    ProgressScreen(const ScreenContext& context, QWidget* parent);
    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

protected:
    void refresh(bool sameFamily) override;

private:
    QWidget* makeHead();
    QWidget* makePage();
    void connectParts();
    void makeActions();
    void showTabs();
    void showMember();
    [[nodiscard]] MemberId tabMember(int tab) const;
    /// The tab of a member, else of the first one with a ladder.
    [[nodiscard]] int tabOf(MemberId member) const;
    void stepMember(int by);
    [[nodiscard]] QString summary(const casebook::Standing& standing) const;
    [[nodiscard]] const casebook::Standing* chosen() const;

    QTabBar* m_members = nullptr;
    QComboBox* m_span = nullptr;
    QLabel* m_summary = nullptr;
    ResumePanel* m_resume = nullptr;
    ClimbChart* m_chart = nullptr;
    ClimbDaysModel* m_days = nullptr;
    QTableView* m_table = nullptr;
    EmptyState* m_empty = nullptr;
    QScrollArea* m_page = nullptr;
    Section* m_climb = nullptr;
    ClimbLegend* m_legend = nullptr;
};

} // namespace ladlework::ui
