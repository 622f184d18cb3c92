#pragma once

#include "casebook/casebook.h"
#include "ui/members/container_model.h"
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

/// What the family cools its stock in: a table, and one line to change the chosen container or to
/// add another.
class ContainersSection final : public QWidget {
    Q_OBJECT
public:
    ContainersSection(const ScreenContext& context, QWidget* parent);
    void show(const casebook::Casebook& book);
    using QWidget::show;
    [[nodiscard]] QWidget* firstField() const;

private:
    void makeLine();
    void connectEdits();
    void showChosen();
    void saveChosen();
    void add();
    void removeChosen();
    [[nodiscard]] const kitchen::Container* chosen() const;
    [[nodiscard]] kitchen::Container fromLine() const;

    const ScreenContext& m_context;
    FamilyId m_family;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    ContainerModel* m_model;
    QTableView* m_table;
    // Made in this order, which is the order of the Tab key.
    QPushButton* m_add;
    QPushButton* m_remove;
    TextField* m_name;
    QComboBox* m_shape;
    LengthEdit* m_across;
    QLabel* m_by;
    LengthEdit* m_width;
    LengthEdit* m_height;
    QComboBox* m_material;
    QComboBox* m_cover;
    QLabel* m_none;
    SideBySide* m_line;
};

} // namespace ladlework::ui
