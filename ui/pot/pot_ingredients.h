#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "ui/shared/amount_edit.h"

#include <QWidget>

#include <functional>

class QTableView;

namespace ladlework::ui {

class AmountDelegate;
class CutsModel;
class ExtrasModel;
class ItemPicker;

/// What goes into the pot: two tables, each with a line to add to it. Delete takes a line out.
class PotIngredients final : public QWidget {
    Q_OBJECT
public:
    PotIngredients(const kitchen::Catalogue& catalogue, QWidget* parent);
    void show(const kitchen::Pot& pot, quantity::MeasureSystem measures);
    using QWidget::show;
    [[nodiscard]] const QList<kitchen::CutInPot>& cuts() const;
    [[nodiscard]] const QList<kitchen::ExtraInPot>& extras() const;
    /// Where a cut or an extra of that row is changed; the line that adds one when there is none.
    [[nodiscard]] QWidget* cutsField(int row) const;
    [[nodiscard]] QWidget* extrasField(int row) const;

Q_SIGNALS:
    void edited();
    /// What was typed could not be read.
    void refused(const QString& sentence);

private:
    void addRemoval(QTableView* table, const std::function<void(int)>& remove);
    QWidget* makeCuts();
    QWidget* makeExtras();
    void addCut();
    void addExtra();

    const kitchen::Catalogue& m_catalogue;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
    CutsModel* m_cuts;
    ExtrasModel* m_extras;
    QTableView* m_cutsTable;
    QTableView* m_extrasTable;
    ItemPicker* m_cutPick;
    ItemPicker* m_extraPick;
    MassEdit* m_cutMass;
    AmountDelegate* m_cutDelegate;
    AmountDelegate* m_extraDelegate;
};

} // namespace ladlework::ui
