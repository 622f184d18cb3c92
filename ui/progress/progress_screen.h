#pragma once

#include "ui/shared/family_screen.h"

class QComboBox;
class QStackedWidget;
class QTabBar;

namespace ladlework::ui {

class ClimbPage;
class EmptyState;
class FamilyClimbsPage;
class ObservationsPage;
class ReactionsPage;
class TotalsPage;

/// How each member does: the climb, what was felt, what is taken in a day, what is observed; and
/// all climbs beside each other. One member and one page are in sight.
class ProgressScreen final : public FamilyScreen {
    Q_OBJECT
public:
    ProgressScreen(const ScreenContext& context, QWidget* parent);
    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

protected:
    void refresh(bool sameFamily) override;

private:
    enum Page { ClimbTab, ReactionsTab, TotalsTab, ObservationsTab, FamilyTab };

    QWidget* makeHead();
    void makePages();
    void addPage(const QString& name, QWidget* page);
    void connectParts();
    void makeActions();
    void showTabs();
    void showPage();
    void showClimb(const casebook::Standing& standing);
    void stepMember(int by);
    void stepPage(int by);
    [[nodiscard]] MemberId tabMember(int tab) const;
    /// The tab of a member, else of the first one with a ladder.
    [[nodiscard]] int tabOf(MemberId member) const;
    [[nodiscard]] const casebook::Standing* chosen() const;

    QTabBar* m_members = nullptr;
    QTabBar* m_pageTabs = nullptr;
    QComboBox* m_span = nullptr;
    QStackedWidget* m_pages = nullptr;
    ClimbPage* m_climb = nullptr;
    ReactionsPage* m_reactions = nullptr;
    TotalsPage* m_totals = nullptr;
    ObservationsPage* m_observations = nullptr;
    FamilyClimbsPage* m_family = nullptr;
    EmptyState* m_empty = nullptr;
};

} // namespace ladlework::ui
