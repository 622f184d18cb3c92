#pragma once

#include "quantity/measure.h"
#include "week/shopping.h"

#include <QAbstractListModel>

namespace ladlework::ui {

/// What to buy for a week, under the names of the shop's sections.
class ShoppingModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { HeadingRole = Qt::UserRole };

    using QAbstractListModel::QAbstractListModel;

    void setItems(const QList<week::ShoppingItem>& items, quantity::MeasureSystem measures);
    /// All lines, for the clipboard.
    [[nodiscard]] QString asText() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Line {
        QString text;
        bool heading = false;
        friend bool operator==(const Line&, const Line&) = default;
    };
    QList<Line> m_lines;
};

} // namespace ladlework::ui
