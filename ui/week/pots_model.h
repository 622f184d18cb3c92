#pragma once

#include "kitchen/pot.h"

#include <QAbstractListModel>

namespace ladlework::ui {

/// The pots that can be put on a day, by name; each can be dragged.
class PotsModel final : public QAbstractListModel {
    Q_OBJECT
public:
    struct Row {
        PotId pot;
        QString name;
        QString remark; ///< "makes 2¾ quarts, 2 h 30 min"
        friend bool operator==(const Row&, const Row&) = default;
    };
    enum Role { PotRole = Qt::UserRole, NameRole };

    using QAbstractListModel::QAbstractListModel;

    void setRows(QList<Row> rows);
    [[nodiscard]] PotId potAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QStringList mimeTypes() const override;
    [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;

private:
    QList<Row> m_rows;
};

} // namespace ladlework::ui
