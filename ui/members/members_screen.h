#pragma once

#include "ui/shared/family_screen.h"

class QListView;
class QScrollArea;
class QStackedWidget;

namespace ladlework::ui {

class AddMemberPanel;
class CautionSection;
class ClimbSection;
class ContainersSection;
class FamilySection;
class MemberListModel;
class PersonSection;
class RetrySection;
class ToleranceSection;
class HoursSection;
class VesselsSection;

/// Members with band, phase, target, ladder, tolerance notes and cautions; the family's kitchen.
class MembersScreen final : public FamilyScreen {
    Q_OBJECT
public:
    MembersScreen(const ScreenContext& context, QWidget* parent);

    void showField(const QString& field) override;
    [[nodiscard]] QWidget* firstField() override;

protected:
    void refresh(bool sameFamily) override;

private:
    void makePages();
    void makeActions();
    void showRow(int row);
    void showMember(const casebook::Standing& standing);
    void showAddPanel();
    void addMember();
    void showFamilyRow();
    static void focusOn(QScrollArea& page, QWidget& field);
    void removeMember();
    [[nodiscard]] MemberId chosen() const;

    MemberListModel* m_model = nullptr;
    QListView* m_list = nullptr;
    QStackedWidget* m_pages = nullptr;
    AddMemberPanel* m_add = nullptr;
    QScrollArea* m_memberPage = nullptr;
    QScrollArea* m_familyPage = nullptr;
    PersonSection* m_person = nullptr;
    ClimbSection* m_climb = nullptr;
    ToleranceSection* m_tolerance = nullptr;
    RetrySection* m_retry = nullptr;
    CautionSection* m_caution = nullptr;
    FamilySection* m_family = nullptr;
    HoursSection* m_hours = nullptr;
    VesselsSection* m_vessels = nullptr;
    ContainersSection* m_containers = nullptr;
};

} // namespace ladlework::ui
