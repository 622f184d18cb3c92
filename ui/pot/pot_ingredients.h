#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "ui/pot/price_text.h"
#include "ui/shared/amount_edit.h"

#include <QWidget>

#include <functional>
#include <optional>

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
    void show(const kitchen::Pot& pot, const Prices& prices);
    using QWidget::show;
    [[nodiscard]] const QList<kitchen::CutInPot>& cuts() const;
    [[nodiscard]] const QList<kitchen::ExtraInPot>& extras() const;
    /// Where a cut or an extra of that row is changed; the line that adds one when there is none.
    [[nodiscard]] QWidget* cutsField(int row) const;
    [[nodiscard]] QWidget* extrasField(int row) const;
    /// Where the first price that is missing is written.
    [[nodiscard]] QWidget* priceField() const;

Q_SIGNALS:
    void edited();
    /// A price was written: per kilogram, or nothing to take it away.
    void priced(const QString& item, std::optional<double> perKilogram);
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
    CutsModel* m_cuts = nullptr;
    ExtrasModel* m_extras = nullptr;
    QTableView* m_cutsTable = nullptr;
    QTableView* m_extrasTable = nullptr;
    ItemPicker* m_cutPick = nullptr;
    ItemPicker* m_extraPick = nullptr;
    MassEdit* m_cutMass = nullptr;
    AmountDelegate* m_cutDelegate = nullptr;
    AmountDelegate* m_extraDelegate = nullptr;
};

} // namespace ladlework::ui
