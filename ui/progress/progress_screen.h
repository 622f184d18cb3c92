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

    QTabBar* m_members;
    QComboBox* m_span;
    QLabel* m_summary;
    ResumePanel* m_resume;
    ClimbChart* m_chart;
    ClimbDaysModel* m_days;
    QTableView* m_table;
    EmptyState* m_empty;
    QScrollArea* m_page;
    Section* m_climb;
    ClimbLegend* m_legend;
};

} // namespace ladlework::ui
