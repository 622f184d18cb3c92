#pragma once

#include "ui/shared/family_screen.h"

class QBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace ladlework::ui {

class CookedPanel;
class MemberLine;
class Section;
class StockSection;
class StoveSection;

/// One family's day: who drinks what, what to cook, what wants attention.
class TodayScreen final : public FamilyScreen {
    Q_OBJECT
public:
    TodayScreen(const ScreenContext& context, QWidget* parent);

    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

protected:
    void refresh(bool sameFamily) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QWidget* makePage();
    void addActions();
    void leadTo(const QString& text, const QString& tip, const QString& screen);
    void showMembers();
    void showReview();
    /// Opens the panel that records a cooking, and puts the focus into it.
    void recordCooking();

    QStackedWidget* m_pages;
    QBoxLayout* m_columns = nullptr;
    Section* m_day;
    QVBoxLayout* m_memberLines;
    QList<MemberLine*> m_members;
    StoveSection* m_stove;
    CookedPanel* m_cooked;
    StockSection* m_stock;
    Section* m_review;
    QLabel* m_reviewWords;
    QPushButton* m_log;
    QPushButton* m_addMember;
};

} // namespace ladlework::ui
