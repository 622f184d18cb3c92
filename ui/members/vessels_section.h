#pragma once

#include "casebook/casebook.h"
#include "ui/members/vessel_model.h"
#include "ui/shared/amount_edit.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace ladlework::ui {

class SideBySide;
class TextField;

/// The vessels of a family: a table, and one line to change the chosen one or to add another.
class VesselsSection final : public QWidget {
    Q_OBJECT
public:
    VesselsSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

private:
    void connectEdits();
    void showChosen();
    void saveChosen();
    void add();
    void removeChosen();
    [[nodiscard]] kitchen::Vessel fromLine() const;

    const ScreenContext& m_context;
    FamilyId m_family;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    VesselModel* m_model;
    QTableView* m_table;
    TextField* m_name;
    LengthEdit* m_diameter;
    LengthEdit* m_height;
    QComboBox* m_place;
    QComboBox* m_lid;
    QPushButton* m_add;
    QPushButton* m_remove;
    QLabel* m_none;
    SideBySide* m_line;
};

} // namespace ladlework::ui
