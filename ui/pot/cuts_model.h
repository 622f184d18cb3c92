#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "ui/pot/price_text.h"

#include <QAbstractTableModel>
#include <optional>

namespace ladlework::ui {

/// The cuts of the pot in hand: name, mass, raw or not, and the price. Changes are made to the
/// model's own list and told through edited(); a price is the practice's and only told.
class CutsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { CutColumn, MassColumn, RawColumn, PriceColumn, ColumnCount };

    CutsModel(const kitchen::Catalogue& catalogue, QObject* parent);
    void show(const QList<kitchen::CutInPot>& cuts, const Prices& prices);
    [[nodiscard]] const QList<kitchen::CutInPot>& cuts() const { return m_cuts; }
    void add(const kitchen::CutInPot& cut);
    void remove(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void edited();
    /// A price was written: per kilogram, or nothing to take it away.
    void priced(const QString& item, std::optional<double> perKilogram);
    /// What was typed could not be read.
    void refused(const QString& sentence);

private:
    const kitchen::Catalogue& m_catalogue;
    QList<kitchen::CutInPot> m_cuts;
    Prices m_prices;
};

} // namespace ladlework::ui
