#pragma once

#include "quantity/measure.h"
#include "week/shopping.h"

#include <QAbstractTableModel>
#include <optional>

namespace ladlework::ui {

/// What to buy for a week, under the names of the shop's sections: what is bought first, what is
/// needed and at home behind it. The amount at home can be changed; the model asks for it and shows
/// it when the list is given anew.
class ShoppingModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { ThingColumn, AtHomeColumn, ColumnCount };
    enum Role { HeadingRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setList(const week::ShoppingList& list, quantity::MeasureSystem measures);
    /// All lines, for the clipboard.
    [[nodiscard]] QString asText() const;
    /// The line of the list in a row; nullptr for a heading.
    [[nodiscard]] const week::ShoppingItem* itemAt(int row) const;
    /// The row of what pots need, by its id; -1 when there is none.
    [[nodiscard]] int rowOf(const QString& item) const;

    static QString sectionName(week::ShopSection section);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void atHomeWanted(const QString& item, ladlework::quantity::Mass mass);

private:
    struct Line {
        week::ShopSection section = week::ShopSection::Meat;
        std::optional<week::ShoppingItem> item; ///< nothing: the heading of the section
        friend bool operator==(const Line&, const Line&) = default;
    };
    [[nodiscard]] QVariant textOf(const Line& line, int column) const;
    [[nodiscard]] static bool sameRows(const QList<Line>& a, const QList<Line>& b);

    QList<Line> m_lines;
    quantity::MeasureSystem m_measures = quantity::MeasureSystem::UsCustomary;
};

} // namespace ladlework::ui
